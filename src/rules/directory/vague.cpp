// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/lines.h"
#include "rules/directory/list.h"
#include "rules/directory/naming.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Finding say(Case const& c, Circuit const& circuit, NameSays says) {
    auto f = finding(c, dir_vague, Gravity::usual, about(circuit, "name"));
    auto const what = quoted(circuit);
    if (says.thing) {
        f.message = fmt::format("{} is called {}: it says what, but not where", circuit.mark, what);
        f.fix = fmt::format("Say the place too, in the name or as `room` (\"{}\" in room \"Loft\" is enough)",
                            circuit.name);
    } else if (says.place) {
        f.message = fmt::format("{} is called {}: it says where, but not what", circuit.mark, what);
        f.fix =
            fmt::format("Say what it feeds there (\"{}: receptacles\", \"{}: lights\")", circuit.name, circuit.name);
    } else {
        f.message = fmt::format("{} is called {}: it says neither what it feeds nor where", circuit.mark, what);
        f.fix = "Write what it feeds and where (\"Receptacles, north wall\" in room \"Loft\")";
    }
    return f;
}

// Called a spare, and something hangs on it.
Finding say_in_use(Case const& c, Circuit const& circuit) {
    auto f = finding(c, dir_vague, Gravity::usual, about(circuit, circuit.use ? "use" : "name"));
    f.message =
        fmt::format("{} is called a spare, but has a wire and a load: it was judged as {}", circuit.mark,
                    circuit.use ? std::string(circuit.use->name) : "a circuit of which nobody knows what it feeds");
    f.fix = "Write what it feeds and where; of a spare leave the load away";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (!has_name(circuit) || circuit.is_spare() || circuit.is(PanelPart::main)) continue;
        seen.looked();
        if (circuit.spare_in_use) {
            seen.found(say_in_use(c, circuit));
            continue;
        }
        auto told = says(circuit.name, circuit.room);
        told.thing = told.thing || circuit.fed_panel();
        if (!told.thing || !told.place) seen.found(say(c, circuit, told));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const dir_vague{
    .id = "dir-vague",
    .asks = "Name and room together say what a circuit feeds and where.",
    .why = "\"Lights\" or \"Bedroom\" tells a stranger half of it. The codes ask for enough detail to tell each "
           "circuit from all others.",
    .remedy = "Name the thing and the place: \"Lights\" in room \"Loft\", \"Receptacles, north wall\". What there is "
              "only one of (\"Dishwasher\") needs no place.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
