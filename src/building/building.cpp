// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/building.h"

#include <algorithm>

namespace legwork {

namespace {
bool is_among(std::vector<Circuit const*> const& some, Circuit const& c) {
    return std::ranges::any_of(some, [&](Circuit const* one) { return one->number == c.number; });
}

template <class List, class Key, class Member>
auto named(List const& list, Key key, Member member) {
    auto const at = std::ranges::find(list, key, member);
    return at == list.end() ? nullptr : &*at;
}
} // namespace

Circuit const* Circuit::partner() const {
    if (!pair) return nullptr;
    return pair->first->number == number ? pair->second : pair->first;
}

bool Circuit::feeds_loads() const { return fed_panel() && !fed_panel()->circuits.empty(); }

bool Circuit::on_dc() const { return panel && panel->is_dc(); }

std::string Circuit::cable_mark() const { return pair ? pair->first->mark + "+" + pair->second->mark : mark; }

std::string const& Circuit::stands_in() const { return building.empty() && panel ? panel->building : building; }

bool Together::has(Circuit const& c) const {
    return is_among(circuits, c) || (c.use && std::ranges::count(uses, c.use) > 0);
}

bool Dwelling::Managed::has(Circuit const& c) const { return is_among(circuits, c); }

bool is_off(Feed const& feed, Circuit const& circuit) { return std::ranges::count(feed.off, circuit.mark) > 0; }

Circuit const* circuit_named(Building const& building, std::string_view mark) {
    return named(building.circuits, mark, &Circuit::mark);
}

Panel const* panel_named(Building const& building, std::string_view name) {
    return named(building.panels, name, &Panel::name);
}

Run const* cable_named(Building const& building, std::string_view mark) {
    auto const at = std::ranges::find_if(building.runs, [&](Run const& r) { return !r.of_circuit && r.mark == mark; });
    return at == building.runs.end() ? nullptr : &*at;
}

} // namespace legwork
