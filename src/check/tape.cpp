// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The tape-* rules: conductors whose colour does not say their job. What each does and which tape it needs is worked
// out in cable/run.h; here one finding is made for each cable of a circuit or pair.
#include "cable/run.h"
#include "check/say.h"
#include "check/themes.h"
#include "codebook/cite.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
struct Remarked {
    CableRun const* run;
    Conductor const* wire;
};

// The first conductor to speak of in each circuit's or pair's cables; what is forbidden before what is taped. A cable
// that lacks a conductor is to be replaced, not taped.
template <class Wanted>
std::vector<Remarked> remarked(std::vector<CableRun> const& runs, Wanted wanted) {
    std::vector<Remarked> found;
    for (CableRun const& run : runs) {
        if (run.missing_hots + run.missing_neutrals > 0) continue;
        for (Conductor const& wire : run.conductors) {
            if (wire.remark == Remark::as_made || !wanted(wire)) continue;
            auto const same = std::ranges::find_if(found, [&](Remarked const& r) { return r.run->mark == run.mark; });
            if (same == found.end())
                found.push_back({&run, &wire});
            else if (wire.remark == Remark::forbidden && same->wire->remark != Remark::forbidden)
                *same = {&run, &wire};
        }
    }
    return found;
}

bool is_neutral(Conductor const& w) { return w.job == ConductorJob::neutral; }
bool is_ground_color(Conductor const& w) { return w.color.starts_with("green") || w.color == "bare"; }

std::string kind_of(CableRun const& run) {
    return run.segment == 0 ? run.kind : fmt::format("{} from {}", run.kind, run.from);
}

Finding told(Case const& c, std::string_view rule, Severity severity, Remarked const& r) {
    typed::Circuit const* first = circuit_of(c.job, r.run->circuits.front());
    Finding f = finding(c, rule, severity, {first ? first->panel : "", r.run->circuits, "cable"});
    if (first && !first->colors.empty()) f.where.key = "colors";
    f.reference = r.wire->reference;
    return f;
}

Severity gravity(Remark remark) {
    if (remark == Remark::forbidden) return Severity::error;
    return remark == Remark::ask_first ? Severity::warning : Severity::note;
}

std::string wrap(Conductor const& wire) {
    return fmt::format("Wrap {} tape all round the {} wire at both ends and wherever it can be reached and seen.",
                       wire.tape, wire.color);
}

// The cable from a light to its switch is often not in the file: the note is due all the same.
void add_loops(Case const& c, std::vector<CableRun> const& runs, Findings& found) {
    auto const& row = c.book.remarking.white_in_switch_loop;
    if (row.as == Remarking::not_asked) return;
    for (typed::Circuit const& circuit : c.job.circuits) {
        bool const listed = std::ranges::any_of(runs, [&](CableRun const& r) {
            return r.segment > 0 && r.mark == circuit.mark &&
                   std::ranges::find(r.conductors, ConductorJob::switched, &Conductor::job) != r.conductors.end();
        });
        if (!circuit.switch_loop || circuit.poles != 1 || listed) continue;
        Finding f = finding(c, "tape-white-as-hot", Severity::note, about(circuit, "switch_loop"), row.topic);
        f.message =
            fmt::format("{}: in a two-wire cable to its switch the white feeds the switch and is hot, the black "
                        "comes back switched.",
                        circuit.mark);
        f.fix =
            "Wrap red or black tape all round the white wire at the switch and at the light; never make the white the "
            "switched one.";
        found.push_back(std::move(f));
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

Findings tape_white_as_hot(Case const& c) {
    Findings notes;
    std::vector<std::string> cables;
    auto const runs = cable_runs(c.job, c.book);
    for (auto const& r : remarked(runs, [](Conductor const& w) { return !is_neutral(w) && !is_ground_color(w); })) {
        Finding f = told(c, "tape-white-as-hot", gravity(r.wire->remark), r);
        f.message = fmt::format("the {} wire is hot. {}", r.wire->color, r.wire->why);
        f.fix = r.wire->remark == Remark::forbidden
                    ? "Pull a black, red or blue wire in its place, and say colors = [\"black\", \"red\"]."
                    : wrap(*r.wire);
        notes.push_back(std::move(f));
        cables.push_back(fmt::format("{} ({})", r.run->mark, kind_of(*r.run)));
    }
    auto found = together(std::move(notes), std::move(cables));
    add_loops(c, runs, found);
    return found;
}

std::string neutral_fix(Remarked const& r) {
    Conductor const& wire = *r.wire;
    bool const white = std::ranges::any_of(r.run->conductors, [](Conductor const& w) {
        return w.color.starts_with("white") || w.color.starts_with("grey");
    });
    if (wire.remark == Remark::forbidden)
        return white ? "Make the white wire the neutral."
                     : fmt::format("Pull {} with a white wire in it.", r.run->kind);
    if (wire.remark == Remark::tape) return wrap(wire);
    return "Ask the inspector before it is pulled, and get it in writing; safest is a cable with a white wire. If it "
           "may "
           "be taped: white tape all round, at both ends and in every box.";
}

Findings tape_as_neutral(Case const& c) {
    Findings found;
    auto const runs = cable_runs(c.job, c.book);
    for (auto const& r : remarked(runs, [](Conductor const& w) { return is_neutral(w) && !is_ground_color(w); })) {
        Finding f = told(c, "tape-as-neutral", gravity(r.wire->remark), r);
        f.message = fmt::format("{}: in its {} the {} wire would be the neutral. {}", r.run->mark, kind_of(*r.run),
                                r.wire->color, r.wire->why);
        f.fix = neutral_fix(r);
        found.push_back(std::move(f));
    }
    return found;
}

Findings tape_green(Case const& c) {
    Findings found;
    auto const runs = cable_runs(c.job, c.book);
    for (auto const& r : remarked(runs, is_ground_color)) {
        Finding f = told(c, "tape-green", Severity::error, r);
        f.message = fmt::format("{}: in its {} the {} wire would be {}. {}", r.run->mark, kind_of(*r.run),
                                r.wire->color, is_neutral(*r.wire) ? "the neutral" : "hot", r.wire->why);
        f.fix = "Pull a cable with enough black, red and white wires; leave the green to the ground.";
        found.push_back(std::move(f));
    }
    return found;
}

// id, what it asks, why, the usual remedy, the function. `explain` reads these aloud.
constexpr Rule kRules[] = {
    {"tape-white-as-hot", "A white or grey wire that is hot is marked in another colour wherever it can be reached.",
     "White means neutral. Whoever opens the box in ten years takes a bare white for one and touches 120 V. In a cable "
     "the white may be re-marked, at every end and in every box; in conduit each wire is chosen, so white is never "
     "hot.",
     "Wrap tape of a hot colour (red, black or blue, never white, grey or green) all round the white wire.",
     tape_white_as_hot},
    {"tape-as-neutral", "The neutral is white or grey as it is made.",
     "A red or black wire with a bit of white tape looks hot again as soon as the tape is gone. The NEC forbids it for "
     "6 AWG and smaller; of the CE Code, in a cable, readings differ, and many inspectors refuse it.",
     "Use a cable with a white wire. Red and black cable is made for 240 V loads that need no neutral.",
     tape_as_neutral},
    {"tape-green", "A green or bare wire is the ground and never anything else.",
     "People touch green and bare wires, and the metal they are bonded to. Current in them makes frames, boxes and "
     "covers live.",
     "Pull a cable with enough insulated wires. No tape makes a green wire hot or neutral.", tape_green},
};
} // namespace

std::span<Rule const> tape_rules() { return kRules; }

} // namespace legwork
