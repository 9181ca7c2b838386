// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What must be switched off where whoever works on it can see or lock it: told once a kind, since no list of circuits
// shows whether the switch is there.
#include "codebook/cite.h"
#include "rules/need/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct Kind {
    std::string_view topic, words, asks;
    bool (*is)(Circuit const&);
};

// On its plug, it is switched off by pulling that.
bool is_wired_in(Circuit const& c) { return c.outlets.empty() && !c.outlet_count && c.use && !c.use->receptacle; }

bool is_cooling(Circuit const& c) {
    return c.use->demand == Demand::cooling || c.use->demand == Demand::heat_pump || c.mca || c.mop;
}
bool is_pool(Circuit const& c) { return c.use->demand == Demand::pool; }
bool is_machine(Circuit const& c) {
    return c.is_motor() && c.use->dedicated && !c.use->lighting && !is_cooling(c) && !is_pool(c);
}
// Up to here its breaker is enough: NEC 422.31(A), from memory.
constexpr VoltAmperes kSmall = 300_VA;
bool is_appliance(Circuit const& c) {
    return c.use->fixed && !c.use->heating && !c.use->lighting && !is_cooling(c) && !is_pool(c) && !is_machine(c) &&
           c.use->demand != Demand::none && c.use->demand != Demand::general && c.use->demand != Demand::vehicle &&
           (!c.load || *c.load > kSmall);
}

// The order in which they are told.
constexpr std::array kKinds{
    Kind{"need-disconnect/cooling", "air conditioning and heat pumps", "a switch in sight of the unit, and in reach",
         is_cooling},
    Kind{"need-disconnect/pool", "pools and hot tubs",
         "a switch in sight of the water and 1.5 m (5 ft) or more from it, for all but the lights", is_pool},
    Kind{"need-disconnect/motor", "motors", "a switch in sight of the motor, or a breaker that can be locked off",
         is_machine},
    Kind{"need-disconnect", "appliances wired in place", "a switch in sight, or a breaker that can be locked off",
         is_appliance},
};

Finding say(Case const& c, Kind const& kind, std::vector<Circuit const*> const& some) {
    auto f = finding(c, need_disconnect, Gravity::usual, about(some, "use"), kind.topic);
    std::vector<std::string> marks;
    for (Circuit const* circuit : some) marks.push_back(circuit->mark);
    f.message = fmt::format("{} ({}): {} is asked for, and the job does not tell whether it is there", kind.words,
                            listed(marks), kind.asks);
    f.message.front() = static_cast<char>(f.message.front() - 'a' + 'A');
    f.fix = "Look for it; a lock that stays on the breaker, or a plug in reach, does as well";
    return f;
}

bool is_judged(Circuit const& c) {
    return !c.existing && !c.on_dc() && !c.is_source() && !c.fed_panel() && !c.is_spare() && is_wired_in(c);
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Kind const& kind : kKinds) {
        if (cite(c.book, kind.topic).section.empty()) continue; // this code asks for none
        std::vector<Circuit const*> some;
        for (Circuit const& circuit : c.building.circuits)
            if (is_judged(circuit) && kind.is(circuit)) some.push_back(&circuit);
        if (some.empty()) continue;
        seen.looked(static_cast<int>(some.size()));
        seen.found(say(c, kind, some));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const need_disconnect{
    .id = "need-disconnect",
    .asks = "What people work on is switched off in sight of it, or by a breaker that can be locked.",
    .why =
        "Somebody reaches into a pump, a furnace or an air conditioner, and somebody else sees a breaker that is off "
        "and turns it on. A switch beside the machine, or a lock on the breaker, is what keeps the hand whole.",
    .remedy = "Set a switch where whoever stands at the machine sees it, or fit the breaker with a lock that stays on "
              "it; what has a plug in reach needs no more.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
