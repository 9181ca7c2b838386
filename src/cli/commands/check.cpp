// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork check JOB: every finding, worst first.

#include "rules/check.h"

#include "cli/command.h"
#include "cli/json/json.h"
#include "cli/session.h"
#include "cli/text/measure_list.h"
#include "cli/text/text.h"
#include "cli/vocabulary.h"
#include "toml/near.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) {
    add_job(app, options);
    auto* const measure = app.add_flag("--measure", options.measure,
                                       "instead of the findings: what to go and measure, as a list to take along");
    auto* const by = app.add_option("--by", options.by,
                                    "group by circuit (one cable a heading) or by theme; worst first when not said")
                         ->check(CLI::IsMember({"circuit", "theme"}));
    auto* const rule =
        app.add_option("--rule", options.rules, "only findings of this rule (repeatable)")->allow_extra_args(false);
    auto* const least =
        app.add_option("--min", options.least, "only findings as grave as error, warning or note, or graver")
            ->check(CLI::IsMember({"error", "warning", "note"}));
    auto* const verdicts =
        app.add_flag("--verdicts", options.verdicts,
                     "instead of the findings: what each rule came to, how many it looked at, how near it was");
    auto* const propose = app.add_flag("--propose", options.propose,
                                       "instead of the findings: breakers and cables for circuits that lack them");
    app.add_flag("--write", options.write,
                 "with --propose: put them into the job file; the old file stays as NAME.before.toml")
        ->needs(propose);
    measure->excludes(by)->excludes(rule)->excludes(least);
    verdicts->excludes(by)->excludes(least)->excludes(measure);
    propose->excludes(measure)->excludes(verdicts)->excludes(by)->excludes(rule)->excludes(least);
    add_json(app, options);
    app.footer("The counts and the exit status are always of the whole job: 1 while an error finding stands, shown or "
               "not.");
}

// What was wrong with a rule's id; nothing when it is one that is checked.
std::optional<FileProblems> refused_rule(std::string const& id) {
    Rule const* rule = rule_named(id);
    if (!rule)
        return one_problem("", fmt::format("there is no rule \"{}\"", id),
                           did_you_mean(id, rule_names(), "legwork explain, with nothing after it, lists the rules"));
    if (!rule->is_checked())
        return one_problem("", fmt::format("{} is not checked yet, so no findings of it say nothing", id),
                           fmt::format("legwork explain {} says what it will ask", id));
    return std::nullopt;
}

FindingFilter shown(Options const& options) {
    FindingFilter s;
    if (options.by == "circuit") s.by = FindingFilter::By::circuit;
    if (options.by == "theme") s.by = FindingFilter::By::theme;
    s.rules = options.rules;
    for (auto const severity : {Severity::error, Severity::warning, Severity::note})
        if (options.least == name(severity)) s.least = severity;
    return s;
}

int propose(Session const& s, Options const& options, Streams& streams) {
    auto const proposed = proposals(s.building, s.plan, *s.book);
    Rewrite saved;
    if (options.write) saved = save_sizes(s, proposed);
    if (options.json)
        write_proposals_json(s.building, proposed, saved, streams);
    else
        list_proposals(s, proposed, saved, streams);
    return error_exit(saved.now ? *saved.now : s); // of what stands in the file now
}

int run(Options const& options, Streams& streams) {
    if (options.write && options.file == "-")
        return tell_problems(one_problem("", "--write cannot change standard input", "name the job file"), options.json,
                             streams),
               exit_not_understood;
    for (auto const& id : options.rules)
        if (auto const problem = refused_rule(id))
            return tell_problems(*problem, options.json, streams), exit_not_understood;
    auto const opened = open_job(options.file);
    if (!opened.session) return tell_problems(opened.problems, options.json, streams), exit_not_understood;
    if (options.propose) return propose(*opened.session, options, streams);
    if (options.measure)
        options.json ? write_measure_json(*opened.session, streams) : list_to_measure(*opened.session, streams);
    else if (options.verdicts && !options.json)
        list_verdicts(*opened.session, shown(options), streams);
    else if (options.json)
        write_findings_json(*opened.session, shown(options), streams);
    else
        list_findings(*opened.session, shown(options), streams);
    return error_exit(*opened.session);
}

} // namespace

Command const check_command{"check", "every finding, worst first", add_options, run};

} // namespace legwork
