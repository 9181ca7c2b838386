// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which panel a circuit is in, and which feeds which.
#include "job/reading.h"
#include "job/supply_words.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

std::size_t number_of(Reading const& r, std::string_view panel) {
    return static_cast<std::size_t>(std::ranges::find(r.job.panels, panel, &typed::Panel::name) - r.job.panels.begin());
}

// The panel above; null when it has none, or one that is not there.
typed::Panel const* above(Reading const& r, typed::Panel const& p) {
    return p.feeder ? panel_of(r.job, p.feeder->panel) : nullptr;
}

bool is_in_cycle(Reading const& r, typed::Panel const& p) {
    typed::Panel const* at = above(r, p);
    for (std::size_t steps = 0; at && steps < r.job.panels.size(); ++steps, at = above(r, *at))
        if (at == &p) return true;
    return false;
}

// The kinds of source that reach a panel, through the panels above. Empty when that is not known.
std::vector<SupplyKind> kinds(Reading const& r, typed::Panel const& p, std::size_t depth = 0) {
    std::vector<SupplyKind> found;
    if (depth > r.job.panels.size()) return found;
    if (p.supply) return {p.supply->kind};
    for (auto const& name : p.supplies)
        if (auto const* s = supply_of(r.job, name)) found.push_back(s->kind);
    if (auto const* parent = above(r, p)) return kinds(r, *parent, depth + 1);
    return found;
}

bool is_dc_panel(Reading const& r, typed::Panel const& p) {
    auto const all = kinds(r, p);
    return !all.empty() && std::ranges::all_of(all, is_direct_current);
}

// On direct current behind the AC circuit of its power supply.
bool has_power_supply(Reading const& r, typed::Panel const& p) {
    auto const* parent = above(r, p);
    if (!parent || !p.supply || !is_direct_current(p.supply->kind)) return false;
    auto const from = kinds(r, *parent);
    return !from.empty() && std::ranges::none_of(from, is_direct_current);
}

bool has_two_legs(SupplyKind kind) { return kind == SupplyKind::split_120_240 || kind == SupplyKind::wye_120_208; }

void check_sources(Reading& r, std::size_t i) {
    std::vector<SupplyKind> all;
    for (auto const& name : r.job.panels[i].supplies)
        if (auto const* s = supply_of(r.job, name)) all.push_back(s->kind);
    auto const differs = [&](SupplyKind k) { return is_direct_current(k) ? k != all[0] : is_direct_current(all[0]); };
    if (std::ranges::any_of(all, differs))
        r.panels[i].complain(
            "supplies",
            "direct current and alternating current, or two voltages of direct current, cannot share a panel",
            "give each its own  [[panel]]");
}

// A sub-panel's own supply may take hots away from what feeds it, and add none.
void check_narrowing(Reading& r, TableReader& t, typed::Panel const& p, typed::Panel const& parent) {
    auto const from = kinds(r, parent);
    if (!p.supply || from.empty()) return;
    auto const kind = p.supply->kind;
    if (has_power_supply(r, p) && !parent.listed)
        return t.complain(
            "feeder", "a power supply hangs on a circuit, and of this panel none is listed",
            fmt::format("list {} with its circuits, or take  feeder  away and say  fed_from", quoted(parent.name)));
    if (has_power_supply(r, p)) return;
    if (is_direct_current(kind) || std::ranges::any_of(from, is_direct_current)) {
        if (std::ranges::find(from, kind) == from.end())
            t.complain(
                "supply", fmt::format("{} is fed by another kind of current", t.what()),
                "a panel behind an inverter or a converter has its own  supply:  take  feeder  away, say  fed_from");
    } else if (has_two_legs(kind) && std::ranges::find(from, kind) == from.end()) {
        t.complain("supply", fmt::format("the panel {} does not bring that to its feeder", quoted(parent.name)),
                   "take  supply  away: a sub-panel has what feeds the panel above; it may only have less");
    }
}

// The panel before this one in the file that the same circuit feeds; null when there is none. Power supplies may share
// a circuit as other loads do.
typed::Panel const* fed_before(Reading const& r, std::size_t i) {
    auto const& own = *r.job.panels[i].feeder;
    for (std::size_t k = 0; k < i; ++k)
        if (auto const& f = r.job.panels[k].feeder;
            f && f->panel == own.panel && f->mark == own.mark &&
            !(has_power_supply(r, r.job.panels[k]) && has_power_supply(r, r.job.panels[i])))
            return &r.job.panels[k];
    return nullptr;
}

void check_feeder(Reading& r, std::size_t i) {
    TableReader& t = r.panels[i];
    typed::Panel const& p = r.job.panels[i];
    if (!p.feeder) return;
    auto const& [panel, mark] = *p.feeder;
    if (!contains(r.panel_names, panel))
        return t.complain(
            "feeder", fmt::format("there is no panel {}", quoted(panel)),
            did_you_mean(panel, r.panel_names, "write \"PANEL/MARK\" of the circuit that feeds this panel"));
    if (auto const* parent = above(r, p); parent && !parent->listed) return check_narrowing(r, t, p, *parent);
    if (!r.is_circuit(t, mark, t.value_at("feeder"))) return;
    if (auto const* c = r.circuit(mark); c && contains(r.panel_names, c->panel) && c->panel != panel)
        return t.complain("feeder",
                          fmt::format("{} is in the panel {}, not in {}", mark, quoted(c->panel), quoted(panel)),
                          fmt::format("write  feeder = \"{}/{}\"", c->panel, mark));
    if (is_in_cycle(r, p))
        return t.complain("feeder", "in the end this panel feeds itself", "name a circuit of the panel above");
    if (auto const* first = fed_before(r, i))
        return t.complain(
            "feeder", fmt::format("{} feeds the panel {} already, and its cable ends there", mark, quoted(first->name)),
            fmt::format("name a circuit of its own; for a panel behind the lugs of {} a circuit of that one",
                        quoted(first->name)));
    if (auto const* parent = above(r, p)) check_narrowing(r, t, p, *parent);
}

void check_efficiency(Reading& r, std::size_t i) {
    TableReader& t = r.panels[i];
    typed::Panel const& p = r.job.panels[i];
    if (!t.has("efficiency") || has_power_supply(r, p)) return;
    if (t.has("feeder") && (!p.feeder || !above(r, p))) return; // told already
    t.complain("efficiency", "\"efficiency\" is of the power supply between an AC circuit and a DC panel",
               p.supply && is_direct_current(p.supply->kind)
                   ? "name the AC circuit that the power supply hangs on:  feeder = \"Main/PS\""
                   : "take  efficiency  away; a DC panel has it beside  supply = \"12 V DC\"  and  feeder");
}

// Fuses protect direct current here, breakers the rest; nothing of direct current shares a neutral.
void check_current(Reading& r, std::size_t i) {
    TableReader& t = r.circuits[i];
    auto const n = number_of(r, r.job.circuits[i].panel);
    if (n == r.job.panels.size() || kinds(r, r.job.panels[n]).empty()) return;
    bool const dc = is_dc_panel(r, r.job.panels[n]);
    if (!dc && t.has("fuse") && !t.has("breaker"))
        t.complain("fuse", "\"fuse\" belongs to a panel of direct current", "write  breaker = \"...\"");
    if (dc && t.has("multiwire"))
        t.complain("multiwire", "direct current has no shared neutral", "take  multiwire  away");
}

} // namespace

void resolve_panels(Reading& r) {
    std::vector<std::string> listed; // those that circuits are in
    for (typed::Panel const& p : r.job.panels)
        if (p.listed && !p.name.empty()) listed.push_back(p.name);
    auto const listed_tables = std::ranges::count_if(r.job.panels, &typed::Panel::listed);
    for (std::size_t i = 0; i < r.circuits.size(); ++i) {
        auto& panel = r.job.circuits[i].panel;
        TableReader& t = r.circuits[i];
        if (auto const* p = panel_of(r.job, panel); !panel.empty() && p && !p->listed) {
            t.complain("panel", fmt::format("the panel {} is not listed, and nothing of it is", quoted(panel)),
                       did_you_mean("", listed, "take  listed = false  off that panel and give its  spaces"));
        } else if (!panel.empty() && !contains(r.panel_names, panel)) {
            t.unknown_word(t.value_at("panel"), "panel", panel, listed);
        } else if (panel.empty() && listed_tables == 1) {
            panel = std::ranges::find(r.job.panels, true, &typed::Panel::listed)->name;
        } else if (panel.empty() && !t.has("panel") && listed_tables > 1) {
            t.complain("panel", "the job has several panels, and this does not say which",
                       did_you_mean("", listed, "add  panel = \"...\""));
        }
    }
}

void check_feeders(Reading& r) {
    for (std::size_t i = 0; i < r.panels.size(); ++i) {
        check_sources(r, i);
        check_feeder(r, i);
        check_efficiency(r, i);
    }
    for (std::size_t i = 0; i < r.circuits.size(); ++i) check_current(r, i);
}

} // namespace legwork
