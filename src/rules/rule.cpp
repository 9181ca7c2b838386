// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/rule.h"

#include "codebook/cite.h"

#include <algorithm>
#include <cassert>

namespace legwork {

namespace {
// All that it names was there before: its circuits, else its panel.
bool is_existing(Building const& building, Where const& where) {
    if (where.circuits.empty()) {
        Panel const* panel = panel_named(building, where.panel);
        return panel && panel->existing;
    }
    return std::ranges::all_of(where.circuits, [&](std::string const& mark) {
        Circuit const* c = circuit_named(building, mark);
        return c && c->existing;
    });
}
} // namespace

Finding finding(Case const& c, Rule const& rule, Gravity::Of of, Where where, std::string_view topic,
                std::optional<bool> existing) {
    assert(topic.empty() || topic.substr(0, topic.find('/')) == rule.id);
    assert(of != Gravity::doubtful || !rule.gravity.doubt.empty());
    Finding f;
    f.rule = rule.id;
    f.stops_cables = rule.stops_cables;
    f.severity = severity(grade(rule.gravity, c.book.family, of), existing.value_or(is_existing(c.building, where)));
    f.where = std::move(where);
    f.reference = cite(c.book, topic.empty() ? rule.id : topic);
    return f;
}

Where about(Circuit const& c, std::string key) { return {panel_name(c), {c.mark}, std::move(key)}; }

Where about(std::vector<Circuit const*> const& some, std::string key) {
    Where where{panel_name(*some.front()), {}, std::move(key)};
    for (Circuit const* c : some) {
        where.circuits.push_back(c->mark);
        if (c->panel != some.front()->panel) where.panel.clear();
    }
    return where;
}

Where about(Pair const& p, std::string key) { return about(std::vector{p.first, p.second}, std::move(key)); }

std::string panel_name(Circuit const& c) { return c.panel ? c.panel->name : std::string(); }

} // namespace legwork
