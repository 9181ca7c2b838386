// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/list.h"
#include "rules/need/part.h"

namespace legwork {

namespace {
constexpr WantedPart kPart{need_outdoor, Household::outdoor, "outdoors", "outdoor", "nothing indoors on it"};

Verdict judge(Case const& c) { return judge_part(c, kPart); }
} // namespace

constinit Rule const need_outdoor{
    .id = "need-outdoor",
    .asks = "A dwelling has a receptacle outdoors.",
    .why =
        "Without one, mowers and heaters hang on a cord through a door or a window, without ground-fault protection.",
    .remedy = "Put a receptacle where it can be reached from the ground, front and back under the NEC, and say in its "
              "circuit's name or `use` that it is outdoors.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
