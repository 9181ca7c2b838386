// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/say.h"

#include "units/text.h"
#include "words/catalogue.h"
#include "words/say.h"

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

namespace {
Phrase of_poles(int poles, Phrase rating) {
    return poles == 2 ? say("breaker/two-pole", std::move(rating)) : std::move(rating);
}
Phrase rating(Circuit const& c) { return c.breaker ? said(*c.breaker) : with_unit("? A"); }
Phrase rating_without_unit(Circuit const& c) { return c.breaker ? figure(*c.breaker) : as_is("?"); }
} // namespace

Phrase breaker_phrase(Circuit const& c) { return of_poles(c.poles, rating(c)); }

Phrase breaker_phrase(std::vector<Circuit const*> const& cable) {
    Circuit const &first = *cable.front(), &last = *cable.back();
    if (!first.breaker && !last.breaker) return {};
    if (&first == &last) return breaker_phrase(first);
    if (first.breaker != last.breaker || first.poles != last.poles)
        return say("breaker/unlike", of_poles(first.poles, rating_without_unit(first)), breaker_phrase(last));
    bool const two_pole = first.poles == 1 && first.pair && first.pair->tie == Tie::two_pole_breaker;
    return two_pole ? of_poles(2, rating(first)) : breaker_phrase(first);
}

std::string breaker_words(Circuit const& c) { return english().words(breaker_phrase(c)); }

std::string breaker_words(std::vector<Circuit const*> const& cable) { return english().words(breaker_phrase(cable)); }

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
