// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// gfci-needed and afci-needed: what the code book asks of each circuit's outlets, against what the job says is there.
#include "check/circuit_place.h"
#include "check/say.h"
#include "check/themes.h"
#include "check/wire_rating.h"
#include "codebook/cite.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// One of the two kinds of protection, as rules and people call it.
struct Kind {
    std::string_view rule, key, name;
    Protection typed::Circuit::*said;
};
constexpr Kind kGround{"gfci-needed", "gfci", "GFCI", &typed::Circuit::gfci};
constexpr Kind kArc{"afci-needed", "afci", "AFCI", &typed::Circuit::afci};

// What one circuit lacks.
struct Lack {
    typed::Circuit const* circuit;
    Asks asks;
    std::string_view topic, what, hangs_on;
    std::optional<Day> until;
    std::string place{}; // " (kitchen)", where `what` does not tell it
    bool wired_in = false, not_of_a_dwelling = false;
    bool same_as(Lack const& o) const {
        return asks == o.asks && topic == o.topic && what == o.what && hangs_on == o.hangs_on && place == o.place &&
               circuit->existing == o.circuit->existing;
    }
};

// By its own breaker or outlet, or by the breaker of a feeder on the way to it.
bool is_protected(typed::Job const& job, typed::Circuit const& circuit, Kind const& kind) {
    typed::Circuit const* c = &circuit;
    for (std::size_t steps = 0; c && steps <= job.panels.size(); ++steps) {
        auto const said = c->*kind.said;
        if (said == Protection::breaker || said == Protection::outlet) return true;
        typed::Panel const* panel = panel_of(job, c->panel);
        c = panel && panel->feeder ? circuit_of(job, panel->feeder->mark) : nullptr;
    }
    return false;
}

std::optional<Day> today(typed::Job const& job) {
    if (!job.date) return std::nullopt;
    return Day{job.date->year, job.date->month, job.date->day};
}

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

bool any_unsaid(std::vector<Lack> const& lacks, Kind const& kind) {
    return std::ranges::any_of(lacks, [&](Lack const& l) { return l.circuit->*kind.said == Protection::unsaid; });
}

std::string state(std::vector<Lack> const& lacks, Kind const& kind) {
    std::string const have = lacks.size() == 1 ? "it has" : "they have";
    return any_unsaid(lacks, kind) ? fmt::format("whether {} any is not said", have)
                                   : fmt::format("{} none ({} = false)", have, kind.key);
}

std::string device(std::vector<Lack> const& lacks, Kind const& kind) {
    typed::Circuit const& first = *lacks.front().circuit;
    bool const at_an_outlet = &kind == &kGround && !lacks.front().wired_in;
    if (lacks.size() == 2) return fmt::format("one two-pole {} breaker for {}", kind.name, words(lacks));
    if (first.poles == 2) return fmt::format("a two-pole {} breaker", kind.name);
    if (!first.multiwire.empty())
        return fmt::format("a two-pole {} breaker on the pair{}", kind.name,
                           at_an_outlet ? ", or a GFCI receptacle as its first outlet after the neutrals part" : "");
    if (!at_an_outlet) return fmt::format("{} {} breaker", &kind == &kGround ? "a" : "an", kind.name);
    if (first.single || first.outlet_count == 1) return "a GFCI breaker or a GFCI receptacle";
    return "a GFCI breaker, or a GFCI receptacle as the first outlet with the others behind it";
}

Finding relieved(Case const& c, std::vector<Lack> const& lacks, Finding f) {
    auto const ends = text(*lacks.front().until);
    f.severity = Severity::note;
    f.message = fmt::format("{}: {} frees listed heating and cooling equipment outdoors from GFCI protection until "
                            "{} only; {}",
                            words(lacks), text(f.reference), ends,
                            c.job.date ? "this job is dated before that day" : "this job has no date");
    f.fix = fmt::format("If it is put in on {} or later, fit {}; let `date` say when", ends, device(lacks, kGround));
    return f;
}

Finding said_of(Case const& c, std::vector<Lack> const& lacks, Kind const& kind) {
    Lack const& lack = lacks.front();
    Where where = about(*lack.circuit, std::string(kind.key));
    if (lacks.size() == 2) {
        where.circuits.push_back(lacks.back().circuit->mark);
        if (lacks.back().circuit->panel != where.panel) where.panel.clear();
    }
    bool const sure = lack.asks == Asks::yes;
    auto f = finding(c, kind.rule, sure ? unless_existing(lack.circuit->existing) : Severity::warning, std::move(where),
                     lack.topic);
    if (lack.asks == Asks::relieved) return relieved(c, lacks, std::move(f));
    if (lack.not_of_a_dwelling)
        f.reference.section += fmt::format(" ({} where nobody lives)", cite(c.book, "gfci-needed/elsewhere").section);
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
Finding said_of_old_work(Case const& c, std::vector<Lack> const& lacks, Kind const& kind) {
    Lack const& first = lacks.front();
    Where where{first.circuit->panel, {}, std::string(kind.key)};
    std::vector<std::string> each;
    for (Lack const& l : lacks) {
        where.circuits.push_back(l.circuit->mark);
        each.push_back(l.circuit->mark + l.place);
    }
    auto f = finding(c, kind.rule, Severity::warning, std::move(where), first.topic);
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

// Both members of a pair that lack the same are one finding: one breaker cures them.
Findings told(Case const& c, std::vector<Lack> const& lacks, Kind const& kind) {
    Findings found;
    std::vector<typed::Circuit const*> done;
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
        typed::Circuit const* mate = partner(c.job, *lack.circuit);
        auto const other = std::ranges::find(lacks, mate, &Lack::circuit);
        if (mate && other != lacks.end() && lack.same_as(*other)) together.push_back(*other);
        for (Lack const& l : together) done.push_back(l.circuit);
        found.push_back(said_of(c, together, kind));
    }
    return found;
}

Findings gfci_needed(Case const& c) {
    std::vector<Lack> lacks;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (on_dc(c, circuit) || is_protected(c.job, circuit, kGround) || fed_panel(c.job, circuit)) continue;
        auto const outlets = outlets_of(c.job, circuit);
        auto const asked = gfci_asked(c.book, outlets, today(c.job));
        if (asked.asks == Asks::no || (asked.asks == Asks::relieved && circuit.existing)) continue;
        Lack lack{&circuit, asked.asks, asked.row->topic, asked.row->what, asked.hangs_on, asked.until};
        lack.wired_in = plugged(outlets) != Plugged::surely;
        lack.not_of_a_dwelling = !c.job.dwelling && asked.row->of == GfciRow::Of::receptacles &&
                                 !cite(c.book, "gfci-needed/elsewhere").section.empty();
        lacks.push_back(std::move(lack));
    }
    return told(c, lacks, kGround);
}

Findings afci_needed(Case const& c) {
    std::vector<Lack> lacks;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (on_dc(c, circuit) || is_protected(c.job, circuit, kArc) || fed_panel(c.job, circuit)) continue;
        auto const outlets = outlets_of(c.job, circuit);
        auto const asks = afci_asked(c.book, outlets);
        if (asks == Asks::no) continue;
        AfciTable const& table = afci_table(c.book);
        auto places = outlets.places.of(table.rooms);
        if (places.has(RoomPlace::kitchen)) places = places.without({RoomPlace::counter});
        auto const rooms = names(places);
        Lack lack{&circuit, asks, kArc.rule, table.what, outlets.breaker ? table.hangs_on : table.no_breaker, {}};
        if (!rooms.empty()) lack.place = fmt::format(" ({})", listed(rooms));
        if (!rooms.empty() && asks == Asks::yes) lack.what = table.there;
        lacks.push_back(std::move(lack));
    }
    return told(c, lacks, kArc);
}

constexpr Rule kRules[] = {
    {"gfci-needed", "Receptacles near water or earth, and what else the code names, have ground-fault protection.",
     "A person who touches something live with wet hands, or standing on earth or concrete, carries a current that no "
     "ordinary breaker notices and that stops a heart. A ground-fault interrupter (GFCI) senses 5 mA going astray and "
     "opens within a few hundredths of a second.",
     "Fit a GFCI breaker, or a GFCI receptacle as the first outlet with the others on its load side; on a pair that "
     "shares a neutral a two-pole GFCI breaker. Write gfci = \"breaker\" or \"outlet\".",
     gfci_needed},
    {"afci-needed", "In a dwelling, the circuits that the code names have arc-fault protection.",
     "A nail through a cable or a worn cord arcs at a current that no ordinary breaker notices, and sets what is round "
     "it on fire. An arc-fault interrupter (AFCI) knows the pattern of such an arc.",
     "Fit an AFCI breaker, or one that senses arc and ground faults both where both are asked; on a pair that shares a "
     "neutral a two-pole one. Write afci = \"breaker\".",
     afci_needed},
};
} // namespace

std::span<Rule const> protection_rules() { return kRules; }

} // namespace legwork
