// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/say.h"

#include "codebook/cite.h"

#include <fmt/format.h>

namespace legwork {

Finding finding(Case const& c, std::string_view rule, Severity severity, Where where, std::string_view topic) {
    Finding f;
    f.rule = rule;
    f.severity = severity;
    f.where = std::move(where);
    f.reference = cite(c.book, topic.empty() ? rule : topic);
    return f;
}

Where about(typed::Circuit const& c, std::string key) { return {c.panel, {c.mark}, std::move(key)}; }

Where about(typed::Pair const& p, std::string key) {
    return {p.first->panel == p.second->panel ? p.first->panel : "", {p.first->mark, p.second->mark}, std::move(key)};
}

std::string as_sentence(std::string words) {
    if (!words.empty() && std::string_view(".!?").find(words.back()) == std::string_view::npos) words += '.';
    return words;
}

std::string amps(double a) {
    auto words = fmt::format("{:.1f}", a);
    if (words.ends_with(".0")) words.resize(words.size() - 2);
    return words + " A";
}

std::string listed(std::vector<std::string> const& words) {
    std::string all;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) all += i + 1 == words.size() ? " and " : ", ";
        all += words[i];
    }
    return all;
}

std::string both(typed::Pair const& p) { return listed({p.first->mark, p.second->mark}); }

std::string plural(std::size_t n, std::string_view one) { return fmt::format("{} {}{}", n, one, n == 1 ? "" : "s"); }

std::string in_situation(std::string_view name) {
    return name == "connected" ? "with everything on" : fmt::format("in \"{}\"", name);
}

std::string spaces_of(Case const& c, std::string_view mark) {
    Placement const* p = placement_of(c.plan, mark);
    if (!p || p->slots.empty()) return {};
    std::vector<std::string> names;
    for (Spot const s : p->slots) names.push_back(text(s));
    return (names.size() == 1 ? "space " : "spaces ") + listed(names);
}

} // namespace legwork
