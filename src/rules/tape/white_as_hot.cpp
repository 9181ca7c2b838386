// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/tape/list.h"
#include "rules/tape/remarked.h"
#include "words/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto in_conduit = Gravity::second; // where each wire is chosen

// The cable from a light to its switch is often not in the file: the note is due all the same.
void judge_loops(Case const& c, std::vector<CableRun> const& runs, Inspection& seen) {
    auto const& row = c.book.remarking.white_in_switch_loop;
    if (row.as == Remarking::not_asked) return;
    for (Circuit const& circuit : c.building.circuits) {
        bool const listed = std::ranges::any_of(runs, [&](CableRun const& r) {
            return r.segment > 0 && r.mark == circuit.mark &&
                   std::ranges::find(r.conductors, ConductorJob::switched, &Conductor::job) != r.conductors.end();
        });
        if (!circuit.switch_loop || circuit.poles != 1 || listed) continue;
        Finding f = finding(c, tape_white_as_hot, Gravity::usual, about(circuit, "switch_loop"), row.topic);
        f.message =
            fmt::format("{}: in a two-wire cable to its switch the white feeds the switch and is hot, the black "
                        "comes back switched.",
                        circuit.mark);
        f.fix =
            "Wrap red or black tape all round the white wire at the switch and at the light; never make the white the "
            "switched one.";
        seen.looked();
        seen.found(std::move(f));
    }
}

// Cables of one panel whose white is hot for the same reason are one note, with all their circuits.
Findings together(Findings notes, std::vector<std::string> cables) {
    Findings merged;
    std::vector<std::vector<std::string>> named;
    for (std::size_t i = 0; i < notes.size(); ++i) {
        auto const same = std::ranges::find_if(merged, [&](Finding const& f) {
            return f.severity == Severity::note && notes[i].severity == Severity::note && f.fix == notes[i].fix &&
                   f.message == notes[i].message && f.where.panel == notes[i].where.panel;
        });
        if (same == merged.end()) {
            merged.push_back(notes[i]);
            named.push_back({cables[i]});
            continue;
        }
        auto& circuits = same->where.circuits;
        circuits.insert(circuits.end(), notes[i].where.circuits.begin(), notes[i].where.circuits.end());
        named[static_cast<std::size_t>(same - merged.begin())].push_back(cables[i]);
    }
    for (std::size_t i = 0; i < merged.size(); ++i)
        merged[i].message = fmt::format("{}: {}", listed(named[i]), merged[i].message);
    return merged;
}

bool is_hot(Conductor const& w) { return !is_neutral(w) && !is_ground_color(w); }

Verdict judge(Case const& c) {
    Inspection seen;
    auto const runs = cable_runs(c.building, c.book);
    seen.looked(pieces_with(runs, is_any));
    Findings notes;
    std::vector<std::string> cables;
    for (auto const& r : remarked(runs, is_hot)) {
        bool const never = r.wire->remark == Remark::forbidden;
        Finding f = about_wire(c, tape_white_as_hot, never ? in_conduit : Gravity::usual, r);
        f.message = fmt::format("the {} wire is hot. {}", r.wire->color, english().words(r.wire->why));
        f.fix = never ? "Pull a black, red or blue wire in its place, and say colors = [\"black\", \"red\"]."
                      : wrap(*r.wire);
        notes.push_back(std::move(f));
        cables.push_back(fmt::format("{} ({})", r.run->mark, kind_of(*r.run)));
    }
    seen.found(together(std::move(notes), std::move(cables)));
    judge_loops(c, runs, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const tape_white_as_hot{
    .id = "tape-white-as-hot",
    .asks = "A white or grey wire that is hot is marked in another colour wherever it can be reached.",
    .why = "White means neutral. Whoever opens the box in ten years takes a bare white for one and touches 120 V. In a "
           "cable the white may be re-marked, at every end and in every box; in conduit each wire is chosen, so white "
           "is never hot.",
    .remedy = "Wrap tape of a hot colour (red, black or blue, never white, grey or green) all round the white wire.",
    .gravity = {.nec = {Grade::note, Grade::error}, .ce = {Grade::note, Grade::error}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
