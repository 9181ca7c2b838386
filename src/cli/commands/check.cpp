// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork check JOB: every finding, worst first.

#include "rules/check.h"

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/json/json.h"
#include "cli/session.h"
#include "cli/text/measure_list.h"
#include "cli/text/text.h"
#include "cli/vocabulary.h"
#include "toml/near.h"

#include <fmt/format.h>

namespace legwork {

namespace {

struct CheckOptions {
    std::string job, by, least;
    std::vector<std::string> rules;
    bool only_new = false, measure = false, verdicts = false, propose = false, write = false, json = false;
};

constexpr OptionRow<CheckOptions> kOptions[] = {
    {job_row, &CheckOptions::job},
    {{.name = "--by",
      .help = "group by circuit (one cable a heading, a multiwire pair is one cable) or by theme",
      .unsaid = "worst first",
      .excludes = "--measure --verdicts --propose",
      .one_of =
          [] {
              return Words{"circuit", "theme"};
          }},
     &CheckOptions::by},
    {{.name = "--rule",
      .value = "RULE",
      .help = "only findings of this rule",
      .more = "The JSON then has a key `filter` that says so.",
      .excludes = "--measure --propose",
      .completes = checked_rules_by_name},
     &CheckOptions::rules},
    {{.name = "--min",
      .help = "only findings as grave as that, or graver",
      .more = "The JSON then has a key `filter` that says so.",
      .excludes = "--measure --verdicts --propose",
      .one_of =
          [] {
              return Words{"error", "warning", "note"};
          }},
     &CheckOptions::least},
    {{.name = "--new",
      .help = "only what concerns circuits without existing = true",
      .more = "What names no circuit (the service, the legs, the job) concerns them too. The JSON then has a key "
              "`filter` that says so.",
      .excludes = "--measure --verdicts --propose"},
     &CheckOptions::only_new},
    {{.name = "--verdicts",
      .help = "instead of the findings: what each rule came to, how many it looked at, how near it was",
      .more = "A rule `fired` (there are findings), it `passed` (it looked at so many circuits, pairs or panels and "
              "found no fault; where it compares figures, the nearest to its limit), it had `nothing` to look at (the "
              "job has none of what it judges, or not the figures), or it is `unread` (what this edition of the code "
              "asks was not read). The JSON has them under the key `verdicts` always.",
      .excludes = "--measure --propose"},
     &CheckOptions::verdicts},
    {{.name = "--measure",
      .help = "instead of the findings: what to go and measure, as a list to take along",
      .more = "Every figure that is \"?\" or missing, by panel and by where one stands, with the tool, what has to be "
              "open, what it decides, and a blank to fill in."},
     &CheckOptions::measure},
    {{.name = "--propose",
      .help = "instead of the findings: breakers and cables for circuits that lack them",
      .more = "For each the smallest that the rules let pass, with the reckoning line by line, or what has to be found "
              "out first. The feeder of a dwelling, or of a part of one, goes by its load calculation where that is "
              "complete. Nothing is proposed of circuits that are there already, of sources and of direct current.",
      .excludes = "--measure"},
     &CheckOptions::propose},
    {{.name = "--write",
      .help = "put them into the job file; the old file stays as NAME.before.toml",
      .more = "In place, as `balance --write` does with spaces.",
      .needs = "--propose"},
     &CheckOptions::write},
    {json_row, &CheckOptions::json},
};

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

FindingFilter shown(CheckOptions const& options) {
    FindingFilter s;
    if (options.by == "circuit") s.by = FindingFilter::By::circuit;
    if (options.by == "theme") s.by = FindingFilter::By::theme;
    s.rules = options.rules;
    s.only_new = options.only_new;
    for (auto const severity : {Severity::error, Severity::warning, Severity::note})
        if (options.least == name(severity)) s.least = severity;
    return s;
}

int propose(Session const& s, CheckOptions const& options, Streams& streams) {
    auto const proposed = proposals(s.building, s.plan, *s.book);
    Rewrite saved;
    if (options.write) saved = save_sizes(s, proposed);
    if (options.json)
        write_proposals_json(s.building, proposed, saved, streams);
    else
        list_proposals(s, proposed, saved, streams);
    return error_exit(saved.now ? *saved.now : s); // of what stands in the file now
}

int run(CheckOptions const& options, Streams& streams) {
    if (options.write && options.job == "-")
        return tell_problems(one_problem("", "--write cannot change standard input", "name the job file"), options.json,
                             streams),
               exit_not_understood;
    for (auto const& id : options.rules)
        if (auto const problem = refused_rule(id))
            return tell_problems(*problem, options.json, streams), exit_not_understood;
    auto const opened = open_job(options.job);
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

extern Command const check_command{
    "check",
    "every finding, worst first",
    "Each with where it is in the file, what is wrong, what to do, and the section of the code. The panel is judged as "
    "the "
    "file has it: circuits with a space stay there, those without are placed as well as can be with nobody moved. "
    "Names "
    "are judged on the default form of the directory. What the job accepts (its [[accept]] tables) comes last, with "
    "who "
    "and why. Where circuits are added to a panel that was there before, errors come first, then the new circuits, and "
    "what this job leaves alone (existing = true) has a line a panel and kind; --by circuit tells each in full. What "
    "reads the same of several circuits is told once. The counts at the end, in JSON too, and the exit status are "
    "always of the whole job.",
    options_of<kOptions>,
    run_with<kOptions, run>,
    "The counts and the exit status are always of the whole job: 1 while an error finding stands, shown or not."};

} // namespace legwork
