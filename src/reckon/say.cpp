// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/say.h"

#include "units/text.h"

#include <fmt/format.h>

namespace legwork {

std::string as_sentence(std::string words) {
    if (!words.empty() && std::string_view(".!?").find(words.back()) == std::string_view::npos) words += '.';
    return words;
}

std::string amps(double a) {
    auto words = fmt::format("{:.1f}", a);
    if (words.ends_with(".0")) words.resize(words.size() - 2);
    return words + " A";
}

std::string used_of(double amperes, Amps limit) {
    auto const used = amps(amperes);
    return fmt::format("{} of {}", used.substr(0, used.size() - 2), amps(value(limit)));
}

std::string listed(std::vector<std::string> const& words) {
    std::string all;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) all += i + 1 == words.size() ? " and " : ", ";
        all += words[i];
    }
    return all;
}

std::string both(Pair const& p) { return listed({p.first->mark, p.second->mark}); }

std::string breaker_words(Circuit const& c) {
    return (c.poles == 2 ? "2P " : "") + (c.breaker ? text(*c.breaker) : "? A");
}

std::string breaker_words(std::vector<Circuit const*> const& cable) {
    Circuit const &first = *cable.front(), &last = *cable.back();
    if (!first.breaker && !last.breaker) return {};
    if (&first == &last) return breaker_words(first);
    auto const one = breaker_words(first), other = breaker_words(last);
    if (one != other) return fmt::format("{} and {}", one.substr(0, one.rfind(' ')), other); // "15 and 20 A"
    bool const two_pole = first.poles == 1 && first.pair && first.pair->tie == Tie::two_pole_breaker;
    return (two_pole ? "2P " : "") + one;
}

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
