// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "propose/wanted.h"

#include "codebook/cite.h"
#include "codebook/stock/usual.h"
#include "reckon/say.h"
#include "reckon/wire_need.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace legwork {

namespace {
class WantedByCircuit {
public:
    WantedByCircuit(Case const& c, Circuit const& circuit) : c_(c), circuit_(circuit), use_(circuit.use) {}

    Wanted reckon() {
        if (circuit_.on_dc()) return by_hand();
        auto const s = sides(c_, circuit_);
        if (s && s->draw.by != Draw::By::nameplate) {
            by_load(*s);
        } else if (!circuit_.mca) {
            if (!by_custom()) return unknown(what_is_missing());
            return by_household(), std::move(w_);
        }
        by_nameplate();
        by_household();
        return std::move(w_);
    }

private:
    Wanted unknown(std::string what) {
        w_.find_out = std::move(what);
        return std::move(w_);
    }

    Wanted by_hand() {
        if (auto const draw = draw_of(c_, circuit_))
            w_.steps.push_back(
                arithmetic(fmt::format("{} at {} = {}", text(draw->load), text(draw->volts), exact(draw->current))));
        return unknown("fuse and wire by hand: none are proposed for direct current, since the tables here are of "
                       "building wiring at 120 V and 240 V. The fuse is larger than what it draws and no larger than "
                       "the wire carries; the wire is as thick as the few volts that may be lost ask");
    }

    void say(std::string says, std::string_view topic) { w_.steps.push_back(step(c_, std::move(says), topic)); }

    enum class Of { any_breaker, new_breaker };
    void raise(Amps to, std::string_view topic, Source source, Of of = Of::any_breaker) {
        if (of == Of::any_breaker) w_.given = std::max(w_.given, to);
        if (to <= w_.breaker) return;
        w_.breaker = to;
        w_.topic = topic;
        w_.source = source;
    }

    void draw(Sides const& s) {
        if (s.draw.by == Draw::By::reading)
            return w_.steps.push_back(arithmetic(fmt::format("clamp reading: {}", exact(s.draw.current))));
        auto const nameplate = *circuit_.load;
        if (s.draw.demand) say(range_words(c_.book, nameplate), "wire-load-fits/range");
        if (s.draw.load < range_or(nameplate))
            w_.steps.push_back(
                arithmetic(fmt::format("resistance heat made for 240 V: {} x ({} / 240)² = {}",
                                       text(range_or(nameplate)), s.draw.volts.count, text(s.draw.load))));
        w_.steps.push_back(
            arithmetic(fmt::format("{} at {} = {}", text(s.draw.load), text(s.draw.volts), exact(s.draw.current))));
    }
    VoltAmperes range_or(VoltAmperes load) const {
        return use_ && use_->branch_demand ? range_demand(c_.book, load) : load;
    }

    void by_load(Sides const& s) {
        draw(s);
        auto const need = needed(c_, s);
        w_.wire = need.wire;
        raise(s.draw.current, "wire-load-fits", cite(c_.book, "wire-load-fits").source);
        if (auto const why = continuous(c_, circuit_)) by_hours(s, *why);
        if (on_the_wire(c_, s) > s.draw.current) by_motor(s);
        if (auto const least = least_for_range(c_, circuit_); least && *least > w_.breaker) {
            say(fmt::format("a range of {} or more has at least {}",
                            text(VoltAmperes{c_.book.range.large_from_va->value * 1000}), text(*least)),
                "wire-load-fits/large-range");
            raise(*least, "wire-load-fits/large-range", c_.book.range.large_least_breaker->source);
        }
    }

    void by_hours(Sides const& s, Continuous const& why) {
        auto const share = c_.book.continuous_percent;
        Amps const large{(s.draw.current.count * 100 + share.value - 1) / share.value};
        auto const who = use_ ? use_->name : "its load";
        say(fmt::format("{}, {}: {} x {} % = {}{}", who, why.words, exact(s.draw.current), 10000 / share.value,
                        exact(large),
                        wire_in_full(c_, s)                      ? ", of the breaker and not of the wire"
                        : why.breaker == Continuous::Breaker::no ? ", of the wire and not of the breaker"
                                                                 : ""),
            why.topic);
        if (why.breaker != Continuous::Breaker::no) raise(large, why.topic, cite(c_.book, why.topic).source);
    }

    // The code asks the quarter of the wire. A breaker smaller than its wire asks trips when the motor starts.
    void by_motor(Sides const& s) {
        auto const wire = on_the_wire(c_, s);
        say(fmt::format("its motor: {} x {} % = {} for the wire, and its breaker no smaller{}", exact(s.draw.current),
                        c_.book.motor_wire_percent.value, exact(wire), at_the_start(s.draw.current)),
            "wire-load-fits/motor");
        raise(wire, "wire-load-fits/motor", c_.book.motor_wire_percent.source, Of::new_breaker);
    }

    // What may be done where a motor trips its breaker as it starts; a nameplate says it itself.
    std::string at_the_start(Amps draw) const {
        if (circuit_.mop || circuit_.mca) return {};
        Amps const most = percent(draw, c_.book.motor_breaker_percent.value);
        auto const size = standard_breaker_at_or_above(c_.book, most);
        return size ? fmt::format(
                          "; should that trip at the start, one of up to {} may stand on the same wire ({} x {} % = "
                          "{})",
                          text(*size), exact(draw), c_.book.motor_breaker_percent.value, exact(most))
                    : std::string();
    }

    void by_nameplate() {
        if (circuit_.mca) {
            say(fmt::format("nameplate: wire and breaker of at least {} (mca)", exact(*circuit_.mca)),
                "wire-breaker-fits/nameplate");
            raise(*circuit_.mca, "wire-breaker-fits/nameplate", Source::practice);
        }
        if (circuit_.mop) {
            say(fmt::format("nameplate: a breaker of {} at most (mop){}", exact(*circuit_.mop),
                            circuit_.mca < circuit_.mop ? "; up to that it may be larger, should it trip at the start"
                                                        : ""),
                "wire-breaker-fits/nameplate");
            w_.most = *circuit_.mop;
        }
    }

    bool split() const { return circuit_.split || circuit_.pair; }

    void by_household() {
        auto const asked = c_.building.dwelling
                               ? household_circuit(c_.book, use_name(circuit_), circuit_.poles, split())
                               : std::nullopt;
        if (!asked || asked->breaker <= w_.breaker) return;
        say(fmt::format("{} {}", asked->words, text(asked->breaker)), asked->topic);
        raise(asked->breaker, asked->topic, asked->source);
    }

    // The load is not known, and need not be. False where it must be.
    bool by_custom() {
        std::string const unknown = "its load is not known; ";
        auto const asked = household_circuit(c_.book, use_name(circuit_), circuit_.poles, split());
        if (asked && c_.building.dwelling) {
            say(fmt::format("{}{} {}", unknown, asked->words, text(asked->breaker)), asked->topic);
            raise(asked->breaker, asked->topic, asked->source);
            return true;
        }
        if (!circuit_.outlets.empty()) return by_outlets(unknown);
        auto const usual = customary_circuit(c_.book, use_name(circuit_), circuit_.poles);
        if (!usual) return false;
        w_.steps.push_back({fmt::format("{}{} {}", unknown, usual->words, text(usual->breaker)),
                            {std::string(c_.book.edition), {}, Source::practice}});
        raise(usual->breaker, "wire-load-fits", Source::practice);
        return true;
    }

    // So large that what is plugged in may draw what the receptacle is made for.
    bool by_outlets(std::string const& unknown) {
        int amps = 0;
        for (Receptacle const* r : circuit_.outlets) amps = std::max(amps, r->amps);
        say(fmt::format("{}{} is made for {} A", unknown, outlets_words(circuit_), amps), "wire-outlet/amperes");
        raise(Amps{amps * 1000}, "wire-outlet/amperes", cite(c_.book, "wire-outlet/amperes").source);
        return true;
    }

    std::string what_is_missing() const {
        if (use_ && use_->source)
            return "what it can give: read the output current on its nameplate, and size breaker and wire by the "
                   "instructions that come with it";
        if (use_ && (use_->demand == Demand::cooling || use_->demand == Demand::heat_pump))
            return "its nameplate: the minimum circuit ampacity (mca) and the largest breaker (mop)";
        if (use_ && use_->fixed) return "its load: read it on the nameplate";
        return "what hangs on it: its load, its use, or its receptacle types (outlets)";
    }

    Case const& c_;
    Circuit const& circuit_;
    Use const* use_;
    Wanted w_;
};

bool in_row(ReceptacleRow const& row, int amps) { return amps >= row.least && amps <= row.most; }
} // namespace

std::vector<Amps> possible_breakers(Case const& c, Circuit const& circuit, bool as_sold) {
    auto outlets = circuit.outlets;
    if (auto const* usual = receptacle_named(usual_receptacle(use_name(circuit), circuit.poles));
        usual && as_sold && !circuit.lists_outlets)
        outlets.push_back(usual);
    bool const for_receptacles = !outlets.empty() || (circuit.use && circuit.use->receptacle);
    auto const rows = c.book.receptacles;
    std::vector<Amps> all;
    for (int const size : c.book.standard_breakers) {
        if (Amps{size * 1000} < least_proposed_breaker()) continue;
        auto const row = std::ranges::find(rows, size, &ReceptacleRow::circuit);
        bool const above = rows.empty() || size > rows.back().circuit;
        bool const fits = !for_receptacles || (row == rows.end() ? above : true);
        bool const each = std::ranges::all_of(
            outlets, [&](Receptacle const* r) { return row == rows.end() ? r->amps == size : in_row(*row, r->amps); });
        if (fits && each) all.push_back(Amps{size * 1000});
    }
    return all;
}

Wanted wanted(Case const& c, Circuit const& circuit) {
    Panel const* fed = circuit.fed_panel();
    // An empty panel's feeder may say itself what it carries.
    bool const says = !circuit.feeds_loads() && (circuit.load || circuit.measured || circuit.mca);
    return fed && !says && !circuit.on_dc() ? wanted_by_panel(c, *fed) : WantedByCircuit(c, circuit).reckon();
}

} // namespace legwork
