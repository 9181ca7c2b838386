// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/instances.h"
#include "job/job.h"
#include "source_folder.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>

namespace legwork::oracle {

namespace {
using nlohmann::json;

// A load in whole VA per situation becomes a load and a share that round back to it.
void load(typed::Job& job, typed::Circuit& c, json const& va) {
    auto const values = va.get<std::vector<std::int64_t>>();
    if (values.size() == 1) {
        c.load = VoltAmperes{values[0] * 1000};
        return;
    }
    auto const most = *std::max_element(values.begin(), values.end());
    c.load = VoltAmperes{most * 1000};
    for (std::size_t s = 0; s < values.size(); ++s)
        job.situations[s].by_mark[c.mark] = most == 0 ? 0 : (values[s] * 1'000'000 + most / 2) / most;
}

std::optional<Spot> spot(json const& space) {
    if (space.is_null()) return std::nullopt;
    return Spot{space.get<int>(), 0};
}

void circuit(typed::Job& job, json const& j) {
    typed::Circuit c;
    c.mark = j.at("id");
    c.panel = "Main";
    c.fixed = j.at("locked");
    json const& cur = j.at("cur");
    std::string const type = j.at("type");
    if (type == "1P")
        c.space = spot(cur);
    else if (!cur.is_null())
        c.space = spot(cur.at(0));
    if (type == "2P") {
        c.poles = 2;
        c.tie = Tie::two_pole_breaker;
    }
    if (type == "MW") {
        c.multiwire = c.mark;
        c.tie = Tie::handle_tie;
        typed::Circuit half = c;
        half.mark += "b";
        if (!cur.is_null()) half.space = spot(cur.at(1));
        load(job, half, j.at("load_b"));
        load(job, c, j.at("load"));
        job.circuits.push_back(c);
        job.circuits.push_back(half);
        return;
    }
    load(job, c, j.at("load"));
    job.circuits.push_back(c);
}
} // namespace

std::vector<Instance> instances() {
    std::ifstream file(in_sources("tests/cases/balancing-instances.json"));
    json const all = json::parse(file);
    std::vector<Instance> found;
    for (json const& j : all.at("instances")) {
        Instance i;
        i.name = j.at("name");
        i.job.code = "CE 2024";
        if (j.at("situations").size() > 1)
            for (json const& s : j.at("situations")) i.job.situations.emplace_back().name = s;
        typed::Panel& p = i.job.panels.emplace_back();
        p.name = "Main";
        p.supply = typed::Supply{};
        p.spaces = j.at("spaces");
        p.tandem = j.at("tandem").get<std::vector<int>>();
        p.blocked = j.at("blocked").get<std::vector<int>>();
        for (json const& c : j.at("circuits")) circuit(i.job, c);
        json const& expected = j.at("expected");
        if (expected.at("feasible"))
            for (json const& s : expected.at("tradeoff")) i.tradeoff.push_back({s.at("moves"), s.at("imbalance_va")});
        found.push_back(std::move(i));
    }
    return found;
}

} // namespace legwork::oracle
