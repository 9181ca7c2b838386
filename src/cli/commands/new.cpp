// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork new FILE: the commented starter job.

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/files/share.h"
#include "cli/problems.h"
#include "cli/text/words.h"
#include "output/files.h"
#include "units/failure.h"
#include "units/shell.h"

#include <fmt/format.h>

namespace legwork {

namespace {

constexpr std::size_t kLargestStarter = 64 * 1024;

struct NewOptions {
    std::string file;
};

constexpr Row<NewOptions> kRows[] = {
    {{.name = "FILE",
      .help = "the job file to make; one that is there is never touched",
      .completes = new_files,
      .required = true},
     &NewOptions::file},
};

int run(NewOptions const& options, Streams& streams) {
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

extern Command const new_command{"new", "a commented starter job", "", options_of<kRows>, run_with<kRows, run>};

} // namespace legwork
