// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_words.h"

#include "codebook/cite.h"
#include "reckon/say.h"
#include "sheet/common_words.h"
#include "units/text.h"
#include "words/say.h"

#include <algorithm>
#include <map>

namespace legwork {

Phrase panel_phrase(std::string const& name) { return Phrase::unless_said(say("note/panel", name)); }

namespace {

bool on_dc(Run const& run) { return run.carries.front()->on_dc(); }

std::string panel_name(Circuit const& c) { return c.panel ? c.panel->name : ""; }

// "breaker 8+10" of one circuit or a pair; says so where the file does not have these spaces, the plan none, or another
// panel than `panel` does.
Phrase breaker_of(SheetInput const& input, std::vector<Circuit const*> const& circuits, Panel const* panel) {
    bool const fuse = circuits.front()->on_dc();
    Phrases spaces;
    bool proposed = false;
    if (auto const& mark = circuits.front()->mark; !circuits.front()->listed)
        return fuse ? say("note/fuse-of", mark) : say("note/breaker-of", mark);
    for (Circuit const* c : circuits) {
        auto const* placed = placement_of(input.plan, c->mark);
        if (!placed || placed->slots.empty()) {
            auto const mark = circuits.size() > 1 ? c->cable_mark() : c->mark;
            return fuse ? say("note/fuse-no-space", mark) : say("note/breaker-no-space", mark);
        }
        for (Spot const s : placed->slots) spaces.push_back(text(s));
        proposed |= placed->slots != placed->from;
        if (c->panel != panel) spaces.back() = say("note/in", spaces.back(), panel_phrase(panel_name(*c)));
    }
    auto const all = joined("note/plus", spaces);
    auto const where = fuse ? say("note/fuse", all) : say("note/breaker", all);
    return proposed ? say("note/proposed", where) : where;
}

// How many hots of the same circuit come before this one in the cable.
std::size_t hots_before(CableRun const& run, std::size_t conductor) {
    auto const& wires = run.conductors;
    return static_cast<std::size_t>(
        std::count_if(wires.begin(), wires.begin() + static_cast<std::ptrdiff_t>(conductor), [&](Conductor const& w) {
            return w.job == ConductorJob::hot && w.circuit == wires[conductor].circuit;
        }));
}

// Leg A of a sub-panel is leg A of the panel above: swapped, its loads would weigh on the other leg. The first hot of
// the cable takes leg A at both ends.
Phrase feeder_hot(SheetInput const& input, EndOf const& end, Circuit const& c, Panel const& fed, bool second) {
    Leg const leg = second ? Leg::b : Leg::a;
    if (end.far) return say("note/main-terminal-leg", std::string(1, letter(leg)));
    auto const* placed = placement_of(input.plan, c.mark);
    auto const breaker = breaker_of(input, {&c}, c.panel);
    if (c.panel && placed)
        for (Spot const s : placed->slots)
            if (c.panel->layout.has(s.space) && c.panel->layout.leg(s.space) == leg)
                return say("note/feeder-pole", breaker, text(s), std::string(1, letter(leg)), fed.name);
    return say("note/feeder-leg", breaker, std::string(1, letter(leg)), fed.name);
}

Phrase hot_lands(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    auto const& carries = end.run().carries;
    auto const at = std::ranges::find(carries, end.cable().conductors[conductor].circuit, &Circuit::mark);
    if (at == carries.end()) return {};
    Circuit const* c = *at;
    bool const second = hots_before(end.cable(), conductor) > 0;
    Panel const* fed = c->fed_panel();
    if (end.panel() && fed && c->poles == 2) return feeder_hot(input, end, *c, *fed, second);
    if (end.panel() && end.far) return say("note/main-terminal");
    auto const breaker = breaker_of(input, {c}, end.here().panel);
    if (c->poles != 2) return breaker;
    return second ? say("note/other-pole", breaker) : say("note/one-pole", breaker);
}

Phrase neutral_at_panel(EndOf const& end) {
    if (on_dc(end.run())) return say("note/negative-bar");
    auto const at_breaker = [&](Protection Circuit::*kind) {
        return !end.far && std::ranges::count(end.run().carries, Protection::breaker, kind) > 0;
    };
    // The current that a ground-fault breaker compares must come back through it.
    if (at_breaker(&Circuit::gfci)) return say("note/neutral-gfci");
    if (at_breaker(&Circuit::afci)) return say("note/neutral-afci");
    return say("note/neutral-bar");
}

// The end that the next piece of this circuit has in the same box; nothing when the cable ends here or the box is a
// panel.
std::optional<EndOf> across_box(EndOf const& end, std::string const& circuit) {
    int const segment = end.far ? end.run().segment + 1 : end.run().segment - 1;
    auto const& runs = end.building.runs;
    auto const at = std::ranges::find_if(runs, [&](Run const& r) {
        return r.of_circuit && r.segment == segment && std::ranges::count(r.carries, circuit, &Circuit::mark) > 0;
    });
    if (at == runs.end()) return std::nullopt;
    return EndOf{end.building, end.cables, static_cast<std::size_t>(at - runs.begin()), !end.far};
}

Conductor const* conductor_of(CableRun const& cable, ConductorJob job, std::string const& circuit) {
    auto const at = std::ranges::find_if(cable.conductors, [&](Conductor const& c) {
        return c.job == job && (c.circuit.empty() || c.circuit == circuit);
    });
    return at == cable.conductors.end() ? nullptr : &*at;
}

// From a light's box to its switch and back.
bool is_loop(EndOf const& end) {
    Circuit const& c = *end.run().carries.front();
    return c.switch_loop && end.run().segment > 0 && conductor_of(end.cable(), ConductorJob::switched, c.mark);
}

Phrase wire_phrase(Conductor const& wire) {
    if (wire.tape.empty() || wire.remark == Remark::forbidden) return colour(wire.color);
    return say("note/with-tape", colour(wire.color), colour(wire.tape));
}

// A hot or neutral in a box: its like in the cable beyond, and what is here.
Phrase at_box(EndOf const& end, Conductor const& wire) {
    bool const hot = wire.job == ConductorJob::hot;
    auto const& circuit = wire.circuit.empty() ? end.run().carries.front()->mark : wire.circuit;
    if (is_loop(end) && end.far) return hot ? say("note/the-switch") : say("note/switch-or-cap");
    if (!hot && wire.circuit.empty()) return say("note/all-neutrals");
    auto const beyond = across_box(end, circuit);
    auto const* like = beyond ? conductor_of(beyond->cable(), wire.job, circuit) : nullptr;
    if (!end.far) {
        if (beyond && beyond->run().carries.size() > 1 && !hot) return say("note/all-neutrals");
        return like ? say("note/wire-of", wire_phrase(*like), beyond->run().mark) : say("note/device-here");
    }
    auto const there = beyond ? beyond->run().to.called : std::string();
    if (beyond && is_loop(*beyond)) {
        if (!hot) return like ? say("note/light-and-wire", wire_phrase(*like), there) : say("note/the-light");
        return like ? say("note/wire-never-light", wire_phrase(*like), there) : say("note/the-switch");
    }
    return like ? say("note/wire-and-devices", wire_phrase(*like), there) : say("note/device-or-on");
}

bool has_channels(CableRun const& cable) {
    return std::ranges::any_of(cable.conductors, [](Conductor const& c) { return c.job == ConductorJob::channel; });
}

// A wire of a strip's cable: from the controller to the strip, or on to more of the same cable.
Phrase strip_lands(EndOf const& end, Conductor const& wire) {
    auto const beyond = across_box(end, wire.circuit);
    if (beyond && has_channels(beyond->cable())) {
        auto const& wires = beyond->cable().conductors;
        auto const like = std::ranges::find_if(
            wires, [&](Conductor const& c) { return c.job == wire.job && c.channel == wire.channel; });
        if (like != wires.end()) return say("note/wire-of", colour(like->color), beyond->run().mark);
    }
    if (wire.job == ConductorJob::hot) return end.far ? say("note/strip-plus") : say("note/controller-plus");
    return end.far ? say("note/strip-channel", colour(wire.channel))
                   : say("note/controller-channel", colour(wire.channel));
}

// The way in of a strip's controller, which stands in the box where the strip's cable begins.
bool ends_in_controller(EndOf const& end, Conductor const& wire) {
    if (!end.far || !on_dc(end.run()) || has_channels(end.cable())) return false;
    auto const beyond = across_box(end, wire.circuit);
    return beyond && has_channels(beyond->cable());
}

struct Landing {
    Phrase job, lands;
};

Landing landing(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    Conductor const& wire = end.cable().conductors[conductor];
    bool const panel = end.panel(), loop = is_loop(end), dc = on_dc(end.run());
    bool const shared = end.run().carries.size() > 1;
    auto const& of = wire.circuit.empty() ? end.run().mark : wire.circuit;
    auto const capped = say("note/cap");
    bool const strip = has_channels(end.cable()), controller = ends_in_controller(end, wire);
    switch (wire.job) {
    case ConductorJob::channel: return {say("note/channel-of", colour(wire.channel), of), strip_lands(end, wire)};
    case ConductorJob::hot:
        if (strip && !panel) return {say("note/common-plus-of", of), strip_lands(end, wire)};
        if (controller) return {say("note/positive-of", of), say("note/controller-in-plus")};
        return {dc ? say("note/positive-of", of) : say("note/hot-of", of),
                panel ? hot_lands(input, end, conductor) : at_box(end, wire)};
    case ConductorJob::neutral:
        if (controller) return {say("note/negative-of", of), say("note/controller-in-minus")};
        return {dc ? (shared ? say("note/shared-negative-of", of) : say("note/negative-of", of))
                   : (shared ? say("note/shared-neutral-of", of) : say("note/neutral-of", of)),
                panel ? neutral_at_panel(end) : at_box(end, wire)};
    case ConductorJob::ground:
        if (panel) return {say("note/ground"), dc ? say("note/ground-bar-dc") : say("note/ground-bar")};
        return {say("note/ground"), say("note/all-grounds")};
    case ConductorJob::switched:
        if (loop) return {say("note/switched-of", of), end.far ? say("note/the-switch") : say("note/the-light")};
        return {say("note/switched-of", of), panel ? capped : say("note/from-switch")};
    case ConductorJob::traveller: return {say("note/traveller-of", of), panel ? capped : say("note/switch-to-switch")};
    case ConductorJob::interconnect:
        return {say("note/interconnect-of", of), panel ? capped : say("note/alarm-to-alarm")};
    case ConductorJob::spare: break;
    }
    return {say("note/spare"), capped};
}

// What stands behind it, and whether that is known from a page.
Phrase cited_reference(Reference const& reference) {
    auto said = reference_phrase(reference);
    return reference.source == Source::memory ? say("note/from-memory", std::move(said)) : said;
}

Phrase why_phrase(Conductor const& wire) {
    if (wire.reference.section.empty()) return wire.why;
    auto reference = cited_reference(wire.reference);
    switch (wire.remark) {
    case Remark::ask_first: return say("note/disputed", wire.why, std::move(reference));
    case Remark::forbidden: return say("note/forbidden", wire.why, std::move(reference));
    default: return say("note/allowed", wire.why, std::move(reference));
    }
}

Phrase tie_phrase(SheetInput const& input, Circuit const& a, Circuit const& b, bool at_panel) {
    auto breaker = breaker_of(input, {&a, &b}, a.panel);
    if (!at_panel) breaker = say("note/in", std::move(breaker), panel_phrase(panel_name(a)));
    switch (a.pair ? a.pair->tie : Tie::none) {
    case Tie::two_pole_breaker: return say("note/two-pole-tie", a.mark, b.mark, std::move(breaker));
    case Tie::handle_tie: return say("note/handle-tie", a.mark, b.mark, std::move(breaker));
    case Tie::none: break;
    }
    return say("note/no-tie", a.mark, b.mark, std::move(breaker));
}

// Two hots on two legs read the volts between the legs; on one leg they read nothing. Empty when no source of the panel
// has two legs with a voltage between them.
Phrase meter_check(Panel const& panel) {
    std::map<std::int64_t, Phrases> by_volts; // the sources
    for (auto const& feed : panel.feeds)
        if (has_two_hots(feed.kind)) by_volts[volts_between_legs(feed.kind).count].push_back(feed.source);
    if (by_volts.empty()) return {};
    Phrases all;
    for (auto const& [v, sources] : by_volts) {
        auto volts = said(Volts{v});
        all.push_back(by_volts.size() > 1 ? say("note/volts-on", std::move(volts), joined("list/comma", sources))
                                          : std::move(volts));
    }
    return say("note/meter-check", joined("list/or", all));
}

} // namespace

WireNote wire_note(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    Conductor const& wire = end.cable().conductors[conductor];
    auto const lands = landing(input, end, conductor);
    bool const taped = wire.remark == Remark::tape || wire.remark == Remark::ask_first;
    WireNote note;
    note.color = wire.color;
    note.color_words = input.words(colour(wire.color));
    note.job = input.words(wire.remark == Remark::forbidden ? say("note/must-not", lands.job) : lands.job);
    if (wire.remark != Remark::forbidden) note.lands = input.words(lands.lands);
    note.remark = wire.remark;
    note.tape = wire.tape;
    note.tape_words = input.words(wire.remark == Remark::forbidden ? say("note/no-tape")
                                  : taped && !wire.tape.empty()    ? say("note/tape", colour(wire.tape))
                                                                   : say("note/as-made"));
    if (wire.remark == Remark::ask_first) note.ask_words = input.words(say("note/ask-first"));
    if (wire.remark != Remark::as_made) note.why = input.words(why_phrase(wire));
    return note;
}

std::vector<std::string> stops(SheetInput const& input, Run const& run) {
    std::vector<std::string> words;
    for (Finding const& f : input.findings) {
        if (f.severity != Severity::error || f.accepted || !f.stops_cables) continue;
        bool const ours = std::ranges::any_of(f.where.circuits, [&](std::string const& mark) {
            return std::ranges::count(run.carries, mark, &Circuit::mark) > 0;
        });
        if (ours) words.push_back(input.words(say("note/stop", f.rule, as_sentence(f.message))));
    }
    return words;
}

std::vector<std::string> pair_remarks(SheetInput const& input, EndOf const& end) {
    auto const& carries = end.run().carries;
    if (carries.size() < 2) return {};
    Phrases remarks{tie_phrase(input, *carries.front(), *carries.back(), end.panel())};
    if (end.far)
        remarks.push_back(say("note/split-here", reference_phrase(cite(input.book, "mw-pigtail"))));
    else if (!end.run().to.called.empty())
        remarks.push_back(say("note/split-at", end.run().to.called));
    if (Panel const* panel = carries.front()->panel)
        if (auto check = meter_check(*panel); !check.empty()) remarks.push_back(std::move(check));
    std::vector<std::string> words;
    for (Phrase const& r : remarks) words.push_back(input.words(r));
    return words;
}

std::vector<std::string> cable_faults(SheetInput const& input, CableRun const& cable) {
    Phrases faults;
    if (cable.conductors.empty())
        faults.push_back(cable.kind.empty() ? say("note/no-kind") : say("note/unknown-wires", cable.kind));
    if (int const n = cable.missing_hots; n > 0)
        faults.push_back(n == 1 ? say("note/lacks-hot", figure(n), cable.mark)
                                : say("note/lacks-hots", figure(n), cable.mark));
    if (int const n = cable.missing_neutrals; n > 0)
        faults.push_back(n == 1 ? say("note/lacks-neutral", figure(n), cable.mark)
                                : say("note/lacks-neutrals", figure(n), cable.mark));
    std::vector<std::string> words;
    for (Phrase const& f : faults) words.push_back(input.words(f));
    return words;
}

} // namespace legwork
