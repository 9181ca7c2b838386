// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/list.h"
#include "rules/need/part.h"

namespace legwork {

namespace {
constexpr WantedPart kPart{need_garage, Household::garage, "in the garage", "garage",
                           "nothing outside the garage on it"};

Verdict judge(Case const& c) { return judge_part(c, kPart); }
} // namespace

constinit Rule const need_garage{
    .id = "need-garage",
    .asks = "A garage has a circuit for its receptacles.",
    .why = "Tools, a freezer, a battery charger: what is plugged in there is large, and should not put the lights of "
           "the house out. Asked where the job shows a garage.",
    .remedy = "Run a circuit to the garage's receptacles; `use = \"garage\"` says which it is.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
