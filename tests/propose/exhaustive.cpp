// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "exhaustive.h"
#include "building/resolve.h"

#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "job/job.h"
#include "proposed_jobs.h"

#include <algorithm>
#include <array>
#include <map>

namespace legwork::testing {

namespace {
constexpr char const* kRules[] = {"wire-breaker-fits", "wire-load-fits",    "wire-continuous", "wire-outlet",
                                  "wire-conductors",   "wire-breaker-size", "wire-drop",       "mw-conductors",
                                  "mw-unequal",        "panel-feeder-wires"};
constexpr int kBreakers[] = {15,  20,  25,  30,  35,  40,  45,  50,  60,  70,  80, 90,
                             100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400}; // NEC 240.6(A), from 15 A

bool motor(typed::Circuit const& c) {
    Use const* use = use_named(c.use);
    return c.motor.value_or(use && use->motor);
}

// A motor's breaker above its wire (NEC 430.52, CE 28-200) is not built by: its overload protection is not told.
typed::Job without_motor_easement(typed::Job job, std::vector<std::string> const& marks) {
    for (typed::Circuit& c : job.circuits)
        if (std::ranges::find(marks, c.mark) != marks.end()) c.motor = false;
    return job;
}

// NEC Table 210.21(B)(3) and Table 210.24; CE 5-20R on 20 A from memory.
// `as_sold`: a dryer and a range that name no receptacle have a 14-30R and a 14-50R (common practice, no source).
bool receptacles_have(typed::Circuit const& c, int breaker, bool nec, bool as_sold) {
    static std::map<int, std::vector<int>> const of_nec{
        {15, {15}}, {20, {15, 20}}, {30, {30}}, {40, {40, 50}}, {50, {50}}};
    static std::map<int, std::vector<int>> const of_ce{{15, {15}}, {20, {20}}, {30, {30}}, {40, {50}}, {50, {50}}};
    auto const& table = nec ? of_nec : of_ce;
    Use const* use = use_named(c.use);
    if (c.outlets.empty() && as_sold && c.use == "dryer") return breaker == 30;
    if (c.outlets.empty() && as_sold && c.use == "range") return breaker == 40 || breaker == 50;
    if (c.outlets.empty()) return !(use && use->receptacle) || breaker > 50 || table.contains(breaker);
    return std::ranges::all_of(c.outlets, [&](std::string const& name) {
        Receptacle const* r = receptacle_named(name);
        if (!r) return true;
        if (breaker > 50) return r->amps == breaker;
        return table.contains(breaker) && std::ranges::find(table.at(breaker), r->amps) != table.at(breaker).end();
    });
}

// What a dwelling's circuits are asked whatever their load: NEC 210.11(C), CE 26-722(d).
int household(typed::Job const& job, typed::Circuit const& c, bool nec) {
    if (!job.dwelling || c.poles != 1) return 0;
    bool const counter = c.use == "kitchen counter";
    if (nec) return counter || c.use == "laundry" || c.use == "bathroom" || c.use == "garage" ? 20 : 0;
    return counter && !c.split && c.multiwire.empty() ? 20 : 0;
}

// A motor's current at its load or reading, in the worst source of these jobs' one panel.
double amperes(typed::Job const& job, typed::Circuit const& c) {
    auto const kind = job.panels.front().supply->kind;
    double const volts = c.poles == 1 ? 120 : kind == SupplyKind::wye_120_208 ? 208 : 240;
    static constexpr std::array<std::string_view, 8> kResistance{"backup heat",           "baseboard",   "boiler",
                                                                 "floor heating",         "furnace",     "heating",
                                                                 "tankless water heater", "water heater"};
    bool const weakened = volts == 208 && std::ranges::count(kResistance, c.use) > 0; // (208/240)² of its power
    double const load = c.load ? value(*c.load) * (weakened ? 208.0 * 208 / (240 * 240) : 1) : 0;
    return std::max(load / volts, c.measured ? value(*c.measured) : 0);
}

bool keeps_customs(typed::Job const& job, typed::Circuit const& c, int breaker, bool nec, bool as_sold) {
    if (c.mca && *c.mca > Amps{breaker * 1000}) return false;
    if (c.mop && Amps{breaker * 1000} > *c.mop) return false;
    if (motor(c) && !c.mca && amperes(job, c) * 1.25 > breaker + 0.002) return false;
    return receptacles_have(c, breaker, nec, as_sold) && breaker >= household(job, c, nec);
}

typed::Circuit const& at(typed::Job const& job, std::string const& mark) { return *circuit_of(job, mark); }
} // namespace

std::string objections(typed::Job const& job, std::vector<std::string> const& marks, std::string_view edition) {
    std::string all;
    auto const plan = as_typed(job);
    for (auto const* id : kRules)
        for (Finding const& f : judged(*rule_named(id), {resolve(job), plan, *code_book(edition)}).findings())
            for (auto const& mark : f.where.circuits)
                if (std::ranges::find(marks, mark) != marks.end()) all += f.rule + ": " + f.message + "\n";
    return all;
}

typed::Job filled(typed::Job job, std::vector<std::string> const& marks, Amps breaker, Gauge gauge, int insulated) {
    auto const kind = std::string(name(gauge)) + "/" + std::to_string(insulated);
    for (typed::Circuit& c : job.circuits) {
        if (std::ranges::find(marks, c.mark) == marks.end()) continue;
        if (!c.breaker) c.breaker = breaker;
        if (c.run.empty()) c.run.emplace_back();
        for (typed::Segment& s : c.run)
            if (s.kind.empty()) s.kind = kind;
    }
    return job;
}

namespace {
std::optional<Sizes> smallest_of(typed::Job const& job, std::vector<std::string> const& marks, std::string_view edition,
                                 bool as_sold) {
    bool const nec = edition.starts_with("NEC");
    for (int const breaker : kBreakers) {
        if (!std::ranges::all_of(marks,
                                 [&](auto const& m) { return keeps_customs(job, at(job, m), breaker, nec, as_sold); }))
            continue;
        for (GaugeName const& g : kGauges)
            for (int insulated = 2; insulated <= 4 && g.gauge >= Gauge::awg14; ++insulated) {
                auto const tried = filled(job, marks, Amps{breaker * 1000}, g.gauge, insulated);
                if (!objections(tried, marks, edition).empty()) continue;
                if (!objections(without_motor_easement(tried, marks), marks, edition).empty()) continue;
                return Sizes{Amps{breaker * 1000}, std::string(g.name) + "/" + std::to_string(insulated)};
            }
    }
    return std::nullopt;
}
} // namespace

std::optional<Sizes> smallest(typed::Job const& job, std::vector<std::string> const& marks, std::string_view edition) {
    auto const plugged_in = smallest_of(job, marks, edition, true);
    return plugged_in ? plugged_in : smallest_of(job, marks, edition, false);
}

} // namespace legwork::testing
