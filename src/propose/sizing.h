// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Tries sizes on one circuit, or on the two of a pair, of a building that is filled up as sizes are found.
#pragma once

#include "propose/wanted.h"

namespace legwork {

// One circuit of those that are sized together, with what it lacks.
struct Member {
    Circuit const* circuit; // of the building
    Wanted wanted;
    bool lacks_breaker = false;
    std::vector<std::size_t> lacks; // pieces of its run without a cable
};

// The insulated conductors of a piece of a run. A switch loop takes the neutral along.
struct Insulated {
    Circuit const* pair = nullptr; // of the home run that two circuits share
    int hots = 1;
    bool neutral = false;
    std::string more; // what one more is for: "switched"; empty: none
};
Insulated insulated_in(Circuit const& circuit, std::size_t piece);

// Why a wire does not do: "12 AWG is good for 20 A".
struct WireRefusal {
    std::string says;
    std::string_view topic;
};

class Sizing {
public:
    Sizing(Case const& c, std::vector<Member> const& members) : c_(c), members_(members) {}

    // Nothing when no standard size suits; `why` then says so.
    std::optional<Amps> breaker(std::string& why);
    // The smallest wire for all the pieces that lack a cable. Adds steps to `steps`.
    std::optional<Gauge> wire(Amps breaker, std::vector<Step>& steps, std::string& why);
    // The cable for a piece of a member's run.
    std::string kind(Member const& m, std::size_t piece, Gauge gauge) const;
    // Of a wire that is there: what it is good for. Nothing where no piece of it is known.
    std::optional<Step> known_wire(Member const& m, Amps breaker) const;
    std::string_view decided() const { return decided_; } // of the wire: what refused the next thinner one

private:
    std::vector<Amps> possible(Amps least, std::optional<Amps> most, std::optional<Amps> given, bool as_sold) const;
    bool breaker_suits(Amps breaker, std::string& why) const;
    std::optional<Gauge> least_gauge(Amps breaker, std::optional<WireRefusal>& last) const;
    std::optional<WireRefusal> too_thin(Member const& m, Amps breaker, Gauge gauge) const;
    std::optional<WireRefusal> too_lossy(Member const& m, Amps breaker, Gauge gauge) const;
    std::optional<WireRefusal> feeder_too_lossy(Member const& m, Amps breaker, Gauge gauge) const;
    Step good_wire(Member const& m, Amps breaker, Gauge gauge, std::string_view as) const;
    // What the wire found loses.
    void say_drop(Member const& m, Amps breaker, Gauge gauge, std::vector<Step>& steps) const;
    void say_feeder_drop(Member const& m, Amps breaker, Gauge gauge, std::vector<Step>& steps) const;
    // The circuit by itself with these sizes where it lacks them, and a building with it.
    Circuit tried(Member const& m, Amps breaker, Gauge gauge) const;
    Building building_with(Member const& m, Amps breaker, Gauge gauge) const;
    std::string whose(Member const& m) const; // "K2: " where there are two

    Case const& c_;
    std::vector<Member> const& members_;
    std::string_view decided_;
};

} // namespace legwork
