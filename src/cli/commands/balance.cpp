// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork balance JOB: spaces for all circuits, with the proof.

#include "balance/balance.h"
#include "balance/effort.h"

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/files/save_edits.h"
#include "cli/json/json.h"
#include "cli/session.h"
#include "cli/text/text.h"
#include "cli/text/words.h"
#include "rules/check.h"
#include "sheet/common.h"
#include "toml/problem.h"
#include "units/shell.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

struct BalanceOptions {
    std::string job;
    bool best = false, write = false, json = false;
    std::optional<int> moves;
    std::optional<double> seconds;
};

constexpr OptionRow<BalanceOptions> kOptions[] = {
    {job_row, &BalanceOptions::job},
    {{.name = "--best", .help = "the least imbalance there is, whatever moves it takes"}, &BalanceOptions::best},
    {{.name = "--moves",
      .value = "N",
      .help = "the best with at most N moves",
      .excludes = "--best",
      .least = 0,
      .most = 10000},
     &BalanceOptions::moves},
    {{.name = "--seconds",
      .value = "S",
      .help = "stop searching after S seconds",
      .more =
          "The panels share them. An answer that is not proven says so: it tells the best found and the bounds. With "
          "`--json` the key `least_imbalance_va` is then null, and `best_found_va` stands beside it.",
      .least = 0.001,
      .most = 86400},
     &BalanceOptions::seconds},
    {{.name = "--write",
      .help = "put the spaces into the job file; the old file stays as NAME.before.toml",
      .more = "Nothing else in it changes. An earlier old file stays as NAME.before-2.toml, and so on. A file that was "
              "changed meanwhile is left alone; see NOTES."},
     &BalanceOptions::write},
    {json_row, &BalanceOptions::json},
};

bool has_room(Plan const& plan) {
    return std::ranges::all_of(plan.panels, [](PanelPlan const& p) { return p.why.empty(); });
}

void tell(Session const& s, Plan const& plan, Rewrite const& saved, Streams& streams) {
    for (PanelPlan const& p : plan.panels) print_panel_plan(s.building, p, streams);
    if (!saved.before.empty())
        streams.out << fmt::format("wrote {} ({})\nthe old file is {}\n", fit_to_print(saved.file),
                                   counted(saved.changes, "space"), fit_to_print(saved.before));
    else if (saved.asked)
        streams.out << "Nothing to write: the file has these spaces already.\n";
    else if (has_room(plan) && !spaces_to_save(s.building, plan).empty())
        streams.out << "The file is unchanged; --write puts these spaces into it.\n";
}

// Judging the job searches too, before and after; of a hard stop it has a small part.
std::optional<double> to_judge(std::optional<double> seconds) {
    if (!seconds) return {};
    return std::min(0.25, *seconds / 4);
}

std::optional<double> left_until(std::optional<Effort::Clock::time_point> stop) {
    if (!stop) return {};
    return std::chrono::duration<double>(*stop - Effort::Clock::now()).count();
}

int run(BalanceOptions const& options, Streams& streams) {
    if (options.write && options.job == "-")
        return tell_problems(one_problem("", "--write cannot change standard input", "name the job file"), options.json,
                             streams),
               exit_not_understood;
    auto const stop = Effort::after(options.seconds);
    auto opened = open_job(options.job, to_judge(options.seconds));
    if (!opened.session) return tell_problems(opened.problems, options.json, streams), exit_not_understood;
    auto& s = *opened.session;
    auto const plan = balance(s.building, {options.best, options.moves, left_until(stop)});
    require_sound(s.building, plan, false);
    Rewrite saved;
    if (options.write && has_room(plan)) saved = save_spaces(s, plan);
    if (options.json)
        write_plan_json(s.building, plan, saved, streams);
    else
        tell(s, plan, saved, streams);
    // What stands in the file now: after --write, the file as written.
    auto const& judged = saved.now ? *saved.now : s;
    auto const status = error_exit(judged);
    if (!options.json) {
        streams.out << fmt::format(
            "{} ({}): {}{}.\n", shown_file(s.file), s.building.code, counts(judged.findings),
            status == exit_done ? "" : fmt::format("; legwork check {} lists them", shell_file(s.file)));
        streams.out << in_lines(english().words(caution()), streams.width, 0) << '\n';
    }
    return has_room(plan) ? status : exit_error_finding;
}

} // namespace

extern Command const balance_command{
    "balance", "spaces for all circuits, with the proof",
    "With the imbalance of the legs in each situation, what more or fewer moves would give, "
    "and whether the least imbalance "
    "is proven. Without options: the fewest moves that come within 120 VA or 2 % of the "
    "heavier leg of the least imbalance, "
    "whichever is more.",
    options_of<kOptions>, run_with<kOptions, run>};

} // namespace legwork
