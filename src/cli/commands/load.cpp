// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork load JOB: the service or feeder load calculation, step by step.

#include "cli/command.h"
#include "cli/json/json.h"
#include "cli/session.h"
#include "cli/text/text.h"
#include "reckon/added_circuit.h"
#include "toml/near.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

namespace legwork {

namespace {

void add_options(CLI::App& app, Options& options) {
    add_job(app, options);
    app.add_option("--method", options.method,
                   "standard, optional, existing or measured; the one an electrician would take when not said")
        ->check(CLI::IsMember(load_method_names()));
    app.add_option("--panel", options.panel, "the panel whose load is asked for; the service's when not said");
    app.add_option("--add", options.add,
                   "can this be added: \"vehicle charger, 40 A, 2 poles, continuous\"; the file stays as it is");
    add_json(app, options);
    app.footer(
        "What it asks beside the circuits stands in the table [dwelling] of the job: area, basement, thermostats, "
        "peak. With --add the exit status is 1 too when the answer is no.");
}

// What was wrong with the call.
struct CallFault {
    std::string why, fix;
};

int refuse(std::string const& file, CallFault const& r, Options const& options, Streams& streams) {
    tell_problems(one_problem(file, r.why, r.fix), options.json, streams);
    return exit_not_understood;
}

Panel const* asked_panel(Building const& building, Options const& options) {
    return options.panel.empty() ? service_panel(building) : panel_named(building, options.panel);
}

CallFault no_panel(Building const& building, Options const& options) {
    if (options.panel.empty())
        return {"no panel of this job is on AC, and the code reckons the load of AC services and feeders",
                "a DC panel's load is what its situations add up to: legwork balance"};
    std::vector<std::string> names;
    for (Panel const& p : building.panels) names.push_back(p.name);
    return {fmt::format("there is no panel \"{}\"", options.panel),
            did_you_mean(options.panel, names, "name a panel of the job")};
}

int answer(Session const& s, Panel const& panel, std::optional<LoadMethod> method, Options const& options,
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

int run(Options const& options, Streams& streams) {
    auto const opened = open_job(options.file);
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

Command const load_command{"load", "the load of a service or feeder, step by step", add_options, run};

} // namespace legwork
