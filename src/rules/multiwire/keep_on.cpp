// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/naming.h"
#include "rules/multiwire/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        if (p.tie == Tie::none) continue;
        seen.looked();
        bool const first = must_stay_on(*p.first), second = must_stay_on(*p.second);
        if (first == second) continue; // two that nobody switches off do not harm each other
        Circuit const& kept = first ? *p.first : *p.second;
        Circuit const& switched = first ? *p.second : *p.first;
        auto f = finding(c, mw_keep_on, Gravity::usual, about(kept, "multiwire"));
        f.message = fmt::format("{} ({}) must stay on, and goes off whenever somebody switches off {}{}", kept.mark,
                                kept.name.empty() && kept.use ? kept.use->name : std::string_view(kept.name),
                                switched.mark, switched.name.empty() ? "" : fmt::format(" ({})", switched.name));
        f.fix =
            fmt::format("Give {} its own cable and breaker, or pair it with a circuit that also stays on", kept.mark);
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_keep_on{
    .id = "mw-keep-on",
    .asks = "What must stay on is not tied to a circuit that people switch off.",
    .why = "A refrigerator, a freezer, a sump pump, an alarm, a furnace or a medical load does harm quietly when it "
           "goes off. Tied to the counter receptacles, it goes off with them.",
    .remedy = "Give it a cable and a breaker of its own, or pair it with something else that stays on.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
