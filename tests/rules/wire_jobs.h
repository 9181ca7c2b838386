// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Small jobs for the wire- and tape- rules.
#pragma once

#include "building/resolve.h"
#include "job/job.h"
#include "rules/check.h"

#include "catch.h"

#include <utility>

namespace legwork::testing {

inline typed::Job job_of(std::vector<typed::Circuit> circuits, SupplyKind kind = SupplyKind::split_120_240) {
    typed::Job job;
    typed::Panel p;
    p.name = "Main";
    p.spaces = 24;
    p.supply = typed::Supply{};
    p.supply->kind = kind;
    job.panels.push_back(p);
    for (typed::Circuit& c : circuits)
        if (c.panel.empty()) c.panel = "Main";
    job.circuits = std::move(circuits);
    return job;
}

inline typed::Circuit circuit(std::string kind, Amps breaker, int poles = 1) {
    typed::Circuit c;
    c.mark = "K1";
    c.name = "Test circuit";
    c.poles = poles;
    c.tie = poles == 2 ? Tie::two_pole_breaker : Tie::none;
    c.breaker = breaker;
    c.run = {{std::move(kind), from_mm(5000), ""}};
    return c;
}

inline typed::Circuit used(typed::Circuit c, std::string use, VoltAmperes load) {
    c.use = std::move(use);
    c.load = load;
    return c;
}

// Findings of one rule of the whole table.
inline Findings of(std::string_view rule, typed::Job const& job, std::string_view edition) {
    Rule const* found = rule_named(rule);
    REQUIRE(found);
    return judged(*found, {resolve(job), Plan{}, *code_book(edition)}).findings();
}

// "-" none, else E, W, N of the one finding. Numbers from memory never make an error.
inline char verdict(std::string_view rule, typed::Job const& job, std::string_view edition) {
    auto const found = of(rule, job, edition);
    if (found.empty()) return '-';
    REQUIRE(found.size() == 1);
    Finding const& f = found.front();
    CAPTURE(f.message, f.fix);
    REQUIRE(f.rule == rule);
    REQUIRE_FALSE(f.message.empty());
    REQUIRE_FALSE(f.fix.empty());
    REQUIRE(f.reference.edition == edition);
    REQUIRE_FALSE((f.severity == Severity::error && f.reference.source == Source::memory));
    return f.severity == Severity::error ? 'E' : f.severity == Severity::warning ? 'W' : 'N';
}
inline char verdict(std::string_view rule, typed::Circuit c, std::string_view edition) {
    return verdict(rule, job_of({std::move(c)}), edition);
}

} // namespace legwork::testing
