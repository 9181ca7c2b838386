// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork new FILE: the commented starter job.

#include "cli/command.h"
#include "cli/problems.h"
#include "cli/share.h"
#include "cli/words.h"
#include "output/files.h"
#include "units/failure.h"
#include "units/shell.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace legwork {

namespace {

constexpr std::size_t kLargestStarter = 64 * 1024;

void add_options(CLI::App& app, Options& options) {
    app.add_option("FILE", options.file, "the job file to make; one that is there is never touched")->required();
}

int run(Options const& options, Streams& streams) {
    auto const starter = share_folder("templates") + "/starter.toml";
    std::string why;
    auto const bytes = read_file(starter, kLargestStarter, why);
    if (!bytes) throw Failure(fmt::format("cannot read {}: {}", starter, why));
    if (options.file == "-") {
        streams.out << *bytes;
        return exit_done;
    }
    if (!write_new_file(options.file, *bytes))
        throw Failure(fmt::format("{} is there already and was left as it is; give another name", options.file));
    streams.out << fmt::format("wrote {}\nChange it to what your building has, then: legwork check {}\n",
                               shown_file(options.file), shell_file(options.file));
    return exit_done;
}

} // namespace

Command const new_command{"new", "a commented starter job", add_options, run};

} // namespace legwork
