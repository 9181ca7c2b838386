// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_words.h"

#include "codebook/cite.h"
#include "panel/feeds.h"
#include "panel/layout.h"
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

std::vector<Feed> feeds_of(typed::Job const& job, typed::Circuit const* c) {
    typed::Panel const* panel = c ? panel_of(job, c->panel) : nullptr;
    return panel ? feeds(job, *panel) : std::vector<Feed>{};
}

bool on_dc(typed::Job const& job, typed::Circuit const* c) {
    auto const sources = feeds_of(job, c);
    return !sources.empty() && is_dc(sources.front().kind);
}

typed::Circuit const* first_circuit(typed::Job const& job, CableRun const& run) {
    return run.circuits.empty() ? nullptr : circuit_of(job, run.circuits.front());
}

std::string listed(std::vector<std::string> const& words, std::string_view between) {
    std::string all;
    for (auto const& word : words) all += (all.empty() ? "" : std::string(between)) + word;
    return all;
}

// "breaker 8+10"; says so where the file does not have these spaces, the plan none, or another panel than `panel` does.
std::string breaker_of(SheetInput const& input, std::vector<std::string> const& circuits, std::string const& panel) {
    bool const dc = !circuits.empty() && on_dc(input.job, circuit_of(input.job, circuits.front()));
    std::string const word = dc ? "fuse" : "breaker";
    std::vector<std::string> spaces;
    bool proposed = false;
    for (auto const& mark : circuits) {
        auto const* placed = placement_of(input.plan, mark);
        if (!placed || placed->slots.empty())
            return fmt::format("{} of {} (no space yet)", word, listed(circuits, "+"));
        for (Spot const s : placed->slots) spaces.push_back(text(s));
        proposed |= placed->slots != placed->from;
        typed::Circuit const* c = circuit_of(input.job, mark);
        if (c && c->panel != panel) spaces.back() += " in " + panel_words(c->panel);
    }
    return fmt::format("{} {}{}", word, listed(spaces, "+"), proposed ? " (proposed)" : "");
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
std::string feeder_hot(SheetInput const& input, EndOf const& end, typed::Circuit const& c, typed::Panel const& fed, bool second) {
    Leg const leg = second ? Leg::b : Leg::a;
    if (end.far) return fmt::format("main terminal of leg {}", letter(leg));
    auto const* placed = placement_of(input.plan, c.mark);
    typed::Panel const* panel = panel_of(input.job, c.panel);
    auto const breaker = breaker_of(input, {c.mark}, c.panel);
    if (panel && placed)
        for (Spot const s : placed->slots)
            if (s.space >= 1 && s.space <= panel->spaces && Layout(*panel).leg(s.space) == leg)
                return fmt::format("{}, pole at {}: leg {} of {}", breaker, text(s), letter(leg), fed.name);
    return fmt::format("{}: leg {} of {}", breaker, letter(leg), fed.name);
}

std::string hot_lands(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    Conductor const& wire = end.run.conductors[conductor];
    typed::Circuit const* c = circuit_of(input.job, wire.circuit);
    if (!c) return {};
    bool const second = hots_before(end.run, conductor) > 0;
    typed::Panel const* fed = fed_panel(input.job, *c);
    if (end.panel() && fed && c->poles == 2) return feeder_hot(input, end, *c, *fed, second);
    if (end.panel() && end.far) return "main terminal";
    auto const breaker = breaker_of(input, {c->mark}, end.run.from);
    return c->poles == 2 ? fmt::format("{}, {}", breaker, second ? "other pole" : "one pole") : breaker;
}

std::string neutral_at_panel(SheetInput const& input, EndOf const& end) {
    auto const& circuits = end.run.circuits;
    if (on_dc(input.job, first_circuit(input.job, end.run))) return "negative bar";
    auto const any = [&](auto says) {
        return !end.far && std::ranges::any_of(circuits, [&](std::string const& mark) {
            typed::Circuit const* c = circuit_of(input.job, mark);
            return c && says(*c);
        });
    };
    // The current that a ground-fault breaker compares must come back through it.
    if (any([](typed::Circuit const& c) { return c.gfci == Protection::breaker; }))
        return "neutral terminal of the GFCI breaker, not the bar";
    if (any([](typed::Circuit const& c) { return c.afci == Protection::breaker; }))
        return "neutral terminal of the AFCI breaker if it has one, else neutral bar";
    return "neutral bar";
}

// The piece of this circuit on the other side of the box; null when the cable ends here or the box is a panel.
CableRun const* across_box(EndOf const& end, std::string const& circuit) {
    int const segment = end.far ? end.run.segment + 1 : end.run.segment - 1;
    auto const at = std::ranges::find_if(end.runs, [&](CableRun const& r) {
        return r.segment == segment && std::ranges::find(r.circuits, circuit) != r.circuits.end();
    });
    return at == end.runs.end() ? nullptr : &*at;
}

Conductor const* conductor_of(CableRun const& run, ConductorJob job, std::string const& circuit) {
    auto const at = std::ranges::find_if(run.conductors, [&](Conductor const& c) {
        return c.job == job && (c.circuit.empty() || c.circuit == circuit);
    });
    return at == run.conductors.end() ? nullptr : &*at;
}

// From a light's box to its switch and back.
bool is_loop(typed::Job const& job, CableRun const& run) {
    typed::Circuit const* c = first_circuit(job, run);
    return c && c->switch_loop && run.segment > 0 && conductor_of(run, ConductorJob::switched, c->mark) != nullptr;
}

std::string wire_words(Conductor const& wire) {
    return wire.tape.empty() || wire.remark == Remark::forbidden ? wire.color
                                                                 : wire.color + " with " + wire.tape + " tape";
}

// A hot or neutral in a box: its like in the cable beyond, and what is here.
std::string at_box(SheetInput const& input, EndOf const& end, Conductor const& wire) {
    bool const hot = wire.job == ConductorJob::hot;
    auto const& circuit = wire.circuit.empty() ? end.run.circuits.front() : wire.circuit;
    if (is_loop(input.job, end.run) && end.far) return hot ? "the switch" : "the switch if it takes one, else cap it";
    if (!hot && wire.circuit.empty()) return "all neutrals here, tail to each device";
    auto const* beyond = across_box(end, circuit);
    auto const* like = beyond ? conductor_of(*beyond, wire.job, circuit) : nullptr;
    if (!end.far) {
        if (beyond && beyond->circuits.size() > 1 && !hot) return "all neutrals here, tail to each device";
        return like ? fmt::format("the {} of {}", wire_words(*like), beyond->mark) : "the device here";
    }
    if (beyond && is_loop(input.job, *beyond)) {
        if (!hot) return like ? fmt::format("the light, and the {} to {}", wire_words(*like), beyond->to) : "the light";
        return like ? fmt::format("the {} to {}, never the light", wire_words(*like), beyond->to) : "the switch";
    }
    return like ? fmt::format("the {} to {}, and devices here", wire_words(*like), beyond->to)
                : "the device here, or on";
}

struct Words {
    std::string job, lands;
};

Words conductor_words(SheetInput const& input, EndOf const& end, std::size_t conductor) {
    Conductor const& wire = end.run.conductors[conductor];
    bool const dc = on_dc(input.job, first_circuit(input.job, end.run));
    bool const panel = end.panel(), loop = is_loop(input.job, end.run);
    auto const of = [&](std::string_view what) {
        return fmt::format("{} of {}", what, wire.circuit.empty() ? end.run.mark : wire.circuit);
    };
    std::string const capped = "nothing here: cap it";
    switch (wire.job) {
    case ConductorJob::hot:
        return {of(dc ? "positive" : "hot"), panel ? hot_lands(input, end, conductor) : at_box(input, end, wire)};
    case ConductorJob::neutral:
        return {(end.run.circuits.size() > 1 ? "shared " : "") + of(dc ? "negative" : "neutral"),
                panel ? neutral_at_panel(input, end) : at_box(input, end, wire)};
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
    return fmt::format(
        "{} {}: {}{}.", wire.why, verdict, text(wire.reference),
        wire.reference.source == Source::memory && !text(wire.reference).ends_with("memory)") ? " (from memory)" : "");
}

std::string tie_words(SheetInput const& input, typed::Circuit const& a, typed::Circuit const& b, bool at_panel) {
    auto const spaces = breaker_of(input, {a.mark, b.mark}, a.panel) + (at_panel ? "" : " in " + panel_words(a.panel));
    switch (a.tie) {
    case Tie::two_pole_breaker: return fmt::format("{} and {} go off together: two-pole {}.", a.mark, b.mark, spaces);
    case Tie::handle_tie: return fmt::format("{} and {} go off together: handle tie, {}.", a.mark, b.mark, spaces);
    case Tie::none: break;
    }
    return fmt::format("{} and {} are not tied: turn both off before touching either ({}).", a.mark, b.mark, spaces);
}

// Two hots on two legs read the volts between the legs; on one leg they read nothing. Empty when no source of the panel
// has two legs with a voltage between them.
std::string meter_check(typed::Job const& job, typed::Circuit const& c) {
    std::map<std::int64_t, std::string> by_volts;
    for (auto const& feed : feeds_of(job, &c))
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
    Conductor const& wire = end.run.conductors[conductor];
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

std::vector<std::string> stops(Findings const& findings, CableRun const& run) {
    std::vector<std::string> words;
    for (Finding const& f : findings) {
        // Of names; and what the rows and faults of the card say themselves.
        bool const elsewhere =
            f.rule.starts_with("dir-") || f.rule.starts_with("tape-") || f.rule.ends_with("-conductors");
        if (f.severity != Severity::error || f.accepted || elsewhere) continue;
        bool const ours = std::ranges::any_of(f.where.circuits, [&](std::string const& mark) {
            return std::ranges::find(run.circuits, mark) != run.circuits.end();
        });
        if (ours)
            words.push_back(fmt::format("Stop ({}): {}{}", f.rule, f.message, f.message.ends_with('.') ? "" : "."));
    }
    return words;
}

std::vector<std::string> pair_remarks(SheetInput const& input, EndOf const& end) {
    auto const& marks = end.run.circuits;
    if (marks.size() < 2) return {};
    typed::Circuit const *a = circuit_of(input.job, marks.front()), *b = circuit_of(input.job, marks.back());
    if (!a || !b) return {};
    std::vector<std::string> remarks{tie_words(input, *a, *b, end.panel())};
    if (end.far)
        remarks.push_back(fmt::format("First split: here. Never run the shared neutral through a device: {}.",
                                      text(cite(input.book, "mw-pigtail"))));
    else if (!end.run.to.empty())
        remarks.push_back(fmt::format("First split: box {}.", end.run.to));
    if (auto check = meter_check(input.job, *a); !check.empty()) remarks.push_back(std::move(check));
    return remarks;
}

std::vector<std::string> cable_faults(CableRun const& run) {
    std::vector<std::string> faults;
    if (run.conductors.empty())
        faults.push_back(run.kind.empty() ? "The job does not say what cable this is: nothing can be told of its wires."
                                          : fmt::format("The wires of {} are not known.", run.kind));
    auto const lacks = [&](int n, std::string_view what) {
        if (n > 0)
            faults.push_back(fmt::format("The cable has no wire for {} {} of {}: pull one with enough conductors.", n,
                                         std::string(what) + (n > 1 ? "s" : ""), run.mark));
    };
    lacks(run.missing_hots, "hot");
    lacks(run.missing_neutrals, "neutral");
    return faults;
}

} // namespace legwork
