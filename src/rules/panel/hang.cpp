// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/demands.h"
#include "rules/panel/list.h"
#include "rules/panel/places.h"

#include <fmt/format.h>

#include <set>

namespace legwork {

namespace {
bool is_on_when_down(Panel const& panel, int space) {
    return panel.layout.has(space) && panel.handles[static_cast<std::size_t>(space)] == OnIs::down;
}

// Circuits whose handle, or half of it, is on when down, and their spaces.
struct OnWhenDown {
    std::vector<std::string> marks;
    std::set<int> spaces;
};
OnWhenDown on_when_down(Case const& c, Panel const& panel, Inspection& seen) {
    OnWhenDown found;
    for (Circuit const* circuit : panel.circuits) {
        auto const slots = slots_of(c, circuit->mark);
        if (slots.empty()) continue;
        seen.looked();
        bool down = false;
        for (Spot const s : slots)
            if (is_on_when_down(panel, s.space)) {
                found.spaces.insert(s.space);
                down = true;
            }
        if (down) found.marks.push_back(circuit->mark);
    }
    return found;
}

bool is_turned(Panel const& panel) { return panel.hang == Hang::turned_left || panel.hang == Hang::turned_right; }

Finding say(Case const& c, Panel const& panel, OnWhenDown const& found) {
    auto const& [marks, spaces] = found;
    std::vector<std::string> numbers;
    for (int const s : spaces) numbers.push_back(std::to_string(s));
    auto f = finding(c, panel_hang, Gravity::usual, {panel.name, marks, "space"});
    f.message =
        fmt::format("Panel \"{}\" hangs turned {}: the breakers of its upper row are on when their handles are "
                    "down, and {} {} there ({} {})",
                    panel.name, panel.hang == Hang::turned_left ? "left" : "right", listed(marks),
                    marks.size() == 1 ? "stands" : "stand", numbers.size() == 1 ? "space" : "spaces", listed(numbers));
    f.fix = "Hang the panel upright, where handles move sideways, or use the lower row only";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    if (!demands(c.book).up_is_on) return seen.verdict();
    for (Panel const& panel : c.building.panels) {
        if (!is_turned(panel) || panel.is_dc()) continue; // handles that move sideways; fuses, which have none
        auto const found = on_when_down(c, panel, seen);
        if (!found.marks.empty()) seen.found(say(c, panel, found));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_hang{
    .id = "panel-hang",
    .asks = "No breaker of a panel hung on its side is on when its handle is down.",
    .why = "Where handles move up and down, people take up for on. A panel turned a quarter has two rows, and the "
           "handles of the upper one are on when down: somebody will switch on what they meant to switch off.",
    .remedy = "Hang the panel upright or upside down, where handles move sideways, or use only the lower row.",
    .gravity = {.nec = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
