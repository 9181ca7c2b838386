// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/json/json.h"
#include "cli/json/json_values.h"
#include "units/text.h"

namespace legwork {

namespace {

// "NEC 2023 422.13"; null for arithmetic, and where no section speaks of it.
Json section_or_null(Reference const& r) {
    return r.section.empty() ? Json(nullptr) : Json(r.edition + " " + section_words(r));
}

Json step_json(Step const& s) {
    return {{"says", s.says},
            {"reference", section_or_null(s.reference)},
            {"source", s.reference.edition.empty() ? Json(nullptr) : Json(name(s.reference.source))}};
}

Json proposal_json(Proposal const& p) {
    Json made{{"circuit", p.circuit},
              {"breaker", p.breaker ? Json(text(*p.breaker)) : Json(nullptr)},
              {"cable", p.cables.empty() ? Json(nullptr) : text_or_null(p.cables.front())},
              {"steps", list(p.steps, step_json)},
              {"reference", section_or_null(p.reference)},
              {"find_out", text_or_null(p.find_out)}};
    if (p.cables.size() > 1) made["segments"] = list(p.cables, text_or_null);
    return made;
}

} // namespace

void write_proposals_json(Building const& building, std::vector<Proposal> const& proposed, Rewrite const& saved,
                          Streams& streams) {
    Json made{{"job", building.name}, {"code", building.code}, {"proposals", list(proposed, proposal_json)}};
    if (!saved.before.empty()) made["written"] = {{"path", saved.file}, {"before", saved.before}};
    write(made, streams);
}

} // namespace legwork
