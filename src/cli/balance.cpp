// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork balance JOB: spaces for all circuits, with the proof.

#include "balance/balance.h"
#include "balance/effort.h"

#include "cli/command.h"
#include "cli/json.h"
#include "cli/save_edits.h"
#include "cli/session.h"
#include "cli/text.h"
#include "cli/words.h"
#include "rules/check.h"
#include "sheet/common.h"
#include "toml/problem.h"
#include "units/shell.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) {
    add_job(app, options);
    auto* const best = app.add_flag("--best", options.best, "the least imbalance there is, whatever moves it takes");
    auto* const moves =
        app.add_option("--moves", options.moves, "the best with at most so many moves")->check(CLI::Range(0, 10000));
    app.add_option("--seconds", options.seconds, "stop searching after so many seconds")
        ->check(CLI::Range(0.001, 86400.0))
        ->check([](std::string const& said) { // no comparison refuses it
            return std::isnan(std::strtod(said.c_str(), nullptr)) ? said + " is no number of seconds" : std::string();
        });
    app.add_flag("--write", options.write, "put the spaces into the job file; the old file stays as NAME.before.toml");
    moves->excludes(best);
    add_json(app, options);
}

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

int run(Options const& options, Streams& streams) {
    if (options.write && options.file == "-")
        return tell_problems(one_problem("", "--write cannot change standard input", "name the job file"), options.json,
                             streams),
               exit_not_understood;
    auto const stop = Effort::after(options.seconds);
    auto opened = open_job(options.file, to_judge(options.seconds));
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
        streams.out << in_lines(english().words(caution()), 100, 0) << '\n';
    }
    return has_room(plan) ? status : exit_error_finding;
}

} // namespace

Command const balance_command{"balance", "spaces for all circuits, with the proof", add_options, run};

} // namespace legwork
