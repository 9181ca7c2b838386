// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the wire rules would say of sizes that do not stand in the job: asked for one circuit at a time. `circuit` is a
// copy of the job's with the breaker that is tried.
#pragma once

#include "check/wire_rating.h"

#include <optional>
#include <string_view>

namespace legwork {

// By which topic of cite.h the breaker may stand on this wire; nothing where wire-breaker-fits would speak, and where
// it is silent only for a number from memory (a motor's breaker), which nobody should be told to build by.
std::optional<std::string_view> stands_by(Case const& c, typed::Circuit const& circuit, WireRating const& wire);

// Each receptacle type of the circuit may stand on its breaker, by wire-outlet. Unknown types are no matter.
bool outlets_take_breaker(Case const& c, typed::Circuit const& circuit);

} // namespace legwork
