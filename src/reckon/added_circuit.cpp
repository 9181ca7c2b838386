// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/added_circuit.h"

#include "balance/balance.h"
#include "building/trial.h"
#include "codebook/stock/uses.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::string_view kExample = "\"vehicle charger, 40 A, 2 poles, continuous\"";

std::string_view trimmed(std::string_view s) {
    while (!s.empty() && s.front() == ' ') s.remove_prefix(1);
    while (!s.empty() && s.back() == ' ') s.remove_suffix(1);
    return s;
}

std::vector<std::string_view> parts_of(std::string_view words) {
    std::vector<std::string_view> parts;
    while (true) {
        auto const comma = words.find(',');
        parts.push_back(trimmed(words.substr(0, comma)));
        if (comma == std::string_view::npos) return parts;
        words.remove_prefix(comma + 1);
    }
}

std::string new_mark(Building const& building) {
    auto const taken = [&](std::string const& mark) {
        return circuit_named(building, mark) || std::ranges::count(building.runs, mark, &Run::mark) > 0;
    };
    std::string mark = "NEW";
    for (int n = 2; taken(mark); ++n) mark = fmt::format("NEW{}", n);
    return mark;
}

struct Word {
    std::string_view said;
    void (*set)(Circuit&, std::optional<int>& poles);
};
constexpr std::array kWords{
    Word{"1 pole", [](Circuit&, std::optional<int>& poles) { poles = 1; }},
    Word{"one pole", [](Circuit&, std::optional<int>& poles) { poles = 1; }},
    Word{"120 V", [](Circuit&, std::optional<int>& poles) { poles = 1; }},
    Word{"2 poles", [](Circuit&, std::optional<int>& poles) { poles = 2; }},
    Word{"two poles", [](Circuit&, std::optional<int>& poles) { poles = 2; }},
    Word{"208 V", [](Circuit&, std::optional<int>& poles) { poles = 2; }},
    Word{"240 V", [](Circuit&, std::optional<int>& poles) { poles = 2; }},
    Word{"continuous", [](Circuit& c, std::optional<int>&) { c.continuous = true; }},
    Word{"not continuous", [](Circuit& c, std::optional<int>&) { c.continuous = false; }},
    Word{"motor", [](Circuit& c, std::optional<int>&) { c.motor = true; }},
    Word{"interlocked", [](Circuit& c, std::optional<int>&) { c.interlocked = true; }},
};

// What this part says; false when it says nothing that is known.
bool take_part(std::string_view part, Circuit& c, std::optional<int>& poles) {
    auto const word = std::ranges::find(kWords, part, &Word::said);
    if (word != kWords.end()) return word->set(c, poles), true;
    constexpr std::string_view mca = "mca ";
    if (part.starts_with(mca)) {
        c.mca = parse_amps(trimmed(part.substr(mca.size()))).value;
        return c.mca.has_value();
    }
    if (auto const amps = parse_amps(part).value) return c.breaker = amps, true;
    if (auto const load = parse_load(part).value) return c.load = load, true;
    return false;
}

AddedCircuit refused(std::string why, std::string fix) { return {std::nullopt, {}, std::move(why), std::move(fix)}; }

// Poles as said, else as its use has them.
std::optional<int> poles_of(Use const* use, std::optional<int> said) {
    if (said || !use) return said;
    if (use->poles == Poles::two) return 2;
    return use->poles == Poles::one ? std::optional(1) : std::nullopt;
}

void take_load_of_breaker(AddedCircuit& told, Use const* use, CodeBook const& book, Volts volts) {
    Circuit& c = *told.circuit;
    bool const continuous = c.continuous.value_or(use && use->continuous);
    auto const amps = continuous ? percent(*c.breaker, book.continuous_percent.value) : *c.breaker;
    c.load = volts * amps;
    auto const of_breaker = continuous ? fmt::format("{} % of its breaker, the most that a continuous load may draw",
                                                     book.continuous_percent.value)
                                       : std::string("all that its breaker lets through");
    told.taken.push_back(
        fmt::format("its load as {}: {} × {} = {}", of_breaker, text(amps), text(volts), text(*c.load)));
}
} // namespace

AddedCircuit added_circuit(std::string_view words, Building const& building, CodeBook const& book, Panel const& panel) {
    auto const parts = parts_of(words);
    AddedCircuit told;
    Circuit& c = told.circuit.emplace();
    c.name = std::string(parts.front());
    c.panel = &panel;
    c.mark = new_mark(building);
    std::optional<int> said;
    for (std::size_t i = 1; i < parts.size(); ++i)
        if (!take_part(parts[i], c, said))
            return refused(fmt::format("\"{}\" says nothing about a circuit that legwork understands", parts[i]),
                           fmt::format("say what it is and then its breaker or load and its poles, as {}", kExample));
    if (c.name.empty()) return refused("it does not say what is to be added", fmt::format("say it as {}", kExample));
    if (!c.breaker && !c.load && !c.mca)
        return refused("it does not say how large the circuit is",
                       fmt::format("say its breaker (40 A) or its load (7200 W), as {}", kExample));
    auto const facts = service_facts({}, panel);
    if (!facts) return refused(fmt::format("panel \"{}\" is on DC", panel.name), "name a panel on AC with --panel");
    c.use = use_named(c.name);
    if (!c.use) c.use = use_named(guess_use(c.name, "", said.value_or(1), {}));
    if (!c.use && !said) c.use = use_named(guess_use(c.name, "", 2, {}));
    if (!c.use) {
        c.use = use_named("appliance");
        told.taken.emplace_back("what it is: an appliance, since no use is known by that name");
    }
    auto const poles = poles_of(c.use, said);
    if (!poles)
        return refused("it does not say whether it is 1 pole or 2 poles", fmt::format("say it as {}", kExample));
    c.poles = *poles;
    if (c.poles == 2 && !facts->three_wire)
        return refused(fmt::format("panel \"{}\" has no two hots with a voltage between them", panel.name),
                       "say 1 pole");
    if (c.poles == 2) c.tie = Tie::two_pole_breaker;
    auto const volts = c.poles == 2 ? facts->volts : 120_V;
    if (!c.load && !c.mca) take_load_of_breaker(told, c.use, book, volts);
    return told;
}

namespace {
PanelWithMore panel_with_more(Building const& before, Plan const& before_plan, WithMore const& after,
                              CodeBook const& book, std::string const& name, std::optional<LoadMethod> asked) {
    PanelWithMore p;
    Panel const& panel = *panel_named(after.building, name);
    p.after = asked ? panel_load(after.building, after.plan, book, panel, asked)
                    : permitted_load(after.building, after.plan, book, panel);
    Panel const& old = *panel_named(before, name);
    p.before = panel_load(before, before_plan, book, old, p.after.load ? std::optional(p.after.load->method) : asked);
    if (!p.before.load) p.before = panel_load(before, before_plan, book, old);
    if (!p.after.load || !p.before.load) return p;
    p.more_va = p.after.load->total_va - p.before.load->total_va;
    if (auto const* step = grown_step(*p.before.load, *p.after.load)) p.grew = *step;
    if (!p.after.facts.rating) return p;
    bool const enough = p.after.size.fits && (!p.after.size.floor || !p.after.size.floor_is_load ||
                                              *p.after.facts.rating >= *p.after.size.floor);
    if (!enough || p.after.load->unknown.empty()) p.fits = enough;
    return p;
}
} // namespace

WithMore with_more(Building const& building, Plan const& plan, CodeBook const& book, Circuit const& more,
                   std::optional<LoadMethod> asked) {
    WithMore all;
    all.building = with_circuit(building, more);
    all.plan = as_filed(all.building);
    auto const* old_plan = plan_of(plan, more.panel->name);
    auto const* new_plan = plan_of(all.plan, more.panel->name);
    if (new_plan && (!old_plan || old_plan->why.empty())) all.no_space = new_plan->why;
    for (Panel const* p = more.panel; p && p->listed; p = p->above) {
        all.panels.push_back(panel_with_more(building, plan, all, book, p->name, asked));
        if (p->above && !p->above->listed) all.unlisted = p->above;
    }
    auto const one_is = [&](std::optional<bool> fits) {
        return std::ranges::count(all.panels, fits, &PanelWithMore::fits) > 0;
    };
    if (one_is(false))
        all.fits = false;
    else if (!one_is(std::nullopt) && !all.unlisted)
        all.fits = true;
    return all;
}

} // namespace legwork
