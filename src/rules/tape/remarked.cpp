// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/tape/remarked.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

std::vector<Remarked> remarked(std::vector<CableRun> const& runs, bool (*wanted)(Conductor const&)) {
    std::vector<Remarked> found;
    for (CableRun const& run : runs) {
        if (run.missing_hots + run.missing_neutrals > 0) continue;
        for (Conductor const& wire : run.conductors) {
            if (wire.remark == Remark::as_made || !wanted(wire)) continue;
            auto const same = std::ranges::find_if(found, [&](Remarked const& r) { return r.run->mark == run.mark; });
            if (same == found.end())
                found.push_back({&run, &wire});
            else if (wire.remark == Remark::forbidden && same->wire->remark != Remark::forbidden)
                *same = {&run, &wire};
        }
    }
    return found;
}

int pieces_with(std::vector<CableRun> const& runs, bool (*wanted)(Conductor const&)) {
    return static_cast<int>(std::ranges::count_if(runs, [&](CableRun const& run) {
        Circuit const* first = run.of->of_circuit ? run.of->carries.front() : nullptr;
        return first && !first->on_dc() && run.missing_hots + run.missing_neutrals == 0 &&
               std::ranges::any_of(run.conductors, wanted);
    }));
}

bool is_neutral(Conductor const& w) { return w.job == ConductorJob::neutral; }
bool is_ground_color(Conductor const& w) { return is_green(w.insulation); }
bool is_any(Conductor const&) { return true; }

std::string kind_of(CableRun const& run) {
    return run.segment == 0 ? run.kind : fmt::format("{} from {}", run.kind, run.from);
}

Finding about_wire(Case const& c, Rule const& rule, Gravity::Of of, Remarked const& r) {
    Circuit const* first = r.run->of->carries.front();
    Finding f = finding(c, rule, of, {first ? panel_name(*first) : "", r.run->circuits, "cable"});
    if (first && !first->colors.empty()) f.where.key = "colors";
    f.reference = r.wire->reference;
    return f;
}

std::string wrap(Conductor const& wire) {
    return fmt::format("Wrap {} tape all round the {} wire at both ends and wherever it can be reached and seen.",
                       wire.tape, wire.color);
}

} // namespace legwork
