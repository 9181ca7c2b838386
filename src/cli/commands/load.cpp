// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork load JOB: the service or feeder load calculation, step by step.

#include "cli/call/rows.h"
#include "cli/call/shared_rows.h"
#include "cli/json/json.h"
#include "cli/session.h"
#include "cli/text/text.h"
#include "reckon/added_circuit.h"
#include "toml/near.h"

#include <fmt/format.h>

namespace legwork {

namespace {

struct LoadOptions {
    std::string job, method, panel, add;
    bool json = false;
};

constexpr OptionRow<LoadOptions> kOptions[] = {
    {job_row, &LoadOptions::job},
    {{.name = "--method",
      .help = "how it is reckoned",
      .unsaid = "the way an electrician would take, with the reason,",
      .more = "A method that is not for this building, or that the code does not have, is refused with exit status 2.",
      .one_of = load_method_names},
     &LoadOptions::method},
    {{.name = "--panel",
      .value = "NAME",
      .help = "the panel whose load is asked for, with all panels below it",
      .unsaid = "the first that no other panel feeds",
      .completes = panels_of_job},
     &LoadOptions::panel},
    {{.name = "--add",
      .value = "CIRCUIT",
      .help = "can this be added: \"vehicle charger, 40 A, 2 poles, continuous\"; the file stays as it is",
      .more =
          "What it is, then in any order its breaker or its load, its poles and whether it is continuous, with commas "
          "between. The answer is given for the panel and for every panel above it, with the step that decides. The "
          "exit status is 1 when the answer is no."},
     &LoadOptions::add},
    {json_row, &LoadOptions::json},
};

// What was wrong with the call.
struct CallFault {
    std::string why, fix;
};

int refuse(std::string const& file, CallFault const& r, LoadOptions const& options, Streams& streams) {
    tell_problems(one_problem(file, r.why, r.fix), options.json, streams);
    return exit_not_understood;
}

Panel const* asked_panel(Building const& building, LoadOptions const& options) {
    return options.panel.empty() ? service_panel(building) : panel_named(building, options.panel);
}

CallFault no_panel(Building const& building, LoadOptions const& options) {
    if (options.panel.empty())
        return {"no panel of this job is on AC, and the code reckons the load of AC services and feeders",
                "a DC panel's load is what its situations add up to: legwork balance"};
    std::vector<std::string> names;
    for (Panel const& p : building.panels) names.push_back(p.name);
    return {fmt::format("there is no panel \"{}\"", options.panel),
            did_you_mean(options.panel, names, "name a panel of the job")};
}

int answer(Session const& s, Panel const& panel, std::optional<LoadMethod> method, LoadOptions const& options,
           Streams& streams) {
    auto const told = added_circuit(options.add, s.building, *s.book, panel);
    if (!told.circuit) return refuse("", {fmt::format("--add: {}", told.why), told.fix}, options, streams);
    auto const more = with_more(s.building, s.plan, *s.book, *told.circuit, method);
    auto const& own = more.panels.front().after;
    if (method && !own.load) return refuse(s.file, {own.why, own.fix}, options, streams);
    if (options.json)
        write_more_json(s.building, told, more, streams);
    else
        tell_more(s, told, more, streams);
    return more.fits == false ? exit_error_finding : error_exit(s);
}

int run(LoadOptions const& options, Streams& streams) {
    auto const opened = open_job(options.job);
    if (!opened.session) return tell_problems(opened.problems, options.json, streams), exit_not_understood;
    auto const& s = *opened.session;
    Panel const* panel = asked_panel(s.building, options);
    if (!panel) return refuse(s.file, no_panel(s.building, options), options, streams);
    auto const method = options.method.empty() ? std::nullopt : load_method(options.method);
    if (!options.add.empty()) return answer(s, *panel, method, options, streams);
    auto const load = panel_load(s.building, s.plan, *s.book, *panel, method);
    if (!load.load) return refuse(s.file, {load.why, load.fix}, options, streams);
    if (options.json)
        write_load_json(s.building, load, streams);
    else
        tell_load(s, load, streams);
    return error_exit(s);
}

} // namespace

extern Command const load_command{
    "load",
    "the load of a service or feeder, step by step",
    "Every step with its rule and its arithmetic, then the total, amperes, neutral, the smallest standard service and "
    "its "
    "wire, what is left on the present one, and the largest circuit that still fits. What it asks beside the circuits "
    "stands "
    "in the table [dwelling] of the job. Something missing is named, and the total is then told as \"at least\".",
    options_of<kOptions>,
    run_with<kOptions, run>,
    "What it asks beside the circuits stands in the table [dwelling] of the job: area, basement, thermostats, peak. "
    "With "
    "--add the exit status is 1 too when the answer is no."};

} // namespace legwork
