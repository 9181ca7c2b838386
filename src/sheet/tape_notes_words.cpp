// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_words.h"

#include "codebook/cite.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

std::string panel_words(std::string const& name, std::string_view word) {
    std::string lower;
    for (char const c : name) lower += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return lower.find("panel") != lower.npos ? name : fmt::format("{} {}", word, name);
}

namespace {

bool on_dc(Run const& run) { return run.carries.front()->on_dc(); }

std::string panel_name(Circuit const& c) { return c.panel ? c.panel->name : ""; }

// "breaker 8+10" of one circuit or a pair; says so where the file does not have these spaces, the plan none, or another
// panel than `panel` does.
std::string breaker_of(SheetInput const& input, std::vector<Circuit const*> const& circuits, Panel const* panel) {
    std::string const word = circuits.front()->on_dc() ? "fuse" : "breaker";
    std::vector<std::string> spaces;
    bool proposed = false;
    if (!circuits.front()->listed) return fmt::format("{} of {}", word, circuits.front()->mark);
    for (Circuit const* c : circuits) {
        auto const* placed = placement_of(input.plan, c->mark);
        if (!placed || placed->slots.empty())
            return fmt::format("{} of {} (no space yet)", word, circuits.size() > 1 ? c->cable_mark() : c->mark);
        for (Spot const s : placed->slots) spaces.push_back(text(s));
        proposed |= placed->slots != placed->from;
        if (c->panel != panel) spaces.back() += " in " + panel_words(panel_name(*c));
    }
    return fmt::format("{} {}{}", word, fmt::join(spaces, "+"), proposed ? " (proposed)" : "");
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
std::string feeder_hot(SheetInput const& input, EndOf const& end, Circuit const& c, Panel const& fed, bool second) {
    Leg const leg = second ? Leg::b : Leg::a;
    if (end.far) return fmt::format("main terminal of leg {}", letter(leg));
    auto const* placed = placement_of(input.plan, c.mark);
    auto const breaker = breaker_of(input, {&c}, c.panel);
    if (c.panel && placed)
        for (Spot const s : placed->slots)
            if (c.panel->layout.has(s.space) && c.panel->layout.leg(s.space) == leg)
                return fmt::format("{}, pole at {}: leg {} of {}", breaker, text(s), letter(leg), fed.name);
    return fmt::format("{}: leg {} of {}", breaker, letter(leg), fed.name);
}

std::string hot_lands(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    auto const& carries = end.run().carries;
    auto const at = std::ranges::find(carries, end.cable().conductors[conductor].circuit, &Circuit::mark);
    if (at == carries.end()) return {};
    Circuit const* c = *at;
    bool const second = hots_before(end.cable(), conductor) > 0;
    Panel const* fed = c->fed_panel();
    if (end.panel() && fed && c->poles == 2) return feeder_hot(input, end, *c, *fed, second);
    if (end.panel() && end.far) return "main terminal";
    auto const breaker = breaker_of(input, {c}, end.here().panel);
    return c->poles == 2 ? fmt::format("{}, {}", breaker, second ? "other pole" : "one pole") : breaker;
}

std::string neutral_at_panel(EndOf const& end) {
    if (on_dc(end.run())) return "negative bar";
    auto const at_breaker = [&](Protection Circuit::*kind) {
        return !end.far && std::ranges::count(end.run().carries, Protection::breaker, kind) > 0;
    };
    // The current that a ground-fault breaker compares must come back through it.
    if (at_breaker(&Circuit::gfci)) return "neutral terminal of the GFCI breaker, not the bar";
    if (at_breaker(&Circuit::afci)) return "neutral terminal of the AFCI breaker if it has one, else neutral bar";
    return "neutral bar";
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

std::string wire_words(Conductor const& wire) {
    return wire.tape.empty() || wire.remark == Remark::forbidden ? wire.color
                                                                 : wire.color + " with " + wire.tape + " tape";
}

// A hot or neutral in a box: its like in the cable beyond, and what is here.
std::string at_box(EndOf const& end, Conductor const& wire) {
    bool const hot = wire.job == ConductorJob::hot;
    auto const& circuit = wire.circuit.empty() ? end.run().carries.front()->mark : wire.circuit;
    if (is_loop(end) && end.far) return hot ? "the switch" : "the switch if it takes one, else cap it";
    if (!hot && wire.circuit.empty()) return "all neutrals here, tail to each device";
    auto const beyond = across_box(end, circuit);
    auto const* like = beyond ? conductor_of(beyond->cable(), wire.job, circuit) : nullptr;
    if (!end.far) {
        if (beyond && beyond->run().carries.size() > 1 && !hot) return "all neutrals here, tail to each device";
        return like ? fmt::format("the {} of {}", wire_words(*like), beyond->run().mark) : "the device here";
    }
    auto const there = beyond ? beyond->run().to.called : std::string();
    if (beyond && is_loop(*beyond)) {
        if (!hot) return like ? fmt::format("the light, and the {} to {}", wire_words(*like), there) : "the light";
        return like ? fmt::format("the {} to {}, never the light", wire_words(*like), there) : "the switch";
    }
    return like ? fmt::format("the {} to {}, and devices here", wire_words(*like), there) : "the device here, or on";
}

struct Words {
    std::string job, lands;
};

Words conductor_words(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    Conductor const& wire = end.cable().conductors[conductor];
    bool const panel = end.panel(), loop = is_loop(end), dc = on_dc(end.run());
    auto const of = [&](std::string_view what) {
        return fmt::format("{} of {}", what, wire.circuit.empty() ? end.run().mark : wire.circuit);
    };
    std::string const capped = "nothing here: cap it";
    switch (wire.job) {
    case ConductorJob::hot:
        return {of(dc ? "positive" : "hot"), panel ? hot_lands(input, end, conductor) : at_box(end, wire)};
    case ConductorJob::neutral:
        return {(end.run().carries.size() > 1 ? "shared " : "") + of(dc ? "negative" : "neutral"),
                panel ? neutral_at_panel(end) : at_box(end, wire)};
    case ConductorJob::ground:
        if (panel) return {"ground", dc ? "ground bar, where there is one" : "ground bar"};
        return {"ground", "all grounds, device, metal box"};
    case ConductorJob::switched:
        if (loop) return {of("switched wire"), end.far ? "the switch" : "the light"};
        return {of("switched wire"), panel ? capped : "from the switch to what it switches"};
    case ConductorJob::traveller: return {of("traveller"), panel ? capped : "from switch to switch"};
    case ConductorJob::spare: break;
    }
    return {"spare", capped};
}

std::string cited(Conductor const& wire, std::string_view verdict) {
    if (wire.reference.section.empty()) return wire.why;
    return fmt::format("{} {}: {}{}.", wire.why, verdict, text(wire.reference),
                       is_silently_from_memory(wire.reference) ? " (from memory)" : "");
}

std::string tie_words(SheetInput const& input, Circuit const& a, Circuit const& b, bool at_panel) {
    auto const spaces = breaker_of(input, {&a, &b}, a.panel) + (at_panel ? "" : " in " + panel_words(panel_name(a)));
    switch (a.pair ? a.pair->tie : Tie::none) {
    case Tie::two_pole_breaker: return fmt::format("{} and {} go off together: two-pole {}.", a.mark, b.mark, spaces);
    case Tie::handle_tie: return fmt::format("{} and {} go off together: handle tie, {}.", a.mark, b.mark, spaces);
    case Tie::none: break;
    }
    return fmt::format("{} and {} are not tied: turn both off before touching either ({}).", a.mark, b.mark, spaces);
}

// Two hots on two legs read the volts between the legs; on one leg they read nothing. Empty when no source of the panel
// has two legs with a voltage between them.
std::string meter_check(Panel const& panel) {
    std::map<std::int64_t, std::string> by_volts;
    for (auto const& feed : panel.feeds)
        if (has_two_hots(feed.kind)) {
            auto& names = by_volts[volts_between_legs(feed.kind).count];
            names += (names.empty() ? "" : ", ") + feed.source;
        }
    if (by_volts.empty()) return {};
    std::string volts;
    for (auto const& [v, names] : by_volts)
        volts += fmt::format("{}{} V{}", volts.empty() ? "" : " or ", v, by_volts.size() > 1 ? " on " + names : "");
    return fmt::format("Meter check, power on: about {} between the two hots = right; 0 V = both on one leg: stop, "
                       "switch off.",
                       volts);
}

} // namespace

WireNote wire_note(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    Conductor const& wire = end.cable().conductors[conductor];
    auto words = conductor_words(input, end, conductor);
    WireNote note{wire.color, words.job, words.lands, wire.remark, wire.tape, ""};
    switch (wire.remark) {
    case Remark::as_made: break;
    case Remark::tape: note.why = cited(wire, "Allowed"); break;
    case Remark::ask_first: note.why = cited(wire, "Disputed"); break;
    case Remark::forbidden:
        note.job = fmt::format("must not be the {}", words.job);
        note.lands.clear();
        note.why = cited(wire, "Forbidden");
        break;
    }
    return note;
}

std::vector<std::string> stops(Findings const& findings, Run const& run) {
    std::vector<std::string> words;
    for (Finding const& f : findings) {
        // Of names; and what the rows and faults of the card say themselves.
        bool const elsewhere =
            f.rule.starts_with("dir-") || f.rule.starts_with("tape-") || f.rule.ends_with("-conductors");
        if (f.severity != Severity::error || f.accepted || elsewhere) continue;
        bool const ours = std::ranges::any_of(f.where.circuits, [&](std::string const& mark) {
            return std::ranges::count(run.carries, mark, &Circuit::mark) > 0;
        });
        if (ours)
            words.push_back(fmt::format("Stop ({}): {}{}", f.rule, f.message, f.message.ends_with('.') ? "" : "."));
    }
    return words;
}

std::vector<std::string> pair_remarks(SheetInput const& input, EndOf const& end) {
    auto const& carries = end.run().carries;
    if (carries.size() < 2) return {};
    std::vector<std::string> remarks{tie_words(input, *carries.front(), *carries.back(), end.panel())};
    if (end.far)
        remarks.push_back(fmt::format("First split: here. Never run the shared neutral through a device: {}.",
                                      text(cite(input.book, "mw-pigtail"))));
    else if (!end.run().to.called.empty())
        remarks.push_back(fmt::format("First split: box {}.", end.run().to.called));
    if (Panel const* panel = carries.front()->panel)
        if (auto check = meter_check(*panel); !check.empty()) remarks.push_back(std::move(check));
    return remarks;
}

std::vector<std::string> cable_faults(CableRun const& cable) {
    std::vector<std::string> faults;
    if (cable.conductors.empty())
        faults.push_back(cable.kind.empty()
                             ? "The job does not say what cable this is: nothing can be told of its wires."
                             : fmt::format("The wires of {} are not known.", cable.kind));
    auto const lacks = [&](int n, std::string_view what) {
        if (n > 0)
            faults.push_back(fmt::format("The cable has no wire for {} {} of {}: pull one with enough conductors.", n,
                                         std::string(what) + (n > 1 ? "s" : ""), cable.mark));
    };
    lacks(cable.missing_hots, "hot");
    lacks(cable.missing_neutrals, "neutral");
    return faults;
}

} // namespace legwork
