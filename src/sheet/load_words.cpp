// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/load_words.h"

#include "sheet/common_text.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <map>

namespace legwork {

namespace {

using namespace std::string_view_literals;

constexpr std::string_view kHeld = "\xc2\xa0"; // a space at which no line is broken

bool one_of(std::string_view word, auto const& words) { return std::ranges::count(words, word) > 0; }

// Signs stand before the figure that they take, units behind it.
std::string held_together(std::string_view arithmetic) {
    constexpr std::array signs{"+"sv, "−"sv, "×"sv, "÷"sv, "="sv};
    constexpr std::array units{"VA"sv, "V"sv, "A"sv, "%"sv, "m²"sv, "ft²"sv, "AWG"sv, "°C"sv, "mm²"sv};
    std::string held, last;
    while (!arithmetic.empty()) {
        auto const end = std::min(arithmetic.find(' '), arithmetic.size());
        auto const word = arithmetic.substr(0, end);
        auto const bare = word.substr(0, word.find_last_not_of(",;:)") + 1);
        if (!held.empty()) held += one_of(last, signs) || one_of(bare, units) ? kHeld : " ";
        held += word;
        last = word;
        arithmetic.remove_prefix(std::min(end + 1, arithmetic.size()));
    }
    return held;
}

std::string with_spaces(std::string line) {
    for (auto at = line.find(kHeld); at != line.npos; at = line.find(kHeld, at)) line.replace(at, kHeld.size(), " ");
    return line;
}

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// One reckoning each: "a = b VA," and "b VA × c % = d VA".
std::vector<std::string_view> reckonings(std::string_view arithmetic) {
    std::vector<std::string_view> parts;
    std::size_t begin = 0;
    for (std::size_t i = 0; i + 2 < arithmetic.size(); ++i) {
        bool const after_unit = i > 0 && (arithmetic[i - 1] == 'A' || arithmetic.substr(0, i).ends_with("²"));
        bool const ends = arithmetic[i] == ';' || ((arithmetic[i] == ',' || arithmetic[i] == ':') && after_unit);
        if (!ends || arithmetic[i + 1] != ' ' || !is_digit(arithmetic[i + 2])) continue;
        parts.push_back(arithmetic.substr(begin, i + 1 - begin));
        begin = i + 2;
    }
    parts.push_back(arithmetic.substr(begin));
    return parts;
}

// What each circuit of this leg has alone, after demand, in the order of the calculation.
std::vector<std::pair<std::string, std::int64_t>> alone_on(PanelLoad const& load, Leg leg) {
    std::vector<std::pair<std::string, std::int64_t>> all;
    for (LineLoad const& l : load.load->one_line) {
        auto const on = load.facts.legs.find(l.mark);
        if (on == load.facts.legs.end() || on->second != leg) continue;
        auto const at = std::ranges::find(all, l.mark, &std::pair<std::string, std::int64_t>::first);
        if (at == all.end())
            all.emplace_back(l.mark, l.va);
        else
            at->second += l.va;
    }
    return all;
}

std::string alone_words(PanelLoad const& load, Leg leg, std::int64_t va) {
    std::string terms;
    auto const all = alone_on(load, leg);
    for (auto const& [mark, part] : all)
        terms += fmt::format("{}{}{}{}", terms.empty() ? "" : " + ", mark, kHeld, part);
    auto const name = leg == Leg::a ? 'A' : 'B';
    if (all.empty()) return fmt::format("Leg {} alone: nothing, 0 VA", name);
    return fmt::format("Leg {} alone: {}{} VA", name, terms, all.size() > 1 ? fmt::format(" = {}", va) : "");
}

std::string halved(std::int64_t va) { return va % 2 == 0 ? std::to_string(va / 2) : fmt::format("{}.5", va / 2); }

std::string capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

} // namespace

namespace {
// Words of their own tell which of several numbers it is.
bool has_number_mark(Reference const& r) {
    return r.numbers == FromMemory::the_number || r.numbers == FromMemory::all_numbers;
}

std::string marked(Reference const& r, RuleMark mark) {
    // The edition stands above the column.
    std::string words = r.source == Source::unread ? "(not read yet)"
                        : r.section.empty()        ? text(r)
                        : has_number_mark(r)       ? r.section
                                                   : section_words(r);
    return words + (mark == RuleMark::content ? "**" : mark == RuleMark::number ? "*" : "");
}
} // namespace

RuleMark rule_mark(LoadStep const& s) {
    if (s.reference.source == Source::memory) return RuleMark::content;
    return has_number_mark(s.reference) ? RuleMark::number : RuleMark::none;
}
RuleMark rule_mark(LoadResult const& r) {
    return r.reference && has_number_mark(*r.reference) ? RuleMark::number : RuleMark::none;
}
std::string rule_words(LoadStep const& s) { return marked(s.reference, rule_mark(s)); }
std::string rule_words(LoadResult const& r) { return r.reference ? marked(*r.reference, rule_mark(r)) : std::string(); }

std::vector<std::string> star_words(std::vector<RuleMark> const& marks) {
    std::vector<std::string> lines;
    if (std::ranges::count(marks, RuleMark::number) > 0)
        lines.emplace_back("* The number of this section is from memory.");
    if (std::ranges::count(marks, RuleMark::content) > 0)
        lines.emplace_back("** What this section says is from memory: look it up before you rely on it.");
    return lines;
}

std::vector<std::string> arithmetic_lines(TextWidth const& widths, std::string_view arithmetic, Weight weight,
                                          Mm x_height, Mm width) {
    if (arithmetic.empty()) return {};
    if (widths.width(arithmetic, x_height, weight) <= width) return {with_spaces(std::string(arithmetic))};
    std::vector<std::string> lines;
    for (std::string_view const part : reckonings(arithmetic))
        for (std::string& line : wrapped_whole(widths, held_together(part), weight, x_height, width))
            lines.push_back(with_spaces(std::move(line)));
    return lines;
}

std::string_view supply_word(Panel const& panel) { return panel.feeder_said ? "feeder" : "service"; }

std::string facts_words(PanelLoad const& load) {
    auto const& facts = load.facts;
    std::string words = fmt::format("Panel {}: {}", load.panel->name, supply_word(*load.panel));
    if (load.panel->feeder_said) words += " from panel " + load.panel->above_called;
    words += fmt::format(", {} {}", text(facts.volts),
                         facts.three_wire ? "between the two hots" : "between its one hot and the neutral");
    return words + (facts.rating ? fmt::format("; {} of {}.", facts.rated_by, text(*facts.rating)) : ".");
}

std::string total_words(LoadSteps const& steps, std::int64_t total_va) {
    constexpr std::size_t most = 6;
    std::vector<std::int64_t> terms;
    for (LoadStep const& s : steps)
        if (s.kind == LoadStep::Kind::counted) terms.push_back(s.va);
    if (terms.size() < 2) return {};
    if (terms.size() > most) return fmt::format("the {} bold figures, added up", terms.size());
    return fmt::format("{} = {} VA", fmt::join(terms, " + "), total_va);
}

std::vector<std::string> leg_words(PanelLoad const& load) {
    if (!load.size.lines) return {};
    auto const& l = *load.size.lines;
    return {alone_words(load, Leg::a, l.a_va), alone_words(load, Leg::b, l.b_va),
            fmt::format("Both legs alike: {} − {} − {} = {} VA; half of it on each, {} VA", load.load->total_va, l.a_va,
                        l.b_va, l.even_va, halved(l.even_va))};
}

std::vector<std::string> verdict_words(PanelLoad const& load) {
    std::vector<std::string> words;
    auto const missing = load.load->unknown.size();
    auto const what = supply_word(*load.panel);
    if (missing > 0)
        words.push_back(fmt::format(
            "Not complete, so do not hand it in: {} missing, named further on, and the figures are "
            "without {}.",
            missing == 1 ? "one thing is" : fmt::format("{} things are", missing), missing == 1 ? "it" : "them"));
    if (!load.verdict.empty())
        words.push_back(capital(load.verdict));
    else if (!load.facts.rating)
        words.push_back(fmt::format(
            "{}How many amperes the present {} is good for is not known: write the main of the "
            "panel into the job file.",
            load.size.service ? fmt::format("A {} of {} is the smallest for it. ", what, text(*load.size.service)) : "",
            what));
    else if (missing > 0)
        words.push_back(fmt::format("Whether it is within {} of {} is not known until then.", load.facts.rated_by,
                                    text(*load.facts.rating)));
    return words;
}

std::vector<std::string> missing_words(PanelLoad const& load) {
    std::vector<std::string> words;
    for (std::string const& u : load.load->unknown) words.push_back(capital(u));
    return words;
}

bool hangs_on_spaces(PanelLoad const& load) {
    return load.facts.three_wire && !load.facts.wye && !load.load->one_line.empty();
}

} // namespace legwork
