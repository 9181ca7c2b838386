// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_words.h"

#include "rules/rule.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

std::string kind_words(Feed const& f) {
    if (is_dc(f.kind)) return std::string(name(f.kind));
    switch (f.kind) {
    case SupplyKind::one_leg_120: return fmt::format("120 V on leg {} only", letter(f.leg));
    case SupplyKind::bridged_120: return "120 V on both legs";
    default: return std::string(name(f.kind)) + " V";
    }
}

// What does not work, or must not be believed dead or alive, on this source.
std::string limits(Feed const& f) {
    if (f.kind == SupplyKind::one_leg_120)
        return fmt::format(" Lines on leg {} and 240 V circuits are dead on it.", letter(other(f.leg)));
    if (f.kind == SupplyKind::bridged_120) return " 240 V circuits do not run on it.";
    return {};
}

std::string list(std::vector<std::string> const& words) {
    std::string all;
    for (std::string const& w : words) all += (all.empty() ? "" : "; ") + w;
    return all;
}

std::string circuit_words(DirectoryInput const& input, Panel const& panel, Circuit const& c) {
    auto const where = position_words(input.plan, panel, c);
    return where.starts_with(c.mark) ? where + " " + c.name : fmt::format("{} {} ({})", where, c.name, c.mark);
}

std::string rating(Feed const& f) { return f.amps ? ", " + text(*f.amps) : ""; }

std::string main_off(Panel const& panel) {
    if (!panel.main) return {};
    return fmt::format("main {} in this panel; the wires up to it stay live", text(*panel.main));
}

// Circuits through which something else can feed this panel.
std::vector<Circuit const*> back_feeds(Panel const& panel) {
    std::vector<Circuit const*> found;
    for (Circuit const* c : panel.circuits)
        if (c->is_source() && !c->is(PanelPart::main) && !c->fed_panel()) found.push_back(c);
    return found;
}

// The breaker through which a source of the file comes in: the one of the same name.
Circuit const* inlet_of(std::vector<Circuit const*> const& backs, Feed const& f) {
    auto const at =
        std::ranges::find_if(backs, [&](Circuit const* c) { return !f.source.empty() && c->name == f.source; });
    return at == backs.end() ? nullptr : *at;
}

// Of a panel with a feeder, or with a power supply on a circuit of another panel.
ListRow feeder_row(DirectoryInput const& input, Panel const& panel) {
    Circuit const& c = panel.feeder ? *panel.feeder : *panel.power_supply;
    auto const* at = placement_of(input.plan, c.mark);
    ListRow row{"Panel " + panel_name(c), (c.listed ? "Circuit " : "Feeder ") + c.mark};
    if (c.breaker) row.words += ", " + text(*c.breaker);
    if (c.listed)
        row.words += at && !at->slots.empty() ? ", on space " + numbers(at->slots) + " there" : ", no space there yet";
    if (panel.power_supply) row.words += ", through its power supply";
    row.words += c.listed ? ". Off: that breaker" : ". Off: its breaker there";
    if (auto const main = main_off(panel); !main.empty()) row.words += ", or " + main;
    row.words += ".";
    return row;
}

// The main is the first source's. Whether it also parts the others hangs on a switch that is not in the file, so they
// are killed where they are made, or at their own breaker.
std::string off_words(DirectoryInput const& input, Panel const& panel, Circuit const* inlet, bool first) {
    if (inlet)
        return fmt::format(" Off: its breaker {}, space {}.", inlet->mark, position_words(input.plan, panel, *inlet));
    if (!first) return " Off: at the source itself, stopped or unplugged.";
    auto const main = main_off(panel);
    return main.empty() ? " Off: no main here, so switch off where it comes from." : " Off: " + main + ".";
}

ListRow source_row(DirectoryInput const& input, Panel const& panel, Feed const& f, Circuit const* inlet, bool first) {
    ListRow row{f.source, kind_words(f) + rating(f)};
    bool const from = first && !panel.feeder_said && !panel.fed_from.empty();
    if (row.lead.empty())
        row.lead = from ? panel.fed_from : "Supply";
    else if (from)
        row.words += ", from " + panel.fed_from;
    row.words += ".";
    if (panel.feeder_said || (panel.power_supply && !from))
        row.words = "Behind it: " + row.words;
    else
        row.words += off_words(input, panel, inlet, first);
    row.words += limits(f);
    if (!f.off.empty()) row.words += " Switch off by hand first: see below.";
    return row;
}

} // namespace

std::vector<ListRow> source_rows(DirectoryInput const& input, Panel const& panel) {
    std::vector<ListRow> rows;
    auto const& sources = panel.feeds;
    auto backs = back_feeds(panel);
    if (panel.feeder || panel.power_supply) rows.push_back(feeder_row(input, panel));
    for (std::size_t i = 0; i < sources.size(); ++i) {
        auto const* inlet = inlet_of(backs, sources[i]);
        rows.push_back(source_row(input, panel, sources[i], inlet, i == 0));
        std::erase(backs, inlet);
    }
    for (Circuit const* c : backs)
        rows.push_back(
            {c->name.empty() ? c->mark : c->name, fmt::format("Can feed this panel. Off: its breaker {}, space {}.",
                                                              c->mark, position_words(input.plan, panel, *c))});
    if (sources.size() + backs.size() > 1)
        rows.push_back({"This panel is dead only when all of these are off. Test first.", ""});
    return rows;
}

std::vector<ListRow> off_by_hand_rows(DirectoryInput const& input, Panel const& panel) {
    std::vector<ListRow> rows;
    for (Feed const& f : panel.feeds) {
        std::vector<std::string> words;
        for (std::string const& mark : f.off)
            if (auto const* c = circuit_named(input.building, mark)) words.push_back(circuit_words(input, panel, *c));
        if (words.empty()) continue;
        rows.push_back(
            {fmt::format("Switch off by hand before {} is used:", f.source.empty() ? "the supply" : f.source), ""});
        rows.push_back({"", list(words) + "."});
    }
    return rows;
}

std::string leg_totals(PanelPlan const* plan, bool two_legs) {
    if (!plan || plan->situations.empty()) return {};
    std::string words;
    for (SituationLoad const& s : plan->situations) {
        words += words.empty() ? "Loads in VA: " : "; ";
        if (two_legs)
            words += fmt::format("{} A {}, B {}, {} apart", s.name, s.leg_a_va, s.leg_b_va, s.imbalance_va);
        else
            words += fmt::format("{} {}", s.name, s.leg_a_va + s.leg_b_va);
    }
    return words + ".";
}

std::string abbreviations(PanelEntries const& entries, bool legs) {
    auto const any = [&](auto const& says) { return std::ranges::any_of(entries.entries, says); };
    auto const remarks = [&](std::string_view word) {
        return any([&](Entry const& e) {
            return std::ranges::any_of(e.remarks,
                                       [&](std::string const& r) { return r.find(word) != std::string::npos; });
        });
    };
    std::vector<std::string> words;
    if (legs) words.emplace_back("A, B: the leg of that row");
    words.emplace_back("under the amperes: the mark on the cable's labels");
    if (any([](Entry const& e) { return e.breaker.starts_with("2P"); })) words.emplace_back("2P: two-pole");
    if (!entries.ties.empty()) words.emplace_back("bracket: handles move together");
    std::string const outlet = remarks("at outlet") ? " or, where it says so, at the outlet" : "";
    if (remarks("GFCI") && remarks("AFCI"))
        words.push_back("GFCI, AFCI: ground-fault, arc-fault protection, reset at the breaker" + outlet);
    else if (remarks("GFCI"))
        words.push_back("GFCI: ground-fault protection, reset at the breaker" + outlet);
    else if (remarks("AFCI"))
        words.push_back("AFCI: arc-fault protection, reset at the breaker" + outlet);
    if (remarks("downstream")) words.emplace_back("max: largest breaker for the smallest wire");
    return list(words) + ".";
}

} // namespace legwork
