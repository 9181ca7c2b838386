// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork help [COMMAND]: the same as --help.

#include "cli/call/help.h"
#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/problems.h"
#include "toml/near.h"

#include <fmt/format.h>

namespace legwork {

namespace {

struct HelpOptions {
    std::string command;
};

constexpr OptionRow<HelpOptions> kOptions[] = {
    {{.name = "COMMAND", .help = "the command to tell of", .unsaid = "all", .completes = commands_by_name},
     &HelpOptions::command},
};

int run(HelpOptions const& options, Streams& streams) {
    if (options.command.empty()) return streams.out << program_help(streams.width), exit_done;
    if (Command const* c = command_named(options.command))
        return streams.out << command_help(*c, streams.width), exit_done;
    Words names;
    for (Command const* c : commands()) names.emplace_back(c->name);
    tell_problems(one_problem("", fmt::format("there is no command \"{}\"", options.command),
                              did_you_mean(options.command, names, "legwork help lists the commands")),
                  false, streams);
    return exit_not_understood;
}

} // namespace

extern Command const help_command{"help", "what a command does and what can be typed", "", options_of<kOptions>,
                                  run_with<kOptions, run>};

} // namespace legwork
