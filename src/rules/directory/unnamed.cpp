// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/lines.h"
#include "rules/directory/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.is_spare()) continue;
        seen.looked();
        if (has_name(circuit)) continue;
        auto f = finding(c, dir_unnamed, Gravity::usual, about(circuit, "name"));
        f.message = fmt::format("{} has no name, so its line of the directory would be blank", circuit.mark);
        f.fix =
            "Write what it feeds and where, for instance name = \"Receptacles, north wall\" and room = \"Loft\"; for a "
            "breaker without a wire, use = \"spare\"";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const dir_unnamed{
    .id = "dir-unnamed",
    .asks = "Every circuit has a name.",
    .why = "Somebody will stand at the panel in a hurry, or in the dark. A breaker without a name is switched off by "
           "trial, and everything else with it.",
    .remedy = "Write what the circuit feeds and where. A breaker without a wire is `use = \"spare\"`.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
