// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One note a panel, naming its signs and what they say.
#include "reckon/signs.h"
#include "rules/panel/list.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace legwork {

namespace {
// "far-source beside SO and BT" is one kind of sign, hung twice.
enum class SignDuty { asked, advised, unread };
SignDuty call_for(PanelSign const& s) {
    if (!s.reference.section.empty()) return SignDuty::asked;
    return s.reference.source == Source::unread ? SignDuty::unread : SignDuty::advised;
}
std::vector<std::string> kinds(std::vector<PanelSign> const& signs, SignDuty by) {
    std::vector<std::string> names;
    for (PanelSign const& s : signs) {
        std::string const name(s.sign->name);
        if (call_for(s) == by && std::ranges::count(names, name) == 0) names.push_back(name);
    }
    return names;
}

std::string where(PanelSign const& s) {
    bool const at_circuit = s.sign->place == SignPlace::breaker && !s.circuit.empty();
    return fmt::format("{}{}", words(s.sign->place), at_circuit ? " " + s.circuit : "");
}

// Every section once, as sure as the least sure of them.
Reference reference_of(Reference one, std::vector<PanelSign> const& signs) {
    std::vector<std::string> sections;
    one.numbers = FromMemory::none;
    for (PanelSign const& s : signs) {
        if (s.reference.section.empty()) continue;
        auto const section = section_words(s.reference);
        if (std::ranges::count(sections, section) == 0) sections.push_back(section);
        one.source = sections.size() == 1 ? s.reference.source : std::max(one.source, s.reference.source);
        if (s.reference.numbers != FromMemory::none) one.numbers = s.reference.numbers;
    }
    one.numbers_told = true;
    one.section = fmt::format("{}", fmt::join(sections, ", "));
    return one;
}

std::string named(std::vector<std::string> const& names) {
    return fmt::format("{}: {}", plural(names.size(), "sign"), listed(names));
}

std::string message(Panel const& panel, std::vector<PanelSign> const& signs) {
    std::vector<std::string> parts;
    auto const add = [&](SignDuty by, std::string_view before, std::string_view after) {
        if (auto const some = kinds(signs, by); !some.empty())
            parts.push_back(fmt::format("{}{}{}", before, named(some), after));
    };
    add(SignDuty::asked, "the code asks for ", "");
    add(SignDuty::advised, "no code asks for ", ", but people are hurt without");
    add(SignDuty::unread, "whether the code asks for ", " is not read yet, but people are hurt without");
    return fmt::format("Panel \"{}\": {}", panel.name, fmt::join(parts, "; "));
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        auto const signs = signs_of(c, panel);
        if (signs.empty()) continue;
        seen.looked();
        auto f = finding(c, panel_sign, Gravity::usual, {panel.name, {}, ""});
        f.message = message(panel, signs);
        f.fix = "Make signs that last, and fix";
        for (PanelSign const& s : signs)
            f.fix += fmt::format("{} {}: \"{}\"", &s == &signs.front() ? "" : ";", where(s), text(s, "en"));
        f.reference = reference_of(f.reference, signs);
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_sign{
    .id = "panel-sign",
    .asks = "The signs that the code asks for hang at the panel.",
    .why = "Who works here in ten years, or fights a fire here tonight, has not read the plan. Signs say what else "
           "feeds the panel, which breaker must not move, and what must be off before a source is used.",
    .remedy = "Write them in letters that last, in print and not by hand, and fix each where it says.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
