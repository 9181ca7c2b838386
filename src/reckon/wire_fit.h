// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// By what a breaker may stand on a wire, and a receptacle on a breaker: what the wire rules judge by, and what sizes
// that do not stand in the job are tried by. `circuit` is one of the job's, or a copy with the breaker that is tried.
#pragma once

#include "codebook/stock/receptacles.h"
#include "reckon/wire_rating.h"

#include <optional>
#include <string>
#include <string_view>

namespace legwork {

// Raises a wire's limit for what the circuit feeds: heating, a motor alone, a welder, a whole dwelling.
struct Easement {
    Amps up_to;             // allowed up to here
    Amps doubtful_up_to;    // perhaps allowed up to here; that number is from memory
    std::string_view topic; // of cite.h; empty: nothing is eased
    Source source = Source::seen;
    std::string words;     // "25 A for fixed heating"
    bool disputed = false; // the code's own sections stand against each other
};
Easement easement(Case const& c, Circuit const& circuit, WireRating const& wire); // of a circuit with a breaker

// Of an air conditioner or heat pump: breaker up to mop, wire from mca.
struct NameplateFit {
    bool breaker_too_large = false, wire_too_small = false;
    bool both_said = false; // then nothing else is asked of breaker and wire
};
NameplateFit by_nameplate(Circuit const& circuit, WireRating const& wire); // of a circuit with a breaker

// By which topic of cite.h the breaker may stand on this wire; nothing where wire-breaker-fits would speak, and where
// it is silent only for a number from memory (a motor's breaker), which nobody should be told to build by.
std::optional<std::string_view> stands_by(Case const& c, Circuit const& circuit, WireRating const& wire);

// The amperes of one receptacle type against the circuit's breaker.
struct OutletFit {
    bool fits = true;
    bool lone = false; // the one single receptacle of its circuit: no less than the breaker, larger is fine
    ReceptacleRow row; // the ratings that may stand there, when it is not the lone one
    Source source = Source::seen;
};
OutletFit outlet_fit(Case const& c, Circuit const& circuit, Receptacle const& r); // of a circuit with a breaker
// Each receptacle type of the circuit may stand on its breaker. Unknown types are no matter, nor is a missing breaker.
bool outlets_take_breaker(Case const& c, Circuit const& circuit);

} // namespace legwork
