// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/load_words.h"

#include "sheet/common_text.h"
#include "sheet/common_words.h"
#include "units/text.h"
#include "words/say.h"

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

Phrase alone_words(PanelLoad const& load, Leg leg, std::int64_t va) {
    Phrases terms;
    for (auto const& [mark, part] : alone_on(load, leg)) terms.push_back(say("load/mark-and-va", mark, figure(part)));
    std::string const name(1, letter(leg));
    if (terms.empty()) return say("load/leg-nothing", name);
    auto const sum = joined("load/plus", terms);
    return say("load/leg-alone", name, terms.size() > 1 ? say("load/equals", sum, figure(va)) : sum);
}

Phrase halved(std::int64_t va) { return va % 2 == 0 ? figure(va / 2) : Phrase::figure(fmt::format("{}.5", va / 2)); }

} // namespace

namespace {
// Words of their own tell which of several numbers it is.
bool has_number_mark(Reference const& r) {
    return r.numbers == FromMemory::the_number || r.numbers == FromMemory::all_numbers;
}

// The edition stands above the column.
Phrase unmarked(Reference const& r) {
    if (r.source == Source::unread) return say("load/not-read");
    if (r.section.empty()) return say("reference/practice");
    return has_number_mark(r) ? as_is(r.section) : section_phrase(r);
}

Phrase marked(Reference const& r, RuleMark mark) {
    auto words = unmarked(r);
    switch (mark) {
    case RuleMark::none: break;
    case RuleMark::number: return say("load/star", std::move(words));
    case RuleMark::content: return say("load/two-stars", std::move(words));
    }
    return words;
}
} // namespace

RuleMark rule_mark(LoadStep const& s) {
    if (s.reference.source == Source::memory) return RuleMark::content;
    return has_number_mark(s.reference) ? RuleMark::number : RuleMark::none;
}
RuleMark rule_mark(LoadResult const& r) {
    return r.reference && has_number_mark(*r.reference) ? RuleMark::number : RuleMark::none;
}
Phrase rule_words(LoadStep const& s) { return marked(s.reference, rule_mark(s)); }
Phrase rule_words(LoadResult const& r) { return r.reference ? marked(*r.reference, rule_mark(r)) : Phrase(); }

Phrases star_words(std::vector<RuleMark> const& marks) {
    Phrases lines;
    if (std::ranges::count(marks, RuleMark::number) > 0) lines.push_back(say("load/star-means"));
    if (std::ranges::count(marks, RuleMark::content) > 0) lines.push_back(say("load/two-stars-mean"));
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

Phrase supply_word(Panel const& panel) { return panel.feeder_said ? say("load/feeder") : say("load/service"); }

Phrase facts_words(PanelLoad const& load) {
    auto const& facts = load.facts;
    auto const& panel = *load.panel;
    auto const volts =
        facts.three_wire ? say("load/between-hots", said(facts.volts)) : say("load/hot-to-neutral", said(facts.volts));
    auto words = say("list/comma",
                     panel.feeder_said ? say("load/panel-feeder", panel.name, panel.above_called)
                                       : say("load/panel-service", panel.name),
                     volts);
    if (facts.rating)
        words = say("list/semicolon", std::move(words), say("load/rated", facts.rated_by, said(*facts.rating)));
    return say("list/stop", std::move(words));
}

Phrase total_words(LoadSteps const& steps, std::int64_t total_va) {
    constexpr std::size_t most = 6;
    Phrases terms;
    for (LoadStep const& s : steps)
        if (s.kind == LoadStep::Kind::counted) terms.push_back(figure(s.va));
    if (terms.size() < 2) return {};
    if (terms.size() > most) return say("load/bold-figures", figure(static_cast<std::int64_t>(terms.size())));
    return say("load/equals-va", joined("load/plus", terms), figure(total_va));
}

Phrases leg_words(PanelLoad const& load) {
    if (!load.size.lines) return {};
    auto const& l = *load.size.lines;
    return {alone_words(load, Leg::a, l.a_va), alone_words(load, Leg::b, l.b_va),
            say("load/both-legs", figure(load.load->total_va), figure(l.a_va), figure(l.b_va), figure(l.even_va),
                halved(l.even_va))};
}

Phrases verdict_words(PanelLoad const& load) {
    Phrases words;
    auto const missing = load.load->unknown.size();
    auto const what = supply_word(*load.panel);
    if (missing > 0)
        words.push_back(missing == 1 ? say("load/incomplete-one")
                                     : say("load/incomplete", figure(static_cast<std::int64_t>(missing))));
    if (!load.verdict.empty()) {
        words.push_back(load.verdict);
    } else if (!load.facts.rating) {
        auto unknown = say("load/rating-unknown", what);
        words.push_back(load.size.service ? say("list/sentences", say("load/smallest", what, said(*load.size.service)),
                                                std::move(unknown))
                                          : std::move(unknown));
    } else if (missing > 0) {
        words.push_back(say("load/until-then", load.facts.rated_by, said(*load.facts.rating)));
    }
    return words;
}

bool hangs_on_spaces(PanelLoad const& load) {
    return load.facts.three_wire && !load.facts.wye && !load.load->one_line.empty();
}

} // namespace legwork
