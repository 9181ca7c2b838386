// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/protection/lacks.h"

#include "codebook/cite.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
std::string text(Day d) {
    constexpr std::array<std::string_view, 12> months{"January",   "February", "March",    "April",
                                                      "May",       "June",     "July",     "August",
                                                      "September", "October",  "November", "December"};
    auto const month = static_cast<std::size_t>(std::clamp(d.month, 1, 12) - 1);
    return fmt::format("{} {} {}", d.day, months[month], d.year);
}

std::string words(std::vector<Lack> const& lacks) {
    std::vector<std::string> marks;
    for (Lack const& l : lacks) marks.push_back(l.circuit->mark);
    return listed(marks);
}

std::vector<Circuit const*> circuits_of(std::vector<Lack> const& lacks) {
    std::vector<Circuit const*> circuits;
    for (Lack const& l : lacks) circuits.push_back(l.circuit);
    return circuits;
}

bool any_unsaid(std::vector<Lack> const& lacks, ProtectionKind const& kind) {
    return std::ranges::any_of(lacks, [&](Lack const& l) { return l.circuit->*kind.said == Protection::unsaid; });
}

std::string state(std::vector<Lack> const& lacks, ProtectionKind const& kind) {
    std::string const have = lacks.size() == 1 ? "it has" : "they have";
    return any_unsaid(lacks, kind) ? fmt::format("whether {} any is not said", have)
                                   : fmt::format("{} none ({} = false)", have, kind.key);
}

std::string device(std::vector<Lack> const& lacks, ProtectionKind const& kind) {
    Circuit const& first = *lacks.front().circuit;
    bool const at_an_outlet = kind.ground_fault && !lacks.front().wired_in;
    if (lacks.size() == 2) return fmt::format("one two-pole {} breaker for {}", kind.name, words(lacks));
    if (first.poles == 2) return fmt::format("a two-pole {} breaker", kind.name);
    if (first.pair)
        return fmt::format("a two-pole {} breaker on the pair{}", kind.name,
                           at_an_outlet ? ", or a GFCI receptacle as its first outlet after the neutrals part" : "");
    if (!at_an_outlet) return fmt::format("{} {} breaker", kind.ground_fault ? "a" : "an", kind.name);
    if (first.single || first.outlet_count == 1) return "a GFCI breaker or a GFCI receptacle";
    return "a GFCI breaker, or a GFCI receptacle as the first outlet with the others behind it";
}

Finding relieved(Case const& c, std::vector<Lack> const& lacks, ProtectionKind const& kind, Finding f) {
    auto const ends = text(*lacks.front().until);
    f.message = fmt::format("{}: {} frees listed heating and cooling equipment outdoors from GFCI protection until "
                            "{} only; {}",
                            words(lacks), text(f.reference), ends,
                            c.building.date ? "this job is dated before that day" : "this job has no date");
    f.fix = fmt::format("If it is put in on {} or later, fit {}; let `date` say when", ends, device(lacks, kind));
    return f;
}

constexpr auto relief_runs = Gravity::second;
Gravity::Of gravity(Asks asks) {
    if (asks == Asks::relieved) return relief_runs;
    return asks == Asks::yes ? Gravity::usual : Gravity::doubtful;
}

Finding said_of(Case const& c, std::vector<Lack> const& lacks, ProtectionKind const& kind) {
    Lack const& lack = lacks.front();
    bool const sure = lack.asks == Asks::yes;
    auto f = finding(c, kind.rule, gravity(lack.asks), about(circuits_of(lacks), std::string(kind.key)), lack.topic);
    if (lack.asks == Asks::relieved) return relieved(c, lacks, kind, std::move(f));
    if (lack.not_of_a_dwelling) {
        auto const elsewhere = cite(c.book, "gfci-needed/elsewhere");
        f.reference.section =
            fmt::format("{} ({} where nobody lives)", section_words(f.reference), section_words(elsewhere));
        f.reference.numbers_told = true;
    }
    auto const asks = fmt::format("{}{}: {} asks for {} protection of {}{}", words(lacks), lack.place,
                                  text(f.reference), kind.name, lack.what, sure && !lack.place.empty() ? " there" : "");
    if (!lack.hangs_on.empty() && !sure)
        f.message = fmt::format("{}; it is needed if {}, and {}", asks, lack.hangs_on, state(lacks, kind));
    else
        f.message =
            fmt::format("{}{}; {}", asks, f.reference.source == Source::memory ? " (from memory: look it up)" : "",
                        state(lacks, kind));
    if (lack.until && sure)
        f.message += fmt::format("; the relief for listed equipment ended on {}", text(*lack.until));
    if (lack.circuit->existing) f.message += " (asked of new work; this was there before)";
    f.fix = fmt::format("Fit {}", device(lacks, kind));
    if (any_unsaid(lacks, kind))
        f.fix += fmt::format("; if it is there already, say {} = \"breaker\" or \"outlet\"", kind.key);
    return f;
}

// A house full of old circuits is one thing to say, not a page of it.
Finding said_of_old_work(Case const& c, std::vector<Lack> const& lacks, ProtectionKind const& kind) {
    Lack const& first = lacks.front();
    std::vector<std::string> each;
    for (Lack const& l : lacks) each.push_back(l.circuit->mark + l.place);
    auto f = finding(c, kind.rule, Gravity::usual, about(circuits_of(lacks), std::string(kind.key)), first.topic);
    f.message = fmt::format("{}: {} asks for {} protection of {} there in new work; these were there before, and {}",
                            listed(each), text(f.reference), kind.name, first.what, state(lacks, kind));
    f.fix = fmt::format(
        "Where such a circuit is extended or its breaker is changed, fit {} breakers, a two-pole one for "
        "each pair{}",
        kind.name,
        any_unsaid(lacks, kind) ? fmt::format("; where one is there already, say {} = \"breaker\"", kind.key) : "");
    return f;
}

// Those of `lacks` that one finding tells with `lack`: all alike of the old work in its panel.
std::vector<Lack> alike_of_old_work(std::vector<Lack> const& lacks, Lack const& lack) {
    std::vector<Lack> alike;
    for (Lack const& l : lacks)
        if (l.circuit->existing && l.circuit->panel == lack.circuit->panel && l.asks == lack.asks &&
            l.topic == lack.topic && l.what == lack.what && l.hangs_on == lack.hangs_on)
            alike.push_back(l);
    return alike;
}

} // namespace

bool is_protected(Circuit const& circuit, ProtectionKind const& kind) {
    auto const has_it = [&](Circuit const& c) {
        return c.*kind.said == Protection::breaker || c.*kind.said == Protection::outlet;
    };
    if (has_it(circuit)) return true;
    for (Panel const* panel = circuit.panel; panel; panel = panel->above)
        if (panel->feeder && has_it(*panel->feeder)) return true;
    return false;
}

Findings told(Case const& c, std::vector<Lack> const& lacks, ProtectionKind const& kind) {
    Findings found;
    std::vector<Circuit const*> done;
    for (Lack const& lack : lacks) {
        if (std::ranges::find(done, lack.circuit) != done.end()) continue;
        if (lack.circuit->existing && lack.asks == Asks::yes && !lack.until) {
            auto const alike = alike_of_old_work(lacks, lack);
            if (alike.size() > 2) {
                for (Lack const& l : alike) done.push_back(l.circuit);
                found.push_back(said_of_old_work(c, alike, kind));
                continue;
            }
        }
        std::vector<Lack> together{lack};
        Circuit const* mate = lack.circuit->partner();
        auto const other = std::ranges::find(lacks, mate, &Lack::circuit);
        if (mate && other != lacks.end() && lack.same_as(*other)) together.push_back(*other);
        for (Lack const& l : together) done.push_back(l.circuit);
        found.push_back(said_of(c, together, kind));
    }
    return found;
}

} // namespace legwork
