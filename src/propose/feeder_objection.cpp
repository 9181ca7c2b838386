// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "propose/feeder_objection.h"

#include "reckon/say.h"

#include <algorithm>

namespace legwork {

std::string with_way_out(std::string const& message, std::string const& fix) {
    return fix.empty() ? as_sentence(message) : as_sentence(message) + " " + as_sentence(fix);
}

std::optional<Finding> load_objection(Case const& c, Panel const& fed) {
    for (auto const* id : {"load-service", "panel-main-overloaded"})
        for (Finding const& f : judged(*rule_named(id), c).findings())
            if (f.severity != Severity::note && f.where.panel == fed.name) return f;
    return std::nullopt;
}

std::string feeder_objection(Case const& c, Panel const& fed) {
    if (auto const f = load_objection(c, fed)) return with_way_out(f->message, f->fix);
    for (auto const* id : {"panel-feeder-wires", "wire-breaker-fits", "wire-load-fits", "wire-continuous",
                           "wire-outlet", "wire-conductors"})
        for (Finding const& f : judged(*rule_named(id), c).findings())
            if (f.severity != Severity::note &&
                std::ranges::find(f.where.circuits, fed.feeder->mark) != f.where.circuits.end())
                return with_way_out(f.message, f.fix);
    return {};
}

} // namespace legwork
