// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/program.h"

#include "cli/call/complete.h"
#include "cli/call/help.h"
#include "cli/call/parser.h"
#include "cli/problems.h"

#include <algorithm>

namespace legwork {

namespace {

// How the call can be told apart from its result before it was understood.
bool wants_json(std::vector<std::string> const& words) { return std::ranges::count(words, "--json") > 0; }

int run_command(Understood const& call, bool json, Streams& streams) {
    try {
        return call.command->run(call.given, streams);
    } catch (std::bad_alloc const&) {
        tell_failure("there is not enough memory", json, streams);
    } catch (std::exception const& e) {
        tell_failure(e.what(), json, streams);
    }
    return exit_not_written;
}

int parse_and_run(std::vector<std::string> const& words, Streams& streams) {
    auto const call = understand(words);
    if (!call.why.empty())
        return tell_problems(one_problem("", call.why, call.fix), wants_json(words), streams), exit_not_understood;
    if (call.version)
        streams.out << "legwork " LEGWORK_VERSION "\n";
    else if (call.help)
        streams.out << (call.command ? command_help(*call.command, streams.width) : program_help(streams.width));
    else
        return run_command(call, wants_json(words), streams);
    return exit_done;
}

} // namespace

int run_program(std::vector<std::string> words, Streams& streams) {
    try {
        if (!words.empty() && words.front() == kCompleteCommand)
            return complete({words.begin() + 1, words.end()}, streams);
        return parse_and_run(words, streams);
    } catch (std::exception const& e) {
        streams.err << "legwork: " << e.what() << '\n';
        return exit_not_written;
    }
}

} // namespace legwork
