// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/list.h"
#include "rules/need/part.h"

namespace legwork {

namespace {
constexpr WantedPart kPart{need_laundry, Household::laundry, "in the laundry", "laundry", ""};

Verdict judge(Case const& c) { return judge_part(c, kPart); }
} // namespace

constinit Rule const need_laundry{
    .id = "need-laundry",
    .asks = "The laundry's receptacles have a circuit of their own.",
    .why = "A washing machine's motor and heater fill a circuit by themselves. Asked where a laundry is shown: a "
           "circuit, a room, or a dryer; a small house without one is not asked for it.",
    .remedy = "Run a circuit to the washing machine that feeds nothing else; `use = \"laundry\"` says which it is.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
