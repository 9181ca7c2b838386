// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random buildings reckoned twice, by the program and by its twin; and what one more load may do to a total.
#include "building/resolve.h"
#include "calculator.h"
#include "in_english.h"
#include "load_job.h"
#include "random_house.h"
#include "twin.h"

#include "catch.h"
#include <fmt/format.h>

#include <algorithm>
#include <array>

using namespace made;

namespace {
PanelLoad loaded(typed::Job const& job, typed::Panel const& panel, LoadMethod method) {
    auto const building = resolve(job);
    return panel_load(building, Plan{}, *code_book(job.code), *panel_named(building, panel.name), method);
}

// Whether a method is for this building, told once more.
bool holds(twin::House const& h, LoadMethod method) {
    if (method == LoadMethod::standard) return true;
    auto const& circuits = h.job->circuits;
    auto const is_here = [&](typed::Circuit const& c) {
        for (typed::Panel const* p = panel_of(*h.job, c.panel); p;
             p = p->feeder ? panel_of(*h.job, p->feeder->panel) : nullptr)
            if (p == h.panel) return true;
        return false;
    };
    auto const feeds_some = [&](typed::Circuit const& c) {
        typed::Panel const* below = fed_panel(*h.job, c);
        return below && std::ranges::any_of(circuits, [&](auto& o) { return o.panel == below->name; });
    };
    bool const stands =
        std::ranges::any_of(circuits, [&](auto& c) { return c.existing && is_here(c) && !feeds_some(c); });
    bool const sun =
        std::ranges::any_of(circuits, [&](auto& c) { return is_here(c) && (c.use == "solar" || c.use == "battery"); });
    if (method == LoadMethod::measured) {
        auto const& home = h.job->dwelling;
        return home && home->peak && h.whole && !h.panel->feeder && home->peak->days >= (h.nec ? 30 : 365) && stands &&
               !sun;
    }
    if (!h.nec || !h.whole || !h.two_hots) return false;
    if (method == LoadMethod::existing) return stands;
    auto least = h.panel->main;
    if (h.panel->feeder && (!least || *least > 60_A)) least = 60_A; // what every feeder here has
    return !least || *least >= 100_A;
}

twin::Answer answer(twin::House const& h, LoadMethod method) {
    switch (method) {
    case LoadMethod::optional: return twin::optional(h);
    case LoadMethod::existing: return twin::existing(h);
    case LoadMethod::measured: return twin::measured(h);
    case LoadMethod::standard: break;
    }
    return twin::standard(h);
}

constexpr std::array kMethods{LoadMethod::standard, LoadMethod::optional, LoadMethod::existing, LoadMethod::measured};

std::int64_t sum_of_counted(LoadSteps const& steps) {
    std::int64_t sum = 0;
    for (LoadStep const& s : steps)
        if (s.kind == LoadStep::Kind::counted) sum += s.va;
    return sum;
}

std::string written(LoadSteps const& steps) {
    std::string all;
    for (LoadStep const& s : steps)
        all += fmt::format("{:>8} {} {}: {}\n", s.va, s.kind == LoadStep::Kind::counted, in_english(s.item),
                           in_english(s.arithmetic));
    return all;
}

void check_against_twin(typed::Job const& job, typed::Panel const& panel, LoadMethod method) {
    auto const p = loaded(job, panel, method);
    auto const h = twin::house(job, panel);
    RC_LOG() << told(job) << "\npanel " << panel.name << ", " << name(method) << "\n";
    RC_ASSERT(p.load.has_value() == holds(h, method));
    if (!p.load) {
        RC_ASSERT(!p.why.empty());
        RC_ASSERT(!p.fix.empty());
        return;
    }
    RC_LOG() << written(p.load->steps) << "neutral\n" << written(p.load->neutral);
    auto const a = answer(h, method);
    RC_ASSERT(p.load->total_va == a.total);
    RC_ASSERT(p.load->total_va == sum_of_counted(p.load->steps));
    RC_ASSERT(p.load->unknown.empty() == !a.unknown);
    RC_ASSERT(p.load->neutral_va == a.neutral);
    RC_ASSERT(p.load->neutral_va.value_or(0) == sum_of_counted(p.load->neutral));
    RC_ASSERT(p.load->whole_dwelling == h.whole);
    int lines = 0;
    for (LoadSteps const* steps : {&p.load->steps, &p.load->neutral})
        for (LoadStep const& s : *steps) {
            RC_ASSERT(s.va >= 0);
            RC_ASSERT(!s.item.empty());
            RC_LOG() << in_english(s.item) << ": " << in_english(s.arithmetic) << "\n";
            RC_ASSERT(wrong_arithmetic(s, lines) == "");
        }
}
} // namespace

TEST_CASE("any building comes out as its twin, by every method, and by a pocket calculator", "[demand][twin]") {
    REQUIRE(always(4000, 220, [] {
        auto const job = any_job();
        for (typed::Panel const& panel : job.panels)
            for (auto const method : kMethods) check_against_twin(job, panel, method);
    }));
}

namespace {
// Percents of NEC Part III that go down where there are more of a kind: the fourth appliance fastened in place (75 %),
// cooking appliances and dryers by their tables. There alone a load more may make a total smaller.
bool is_stepped(twin::House const& before, twin::House const& after) {
    auto const fastened = [](twin::House const& h) {
        std::size_t n = 0;
        for (auto const& l : h.loads)
            n += l.fixed && l.va > 0 && (l.kind == twin::Kind::appliance || l.kind == twin::Kind::full) &&
                 (h.year < 2020 || l.va >= 500);
        return n;
    };
    auto const of_tables = [](twin::House const& h) {
        return twin::sum(twin::of(h.loads, {twin::Kind::cooking, twin::Kind::dryer}));
    };
    return (fastened(before) < 4 && fastened(after) >= 4) || of_tables(before) != of_tables(after);
}

void check_never_less(typed::Job const& before, typed::Job const& after) {
    for (auto const method : kMethods) {
        auto const& panel = before.panels.front();
        auto const one = loaded(before, panel, method), more = loaded(after, after.panels.front(), method);
        if (!one.load || !more.load) continue;
        auto const h = twin::house(before, panel), g = twin::house(after, after.panels.front());
        if (method == LoadMethod::standard && h.nec && before.dwelling && is_stepped(h, g)) continue;
        RC_LOG() << told(after) << "\n"
                 << name(method) << "\n"
                 << written(one.load->steps) << "then\n"
                 << written(more.load->steps);
        RC_ASSERT(more.load->total_va >= one.load->total_va);
        if (more.load->total_va > one.load->total_va) RC_ASSERT(grown_step(*one.load, *more.load) != nullptr);
    }
}
} // namespace

TEST_CASE("one load more never makes a total smaller, but for percents that go by the number", "[demand][twin]") {
    REQUIRE(always(3000, 424, [] {
        auto const job = any_job();
        auto more = job;
        auto const& panel = job.panels[*rc::gen::inRange<std::size_t>(0, job.panels.size())];
        more.circuits.push_back(any_circuit(99, panel.name));
        // The first circuit of a sub-panel takes the place of what its feeder was said to carry.
        if (panel.feeder && std::ranges::none_of(job.circuits, [&](auto& c) { return c.panel == panel.name; })) return;
        check_never_less(job, more);
    }));
}

TEST_CASE("nor does a larger load, but where it reaches another column or becomes one of four", "[demand][twin]") {
    REQUIRE(always(3000, 630, [] {
        auto const job = any_job();
        if (job.circuits.empty()) return;
        auto more = job;
        auto& c = more.circuits[*rc::gen::inRange<std::size_t>(0, job.circuits.size())];
        if (!c.load) return;
        c.load->count += *rc::gen::inRange<std::int64_t>(1, 60) * 100'000;
        check_never_less(job, more);
    }));
}
