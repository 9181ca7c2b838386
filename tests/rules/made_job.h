// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Jobs made in a line or two, and what one rule says of them in a few words.
#pragma once

#include "job/job.h"
#include "rules/check.h"

#include <string>
#include <vector>

namespace made {

using namespace legwork;

// A circuit of 20 A on 12/2, 10 m, 600 VA, named after its mark, in panel "Main"; what a test is about is then set.
struct Make {
    typed::Circuit c;
    operator typed::Circuit() const { return c; }

    Make& space(int s, char half = 0) { return c.space = Spot{s, half}, *this; }
    Make& breaker(Amps a) { return c.breaker = a, *this; }
    Make& cable(std::string kind) { return c.run = {{std::move(kind), from_mm(10000), ""}}, *this; }
    Make& load(VoltAmperes va) { return c.load = va, *this; }
    Make& pair(std::string group, Tie tie = Tie::none) { return c.multiwire = std::move(group), tied(tie); }
    Make& tied(Tie tie) { return c.tie = tie, c.tie_said = true, *this; }
    Make& use(std::string u) { // a spare has no load
        if (u == "spare") c.load.reset();
        return c.use = std::move(u), *this;
    }
    Make& called(std::string name, std::string room = "") {
        return c.name = std::move(name), c.room = std::move(room), *this;
    }
    Make& outlets(std::vector<std::string> types) { return c.outlets = std::move(types), *this; }
    Make& old() { return c.existing = true, *this; }
    Make& in(std::string panel) { return c.panel = std::move(panel), *this; }
    Make& colors(std::vector<std::string> inside) { return c.colors = std::move(inside), *this; }
    Make& gfci(Protection p) { return c.gfci = p, *this; }
    Make& afci(Protection p) { return c.afci = p, *this; }
    template <class Change>
    Make& with(Change change) {
        return change(c), *this;
    }
};
Make one_pole(std::string mark, int space = 0);
Make two_pole(std::string mark, int space = 0); // on a two-pole breaker

// A job of one panel "Main", 24 spaces across, 100 A, on this supply.
typed::Job job(std::vector<typed::Circuit> circuits, SupplyKind kind = SupplyKind::split_120_240);
// K1 and K2 on 12/3, untied unless said, on these spaces.
typed::Job pair_job(Spot first, Spot second, Tie tie = Tie::none);

// Each circuit on the space that the job says, none for those without.
Plan as_typed(typed::Job const& job);

// What one rule finds, in the order it finds it.
Findings found(std::string_view rule, typed::Job const& job, std::string_view edition = "NEC 2023");
Findings found(std::string_view rule, typed::Job const& job, Plan const& plan, std::string_view edition = "NEC 2023");
// The same in short: "error K1 K2; note K3"; the panel's name where no circuit is at fault; empty for silence.
std::string in_short(Findings const& findings);
std::string says(std::string_view rule, typed::Job const& job, std::string_view edition = "NEC 2023");
std::string says(std::string_view rule, typed::Job const& job, Plan const& plan, std::string_view edition = "NEC 2023");

} // namespace made
