// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/job.h"

#include <algorithm>

namespace legwork {

std::string text(Spot s) {
    auto words = std::to_string(s.space);
    if (s.half) words += s.half;
    return words;
}

namespace typed {

namespace {
template <class List, class Key>
auto find_in(List const& list, Key key) {
    auto const at = std::ranges::find_if(list, key);
    return at == list.end() ? nullptr : &*at;
}
} // namespace

Circuit const* circuit_of(Job const& job, std::string_view mark) {
    return find_in(job.circuits, [&](Circuit const& c) { return c.mark == mark; });
}
Panel const* panel_of(Job const& job, std::string_view name) {
    return find_in(job.panels, [&](Panel const& p) { return p.name == name; });
}
Supply const* supply_of(Job const& job, std::string_view name) {
    return find_in(job.supplies, [&](Supply const& s) { return s.name == name; });
}

std::vector<Pair> pairs(Job const& job) {
    std::vector<Pair> found;
    for (Circuit const& c : job.circuits)
        if (Circuit const* p = partner(job, c); p && &c < p) found.push_back({&c, p});
    return found;
}

Circuit const* partner(Job const& job, Circuit const& c) {
    if (c.multiwire.empty()) return nullptr;
    return find_in(job.circuits, [&](Circuit const& o) { return o.multiwire == c.multiwire && o.mark != c.mark; });
}

Panel const* fed_panel(Job const& job, Circuit const& c) {
    return find_in(job.panels,
                   [&](Panel const& p) { return p.feeder && p.feeder->panel == c.panel && p.feeder->mark == c.mark; });
}

std::string cable_mark(Job const& job, Circuit const& c) {
    Circuit const* p = partner(job, c);
    if (!p) return c.mark;
    return &c < p ? c.mark + "+" + p->mark : p->mark + "+" + c.mark;
}

} // namespace typed

} // namespace legwork
