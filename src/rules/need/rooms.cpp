// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The rooms that have a circuit for their receptacles: what is asked of each, by one function.
#include "rules/need/list.h"
#include "rules/need/part.h"

namespace legwork {

namespace {
constexpr WantedPart kLaundry{need_laundry, Household::laundry, "in the laundry", "laundry", ""};
constexpr WantedPart kUtility{need_laundry, Household::utility,    "in the utility room", "receptacles",
                              "",           "need-laundry/utility"};
constexpr WantedPart kBath{need_bath, Household::bath, "in the bathroom", "bathroom",
                           "nothing else on it unless it serves one bathroom only"};
constexpr WantedPart kGarage{need_garage, Household::garage, "in the garage", "garage",
                             "nothing outside the garage on it"};
constexpr WantedPart kOutdoor{need_outdoor, Household::outdoor, "outdoors", "outdoor", "nothing indoors on it"};

template <WantedPart const& part>
Verdict judge(Case const& c) {
    return judge_part(c, part);
}

// Where a circuit is shown to feed receptacles of a utility room, one of them feeds nothing else. Of one that feeds the
// laundry too the laundry's finding speaks.
void judge_utility(Case const& c, Home const& home, Inspection& seen) {
    auto const* need = c.book.household.utility.get();
    if (!need) return;
    auto servers = serving(home, Household::utility, *need);
    std::erase_if(servers, [](ServingCircuit const& s) { return s.home->places.has(RoomPlace::laundry); });
    if (!servers.empty()) judge_part(c, home, kUtility, servers, seen);
}

Verdict judge_laundry(Case const& c) {
    Inspection seen;
    auto const home = home_of(c);
    if (!home) return seen.verdict();
    auto const& need = household_circuits(c.book, Household::laundry);
    judge_part(c, *home, kLaundry, serving(*home, Household::laundry, need), seen);
    judge_utility(c, *home, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const need_laundry{
    .id = "need-laundry",
    .asks = "The laundry's receptacles have a circuit of their own; so have a utility room's under the CE Code.",
    .why = "A washing machine's motor and heater fill a circuit by themselves. Asked where a laundry is shown: a "
           "circuit, a room, or a dryer; a small house without one is not asked for it.",
    .remedy = "Run a circuit to the washing machine that feeds nothing else; `use = \"laundry\"` says which it is.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge_laundry,
};

constinit Rule const need_bath{
    .id = "need-bath",
    .asks = "The bathroom's receptacle by the basin is on a circuit that can take a hair dryer.",
    .why = "A hair dryer draws 1500 W and more. The NEC gives bathroom receptacles, from 2020 on those at basins and "
           "counters, a 20 A circuit with nothing else on it, unless it serves one bathroom only; the CE Code asks for "
           "the receptacle and leaves the circuit open.",
    .remedy = "Run the circuit, or name the bathroom in the name of the circuit that feeds its receptacle.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge<kBath>,
};

constinit Rule const need_garage{
    .id = "need-garage",
    .asks = "A garage has a circuit for its receptacles.",
    .why = "Tools, a freezer, a battery charger: what is plugged in there is large, and should not put the lights of "
           "the house out. Asked where the job shows a garage.",
    .remedy = "Run a circuit to the garage's receptacles; `use = \"garage\"` says which it is.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge<kGarage>,
};

constinit Rule const need_outdoor{
    .id = "need-outdoor",
    .asks = "A dwelling has a receptacle outdoors.",
    .why =
        "Without one, mowers and heaters hang on a cord through a door or a window, without ground-fault protection.",
    .remedy = "Put a receptacle where it can be reached from the ground, front and back under the NEC, and say in its "
              "circuit's name or `use` that it is outdoors.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge<kOutdoor>,
};

} // namespace legwork
