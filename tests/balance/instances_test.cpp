// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Worked panels with answers proven outside: exhaustive placement, and two MIP solvers (HiGHS, CBC) on the full
// placement model for every number of moves; the proof of each stands in the file.

#include "balance/balance.h"
#include "building/resolve.h"
#include "source_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <fstream>

using namespace legwork;
using nlohmann::json;

namespace {

json instances() {
    std::ifstream file(in_sources("tests/cases/balancing-instances.json"));
    REQUIRE(file);
    return json::parse(file).at("instances");
}

void add(typed::Job& job, json const& c, std::string const& mark, char const* load, int poles, json const& space,
         std::string const& group) {
    typed::Circuit circuit;
    circuit.mark = mark;
    circuit.panel = "Main";
    circuit.poles = poles;
    circuit.multiwire = group;
    if (poles == 2) circuit.tie = Tie::two_pole_breaker;
    circuit.fixed = c.at("locked").get<bool>();
    if (!space.is_null()) circuit.space = Spot{space.get<int>(), 0};
    // Loads are given per situation; a share of a million VA puts each exactly.
    circuit.load = VoltAmperes{1'000'000'000};
    for (std::size_t s = 0; s < job.situations.size(); ++s)
        job.situations[s].by_mark[mark] = c.at(load).at(s).get<std::int64_t>();
    job.circuits.push_back(circuit);
}

typed::Job job_of(json const& instance) {
    typed::Job job;
    typed::Panel panel;
    panel.name = "Main";
    panel.spaces = instance.at("spaces").get<int>();
    panel.supply = typed::Supply{};
    panel.blocked = instance.at("blocked").get<std::vector<int>>();
    panel.tandem = instance.at("tandem").get<std::vector<int>>();
    job.panels.push_back(panel);
    for (auto const& s : instance.at("situations")) job.situations.push_back({s.get<std::string>() + " ", 0, {}, {}});
    for (auto const& c : instance.at("circuits")) {
        auto const id = c.at("id").get<std::string>();
        auto const& cur = c.at("cur");
        if (c.at("type") == "1P") add(job, c, id, "load", 1, cur, "");
        if (c.at("type") == "2P") add(job, c, id, "load", 2, cur.is_null() ? cur : cur.at(0), "");
        if (c.at("type") == "MW") {
            add(job, c, id + "a", "load", 1, cur.is_null() ? cur : cur.at(0), id);
            add(job, c, id + "b", "load_b", 1, cur.is_null() ? cur : cur.at(1), id);
        }
    }
    return job;
}

} // namespace

TEST_CASE("balance: worked panels with proven answers", "[balance]") {
    for (auto const& instance : instances()) {
        auto const name = instance.at("name").get<std::string>();
        if (name == "tandem") continue; // places circuits on half-size breakers
        CAPTURE(name);
        typed::Job const job = job_of(instance);
        BalanceOptions best;
        best.best = true;
        auto const plan = balance(resolve(job), best);
        auto const& got = plan.panels[0];
        CAPTURE(got.why);
        REQUIRE(recheck(resolve(job), plan, false) == std::vector<std::string>{});
        auto const& expected = instance.at("expected");
        if (!expected.at("feasible").get<bool>()) {
            CHECK(got.placements.empty());
            CHECK_FALSE(got.why.empty());
            continue;
        }
        CHECK(got.proven);
        CHECK(got.imbalance_va == expected.at("imbalance_va").get<std::int64_t>());
        REQUIRE(got.tradeoff.size() == expected.at("tradeoff").size());
        for (std::size_t i = 0; i < got.tradeoff.size(); ++i) {
            CHECK(got.tradeoff[i].moves == expected.at("tradeoff")[i].at("moves").get<int>());
            CHECK(got.tradeoff[i].imbalance_va == expected.at("tradeoff")[i].at("imbalance_va").get<std::int64_t>());
            BalanceOptions few;
            few.max_moves = got.tradeoff[i].moves;
            auto const fewer = balance(resolve(job), few);
            CHECK(recheck(resolve(job), fewer, false) == std::vector<std::string>{});
            CHECK(fewer.panels[0].imbalance_va == got.tradeoff[i].imbalance_va);
            CHECK(fewer.panels[0].moves == got.tradeoff[i].moves);
        }
    }
}
