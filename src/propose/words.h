// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The lines of a reckoning: figures as one types them into a pocket calculator.
#pragma once

#include "propose/propose.h"
#include "reckon/run_drop.h"

namespace legwork {

Step step(Case const& c, std::string says, std::string_view topic);
Step arithmetic(std::string says);

std::string exact(Amps a);                      // "18.75 A", two decimals at most
std::string exact(double amps);                 // of a sum of legs
std::string figure(double value, int decimals); // "0.5", so many decimals at most

std::string_view use_name(Circuit const& circuit); // "range"; empty when it has none
std::string outlets_words(Circuit const& circuit); // "5-15R and 5-20R"

// "a range of 12000 VA: 8000 VA for any of up to 12000 VA"; the demand that a code takes for a household range, and how
// it gets there.
std::string range_words(CodeBook const& book, VoltAmperes nameplate);

// What each piece of a run that is proposed carries: "two hots, no neutral, and ground: 10/2". `cables` by piece, empty
// where none is proposed.
std::vector<Step> conductor_steps(Circuit const& circuit, std::vector<std::string> const& cables);

// "18 ft of 12 AWG x 1.93 + 260 ft of 14 AWG x 3.07 ohm/1000 ft = 0.8329 ohm", of one wire.
Step resistance_step(RunLength const& run, UnitSystem units);
// "2 x 6.25 A x 0.8329 ohm = 10.41 V, 4.3 % of 240 V"; what a wire loses on the way out and back.
std::string drop_words(CodeBook const& book, BranchDrop const& drop);
// "on leg A (2 x 27.5 A - 12.5 A) x 0.07856 ohm = 3.34 V, 2.8 % of 120 V"; of the leg that loses most.
std::string drop_words(CodeBook const& book, FeederDrop const& drop);
// "at most 3 %", "up to 3 % is advised"
std::string limit_words(DropLimits const& limits, Figure const& limit);

} // namespace legwork
