// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/part.h"

#include "codebook/protection.h"
#include "codebook/stock/guess_baths.h"
#include "rules/need/named_things.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string rating_fault(Circuit const& c, HouseholdCircuits const& need) {
    if (!need.amps || !c.breaker || *c.breaker == Amps{need.amps->value * 1000}) return {};
    return fmt::format("has a {} breaker", amps(value(*c.breaker)));
}

// What else hangs on a circuit that is for this part alone: other rooms, lights, what is fastened in place.
std::string sharing_fault(HomeCircuit const& h, Household part, HouseholdCircuits const& need) {
    if (!need.own) return {};
    RoomPlaces beside = places_beside(h.circuit->name, places_of(part));
    RoomPlaces allowed = need.with_places;
    allowed.add({RoomPlace::house, RoomPlace::sink, RoomPlace::closet, RoomPlace::counter});
    std::vector<std::string> strangers;
    for (std::string const& place : names_of(beside, allowed)) strangers.push_back("the " + place);
    bool const all_of_one_room =
        need.with_one_room && strangers.empty() && !serves_several_baths(h.circuit->name, h.circuit->room);
    for (Use const* use : h.things) {
        bool const fastened = use->fixed && !always_plugged_in(*use);
        if (all_of_one_room || !(use->lighting || fastened) || (use->lighting && need.with_lighting)) continue;
        strangers.push_back(use->lighting ? "lights" : "the " + thing_name(*use));
    }
    return strangers.empty() ? std::string{} : fmt::format("also feeds {}", listed(strangers));
}

bool stands_in(HomeCircuit const& h, Household part) { return h.places.any_of(places_of(part)); }

// Receptacles that may well be there, for all that their circuit's words tell.
bool may_serve(HomeCircuit const& h, Household part) {
    return h.receptacles && (h.places.empty() || (part == Household::bath && h.places == RoomPlaces{RoomPlace::house}));
}

// New work on the part itself: receptacles there, or what a kitchen or laundry is. A charger in the garage, a heat pump
// in the yard, a fan in the bathroom ask for no new circuit of an old house.
bool touches(HomeCircuit const& h, Household part) {
    if (h.circuit->existing || !stands_in(h, part)) return false;
    auto const belongs = [&](Use const* use) {
        return (part == Household::kitchen && use->place == UsePlace::kitchen) ||
               (part == Household::laundry && use->place == UsePlace::laundry);
    };
    return h.receptacles || std::ranges::any_of(h.things, belongs);
}

bool cannot_tell(Home const& home, WantedPart const& wanted, HouseholdCircuits const& need, bool none_shown) {
    if (!home.whole) return true;
    if (!none_shown) return false;
    if (home.unclear) return true;
    bool const touched =
        std::ranges::any_of(home.circuits, [&](HomeCircuit const& h) { return touches(h, wanted.part); });
    if (home.old && !touched) return true;
    return !need.own && !need.amps && wanted.part != Household::kitchen &&
           std::ranges::any_of(home.circuits, [&](HomeCircuit const& h) { return may_serve(h, wanted.part); });
}

std::string_view receptacles(HouseholdCircuits const& need) {
    return need.basins_only ? "receptacles at basins and counters" : "receptacles";
}

std::string asked(WantedPart const& wanted, HouseholdCircuits const& need, bool named) {
    bool const any_circuit = !need.own && !need.amps && need.circuits.value == 1;
    if (any_circuit) return "a dwelling needs one there";
    std::string words =
        fmt::format("a dwelling needs at least {}", plural(static_cast<std::size_t>(need.circuits.value), "circuit"));
    if (need.amps) words += fmt::format(" of {} A", need.amps->value);
    words += named ? fmt::format(" for {} there", receptacles(need))
                   : fmt::format(" for the {} {}", receptacles(need), wanted.where);
    if (need.own) words += need.with_one_room ? fmt::format(", and {}", wanted.bound) : ", and nothing else on it";
    return words;
}

std::string counted(std::vector<ServingCircuit> const& servers, WantedPart const& wanted) {
    std::vector<std::string> good, faults;
    for (ServingCircuit const& s : servers)
        if (s.fault.empty())
            good.push_back(s.home->circuit->mark);
        else
            faults.push_back(s.fault);
    std::string words;
    if (servers.empty())
        words = fmt::format("No circuit of the job is shown to feed a receptacle {}", wanted.where);
    else if (!good.empty())
        words =
            fmt::format("{} {} receptacles {}", listed(good), good.size() == 1 ? "alone feeds" : "feed", wanted.where);
    for (std::string const& f : faults) words += (words.empty() ? "" : "; ") + f;
    return words;
}

std::string remedy(std::vector<ServingCircuit> const& servers, WantedPart const& wanted, HouseholdCircuits const& need,
                   std::size_t missing) {
    std::string mended;
    for (ServingCircuit const& s : servers)
        if (!s.fault.empty()) mended += mend(s, need) + ". ";
    auto words = mended + (mended.empty() ? "Add " : "Or add ") + plural(missing, "circuit");
    if (need.amps) words += fmt::format(" of {} A", need.amps->value);
    words += fmt::format(" for {} {}. ", receptacles(need), wanted.where);
    return words +
           fmt::format("If it is there under another name, write `use = \"{}\"` on it, or name the place in its name",
                       wanted.use);
}

bool all_existing(std::vector<ServingCircuit> const& servers) {
    return !servers.empty() &&
           std::ranges::all_of(servers, [](ServingCircuit const& s) { return s.home->circuit->existing; });
}

Where where_of(Home const& home, std::vector<ServingCircuit> const& servers) {
    Where where{home.panel->name, {}, {}};
    for (ServingCircuit const& s : servers) where.circuits.push_back(s.home->circuit->mark);
    if (!servers.empty()) where.panel = panel_name(*servers.front().home->circuit);
    return where;
}

Finding say(Case const& c, Home const& home, WantedPart const& wanted, std::vector<ServingCircuit> const& servers,
            std::size_t good) {
    auto const& need = household_circuits(c.book, wanted.part);
    auto f = finding(c, wanted.rule, Gravity::usual, where_of(home, servers), wanted.topic);
    f.message = fmt::format("{}; {}", counted(servers, wanted), asked(wanted, need, servers.empty() || good > 0));
    if (all_existing(servers)) f.message += " (asked of new work; this was there before)";
    f.fix = remedy(servers, wanted, need, static_cast<std::size_t>(need.circuits.value) - good);
    return f;
}
} // namespace

std::vector<ServingCircuit> serving(Home const& home, Household part, HouseholdCircuits const& need) {
    std::vector<ServingCircuit> all;
    for (HomeCircuit const& h : home.circuits) {
        if (!h.receptacles || h.circuit->poles != 1 || !h.places.any_of(places_of(part))) continue;
        std::vector<std::string> faults{rating_fault(*h.circuit, need), sharing_fault(h, part, need)};
        std::erase(faults, std::string{});
        all.push_back({&h, faults.empty() ? "" : h.circuit->mark + " " + listed(faults)});
    }
    return all;
}

std::string mend(ServingCircuit const& s, HouseholdCircuits const& need) {
    auto const& mark = s.home->circuit->mark;
    if (rating_fault(*s.home->circuit, need).empty())
        return fmt::format("Take what else hangs on {} to another circuit", mark);
    return fmt::format("Put {} on a breaker of {} A and a wire that carries it", mark, need.amps->value);
}

void judge_part(Case const& c, Home const& home, WantedPart const& wanted, std::vector<ServingCircuit> const& servers,
                Inspection& seen) {
    auto const& need = household_circuits(c.book, wanted.part);
    auto const good = static_cast<std::size_t>(std::ranges::count(servers, std::string{}, &ServingCircuit::fault));
    bool const is_enough = good >= static_cast<std::size_t>(need.circuits.value);
    bool const is_there =
        std::ranges::any_of(home.circuits, [&](HomeCircuit const& h) { return stands_in(h, wanted.part); });
    if (is_enough) return seen.looked(static_cast<int>(servers.size()));
    bool const always = need.always && (need.in_flats || !home.flat);
    if ((!always && !is_there) || cannot_tell(home, wanted, need, servers.empty())) return;
    seen.looked(std::max(1, static_cast<int>(servers.size())));
    seen.found(say(c, home, wanted, servers, good));
}

Verdict judge_part(Case const& c, WantedPart const& wanted) {
    Inspection seen;
    if (auto const home = home_of(c))
        judge_part(c, *home, wanted, serving(*home, wanted.part, household_circuits(c.book, wanted.part)), seen);
    return seen.verdict();
}

} // namespace legwork
