// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which conductor of one cable does what. Colours first: what is made white is the neutral as long as a neutral is
// needed; hots take black, red, then what is left; only then does a conductor do a job that its colour does not say.
#pragma once

#include "cable/run.h"
#include "units/gauge.h"

#include <optional>
#include <string>
#include <vector>

namespace legwork {

enum class Wires { ac, dc, switch_loop };

// What one cable has to carry.
struct CableTask {
    struct Hot {
        std::string circuit;
        std::optional<WireColor> color; // asked for by `hot`; null: the next hot colour
    };
    std::vector<Hot> hots; // in the file's order
    bool neutral = false;  // something on it uses one
    bool white_is_neutral =
        false;                   // nothing surely uses one, but a white that is left over is one (some ovens, hot tubs)
    std::string neutral_circuit; // empty for a shared one
    ThirdWire third = ThirdWire::unsaid; // the job of the extra conductor
    std::string third_circuit;           // and of whose circuit
    Wires wires = Wires::ac;
    bool power = true;                 // an AC power cable, whatever it carries
    std::vector<std::string> channels; // on DC, of a strip cable: what each conductor is, in the cable's order
    Wiring wiring = Wiring::cable;
    Gauge gauge = Gauge::awg14;
    bool ground = true; // the kind has one besides the insulated conductors
};

struct CableConductors {
    std::vector<Conductor> conductors; // in the cable's order, then the ground
    int missing_hots = 0, missing_neutrals = 0;
};

Conductor conductor(WireColor const& color, ConductorJob job);

// `colors`: the insulated conductors as they are in the cable. A green or bare one among them that nothing needs is the
// ground.
CableConductors conductors_of(std::vector<WireColor> const& colors, CableTask const& task, CodeBook const& book);

// The tape that a conductor's colour and job ask for under one code (remark.cpp). Sets remark, tape, why and reference
// of a conductor that has its job. `colors`: all insulated ones of its cable, so that the tape differs from each.
void remark(Conductor& c, std::vector<WireColor> const& colors, CableTask const& task, CodeBook const& book);

} // namespace legwork
