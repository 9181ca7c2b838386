// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/program.h"

#include "cli/problems.h"
#include "toml/near.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr auto kAbout =
    "Spreads the circuits of a small building over the two legs of its panel, checks them against the\n"
    "electrical code, and prints wire labels, tape notes and the panel directory.";

// How the call can be told apart from its result before it was understood.
bool wants_json(std::vector<std::string> const& words) { return std::ranges::count(words, "--json") > 0; }

int refuse_call(bool json, std::string message, std::string fix, Streams& streams) {
    tell_problems(one_problem("", std::move(message), std::move(fix)), json, streams);
    return exit_not_understood;
}

std::optional<int> unknown_command(std::vector<std::string> const& words, Streams& streams) {
    if (words.empty() || words.front().starts_with("-")) return std::nullopt;
    std::vector<std::string> names;
    for (Command const* c : commands()) names.emplace_back(c->name);
    if (std::ranges::count(names, words.front()) > 0) return std::nullopt;
    return refuse_call(wants_json(words), fmt::format("there is no command \"{}\"", words.front()),
                       did_you_mean(words.front(), names, "legwork --help lists the commands"), streams);
}

// The parser's own words, without its line about --help: the fix says that.
std::string first_line(std::string const& text) { return text.substr(0, text.find('\n')); }

int run_command(Command const& command, Options const& options, Streams& streams) {
    try {
        return command.run(options, streams);
    } catch (std::bad_alloc const&) {
        tell_failure("there is not enough memory", options.json, streams);
    } catch (std::exception const& e) {
        tell_failure(e.what(), options.json, streams);
    }
    return exit_not_written;
}

int parse_and_run(std::vector<std::string> words, Streams& streams) {
    CLI::App app(kAbout, "legwork");
    app.set_version_flag("--version", "legwork " LEGWORK_VERSION, "the version, and nothing else");
    app.set_help_flag("-h,--help", "this text");
    app.require_subcommand(1);
    app.footer("Exit status: 0 done; 1 done, but an error finding stands; 2 the job or the call could not be\n"
               "understood; 3 a file could not be written. legwork COMMAND --help tells more.");
    Options options;
    std::vector<std::pair<CLI::App*, Command const*>> parsers;
    for (Command const* c : commands()) {
        auto* const parser = app.add_subcommand(std::string(c->name), std::string(c->summary));
        c->add_options(*parser, options);
        parsers.emplace_back(parser, c);
    }
    bool const json = wants_json(words);
    std::ranges::reverse(words); // as CLI11 takes a vector
    try {
        app.parse(words);
    } catch (CLI::Success const& e) { // --help, --version
        return app.exit(e, streams.out, streams.err), exit_done;
    } catch (CLI::ParseError const& e) {
        return refuse_call(json, first_line(e.what()),
                           "legwork --help, or legwork COMMAND --help, says what can be typed", streams);
    }
    auto const chosen = std::ranges::find_if(parsers, [](auto const& p) { return p.first->parsed(); });
    return run_command(*chosen->second, options, streams);
}

} // namespace

int run_program(std::vector<std::string> words, Streams& streams) {
    try {
        if (auto const refused = unknown_command(words, streams)) return *refused;
        return parse_and_run(std::move(words), streams);
    } catch (std::exception const& e) {
        streams.err << "legwork: " << e.what() << '\n';
        return exit_not_written;
    }
}

} // namespace legwork
