// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "units/shell.h"

#include "toml/problem.h"

#include "catch.h"

#include <array>
#include <cstdio>
#include <memory>
#include <random>

using namespace legwork;

namespace {

// What a shell makes of the word, by printf.
std::string read_by(std::string const& shell, std::string const& word) {
    auto const command = shell + " -c 'IFS= read -r line; eval \"printf %s $line\"' 2>&1";
    // Over a file: popen goes one way only.
    std::unique_ptr<FILE, int (*)(FILE*)> in(std::tmpfile(), &std::fclose);
    std::fputs((word + "\n").c_str(), in.get());
    std::rewind(in.get());
    auto const redirected = command + " <&" + std::to_string(::fileno(in.get()));
    std::unique_ptr<FILE, int (*)(FILE*)> out(::popen(redirected.c_str(), "r"), &::pclose);
    std::string got;
    for (int c = 0; (c = std::fgetc(out.get())) != EOF;) got += static_cast<char>(c);
    return got;
}

} // namespace

TEST_CASE("plain words stay as they are, others are quoted", "[job][shell]") {
    CHECK(shell_word("cabin.toml") == "cabin.toml");
    CHECK(shell_word("jobs/Été-2.toml") == "jobs/Été-2.toml");
    CHECK(shell_word("my job.toml") == "\"my job.toml\"");
    CHECK(shell_word("") == "\"\"");
    CHECK(shell_word("a$HOME.toml") == "'a$HOME.toml'");
    CHECK(shell_word("don't `ls`") == "'don'\\''t `ls`'");
    CHECK(shell_word("~") == "\"~\"");
    CHECK(shell_word("two\nlines") == "$'two\\012lines'");
    CHECK(shell_name("Main") == "\"Main\"");
    CHECK(shell_file("-rf") == "./-rf");
    CHECK(shell_file("-") == "-");
}

TEST_CASE("a shell reads back what was quoted, and it can be printed", "[job][shell]") {
    std::mt19937 random(20260711);
    std::string const letters = "ab -'\"$`\\!*?[]{}()<>|&;~#=%^\n\t\x1b\x7f\xc3\xa9\xff";
    std::uniform_int_distribution<std::size_t> letter(0, letters.size() - 1), length(0, 12);
    for (int n = 0; n < 150; ++n) {
        std::string word;
        for (auto left = length(random); left > 0; --left) word += letters[letter(random)];
        auto const quoted = shell_word(word);
        CAPTURE(word, quoted);
        REQUIRE(fit_to_print(quoted) == quoted);
        REQUIRE(read_by("bash", quoted) == word);
        // Numbers in quotes are of POSIX 2024: an older sh takes only what can be printed.
        if (!quoted.starts_with("$'")) REQUIRE(read_by("sh", quoted) == word);
    }
}
