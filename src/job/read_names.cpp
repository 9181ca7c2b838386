// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What things are called: marks, and the names of panels, supplies and situations.
#include "job/keys/panel.h"
#include "job/reading.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace legwork {

namespace {

bool is_mark(std::string_view text) {
    auto const allowed = [](char c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    };
    return text.size() <= kMostOfMark && std::ranges::all_of(text, allowed);
}

// Where each name was seen first.
using Seen = std::map<std::string, std::size_t, std::less<>>;

// The name of one table under `key`; complains when it is missing, empty or taken.
std::string take_name(TableReader& t, std::string_view key, std::string_view noun, Seen& seen) {
    auto name = t.required_text(key);
    if (name.empty()) return name;
    t.call_it(fmt::format("{} {}", noun, quoted(name)));
    auto const at = t.value_at(key);
    if (auto const [first, is_new] = seen.emplace(name, at); !is_new)
        t.complain(key,
                   fmt::format("there is another of this {} in line {}", key,
                               t.complaints().source().place(first->second).line),
                   fmt::format("give each its own {}", key));
    return name;
}

std::string take_mark(TableReader& t, std::string_view noun, Seen& seen) {
    auto mark = take_name(t, "mark", noun, seen);
    if (mark.empty()) return mark;
    if (!is_mark(mark)) {
        t.complain("mark", "a mark is 1 to 8 of the letters A-Z, a-z, the digits and -",
                   "shorten it: it is printed large on the cable's labels; the long text goes under  name");
        return mark;
    }
    t.call_it(fmt::format("{} {}", noun, mark));
    return mark;
}

} // namespace

void take_names(Reading& r) {
    Seen marks, panels, supplies, situations, boxes;
    for (std::size_t i = 0; i < r.circuits.size(); ++i)
        r.marks.push_back(r.job.circuits[i].mark = take_mark(r.circuits[i], "circuit", marks));
    for (std::size_t i = 0; i < r.cables.size(); ++i)
        r.cable_marks.push_back(r.job.cables[i].mark = take_mark(r.cables[i], "cable", marks));
    for (std::size_t i = 0; i < r.panels.size(); ++i)
        r.panel_names.push_back(r.job.panels[i].name = take_name(r.panels[i], "name", "panel", panels));
    for (std::size_t i = 0; i < r.supplies.size(); ++i)
        r.supply_names.push_back(r.job.supplies[i].name = take_name(r.supplies[i], "name", "supply", supplies));
    for (std::size_t i = 0; i < r.situations.size(); ++i)
        r.job.situations[i].name = take_name(r.situations[i], "name", "situation", situations);
    for (std::size_t i = 0; i < r.boxes.size(); ++i) r.job.boxes[i].name = take_name(r.boxes[i], "name", "box", boxes);
    for (auto* list : {&r.marks, &r.cable_marks, &r.panel_names, &r.supply_names}) std::erase(*list, "");
}

} // namespace legwork
