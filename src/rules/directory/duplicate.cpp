// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/lines.h"
#include "rules/directory/list.h"
#include "rules/directory/naming.h"

#include <fmt/format.h>

#include <map>

namespace legwork {

namespace {
Finding say(Case const& c, std::vector<Circuit const*> const& alike) {
    auto f = finding(c, dir_duplicate, Gravity::usual, about(alike, "name"));
    f.message = fmt::format("{} read the same in the directory: {}", listed(f.where.circuits), quoted(*alike.front()));
    f.fix = "Say what tells them apart: the wall, the side, the thing it feeds";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    std::map<std::string, std::vector<Circuit const*>> same;
    std::vector<std::string> order;
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.listed) continue; // named after its panel, in no directory
        if (!has_name(circuit) || circuit.is_spare()) continue;
        seen.looked();
        auto const words = reads_as(circuit.name);
        auto const key =
            panel_name(circuit) + '\n' + (words.empty() ? circuit.name : words) + '\n' + reads_as(circuit.room);
        if (same[key].empty()) order.push_back(key);
        same[key].push_back(&circuit);
    }
    for (auto const& key : order)
        if (same[key].size() > 1) seen.found(say(c, same[key]));
    return seen.verdict();
}
} // namespace

constinit Rule const dir_duplicate{
    .id = "dir-duplicate",
    .asks = "No two circuits of a panel read the same.",
    .why = "Two lines that say \"Bedroom\" mean that the one switched off is the wrong one half of the time.",
    .remedy = "Add what tells them apart: the wall, the side, the floor, the thing.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
