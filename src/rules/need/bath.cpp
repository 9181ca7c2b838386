// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/list.h"
#include "rules/need/part.h"

namespace legwork {

namespace {
constexpr WantedPart kPart{need_bath, Household::bath, "in the bathroom", "bathroom",
                           "nothing else on it unless it serves one bathroom only"};

Verdict judge(Case const& c) { return judge_part(c, kPart); }
} // namespace

constinit Rule const need_bath{
    .id = "need-bath",
    .asks = "The bathroom's receptacle by the basin is on a circuit that can take a hair dryer.",
    .why = "A hair dryer draws 1500 W and more. The NEC gives bathroom receptacles a 20 A circuit with nothing else on "
           "it, unless it serves one bathroom only; the CE Code asks for the receptacle and leaves the circuit open.",
    .remedy = "Run the circuit, or name the bathroom in the name of the circuit that feeds its receptacle.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
