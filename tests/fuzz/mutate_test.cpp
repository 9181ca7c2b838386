// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// That the fuzzer's changes reach what lies behind the reader: they know every key, and leave many jobs understood.
#include "fuzz/mutate.h"
#include "fuzz/toml_pieces.h"
#include "source_folder.h"

#include "cli/vocabulary.h"
#include "output/files.h"
#include "sheet/form.h"

#include "catch.h"
#include <filesystem>
#include <set>

using namespace legwork;

namespace {

std::vector<std::string> job_files() {
    std::vector<std::string> files;
    for (auto const* folder : {"examples", "tests/cases", "tests/cases/load", "tests/sound"})
        for (auto const& at : std::filesystem::directory_iterator(in_sources(folder)))
            if (at.path().extension() == ".toml" && at.path().stem() != "unreadable")
                files.push_back(at.path().string());
    return files;
}

std::string contents(std::string const& path) {
    std::string why;
    auto bytes = read_file(path, 1u << 20, why);
    REQUIRE(bytes);
    return *bytes;
}

bool is_unknown(std::vector<Problem> const& problems, std::string const& key) {
    return std::ranges::any_of(
        problems, [&](Problem const& p) { return p.message.find("there is no key \"" + key) != std::string::npos; });
}

std::string table_with(fuzz::KnownKey const& key, std::string const& value) {
    bool const one = key.table == "job" || key.table == "dwelling" || key.table.empty();
    auto const header = key.table.empty() ? ""
                        : one             ? "[" + std::string(key.table) + "]\n"
                                          : "[[" + std::string(key.table) + "]]\n";
    return header + std::string(key.key()) + " = " + value + "\n";
}

} // namespace

TEST_CASE("a file taken apart and put together is the same", "[fuzz]") {
    for (auto const& file : job_files()) {
        auto const text = contents(file);
        CHECK(fuzz::put_together(fuzz::taken_apart(text)) == text);
        for (auto const& piece : fuzz::taken_apart(text))
            for (auto const& line : piece.lines)
                if (auto const parts = fuzz::key_line(line)) CHECK(parts->line() == line);
    }
}

TEST_CASE("the fuzzer knows every key that a job file of ours has", "[fuzz]") {
    std::set<std::pair<std::string, std::string>> known;
    for (auto const& k : fuzz::job_keys()) known.emplace(k.table, k.key());
    for (auto const& file : job_files())
        for (auto const& piece : fuzz::taken_apart(contents(file)))
            for (auto const& line : piece.lines)
                if (auto const parts = fuzz::key_line(line); parts && piece.name.find('.') == std::string::npos) {
                    CAPTURE(file, line);
                    CHECK(known.contains({piece.name, parts->name()}));
                }
}

TEST_CASE("every key that the fuzzer knows is one of the reader's", "[fuzz]") {
    fuzz::Dice dice(1);
    for (auto const& k : fuzz::job_keys()) {
        CAPTURE(k.table, k.key());
        CHECK_FALSE(is_unknown(read_job(table_with(k, fuzz::made_value(k, {}, dice)), vocabulary()).problems,
                               std::string(k.key())));
    }
    for (auto const& k : fuzz::form_keys()) {
        CAPTURE(k.key());
        auto const form = "sheet = \"labels\"\n" + (k.key() == "sheet" ? "" : table_with(k, "10"));
        CHECK_FALSE(is_unknown(read_form(form, "mine").problems, std::string(k.key())));
    }
    CHECK(is_unknown(read_job("[job]\nnaem = 1\n", vocabulary()).problems, "naem"));
}

TEST_CASE("a third of the changed jobs is understood", "[fuzz]") {
    fuzz::Dice dice(20260502);
    auto const text = contents(in_sources("examples/orchard-shed.toml"));
    int understood = 0;
    constexpr int kTries = 300;
    for (int i = 0; i < kTries; ++i)
        if (read_job(fuzz::mutated(text, fuzz::job_keys(), dice), vocabulary()).job) ++understood;
    CHECK(understood > kTries / 3);
    CHECK(understood < kTries);
}

TEST_CASE("a splice brings tables of the other job", "[fuzz]") {
    fuzz::Dice dice(7);
    std::string const text = "[job]\ncode = \"NEC 2023\"\n", other = "[[circuit]]\nmark = \"K1\"\n";
    std::set<std::string> made;
    for (int i = 0; i < 50; ++i) made.insert(fuzz::spliced(text, other, dice));
    CHECK(made.contains(text + other));
}
