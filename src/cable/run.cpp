// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/run.h"

#include "cable/conductors.h"
#include "codebook/stock/strips.h"
#include "words/colour.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
bool may_use_neutral(Circuit const& c) { return !c.lists_outlets && c.use && c.use->may_use_neutral_at_240; }

// What a cable of these circuits has to carry: a pair shares its home run only.
CableTask task_of(Circuit const& c, Circuit const* p) {
    CableTask task;
    task.hots.push_back({c.mark, c.hot});
    if (p)
        task.hots.push_back({p->mark, p->hot});
    else if (c.poles == 2)
        task.hots.push_back({c.mark, {}});
    task.neutral = p || needs_neutral(c);
    task.white_is_neutral = may_use_neutral(c);
    task.neutral_circuit = p ? "" : c.mark;
    // The extra conductor belongs to the cable: either circuit of a pair may say what it does.
    Circuit const& says_third = c.third == ThirdWire::unsaid && p ? *p : c;
    task.third = says_third.third;
    task.third_circuit = says_third.mark;
    return task;
}

// The circuit says that it has a switch loop, and this last piece ends at a switch.
bool is_loop(Run const& run) {
    Circuit const& c = *run.carries.front();
    auto const i = static_cast<std::size_t>(run.segment);
    if (!c.switch_loop || c.poles != 1 || i == 0 || i + 1 != c.run.size()) return false;
    return run.to_switch;
}

std::string hot_of(CableRun const& run, std::string_view circuit) {
    auto const at = std::ranges::find_if(
        run.conductors, [&](Conductor const& c) { return c.job == ConductorJob::hot && c.circuit == circuit; });
    return at == run.conductors.end() ? std::string() : at->color;
}

std::vector<Conductor> unused(std::vector<WireColor> const& colors) {
    std::vector<Conductor> found;
    for (WireColor const& color : colors) found.push_back(conductor(color, ConductorJob::spare));
    return found;
}

Phrase change(std::string const& before, std::string const& now, Circuit const& c) {
    if (before.empty() || now.empty() || before == now) return {};
    return say("wire/change", c.mark, colour(before), colour(now));
}

CableRun ends_of(Run const& run) {
    CableRun cable;
    cable.of = &run;
    cable.mark = run.mark;
    if (run.of_circuit)
        for (Circuit const* c : run.carries) cable.circuits.push_back(c->mark);
    cable.segment = run.segment;
    cable.kind = run.piece.called;
    cable.length = run.piece.length;
    cable.from = run.from.called;
    cable.to = run.to.called;
    cable.from_panel = run.is_home_run();
    cable.to_panel = run.is_feeder();
    return cable;
}

void wire(CableRun& cable, Run const& run, CodeBook const& book) {
    CableKind const* kind = run.piece.kind;
    if (!kind || !kind->gauge) return;
    Circuit const& c = *run.carries.front();
    Circuit const* p = run.carries.size() > 1 ? run.carries.back() : nullptr;
    // `colors` speaks of the home run, and either circuit of a pair may say them.
    auto const& said = !run.is_home_run() ? std::vector<WireColor>{} : c.colors.empty() && p ? p->colors : c.colors;
    auto const& colors = said.empty() ? kind->colors : said;
    if (!kind->power && !c.on_dc()) {
        cable.conductors = unused(colors); // no AC power cable: nothing in it may carry the circuit
        return;
    }
    CableTask task = task_of(c, p);
    if (!run.is_home_run()) task.hots.front().color.reset(); // `hot` speaks of the home run
    if (is_loop(run)) task.wires = Wires::switch_loop;
    if (c.on_dc()) task.wires = Wires::dc;
    task.wiring = c.wiring;
    task.gauge = *kind->gauge;
    task.ground = kind->ground;
    task.power = kind->power;
    if (c.on_dc()) task.channels = channels_of(*kind);
    auto found = conductors_of(colors, task, book);
    cable.conductors = std::move(found.conductors);
    cable.missing_hots = found.missing_hots;
    cable.missing_neutrals = found.missing_neutrals;
}

// Of a [[cable]]: what it does for the circuits that it may carry is not worked out.
void lay_unused(CableRun& cable, CableKind const* kind) {
    if (!kind) return;
    cable.conductors = unused(kind->colors);
    if (kind->ground) cable.conductors.push_back(conductor(wire_color("bare"), ConductorJob::ground));
}
} // namespace

std::vector<std::string> channels_of(CableKind const& kind) {
    if (!is_strip_cable(kind) || kind.insulated < 3) return {};
    std::vector<std::string> all;
    for (WireColor const& color : kind.colors)
        all.push_back(color.is == Insulation::black ? std::string(kPlusChannel) : color.name);
    return all;
}

std::vector<CableRun> cable_runs(Building const& building, CodeBook const& book) {
    std::vector<CableRun> cables;
    std::size_t home = 0; // of the circuits whose pieces follow
    for (Run const& run : building.runs) {
        CableRun cable = ends_of(run);
        if (!run.of_circuit) {
            lay_unused(cable, run.piece.kind);
        } else {
            wire(cable, run, book);
            if (run.is_home_run()) home = cables.size();
            Circuit const& c = *run.carries.front();
            // The first piece of its own begins where the home run ends, in whose cable the hot may be red; others
            // where the one before ends.
            // A strip's cable begins at its controller, and what comes in there is never joined to what goes out.
            if (run.segment > 0 && (!run.piece.kind || channels_of(*run.piece.kind).empty()))
                cable.note =
                    change(hot_of(run.segment == 1 ? cables[home] : cables.back(), c.mark), hot_of(cable, c.mark), c);
        }
        cables.push_back(std::move(cable));
    }
    return cables;
}

bool needs_neutral(Circuit const& c) {
    if (c.poles == 1 || c.third == ThirdWire::neutral || c.fed_panel()) return true;
    if (std::ranges::any_of(c.outlets, &Receptacle::neutral)) return true;
    return c.outlets.empty() && c.use && c.use->uses_neutral_at_240;
}

} // namespace legwork
