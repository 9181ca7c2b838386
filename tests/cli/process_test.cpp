// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The built program itself: what only a process shows.

#include "calls.h"
#include "output/files.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <chrono>
#include <filesystem>
#include <random>

using nlohmann::json;

TEST_CASE("standard input is a job like any other", "[cli][process]") {
    auto const called = run_process({"check", "-", "--json"}, faulty_job());
    REQUIRE(called.status == 1);
    REQUIRE(json::parse(called.out)["errors"] == 1);
    auto const listed = run_process({"check", "-"}, faulty_job());
    REQUIRE_THAT(listed.out, Contains("standard input:46:1: error: L1"));
}

TEST_CASE("a full disk behind standard output exits 3", "[cli][process]") {
    auto const called = run_process({"check", "-"}, small_job(), "/dev/full");
    REQUIRE(called.status == 3);
    REQUIRE_THAT(called.err, Contains("standard output") && Contains("No space left"));
    REQUIRE(run_process({"--help"}, "", "/dev/full").status == 3);
}

TEST_CASE("a file over the limit of the shell exits 3 with the cause, and nothing is half written", "[cli][process]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    auto job = small_job();
    while (job.size() < 16 * 1024) job += "# a remark that fills the file up to where the limit stands\n";
    legwork::write_file(path, job);
    for (auto const& words :
         {std::vector<std::string>{"balance", path, "--write"}, {"print", path, "--out", folder / "out"}}) {
        auto const called = run_process_within(4096, words);
        CAPTURE(words, called.err);
        REQUIRE(called.status == 3);
        REQUIRE_THAT(called.err, Contains("File too large"));
    }
    REQUIRE(contents(path) == job);
    std::filesystem::remove(folder / "out"); // throws unless it is empty
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml"});
}

TEST_CASE("commands that a message proposes can be pasted, whatever the file is called", "[cli][process]") {
    TemporaryFolder const folder;
    auto const [name, quote, end] = GENERATE(table<std::string, std::string, std::string>({
        {"plain.toml", "\"", "/plain.toml\""}, // but for the blanks in the folder's name
        {"a $HOME's.toml", "'", "/a $HOME'\\''s.toml'"},
        {"two\nlines.toml", "$'", "/two\\012lines.toml'"},
    }));
    auto const expected = "legwork check " + quote + folder.path() + end;
    auto const path = folder / name;
    REQUIRE_THAT(run_process({"new", path}).out, Contains(expected));
    legwork::write_file(path, faulty_job());
    REQUIRE_THAT(run_process({"balance", path}).out, Contains(expected + " lists them"));
    REQUIRE_THAT(run_process({"print", path, "--out", folder / "out"}).out, Contains(expected + " says what"));
    REQUIRE_THAT(run_process({"balance", "-"}, faulty_job()).out, Contains("legwork check - lists them"));
}

TEST_CASE("colour on a terminal only, and never with NO_COLOR", "[cli][process]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "bad.toml", faulty_job());
    legwork::write_file(folder / "unreadable.toml", "[job]\nnmae = 1\n");
    for (auto const* file : {"bad.toml", "unreadable.toml"}) {
        CAPTURE(file);
        REQUIRE_THAT(run_on_terminal({"check", folder / file}, {"NO_COLOR="}).out, Contains("\x1b[1;31merror\x1b[0m"));
        REQUIRE_THAT(run_on_terminal({"check", folder / file}, {"NO_COLOR=1"}).out, !Contains("\x1b"));
        auto const piped = run_process({"check", folder / file}, "", "", {"NO_COLOR="});
        REQUIRE_THAT(piped.out + piped.err, !Contains("\x1b"));
    }
}

TEST_CASE("balance --write killed at any moment leaves the old or the new job whole", "[cli][process]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, small_job());
    auto const started = std::chrono::steady_clock::now();
    REQUIRE(run_process({"balance", path, "--write"}).status == 0);
    auto const whole_run = std::chrono::steady_clock::now() - started;
    auto const written = contents(path);
    REQUIRE(written != small_job());
    constexpr int rounds = 40;
    for (int n = 0; n < rounds; ++n) {
        for (auto const& name : folder.names()) std::filesystem::remove(folder / name);
        legwork::write_file(path, small_job());
        kill_process({"balance", path, "--write"}, whole_run * n / (rounds - 10));
        auto const now = contents(path);
        REQUIRE((now == small_job() || now == written));
        for (auto const& name : folder.names())
            if (name.find("before") != std::string::npos) REQUIRE(contents(folder / name) == small_job());
    }
}

TEST_CASE("any bytes are refused in under a second", "[cli][process]") {
    std::mt19937 random(20260502);
    auto const bytes = [&](std::size_t size, int from, int to) {
        std::uniform_int_distribution<int> one(from, to);
        std::string text;
        for (std::size_t i = 0; i < size; ++i) text += static_cast<char>(one(random));
        return text;
    };
    std::string nested = "x = ";
    nested.append(500'000, '[');
    std::vector<std::string> inputs{"",
                                    std::string(1, '\0'),
                                    "\xef\xbb\xbf",
                                    std::string(1024 * 1024, 'a'),
                                    std::string(1024 * 1024, '\n'),
                                    std::string(1024 * 1024 + 1, '#'),
                                    std::string(3 * 1024 * 1024, 'x'),
                                    nested,
                                    "a = 99999999999999999999999\n",
                                    "[job]\ncode = nan\n[[panel]]\nspaces = inf\n"};
    for (std::size_t size : {1U, 30U, 1000U, 100'000U, 1'048'576U}) {
        inputs.push_back(bytes(size, 0, 255));
        inputs.push_back(bytes(size, 32, 126));
    }
    // A job with letters changed: most no longer read, none may hang or crash.
    for (int n = 0; n < 40; ++n) {
        auto job = small_job();
        for (int i = 0; i < 3; ++i)
            job[std::uniform_int_distribution<std::size_t>(0, job.size() - 1)(random)] = bytes(1, 0, 255)[0];
        inputs.push_back(job);
    }
    for (auto const& input : inputs) {
        CAPTURE(input.size(), input.substr(0, 60));
        auto const before = std::chrono::steady_clock::now();
        auto const called = run_process({"check", "-"}, input);
        auto const took = std::chrono::duration<double>(std::chrono::steady_clock::now() - before).count();
        CAPTURE(called.err.substr(0, 400), took);
        bool const changed_job = input.size() == small_job().size();
        REQUIRE((called.status == 2 || (changed_job && (called.status == 0 || called.status == 1))));
        if (called.status == 2) REQUIRE_THAT(called.err, Contains("error: "));
        REQUIRE(took < 20.0); // a hang, not slowness: that is the benchmark's
    }
}
