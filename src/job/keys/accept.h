// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "job/keys/circuit.h"
#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr std::array kAcceptKeys = std::to_array<Key>({
    {.name = "rule",
     .takes = Takes::rule,
     .example = R"("dir-vague")",
     .help = "The rule of the finding, as check prints it in [ ]",
     .needed = true},
    {.name = "why",
     .takes = Takes::text,
     .example = R"("Everybody here knows it")",
     .help = "Why the finding may stand; printed with it",
     .most = kMostNoteLetters},
    {.name = "by", .takes = Takes::text, .example = R"("A. Marsh")", .help = "Who decided so; printed with it"},
    {.name = "circuit", .takes = Takes::circuit, .example = R"("K1")", .help = "A circuit of the finding"},
    {.name = "panel", .takes = Takes::panel, .example = R"("Main")", .help = "The panel of the finding"},
});
inline constexpr KeyTable kAcceptTable{"accept", "an [[accept]]", "A finding that a person has decided to live with",
                                       kAcceptKeys};

} // namespace legwork
