// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "propose/sizing.h"

#include "building/trial.h"
#include "codebook/cable_places.h"
#include "codebook/stock/guess_where.h"
#include "codebook/stock/usual.h"
#include "reckon/say.h"
#include "reckon/wire_fit.h"
#include "reckon/wire_need.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Wire of the next thinner size that is made in this metal; the last is the largest that cables are named by.
std::vector<Gauge> gauges() {
    std::vector<Gauge> all;
    for (auto const& g : kGauges)
        if (g.gauge >= Gauge::awg14) all.push_back(g.gauge);
    return all;
}

std::optional<Gauge> thinnest_known(Member const& m) {
    auto const piece = thinnest_piece(*m.circuit);
    return piece ? std::optional(piece->gauge) : std::nullopt;
}

// " (5-15R and 5-20R)"
std::string all_outlets(std::vector<Member> const& members) {
    std::vector<std::string> each;
    for (Member const& m : members)
        if (auto words = outlets_words(*m.circuit); !words.empty()) each.push_back(std::move(words));
    return each.empty() ? std::string() : " (" + listed(each) + ")";
}

// Of a circuit of which no cable is said its words tell alone.
WirePlace where_of(Circuit const& circuit, std::size_t piece) {
    if (piece < circuit.run.size()) return circuit.run[piece].where;
    bool const open = stands_in_the_open(circuit.name, circuit.room, circuit.places);
    return open && !circuit.fed_panel() ? WirePlace::outdoors : WirePlace::unsaid;
}

// " UF" where the plain cable may not run.
std::string type_for(Case const& c, Circuit const& circuit, std::size_t piece) {
    auto const* plain = cable_place_row(c.book, CableType::indoor);
    bool const may = !plain || may_run(*plain, where_of(circuit, piece)) == MayRun::yes;
    if (may || circuit.wiring == Wiring::conduit || circuit.on_dc()) return {};
    return fmt::format(" {}", cable_places(c.book).wet_type);
}

std::string eased_words(std::string_view topic) {
    if (topic == "wire-breaker-fits/heating") return ", and feeding fixed heating may stand on ";
    if (topic == "wire-breaker-fits/dwelling-feeder") return ", and feeding a whole dwelling may stand on ";
    if (topic == "wire-breaker-fits/nameplate") return ", and by the nameplate may stand on ";
    return {};
}
} // namespace

std::string Sizing::whose(Member const& m) const {
    return members_.size() > 1 ? m.circuit->mark + ": " : std::string();
}

Circuit Sizing::tried(Member const& m, Amps breaker, Gauge gauge) const {
    Circuit circuit = *m.circuit;
    if (!circuit.breaker) circuit.breaker = breaker;
    if (circuit.run.empty()) circuit.run.emplace_back();
    for (std::size_t const i : m.lacks) {
        Piece& piece = circuit.run[i];
        piece.called = kind(m, i, gauge);
        piece.kind = cable_kind_named(piece.called);
    }
    return circuit;
}

Building Sizing::building_with(Member const& m, Amps breaker, Gauge gauge) const {
    Sizes sizes{m.circuit->number, m.circuit->breaker ? std::nullopt : std::optional(breaker), {}};
    for (std::size_t const piece : m.lacks) {
        sizes.cables.resize(piece + 1);
        sizes.cables[piece] = kind(m, piece, gauge);
    }
    return with_sizes(c_.building, {&sizes, 1});
}

std::string Sizing::kind(Member const& m, std::size_t piece, Gauge gauge) const {
    auto const in = insulated_in(*m.circuit, piece);
    int const all = in.hots + (in.neutral ? 1 : 0) + (in.more.empty() ? 0 : 1);
    return fmt::format("{}/{}{}", name(gauge), std::clamp(all, 2, 4), type_for(c_, *m.circuit, piece));
}

std::optional<WireRefusal> Sizing::too_thin(Member const& m, Amps breaker, Gauge gauge) const {
    Circuit const circuit = tried(m, breaker, gauge);
    auto const rating = wire_rating(c_, circuit, gauge);
    auto const wire = wire_name(gauge, circuit.metal);
    if (!rating)
        return WireRefusal{fmt::format("{}{} is not made for circuits", whose(m), wire), "wire-breaker-fits/aluminium"};
    auto const column = fmt::format("{} °C column", rating->celsius);
    if (circuit.mca && rating->ampacity < *circuit.mca)
        return WireRefusal{fmt::format("{}{} carries {} ({}), less than the nameplate's {}", whose(m), wire,
                                       exact(rating->ampacity), column, exact(*circuit.mca)),
                           "wire-breaker-fits/nameplate"};
    auto const s = m.wanted.whole_panel ? std::nullopt : sides(c_, circuit);
    Amps const good = s ? good_for(c_, *s, *rating) : rating->ampacity;
    auto const ground = stands_by(c_, circuit, *rating);
    bool const stands = ground.has_value();
    if (!stands && rating->breaker < *circuit.breaker)
        return WireRefusal{fmt::format("{}{} takes a {} breaker at most{}", whose(m), wire, text(rating->breaker),
                                       rating->base < rating->ampacity || rating->topic == "wire-breaker-fits"
                                           ? std::string()
                                           : fmt::format(" ({} in the {})", exact(rating->ampacity), column)),
                           rating->topic};
    if (!stands) return WireRefusal{fmt::format("{}{} does not suit", whose(m), wire), rating->topic};
    // By that table a wire may be smaller than its load: not all of a dwelling runs at once.
    bool const by_table = m.wanted.whole_dwelling && ground == "wire-breaker-fits/dwelling-feeder";
    if (good < m.wanted.wire && !by_table)
        return WireRefusal{fmt::format("{}{} is good for {} ({}), less than {}", whose(m), wire, exact(good), column,
                                       exact(m.wanted.wire)),
                           rating->topic};
    return std::nullopt;
}

std::optional<Gauge> Sizing::least_gauge(Amps breaker, std::optional<WireRefusal>& last) const {
    for (Gauge const gauge : gauges()) {
        std::optional<WireRefusal> refused;
        for (Member const& m : members_)
            if (!m.lacks.empty() && !refused) refused = too_thin(m, breaker, gauge);
        if (!refused) return gauge;
        last = refused;
    }
    return std::nullopt;
}

bool Sizing::breaker_suits(Amps breaker, std::string& why) const {
    std::optional<WireRefusal> refused;
    for (Member const& m : members_) {
        auto const known = thinnest_known(m);
        if (known && !refused) refused = too_thin(m, breaker, *known);
    }
    bool const any_lacks = std::ranges::any_of(members_, [](Member const& m) { return !m.lacks.empty(); });
    if (!refused && (!any_lacks || least_gauge(breaker, refused))) return true;
    if (why.empty() && refused) why = fmt::format("a {} breaker is needed, and {}", text(breaker), refused->says);
    return false;
}

std::vector<Amps> Sizing::possible(Amps least, std::optional<Amps> most, std::optional<Amps> given,
                                   bool as_sold) const {
    auto sizes = given ? std::vector{*given} : possible_breakers(c_, *members_.front().circuit, as_sold);
    for (Member const& m : members_) {
        auto const also = possible_breakers(c_, *m.circuit, as_sold);
        std::erase_if(sizes, [&](Amps a) {
            Circuit circuit = *m.circuit;
            circuit.breaker = a;
            bool const listed_size = given || std::ranges::find(also, a) != also.end();
            return !listed_size || a < least || (most && a > *most) || !outlets_take_breaker(c_, circuit);
        });
    }
    return sizes;
}

std::optional<Amps> Sizing::breaker(std::string& why) {
    Amps least = least_proposed_breaker();
    std::optional<Amps> most, given;
    for (Member const& m : members_) {
        least = std::max(least, m.wanted.breaker);
        if (m.wanted.most && (!most || *m.wanted.most < *most)) most = m.wanted.most;
        if (m.circuit->breaker) given = m.circuit->breaker;
    }
    if (given && *given < least) { // of a pair
        why = fmt::format("{} is needed, and its pair has {}: one breaker size for both", exact(least), text(*given));
        return std::nullopt;
    }
    for (bool const as_sold : {true, false}) { // an appliance too large for its usual receptacle, or wired in
        std::string refused;
        for (Amps const a : possible(least, most, given, as_sold))
            if (breaker_suits(a, refused)) return a;
        why = refused;
    }
    if (why.empty() && most && *most < least)
        why = fmt::format("at least {} is needed, and {} is the most", exact(least), exact(*most));
    if (why.empty() && !standard_breaker_at_or_above(c_.book, least))
        why = fmt::format("a breaker of {} or more is needed, and {} is the largest here; divide the load",
                          exact(least), text(Amps{c_.book.standard_breakers.back() * std::int64_t{1000}}));
    if (why.empty())
        why = fmt::format("no standard breaker of {} or more{} suits its receptacles{}", exact(least),
                          most ? fmt::format(" and {} or less", exact(*most)) : std::string(), all_outlets(members_));
    return std::nullopt;
}

Step Sizing::good_wire(Member const& m, Amps breaker, Gauge gauge, std::string_view as) const {
    Circuit const circuit = tried(m, breaker, gauge);
    auto const rating = *wire_rating(c_, circuit, gauge);
    Amps const on = *circuit.breaker;
    auto const ground = stands_by(c_, circuit, rating).value_or(rating.topic);
    auto words = fmt::format("{}{} is good for {}", wire_name(gauge, circuit.metal), as, exact(rating.base));
    if (rating.base == rating.ampacity) words += fmt::format(" ({} °C column)", rating.celsius);
    if (on > rating.breaker)
        words += eased_words(ground) + text(on);
    else if (on > rating.base)
        words += fmt::format(", and may stand on {}, the next standard breaker", text(on));
    return step(c_, words, on > rating.breaker ? ground : rating.topic);
}

std::optional<Step> Sizing::known_wire(Member const& m, Amps breaker) const {
    auto const gauge = thinnest_known(m);
    if (!gauge || !wire_rating(c_, tried(m, breaker, *gauge), *gauge)) return std::nullopt;
    auto good = good_wire(m, breaker, *gauge, "");
    good.says = whose(m) + "its wire: " + good.says;
    return good;
}

std::optional<Gauge> Sizing::wire(Amps breaker, std::vector<Step>& steps, std::string& why) {
    std::optional<WireRefusal> last;
    auto const least = least_gauge(breaker, last);
    if (!least) {
        why = last->says + "; divide the load";
        return std::nullopt;
    }
    Member const& first = *std::ranges::find_if(members_, [](Member const& m) { return !m.lacks.empty(); });
    bool const smallest = !last || last->topic == "wire-breaker-fits/aluminium";
    if (!smallest) steps.push_back(step(c_, last->says, last->topic));
    steps.push_back(good_wire(first, breaker, *least, smallest ? ", the smallest wire of a circuit," : ""));
    decided_ = last && !smallest ? last->topic : wire_rating(c_, tried(first, breaker, *least), *least)->topic;
    std::optional<WireRefusal> lossy;
    for (Gauge const gauge : gauges()) {
        if (gauge < *least) continue;
        std::optional<WireRefusal> refused;
        for (Member const& m : members_)
            if (!m.lacks.empty() && !refused) refused = too_lossy(m, breaker, gauge);
        if (refused) {
            lossy = refused;
            continue;
        }
        if (lossy) {
            decided_ = lossy->topic;
            steps.push_back(step(c_, lossy->says, decided_));
            steps.push_back(arithmetic(fmt::format("so {} for the voltage drop, {}",
                                                   wire_name(gauge, first.circuit->metal), how_far(gauge, breaker))));
        }
        for (Member const& m : members_)
            if (!m.lacks.empty()) say_drop(m, breaker, gauge, steps);
        return gauge;
    }
    why = lossy->says + "; bring the panel nearer to the load, or divide the load";
    return std::nullopt;
}

} // namespace legwork
