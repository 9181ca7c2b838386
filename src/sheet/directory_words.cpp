// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_words.h"

#include "rules/rule.h"
#include "sheet/common_frame.h"
#include "sheet/common_words.h"
#include "units/text.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

Phrase kind_phrase(Feed const& f) {
    if (is_dc(f.kind)) return with_unit(name(f.kind));
    switch (f.kind) {
    case SupplyKind::one_leg_120: return say("directory/one-leg", std::string(1, letter(f.leg)));
    case SupplyKind::bridged_120: return say("directory/both-legs");
    default: return with_unit(fmt::format("{} V", name(f.kind)));
    }
}

// What does not work, or must not be believed dead or alive, on this source.
Phrase limits(Feed const& f) {
    if (f.kind == SupplyKind::one_leg_120)
        return say("directory/dead-on-one-leg", std::string(1, letter(other(f.leg))));
    if (f.kind == SupplyKind::bridged_120) return say("directory/dead-on-both-legs");
    return {};
}

Phrase circuit_phrase(DirectoryInput const& input, Panel const& panel, Circuit const& c) {
    auto where = position_phrase(input.plan, panel, c);
    auto const& name = name_in(input.language, c);
    return stands_in(input.plan, panel, c) ? say("directory/circuit-here", std::move(where), name, c.mark)
                                           : say("directory/circuit-elsewhere", std::move(where), name);
}

Phrase sentences(Phrases words) {
    std::erase_if(words, [](Phrase const& w) { return w.empty(); });
    return joined("list/sentences", words);
}

Phrase rating(std::optional<Amps> amps) { return amps ? said(*amps) : Phrase(); }

Phrase main_off(Panel const& panel) {
    return panel.main ? say("directory/main-of-panel", said(*panel.main)) : Phrase();
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

Phrase off_at_feeder(Panel const& panel, Circuit const& c) {
    auto main = main_off(panel);
    if (c.listed) return main.empty() ? say("directory/off-that") : say("directory/off-that-or", std::move(main));
    return main.empty() ? say("directory/off-there") : say("directory/off-there-or", std::move(main));
}

// Of a panel with a feeder, or with a power supply on a circuit of another panel.
PhraseRow feeder_row(DirectoryInput const& input, Panel const& panel) {
    Circuit const& c = panel.feeder ? *panel.feeder : *panel.power_supply;
    auto const* at = placement_of(input.plan, c.mark);
    Phrases facts{c.listed ? say("directory/circuit", c.mark) : say("directory/feeder", c.mark), rating(c.breaker)};
    if (c.listed)
        facts.push_back(at && !at->slots.empty() ? say("directory/space-there", numbers(at->slots))
                                                 : say("directory/no-space-there"));
    if (panel.power_supply) facts.push_back(say("directory/through-supply"));
    return {say("directory/panel", panel_name(c)),
            sentences({say("list/stop", comma_list(std::move(facts))), off_at_feeder(panel, c)})};
}

// The main is the first source's. Whether it also parts the others hangs on a switch that is not in the file, so they
// are killed where they are made, or at their own breaker.
Phrase off_phrase(DirectoryInput const& input, Panel const& panel, Circuit const* inlet, bool first) {
    if (inlet) return say("directory/off-inlet", inlet->mark, position_phrase(input.plan, panel, *inlet));
    if (!first) return say("directory/off-at-source");
    auto main = main_off(panel);
    return main.empty() ? say("directory/off-no-main") : say("directory/off-main", std::move(main));
}

PhraseRow source_row(DirectoryInput const& input, Panel const& panel, Feed const& f, Circuit const* inlet, bool first) {
    bool const from = first && !panel.feeder_said && !panel.fed_from.empty();
    Phrases facts{kind_phrase(f), rating(f.amps)};
    if (from && !f.source.empty()) facts.push_back(say("directory/from", panel.fed_from));
    Phrase const lead = !f.source.empty() ? Phrase(f.source) : from ? Phrase(panel.fed_from) : say("directory/supply");
    Phrases words{say("list/stop", comma_list(std::move(facts)))};
    if (panel.feeder_said || (panel.power_supply && !from))
        words.front() = say("directory/behind", words.front());
    else
        words.push_back(off_phrase(input, panel, inlet, first));
    words.push_back(limits(f));
    if (!f.off.empty()) words.push_back(say("directory/by-hand-first"));
    return {lead, sentences(std::move(words))};
}

} // namespace

std::vector<PhraseRow> source_rows(DirectoryInput const& input, Panel const& panel) {
    std::vector<PhraseRow> rows;
    auto const& sources = panel.feeds;
    auto backs = back_feeds(panel);
    if (panel.feeder || panel.power_supply) rows.push_back(feeder_row(input, panel));
    for (std::size_t i = 0; i < sources.size(); ++i) {
        auto const* inlet = inlet_of(backs, sources[i]);
        rows.push_back(source_row(input, panel, sources[i], inlet, i == 0));
        std::erase(backs, inlet);
    }
    for (Circuit const* c : backs) {
        auto const& name = name_in(input.language, *c);
        rows.push_back({name.empty() ? c->mark : name,
                        say("directory/can-feed-off", c->mark, position_phrase(input.plan, panel, *c))});
    }
    if (sources.size() + backs.size() > 1) rows.push_back({say("directory/all-off"), {}});
    return rows;
}

std::vector<PhraseRow> off_by_hand_rows(DirectoryInput const& input, Panel const& panel) {
    std::vector<PhraseRow> rows;
    for (Feed const& f : panel.feeds) {
        Phrases words;
        for (std::string const& mark : f.off)
            if (auto const* c = circuit_named(input.building, mark)) words.push_back(circuit_phrase(input, panel, *c));
        if (words.empty()) continue;
        rows.push_back(
            {say("directory/by-hand", f.source.empty() ? say("directory/the-supply") : Phrase(f.source)), {}});
        rows.push_back({{}, say("list/stop", joined("list/semicolon", words))});
    }
    return rows;
}

Phrase leg_totals(PanelPlan const* plan, bool two_legs) {
    if (!plan || plan->situations.empty()) return {};
    Phrases words;
    for (SituationLoad const& s : plan->situations) {
        // The first is everything at once, which no job names.
        auto const name = words.empty() ? say("directory/connected") : Phrase(s.name);
        words.push_back(
            two_legs ? say("directory/load-legs", name, figure(s.leg_a_va), figure(s.leg_b_va), figure(s.imbalance_va))
                     : say("directory/load", name, figure(s.leg_a_va + s.leg_b_va)));
    }
    return say("directory/loads", joined("list/semicolon", words));
}

namespace {

struct Protected {
    bool gfci = false, afci = false, at_outlet = false;
};

Phrase protection_means(Protected has) {
    if (has.gfci && has.afci) return has.at_outlet ? say("directory/means-both-outlet") : say("directory/means-both");
    if (has.gfci) return has.at_outlet ? say("directory/means-gfci-outlet") : say("directory/means-gfci");
    if (has.afci) return has.at_outlet ? say("directory/means-afci-outlet") : say("directory/means-afci");
    return {};
}

} // namespace

Phrase abbreviations(PanelEntries const& entries, bool legs) {
    auto const any = [&](auto const& says) { return std::ranges::any_of(entries.entries, says); };
    auto const is_said = [](Protection p) { return p == Protection::breaker || p == Protection::outlet; };
    Protected const has{
        any([&](Entry const& e) { return is_said(e.gfci); }), any([&](Entry const& e) { return is_said(e.afci); }),
        any([](Entry const& e) { return e.gfci == Protection::outlet || e.afci == Protection::outlet; })};
    Phrases words;
    if (legs) words.push_back(say("directory/means-legs"));
    words.push_back(say("directory/means-mark"));
    if (any([](Entry const& e) { return e.poles == 2; })) words.push_back(say("directory/means-two-pole"));
    if (!entries.ties.empty()) words.push_back(say("directory/means-bracket"));
    if (auto protection = protection_means(has); !protection.empty()) words.push_back(std::move(protection));
    if (any(&Entry::smaller_wire)) words.push_back(say("directory/means-max"));
    return say("list/stop", joined("list/semicolon", words));
}

} // namespace legwork
