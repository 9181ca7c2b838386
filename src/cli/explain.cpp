// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork explain RULE: what a rule asks, why, its usual remedy.

#include "check/check.h"
#include "cli/command.h"
#include "cli/json.h"
#include "cli/words.h"
#include "job/near.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) {
    app.add_option("RULE", options.file, "a rule's id, as check prints it in [ ]; every rule when not said");
    add_json(app, options);
}

int unknown(Options const& options, Streams& streams) {
    std::vector<std::string> ids;
    for (Rule const& r : rules()) ids.emplace_back(r.id);
    tell_problems(
        one_problem("", fmt::format("there is no rule \"{}\"", options.file),
                    did_you_mean(options.file, ids, "legwork explain, with nothing after it, lists the rules")),
        options.json, streams);
    return exit_not_understood;
}

void tell(Rule const& r, Streams& streams) {
    constexpr std::size_t width = 100, indent = 10;
    auto const line = [&](std::string_view head, std::string_view text) {
        if (!text.empty())
            streams.out << fmt::format("{:<{}}", head, indent) << in_lines(text, width, indent, indent) << '\n';
    };
    streams.out << r.id << "\n\n";
    line("  asks", r.asks);
    line("  why", r.why);
    line("  remedy", r.remedy);
}

int run(Options const& options, Streams& streams) {
    if (options.file.empty()) {
        if (options.json) return write_rules_json(rules(), streams), exit_done;
        for (Rule const& r : rules()) streams.out << fmt::format("{:<24}{}\n", r.id, in_lines(r.asks, 100, 24, 24));
        return exit_done;
    }
    auto const* rule = rule_named(options.file);
    if (!rule) return unknown(options, streams);
    if (options.json)
        write_rule_json(*rule, streams);
    else
        tell(*rule, streams);
    return exit_done;
}

} // namespace

Command const explain_command{"explain", "what a rule asks, why, its usual remedy", add_options, run};

} // namespace legwork
