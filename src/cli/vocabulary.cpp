// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/vocabulary.h"

#include "codebook/code_book.h"
#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "rules/check.h"

namespace legwork {

std::vector<std::string> rule_names() {
    std::vector<std::string> names;
    for (Rule const* rule : rules()) names.emplace_back(rule->id);
    return names;
}

Vocabulary vocabulary() {
    return {.editions = editions(),
            .uses = use_names(),
            .cable_kinds = named_cable_kinds(),
            .receptacles = receptacle_names(),
            .guess_use = [](typed::Circuit const& c) { return guess_use(c.name, c.room, c.poles, c.outlets); },
            .rules = rule_names()};
}

} // namespace legwork
