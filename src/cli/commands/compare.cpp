// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork compare OLD NEW: what differs between two job files.

#include "building/changes.h"
#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/json/json_values.h"
#include "cli/session.h"
#include "cli/text/words.h"
#include "units/utf8.h"

#include <fmt/format.h>

namespace legwork {

namespace {

struct CompareOptions {
    std::string before, now;
    bool json = false;
};

constexpr OptionRow<CompareOptions> kOptions[] = {
    {{.name = "OLD",
      .help = "the job file as it was; - reads standard input",
      .completes = job_files,
      .required = true},
     &CompareOptions::before},
    {{.name = "NEW",
      .help = "the job file as it is now; - reads standard input",
      .completes = job_files,
      .required = true},
     &CompareOptions::now},
    {json_row, &CompareOptions::json},
};

constexpr std::string_view kLookedAt = "panels, circuits and cables, and the job's name, code, revision and date";
constexpr std::string_view kNotLookedAt = "[dwelling], situations, sizes of boxes, how a panel hangs and its legs lie, "
                                          "what runs together, what was accepted, "
                                          "and the job's languages, units, tails and loops";

std::string shown(std::string const& value) { return value.empty() ? "(not said)" : value; }

std::string line_of(Change const& c) {
    auto const who = c.mark.empty() ? std::string(word(c.thing)) : fmt::format("{} {}", word(c.thing), c.mark);
    if (c.kind == ChangeKind::added || c.kind == ChangeKind::gone) return fmt::format("{} {}", who, word(c.kind));
    return fmt::format("{} {}: {} {} -> {}", who, word(c.kind), c.what, shown(c.before), shown(c.after));
}

void write_json(CompareOptions const& options, std::vector<Change> const& found, Streams& streams) {
    write({{"old", options.before},
           {"new", options.now},
           {"not_looked_at", kNotLookedAt},
           {"changes", list(found,
                            [](Change const& c) {
                                return Json{{"change", word(c.kind)},           {"thing", word(c.thing)},
                                            {"mark", text_or_null(c.mark)},     {"what", text_or_null(c.what)},
                                            {"before", text_or_null(c.before)}, {"after", text_or_null(c.after)}};
                            })}},
          streams);
}

void tell(std::vector<Change> const& found, Streams& streams) {
    for (Change const& c : found) streams.out << in_lines(fit_to_print(line_of(c)), streams.width, 2) << '\n';
    if (found.empty()) streams.out << "Nothing differs in what is looked at.\n";
    streams.out << in_lines(fmt::format("Looked at: {}. Not looked at: {}.", kLookedAt, kNotLookedAt), streams.width, 0)
                << '\n';
}

int run(CompareOptions const& options, Streams& streams) {
    if (options.before == "-" && options.now == "-") {
        tell_problems(one_problem("", "both jobs cannot come from standard input", "name a file for one of them"),
                      options.json, streams);
        return exit_not_understood;
    }
    auto const before = open_job(options.before);
    if (!before.session) return tell_problems(before.problems, options.json, streams), exit_not_understood;
    auto const now = open_job(options.now);
    if (!now.session) return tell_problems(now.problems, options.json, streams), exit_not_understood;
    auto const found = changes(before.session->building, now.session->building);
    if (options.json)
        write_json(options, found, streams);
    else
        tell(found, streams);
    return exit_done;
}

} // namespace

extern Command const compare_command{
    "compare", "what differs between two job files",
    "Circuits, panels and cables that were added, are gone, moved, were resized, renamed or re-cabled, with the value "
    "before and after. Values are compared, not text: order, spelling of quantities and comments are no difference. "
    "One "
    "that has another mark and else all its values is told as re-marked. The exit status is 0 whether something "
    "differs "
    "or not, also while an error finding stands.",
    options_of<kOptions>, run_with<kOptions, run>};

} // namespace legwork
