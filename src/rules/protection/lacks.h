// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What circuits lack of one kind of protection, told: both members of a pair in one finding, since one breaker cures
// them; a panel full of old circuits in one, since it is one thing to say.
#pragma once

#include "codebook/protection.h"
#include "rules/rule.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// One of the two kinds of protection, as rules and people call it.
struct ProtectionKind {
    Rule const& rule;
    std::string_view key, name;
    Protection Circuit::*said;
    bool ground_fault;
};

// What one circuit lacks.
struct Lack {
    Circuit const* circuit;
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
bool is_protected(Circuit const& circuit, ProtectionKind const& kind);

Findings told(Case const& c, std::vector<Lack> const& lacks, ProtectionKind const& kind);

} // namespace legwork
