// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/signs.h"

#include "codebook/cite.h"
#include "panel/fed_from.h"
#include "panel/feeds.h"
#include "reckon/backfeed.h"
#include "reckon/wire_rating.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <iterator>

namespace legwork {

namespace {
using Signs = std::vector<PanelSign>;

using Words = PanelSign::Words;
using Fills = std::vector<std::pair<std::string_view, std::string>>;

// One pass, so that braces in what a person typed stay what they are.
std::string filled(std::string_view text, Fills const& fills) {
    std::string all;
    while (!text.empty()) {
        auto const open = std::min(text.find('{'), text.size()), close = text.find('}', open);
        all += text.substr(0, open);
        if (close == std::string_view::npos) break;
        auto const name = text.substr(open + 1, close - open - 1);
        auto const at = std::ranges::find(fills, name, [](auto const& f) { return f.first; });
        if (at != fills.end()) all += at->second;
        text.remove_prefix(close + 1);
    }
    return all;
}

// Signs speak several languages: no "and".
std::string in_a_row(Words const& words, std::string_view language) {
    std::string all;
    for (std::string const& w : words) {
        if (!all.empty()) all += ", ";
        all += w.empty() ? std::string(in_language(unnamed_supply(), language)) : w;
    }
    return all;
}

// A cord or a stand-alone source on one phase is no service, nor is what another panel feeds.
bool is_service(Panel const& panel) {
    return !panel.feeder_said && panel.above_named == Above::service &&
           std::ranges::any_of(panel.feeds, [](Feed const& f) { return has_two_hots(f.kind); });
}

std::string name_of(Circuit const& c) { return c.name.empty() ? c.mark : fmt::format("{} ({})", c.name, c.mark); }
// A figure that is not known is written in by hand.
std::string amps_or_blank(std::optional<Amps> a) { return a ? text(*a) : "____ A"; }

std::vector<Circuit const*> inlets_of(Panel const& panel) {
    std::vector<Circuit const*> found;
    std::ranges::copy_if(panel.circuits, std::back_inserter(found),
                         [](Circuit const* c) { return c->is(PanelPart::generator_inlet); });
    return found;
}

void add_off(Feed const& f, std::vector<PanelSign::Off>& off) {
    if (!f.off.empty()) off.push_back({f.source, f.off});
}

// A panel's sources, and the inlets that no source of the file is named after.
std::vector<std::string> ways_in(Panel const& panel) {
    std::vector<std::string> names;
    for (Feed const& f : panel.feeds) names.push_back(f.source);
    for (Circuit const* inlet : inlets_of(panel))
        if (std::ranges::count(names, inlet->name) == 0) names.push_back(name_of(*inlet));
    return names;
}

// What the wire lets run for hours, where that is less than what the breaker lets; nothing where it is not, or where
// the breaker does not belong on the wire at all.
std::optional<Amps> lesser_continuous(Case const& c, Circuit const& circuit) {
    Use const* use = circuit.use;
    if (!circuit.breaker || circuit.mca || circuit.mop || circuit.is_motor() || (use && use->duty_cycle)) return {};
    auto const piece = thinnest_piece(circuit);
    auto const wire = piece ? wire_rating(c, circuit, piece->gauge) : std::nullopt;
    if (!wire) return {};
    bool const heating = use && use->heating && c.book.heating_wire_in_full;
    auto largest = std::optional(wire->breaker);
    if (heating)
        largest = standard_breaker_at_or_above(c.book, percent(wire->base, c.book.heating_breaker_percent.value));
    if (!largest || *circuit.breaker > *largest) return {}; // wire-breaker-fits speaks
    Amps const of_breaker = percent(*circuit.breaker, c.book.continuous_percent.value);
    Amps const of_wire = heating ? wire->base : percent(wire->base, c.book.continuous_percent.value);
    return of_wire < of_breaker ? std::optional(of_wire) : std::nullopt;
}

Signs of_inlets(Panel const& panel) {
    Signs found;
    for (Circuit const* inlet : inlets_of(panel))
        found.push_back({.circuit = inlet->mark, .fills = {{"amps", {amps_or_blank(inlet->breaker)}}}});
    return found;
}

Signs of_bridged(std::vector<Feed> const& sources) {
    Signs found;
    for (Feed const& f : sources) {
        if (f.kind != SupplyKind::bridged_120) continue;
        found.push_back({.fills = {{"source", {f.source}}}});
        add_off(f, found.back().off);
    }
    return found;
}

Signs of_several(Panel const& panel) {
    auto const names = ways_in(panel);
    if (panel.feeder_said || names.size() < 2) return {};
    PanelSign sign{.fills = {{"sources", names}}};
    for (Feed const& f : panel.feeds)
        if (f.kind != SupplyKind::bridged_120) add_off(f, sign.off); // that one has its own sign
    return {sign};
}

Signs of_feeder(Panel const& panel) {
    if (!panel.feeder) return {};
    return {{.fills = {{"panel", {panel.above_called}}, {"marks", {panel.feeder->mark}}}}};
}

Signs of_interactive(Case const& c, Panel const& panel) {
    auto const b = backfeed_of(c, panel);
    if (b.sources.empty()) return {};
    std::vector<std::string> names, marks;
    for (Circuit const* s : b.sources) {
        names.push_back(name_of(*s));
        marks.push_back(s->mark);
    }
    return {{.fills = {{"sources", names}, {"marks", marks}}}};
}

Signs of_far_sources(Case const& c, Panel const& panel) {
    Signs found;
    auto const b = backfeed_of(c, panel);
    if (b.leave == BackfeedLeave::none_asked || b.leave == BackfeedLeave::sum) return found;
    for (Circuit const* s : b.sources) found.push_back({.circuit = s->mark, .fills = {{"marks", {s->mark}}}});
    return found;
}

Signs of_lesser_wires(Case const& c, Panel const& panel) {
    Signs found;
    for (Circuit const* circuit : panel.circuits)
        if (auto const most = lesser_continuous(c, *circuit))
            found.push_back({.circuit = circuit->mark, .fills = {{"marks", {circuit->mark}}, {"amps", {text(*most)}}}});
    return found;
}

// Names rather than values: the uses are the job file's words.
bool is_of_a_pool(Circuit const& c) {
    constexpr std::array<std::string_view, 3> kPools{"hot tub", "hydromassage tub", "pool pump"};
    return c.use && std::ranges::count(kPools, c.use->name) > 0;
}
Signs of_tubs(Panel const& panel) {
    Signs found;
    for (Circuit const* circuit : panel.circuits)
        if (is_of_a_pool(*circuit) && (circuit->gfci == Protection::breaker || circuit->gfci == Protection::outlet))
            found.push_back({.circuit = circuit->mark, .fills = {{"marks", {circuit->mark}}}});
    return found;
}

// The signs of one reason, as many as the panel calls for.
Signs called_for(Case const& c, Panel const& panel, SignFor reason) {
    bool const service = is_service(panel), dwelling = c.building.dwelling.has_value();
    auto const when = [](bool yes, PanelSign sign) { return yes ? Signs{std::move(sign)} : Signs{}; };
    switch (reason) {
    case SignFor::service: return when(service, {.fills = {{"main", {amps_or_blank(panel.main)}}}});
    case SignFor::dwelling_service: return when(service && dwelling && panel.building.empty(), {});
    case SignFor::other_service: return when(service && !dwelling, {});
    case SignFor::feeder: return dwelling ? Signs{} : of_feeder(panel);
    case SignFor::outbuilding: return when(!panel.building.empty(), {.fills = {{"building", {panel.building}}}});
    case SignFor::fed_dwelling: return when(dwelling && !panel.building.empty() && panel.feeder_said, {});
    case SignFor::ground_fault_tub: return of_tubs(panel);
    case SignFor::several_sources: return of_several(panel);
    case SignFor::inlet: return of_inlets(panel);
    case SignFor::single_120_volt: return of_bridged(panel.feeds);
    case SignFor::interactive: return of_interactive(c, panel);
    case SignFor::far_source: return of_far_sources(c, panel);
    case SignFor::lesser_wire: return of_lesser_wires(c, panel);
    }
    return {};
}
} // namespace

std::vector<PanelSign> signs_of(Case const& c, Panel const& panel) {
    Signs all;
    if (panel.is_dc()) return all;
    for (Sign const& sign : signs()) {
        auto const reference = cite(c.book, fmt::format("panel-sign/{}", sign.id));
        bool const asked = !reference.section.empty() && !(sign.of_the_panel && panel.existing);
        if (!asked && !sign.advised) continue;
        for (PanelSign& one : called_for(c, panel, sign.reason)) {
            one.sign = &sign;
            one.reference = reference;
            all.push_back(std::move(one));
        }
    }
    return all;
}

std::string text(PanelSign const& sign, std::string_view language) {
    std::string off;
    for (auto const& o : sign.off)
        off += filled(in_language(off_first(), language),
                      {{"source", in_a_row({o.source}, language)}, {"marks", in_a_row(o.marks, language)}});
    Fills fills{{"off", off}};
    for (auto const& [place, with] : sign.fills) fills.emplace_back(place, in_a_row(with, language));
    return filled(in_language(sign.sign->text, language), fills);
}

} // namespace legwork
