// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr std::array kBoxKeys = std::to_array<Key>({
    {.name = "name",
     .takes = Takes::name,
     .example = R"("Counter box 1")",
     .help = "What circuits, segments and cables call it",
     .needed = true},
    {.name = "size", .takes = Takes::text, .example = R"("2-gang 32 in³")", .help = "How large it is, in words"},
    {.name = "volume", .takes = Takes::volume, .example = R"("524 mL")", .help = "How large it is; instead of size"},
    {.name = "devices", .takes = Takes::texts, .example = R"(["receptacle"])", .help = "What sits in it"},
    {.name = "clamps", .takes = Takes::flag, .example = "false", .help = "Whether it has cable clamps inside"},
});
inline constexpr KeyTable kBoxTable{"box", "a box", "A box, where cables meet", kBoxKeys};

} // namespace legwork
