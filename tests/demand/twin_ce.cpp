// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// CE 8-200(1)(a) by hand: 5000 W for 90 m2, 1000 W for each 90 m2 more or part of it, heat or cooling, the range, what
// counts in full, and other loads above 1500 W.
#include "twin.h"

#include <algorithm>

namespace twin {

Answer blocks(House const& h);

Answer blocks(House const& h) {
    Answer a;
    auto const& home = *h.job->dwelling;
    a.unknown = !home.area;
    // Hundredths of a square millimetre; the basement at three quarters.
    auto const floor = (home.area ? home.area->count * 100 : 0) + (home.basement ? home.basement->count * 75 : 0);
    constexpr Va block = Va{90} * 1'000'000 * 100;
    a.total = 5'000;
    for (auto more = floor - block; more > 0; more -= block) a.total += 1'000;

    HeatShares shares{100, 100, 100, nullptr, true};
    shares.is_room = [](House const& house, Load const& l) {
        if (l.use == "furnace" || l.use == "boiler" || l.use == "air handler") return false;
        auto const rooms = house.job->dwelling->thermostats;
        return rooms ? *rooms >= 2 : l.use == "baseboard" || l.use == "floor heating";
    };
    a.unknown |= unknown(of(h.loads, {Kind::heat, Kind::pump, Kind::backup, Kind::cool}));
    auto const without_fans = those(h.loads, [](Load const& l) { return !l.blows; });
    a.total += season(h, without_fans, shares).va;

    // One range, the largest; any more are among the other loads.
    Load const* range = nullptr;
    for (Load const& l : h.loads)
        if (l.use == "range" && (!range || l.va > range->va)) range = &l;
    if (range) a.total += 6'000 + part(std::max<Va>(range->va - 12'000, 0), 40);

    Va others = 0;
    for (Load const& l : h.loads) {
        bool const inside =
            !l.elsewhere && (l.kind == Kind::light || l.kind == Kind::kitchen || l.kind == Kind::laundry);
        // A furnace's fan is a small load like others.
        if (inside || (l.kind == Kind::heat && !l.blows) || l.kind == Kind::pump || l.kind == Kind::backup ||
            l.kind == Kind::cool)
            continue;
        a.unknown |= !l.known;
        if (l.kind == Kind::full || l.kind == Kind::vehicle)
            a.total += l.va;
        else if (&l != range && l.va > 1'500)
            others += l.va;
    }
    a.total += range ? part(others, 25) : std::min<Va>(others, 6'000) + part(std::max<Va>(others - 6'000, 0), 25);
    a.total += held_va(h);
    return a;
}

} // namespace twin
