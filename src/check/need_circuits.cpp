// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits that a dwelling must have. Of each part of it the circuits that serve it are counted; one finding a part
// says who they are, why one does not count, and what the code asks. Silent where the job does not tell: part of a
// house, an old house where nothing of the kind is new, a circuit of no name.
#include "check/named_things.h"
#include "check/need_home.h"
#include "check/need_rules.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
struct Wanted {
    Household part;
    std::string_view rule;
    std::string_view where; // its receptacles stand
    std::string_view use;   // to write on a circuit that is there under another name
    std::string_view bound; // of a circuit that may serve the whole room
};

// A circuit that serves the part.
struct Server {
    HomeCircuit const* home;
    std::string fault; // why it does not count; empty: it does
};

bool several_baths(typed::Circuit const& c) {
    constexpr std::string_view plurals[] = {"baths", "bathrooms", "washrooms", "both"};
    std::string words = c.name + " " + c.room;
    std::ranges::transform(words, words.begin(), [](char ch) { return ch >= 'A' && ch <= 'Z' ? char(ch | ' ') : ch; });
    return std::ranges::any_of(plurals, [&](std::string_view p) { return words.find(p) != std::string::npos; });
}

std::string rating_fault(typed::Circuit const& c, HouseholdCircuits const& need) {
    if (!need.amps || !c.breaker || *c.breaker == Amps{need.amps->value * 1000}) return {};
    return fmt::format("has a {} breaker", amps(value(*c.breaker)));
}

// What else hangs on a circuit that is for this part alone: other rooms, lights, what is fastened in place.
std::string sharing_fault(HomeCircuit const& h, Wanted const& wanted, HouseholdCircuits const& need) {
    if (!need.own) return {};
    RoomPlaces beside = places_beside(h.circuit->name, places_of(wanted.part));
    RoomPlaces allowed = need.with_places;
    allowed.add({RoomPlace::house, RoomPlace::sink, RoomPlace::closet, RoomPlace::counter});
    std::vector<std::string> strangers;
    for (std::string const& place : names_of(beside, allowed)) strangers.push_back("the " + place);
    bool const all_of_one_room = need.with_one_room && strangers.empty() && !several_baths(*h.circuit);
    for (Use const* use : h.things) {
        if (all_of_one_room || !(use->lighting || use->fixed) || (use->lighting && need.with_lighting)) continue;
        strangers.push_back(use->lighting ? "lights" : "the " + thing_name(*use));
    }
    return strangers.empty() ? std::string{} : fmt::format("also feeds {}", listed(strangers));
}

std::vector<Server> servers_of(Home const& home, Wanted const& wanted, HouseholdCircuits const& need) {
    std::vector<Server> all;
    for (HomeCircuit const& h : home.circuits) {
        if (!h.receptacles || h.circuit->poles != 1 || !h.places.any_of(places_of(wanted.part))) continue;
        std::vector<std::string> faults{rating_fault(*h.circuit, need), sharing_fault(h, wanted, need)};
        std::erase(faults, std::string{});
        all.push_back({&h, faults.empty() ? "" : h.circuit->mark + " " + listed(faults)});
    }
    return all;
}

bool stands_in(HomeCircuit const& h, Household part) { return h.places.any_of(places_of(part)); }

// Receptacles that may well be there, for all that their circuit's words tell.
bool may_serve(HomeCircuit const& h, Household part) {
    return h.receptacles && (h.places.empty() || (part == Household::bath && h.places == RoomPlaces{RoomPlace::house}));
}

bool cannot_tell(Home const& home, Wanted const& wanted, HouseholdCircuits const& need, bool none_shown) {
    if (!home.whole) return true;
    if (!none_shown) return false;
    if (home.unclear) return true;
    bool const touched = std::ranges::any_of(
        home.circuits, [&](HomeCircuit const& h) { return !h.circuit->existing && stands_in(h, wanted.part); });
    if (home.old && !touched) return true;
    return !need.own && !need.amps && wanted.part != Household::kitchen &&
           std::ranges::any_of(home.circuits, [&](HomeCircuit const& h) { return may_serve(h, wanted.part); });
}

std::string asked(Wanted const& wanted, HouseholdCircuits const& need, bool named) {
    bool const any_circuit = !need.own && !need.amps && need.circuits.value == 1;
    if (any_circuit) return "a dwelling needs one there";
    std::string words =
        fmt::format("a dwelling needs at least {}", plural(static_cast<std::size_t>(need.circuits.value), "circuit"));
    if (need.amps) words += fmt::format(" of {} A", need.amps->value);
    words += named ? " for receptacles there" : fmt::format(" for the receptacles {}", wanted.where);
    if (need.own) words += need.with_one_room ? fmt::format(", and {}", wanted.bound) : ", and nothing else on it";
    return words;
}

std::string counted(std::vector<Server> const& servers, Wanted const& wanted) {
    std::vector<std::string> good, faults;
    for (Server const& s : servers)
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

std::string mend(Server const& s, HouseholdCircuits const& need) {
    auto const& mark = s.home->circuit->mark;
    if (rating_fault(*s.home->circuit, need).empty())
        return fmt::format("Take what else hangs on {} to another circuit", mark);
    return fmt::format("Put {} on a breaker of {} A and a wire that carries it", mark, need.amps->value);
}

std::string remedy(std::vector<Server> const& servers, Wanted const& wanted, HouseholdCircuits const& need,
                   std::size_t missing) {
    std::string mended;
    for (Server const& s : servers)
        if (!s.fault.empty()) mended += mend(s, need) + ". ";
    auto words = mended + (mended.empty() ? "Add " : "Or add ") + plural(missing, "circuit");
    if (need.amps) words += fmt::format(" of {} A", need.amps->value);
    words += fmt::format(" for receptacles {}. ", wanted.where);
    return words +
           fmt::format("If it is there under another name, write `use = \"{}\"` on it, or name the place in its name",
                       wanted.use);
}

bool all_existing(std::vector<Server> const& servers) {
    return !servers.empty() && std::ranges::all_of(servers, [](Server const& s) { return s.home->circuit->existing; });
}

Where where_of(Home const& home, std::vector<Server> const& servers) {
    Where where{home.panel, {}, {}};
    for (Server const& s : servers) where.circuits.push_back(s.home->circuit->mark);
    if (!servers.empty()) where.panel = servers.front().home->circuit->panel;
    return where;
}

Findings judge(Case const& c, Home const& home, Wanted const& wanted, std::vector<Server> servers) {
    auto const& need = household_circuits(c.book, wanted.part);
    auto const good =
        static_cast<std::size_t>(std::ranges::count_if(servers, [](Server const& s) { return s.fault.empty(); }));
    auto const least = static_cast<std::size_t>(need.circuits.value);
    if (good >= least) return {};
    if (!need.always &&
        std::ranges::none_of(home.circuits, [&](HomeCircuit const& h) { return stands_in(h, wanted.part); }))
        return {};
    if (cannot_tell(home, wanted, need, servers.empty())) return {};
    auto f = finding(c, wanted.rule, Severity::warning, where_of(home, servers));
    f.message = fmt::format("{}; {}", counted(servers, wanted), asked(wanted, need, servers.empty() || good > 0));
    if (all_existing(servers)) f.message += " (asked of new work; this was there before)";
    f.fix = remedy(servers, wanted, need, least - good);
    return {f};
}

Findings judge(Case const& c, Wanted const& wanted) {
    auto const home = home_of(c);
    if (!home) return {};
    return judge(c, *home, wanted, servers_of(*home, wanted, household_circuits(c.book, wanted.part)));
}

constexpr Wanted kKitchen{Household::kitchen, "need-kitchen", "at the kitchen counter", "kitchen counter", ""};

// How many receptacles a circuit has, where that is known.
std::optional<int> receptacle_count(typed::Circuit const& c) {
    if (c.outlet_count) return c.outlet_count;
    return c.single && c.outlets.size() == 1 ? std::optional(1) : std::nullopt;
}

// Both halves of a counter receptacle on one small circuit.
std::optional<Finding> unsplit(Case const& c, HomeCircuit const& h) {
    auto const& least = counter_circuit(c.book).unsplit_amps;
    typed::Circuit const& circuit = *h.circuit;
    if (!least || !is_named(h, "kitchen counter") || !circuit.multiwire.empty() || circuit.split) return std::nullopt;
    if (!circuit.breaker || *circuit.breaker >= Amps{least->value * 1000}) return std::nullopt;
    auto f = finding(c, "need-kitchen", Severity::warning, about(circuit, "breaker"), "need-kitchen/split");
    f.message =
        fmt::format("{} feeds counter receptacles from a {} breaker; that is right only where each receptacle is "
                    "split between two hots of a three-wire cable, else it takes {} A",
                    circuit.mark, amps(value(*circuit.breaker)), least->value);
    if (circuit.existing) f.message += " (asked of new work; this was there before)";
    f.fix =
        fmt::format("Use a {} A breaker, wire for it and {} A receptacles, or a three-wire cable on a two-pole breaker "
                    "and `split = true` on both circuits",
                    least->value, least->value);
    return f;
}

std::vector<Server> counter_servers(Case const& c, Home const& home) {
    auto servers = servers_of(home, kKitchen, household_circuits(c.book, Household::kitchen));
    auto const at_counter = [](Server const& s) { return s.home->places.has(RoomPlace::counter); };
    if (!counter_circuit(c.book).wall_receptacles_count && std::ranges::any_of(servers, at_counter))
        std::erase_if(servers, [&](Server const& s) { return !at_counter(s); });
    return servers;
}

// A counter circuit of the wrong rating beside enough right ones.
std::optional<Finding> odd_one(Case const& c, Server const& s) {
    if (s.fault.empty() || !is_named(*s.home, "kitchen counter")) return std::nullopt;
    auto const& need = household_circuits(c.book, Household::kitchen);
    auto f = finding(c, "need-kitchen", Severity::warning, about(*s.home->circuit, "breaker"));
    f.message =
        fmt::format("{}; every circuit of the receptacles at the kitchen counter has {} A", s.fault, need.amps->value);
    if (s.home->circuit->existing) f.message += " (asked of new work; this was there before)";
    f.fix = mend(s, need);
    return f;
}
} // namespace

Findings need_kitchen(Case const& c) {
    auto const home = home_of(c);
    if (!home) return {};
    auto const servers = counter_servers(c, *home);
    bool const one_will_do = counter_circuit(c.book).one_receptacle_circuits && servers.size() == 1 &&
                             receptacle_count(*servers.front().home->circuit) == 1;
    auto found = one_will_do ? Findings{} : judge(c, *home, kKitchen, servers);
    if (found.empty())
        for (Server const& s : servers)
            if (auto f = odd_one(c, s)) found.push_back(std::move(*f));
    for (HomeCircuit const& h : home->circuits)
        if (auto f = unsplit(c, h)) found.push_back(std::move(*f));
    return found;
}

Findings need_laundry(Case const& c) {
    return judge(c, {Household::laundry, "need-laundry", "in the laundry", "laundry", ""});
}
Findings need_bath(Case const& c) {
    return judge(c, {Household::bath, "need-bath", "in the bathroom", "bathroom",
                     "nothing else on it unless it serves one bathroom only"});
}
Findings need_garage(Case const& c) {
    return judge(c, {Household::garage, "need-garage", "in the garage", "garage", "nothing outside the garage on it"});
}
Findings need_outdoor(Case const& c) {
    return judge(c, {Household::outdoor, "need-outdoor", "outdoors", "outdoor", "nothing indoors on it"});
}

} // namespace legwork
