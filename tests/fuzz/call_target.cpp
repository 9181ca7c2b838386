// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Any command line, in a folder of its own: ends with 0, 1 or 2, and a job file is whole before and after.
#include "fuzz/call.h"
#include "fuzz/promises.h"

#include "cli/program.h"
#include "output/files.h"

#include <algorithm>
#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

#include <fcntl.h>
#include <unistd.h>

namespace fs = std::filesystem;

namespace {

struct Ran {
    int status;
    std::string out, err;
};

std::string contents(std::string const& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

// The private folder, empty but for the job, which is standard input as well.
void lay_out(std::string const& job) {
    static auto const folder = [] {
        auto name = (fs::temp_directory_path() / "legwork-call-XXXXXX").string();
        fuzz::promise(::mkdtemp(name.data()) && ::chdir(name.c_str()) == 0, "there is a folder to work in", name);
        return name;
    }();
    for (auto const& old : fs::directory_iterator(folder)) fs::remove_all(old.path());
    std::ofstream("job.toml", std::ios::binary) << job;
    int const opened = ::open("job.toml", O_RDONLY | O_CLOEXEC);
    fuzz::promise(opened >= 0 && ::dup2(opened, STDIN_FILENO) == 0, "the job can be read");
    ::close(opened);
}

Ran run(std::vector<std::string> const& words) {
    std::ostringstream out, err;
    legwork::Streams streams{out, err};
    auto const status = legwork::run_program(words, streams);
    return {status, out.str(), err.str()};
}

bool has(std::vector<std::string> const& words, std::string_view word) { return std::ranges::count(words, word) > 0; }

// JSON is asked for: by the word, unless it is the value of the option in front of it, or prose is asked for as well.
bool asks_for_json(std::vector<std::string> const& words) {
    static constexpr std::array<std::string_view, 12> with_value{"--by",  "--rule",   "--min",   "--moves",
                                                                 "--out", "--sheet",  "--form",  "--format",
                                                                 "--add", "--method", "--panel", "--seconds"};
    for (auto const* prose : {"--", "-h", "--help", "--version"})
        if (has(words, prose)) return false;
    if (std::ranges::any_of(words, [](auto const& word) { return word.starts_with("--json="); })) return false;
    auto const at = std::ranges::find(words, "--json");
    return at != words.end() && (at == words.begin() || std::ranges::count(with_value, *(at - 1)) == 0);
}

// What was asked for cannot be written, and that is not the program's fault.
bool cannot_be_written(std::string const& text) {
    static constexpr std::array<std::string_view, 6> reasons{"Not a directory",    "Is a directory",
                                                             "File name too long", "is there already",
                                                             "is no regular file", "File exists"};
    return std::ranges::any_of(reasons, [&](auto r) { return text.find(r) != std::string::npos; });
}

void promise_result(std::vector<std::string> const& words, Ran const& ran) {
    fuzz::promise_utf8(ran.out);
    fuzz::promise_utf8(ran.err);
    fuzz::promise((ran.status >= 0 && ran.status <= 2) || (ran.status == 3 && cannot_be_written(ran.out + ran.err)),
                  "a call is done, finds an error or is not understood", ran.out + ran.err);
    if (asks_for_json(words)) fuzz::promise_json(ran.out);
}

// As it was; or put in its place by a whole new one, the old one beside it.
void promise_job_file(std::string const& job, Ran const& ran) {
    auto const now = contents("job.toml");
    if (now == job) return;
    fuzz::promise(ran.status < 2, "a call that was not understood changes nothing", now);
    fuzz::promise(contents("job.before.toml") == job, "the old file stays beside the new one");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    auto const call = fuzz::call_of({reinterpret_cast<char const*>(data), size});
    lay_out(call.job);
    auto const ran = run(call.words);
    promise_result(call.words, ran);
    promise_job_file(call.job, ran);
    return 0;
}
