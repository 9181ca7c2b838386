// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is proposed passes every wire rule, and nothing smaller does: random circuits, every edition.
#include "building/resolve.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "exhaustive.h"
#include "job/job.h"
#include "proposed_jobs.h"
#include "units/text.h"

#include "catch.h"
#include <rapidcheck.h>

#include <algorithm>

using namespace legwork;
using namespace legwork::testing;

namespace {
bool chance(int of) { return *rc::gen::inRange(0, of) == 0; }

std::vector<std::string> uses_of(int poles) {
    std::vector<std::string> names{""};
    for (Use const& u : uses())
        if (u.name != "spare" && !u.source && (u.poles == Poles::either || (u.poles == Poles::two) == (poles == 2)))
            names.emplace_back(u.name);
    return names;
}

std::vector<std::string> outlets_of(int poles) {
    std::vector<std::string> names;
    for (Receptacle const& r : receptacles())
        if (r.ground && !r.never_two_pole && (poles == 2 || r.hots == 1)) names.emplace_back(r.name);
    return names;
}

typed::Circuit any_circuit(std::string mark, int poles) {
    auto const use = *rc::gen::elementOf(uses_of(poles));
    auto c = bare(use, VoltAmperes{*rc::gen::inRange<std::int64_t>(0, poles == 2 ? 150 : 48) * 100'000}, poles);
    c.mark = std::move(mark);
    if (chance(4)) c.measured = Amps{*rc::gen::inRange<std::int64_t>(1, 600) * 100};
    if (chance(12)) c.load.reset(), c.measured = Amps{*rc::gen::inRange<std::int64_t>(1, 600) * 100};
    if (chance(3)) c.outlets.push_back(*rc::gen::elementOf(outlets_of(poles)));
    if (!c.outlets.empty() && chance(4)) c.outlets.push_back(*rc::gen::elementOf(outlets_of(poles)));
    c.single = chance(3);
    if (chance(4)) c.outlet_count = *rc::gen::inRange(1, 14);
    if (chance(4)) c.continuous = chance(2);
    if (use != "range" && chance(6)) c.motor = chance(2); // the twin knows no range demand
    if (chance(6)) c.mca = Amps{*rc::gen::inRange<std::int64_t>(50, 600) * 100};
    if (chance(6)) c.mop = Amps{*rc::gen::inRange<std::int64_t>(15, 80) * 1000};
    c.terminals = chance(3) ? 75 : 60;
    c.metal = chance(6) ? Metal::aluminium : Metal::copper;
    c.wiring = chance(4) ? Wiring::conduit : Wiring::cable;
    c.run.front().length = from_mm(*rc::gen::inRange<std::int64_t>(1, 200) * 500);
    if (chance(5)) c.run.front().length.reset();
    return c;
}

typed::Job any_job(std::vector<typed::Circuit> circuits) {
    auto const kind =
        *rc::gen::weightedElement<SupplyKind>({{4, SupplyKind::split_120_240}, {1, SupplyKind::wye_120_208}});
    typed::Job job = job_of(std::move(circuits), kind);
    if (chance(2)) job.dwelling = typed::Dwelling{};
    return job;
}

// A second piece of the run, known or not.
void lengthen(typed::Circuit& c) {
    if (!chance(4)) return;
    auto const kind = *rc::gen::element<std::string>("", "10/2", "8/3");
    c.run.push_back({kind, from_mm(*rc::gen::inRange<std::int64_t>(1, 40) * 500), ""});
}

std::string told(std::vector<Proposal> const& all) {
    std::string words;
    for (auto const& p : all) {
        words += p.circuit + (p.breaker ? " " + text(*p.breaker) : "");
        for (auto const& kind : p.cables) words += " " + kind;
        words += "\n" + steps_of(p) + (p.find_out.empty() ? "" : "find out: " + p.find_out + "\n");
    }
    return words;
}

void check_against_twin(typed::Job const& job, std::vector<std::string> const& marks, std::string const& edition) {
    auto const all = all_proposed(job, edition);
    RC_LOG() << edition << "\n" << told(all);
    RC_ASSERT(all.size() == marks.size());
    auto const best = smallest(job, marks, edition);
    if (best) RC_LOG() << "twin: " << text(best->breaker) << " " << best->cable << "\n";
    for (auto const& p : all) RC_ASSERT(p.find_out.empty() == best.has_value());
    if (!best) return;
    auto const after = with_proposals(resolve(job), all);
    auto const said = objections(*after.said, marks, edition);
    RC_LOG() << said;
    RC_ASSERT(said.empty());
    for (auto const& p : all) {
        RC_ASSERT(p.breaker == best->breaker);
        RC_ASSERT(p.has_cable());
        RC_ASSERT(p.cables.front() == best->cable);
        RC_ASSERT(!p.reference.edition.empty());
    }
}
} // namespace

TEST_CASE("of any circuit whose load is known, the smallest sizes that pass are proposed", "[propose][twin]") {
    REQUIRE(rc::check([] {
        auto const edition = *rc::gen::elementOf(std::vector<std::string>(std::begin(kEditions), std::end(kEditions)));
        auto circuit = any_circuit("K1", *rc::gen::inRange(1, 3));
        lengthen(circuit);
        auto const job = any_job({circuit});
        check_against_twin(job, {"K1"}, edition);
    }));
}

TEST_CASE("of any pair, the smallest that pass for both", "[propose][twin]") {
    REQUIRE(rc::check([] {
        auto const edition = *rc::gen::elementOf(std::vector<std::string>(std::begin(kEditions), std::end(kEditions)));
        auto one = any_circuit("K1", 1), two = any_circuit("K2", 1);
        one.multiwire = two.multiwire = "K";
        two.run = one.run;
        two.metal = one.metal;
        two.wiring = one.wiring;
        check_against_twin(any_job({one, two}), {"K1", "K2"}, edition);
    }));
}
