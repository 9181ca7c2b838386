// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/run_drop.h"

#include "balance/loads.h"
#include "cable/run.h"
#include "codebook/stock/cables.h"
#include "reckon/draw.h"
#include "reckon/leg_amps.h"

#include <algorithm>
#include <cmath>

namespace legwork {

namespace {
double unknown_load(Case const& c, Amps breaker) {
    return value(percent(breaker, drop_limits(c.book).unknown_percent.value));
}

bool draws_nothing(Circuit const& circuit) {
    Use const* use = circuit.use;
    return circuit.off || (use && (use->source || (use->demand == Demand::none && !circuit.load)));
}

void raise(LegPercents& most, LegPercents const& to) {
    most = {std::max(most.a, to.a), std::max(most.b, to.b), std::max(most.between, to.between)};
}

LegAmps held(LegAmps legs, double most) { return {std::min(legs.a, most), std::min(legs.b, most)}; }

void reckon_loads(Case const& c, Panel const& panel, FeederDrop& d) {
    Circuit const& feeder = *d.feeder;
    d.load_known = feeder.feeds_loads() ? loads_known(panel) : is_draw_known(feeder);
    if (!d.load_known && !feeder.breaker) return;
    double const share = feeder.breaker ? unknown_load(c, *feeder.breaker) : 0;
    for (Feed const& feed : panel.feeds) {
        if (is_dc(feed.kind)) continue;
        for (InUse const& use : in_use(c, panel, feed)) {
            LegAmps at = d.load_known ? use.legs : LegAmps{share, share};
            if (!d.load_known && feeder.poles == 1) at.b = 0;
            LegAmps const asked = at;
            if (feeder.breaker) at = held(at, use.everything ? share : value(*feeder.breaker));
            auto const percents = feeder_percents(feeder, at, feed.kind, d.run.ohms);
            if (percents.worst() > d.own.worst()) {
                d.amperes = feeder.poles == 1 ? at.a + at.b : std::max(at.a, at.b);
                d.when = words(use);
                d.in_situation = !use.everything;
                d.at = at;
                d.kind = feed.kind;
                d.held = asked.a > at.a || asked.b > at.b;
            }
            raise(d.own, percents);
        }
    }
}

// Each panel once, those ahead of it first.
class Feeders {
public:
    explicit Feeders(Case const& c) : c_(c), known_(c.building.panels.size()) {}

    std::optional<FeederDrop> const& of(std::size_t panel) {
        if (!known_[panel]) {
            known_[panel].emplace(); // nothing, should panels feed each other in a circle
            *known_[panel] = reckon(c_.building.panels[panel]);
        }
        return *known_[panel];
    }

private:
    std::optional<FeederDrop> reckon(Panel const& panel) {
        Circuit const* feeder = panel.feeder;
        if (!feeder || panel.is_dc()) return std::nullopt;
        FeederDrop d;
        d.feeder = feeder;
        d.run = run_length(*feeder);
        reckon_loads(c_, panel, d);
        d.total = d.own + ahead(*feeder);
        return d;
    }

    // What the panel ahead has lost where this feeder begins.
    LegPercents ahead(Circuit const& feeder) {
        Panel const* above = feeder.panel;
        if (!above || !above->listed) return {}; // what is lost ahead of it nobody knows
        auto const& drop = of(above->number);
        if (!drop) return {};
        if (feeder.poles == 2) return drop->total;
        Placement const* at = placement_of(c_.plan, feeder.mark);
        double percent = std::max(drop->total.a, drop->total.b);
        if (at && !at->slots.empty())
            percent = above->layout.leg(at->slots.front().space) == Leg::a ? drop->total.a : drop->total.b;
        return {percent, percent, percent};
    }

    Case const& c_;
    std::vector<std::optional<std::optional<FeederDrop>>> known_;
};
} // namespace

bool loads_known(Panel const& panel) {
    return std::ranges::all_of(panel.circuits, [](Circuit const* o) {
        if (draws_nothing(*o)) return true;
        return o->feeds_loads() ? loads_known(*o->fed_panel()) : is_draw_known(*o);
    });
}

double LegPercents::worst() const { return std::max({a, b, between}); }
LegPercents operator+(LegPercents const& x, LegPercents const& y) {
    return {x.a + y.a, x.b + y.b, x.between + y.between};
}

RunLength run_length(Circuit const& circuit) {
    RunLength found;
    found.whole = !circuit.run.empty();
    for (Piece const& s : circuit.run) {
        CableKind const* kind = s.kind;
        if (kind && !kind->power) break;
        if (!kind || !s.length) {
            found.whole = false;
            continue;
        }
        found.pieces.push_back({*kind->gauge, circuit.metal, *s.length});
        found.length += *s.length;
    }
    auto const ohms = one_way_ohms(found.pieces);
    if (!ohms) return {{}, false, {}, 0}; // a wire that is not made
    found.ohms = *ohms;
    return found;
}

std::optional<BranchDrop> branch_drop(Case const& c, Circuit const& circuit) {
    if (circuit.on_dc() || circuit.fed_panel() || draws_nothing(circuit)) return std::nullopt;
    BranchDrop d;
    d.run = run_length(circuit);
    if (d.run.pieces.empty()) return std::nullopt;
    if (auto const draw = draw_of(c, circuit)) {
        d.amperes = value(draw->current);
        d.of = draw->volts;
    } else {
        d.load_known = false;
        d.of = lowest_volts(circuit);
        if (!circuit.breaker || d.of == 0_V) return std::nullopt;
        d.amperes = unknown_load(c, *circuit.breaker);
    }
    d.volts = two_wire_drop(d.amperes, d.run.ohms);
    return d;
}

std::vector<std::optional<FeederDrop>> feeder_drops(Case const& c) {
    Feeders feeders(c);
    std::vector<std::optional<FeederDrop>> all;
    for (std::size_t i = 0; i < c.building.panels.size(); ++i) all.push_back(feeders.of(i));
    return all;
}

LegPercents feeder_percents(Circuit const& feeder, LegAmps const& at, SupplyKind kind, double ohms) {
    double const to_neutral = value(volts_to_neutral(kind)), between = value(volts_between_legs(kind));
    if (feeder.poles == 1) { // one hot carries both legs of its panel
        double const percent = two_wire_drop(at.a + at.b, ohms) / to_neutral * 100;
        return {percent, percent, percent};
    }
    auto const drop = three_wire_drop(at.a, at.b, phase_degrees(kind), ohms);
    return {drop.a / to_neutral * 100, drop.b / to_neutral * 100, between > 0 ? drop.between / between * 100 : 0};
}

std::string_view how_far(Gauge gauge, Amps breaker) {
    bool const too_large = gauge > Gauge::awg10 && breaker <= 20_A && breaker > 0_A;
    return too_large ? "to the last box, with short tails that the terminals take" : "all the way";
}

bool is_over_limit(double percent, Figure const& limit) {
    return std::round(percent * 10) > static_cast<double>(limit.value * 10);
}

bool is_at_fault(DropLimits const& limits, FeederDrop const& d) {
    return !d.run.pieces.empty() &&
           (is_over_limit(d.own.worst(), limits.part_percent) || is_over_limit(d.total.worst(), limits.total_percent));
}

bool is_told_ahead(Case const& c, std::vector<std::optional<FeederDrop>> const& feeders, Panel const& panel) {
    auto const& limits = drop_limits(c.book);
    Panel const* at = &panel;
    for (std::size_t steps = 0; at && at->above && at->above->listed && steps < feeders.size(); ++steps) {
        at = at->above;
        auto const& drop = feeders[at->number];
        if (drop && is_at_fault(limits, *drop)) return true;
    }
    return false;
}

} // namespace legwork
