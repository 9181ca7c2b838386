// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which language a sheet speaks. A sheet of which one phrase is not translated is English altogether: half a language
// on a panel's door is read by nobody.
#pragma once

#include "words/catalogue.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct SpokenSheet {
    std::string_view name;                   // "directory"
    std::span<std::string_view const> begin; // how the ids of its rows begin; empty: not all that it says are rows yet
};
std::span<SpokenSheet const> spoken_sheets();

// What this sheet speaks in a job of these languages: the first of them where it is whole in it, else English.
Catalogue const& spoken(std::string_view sheet, std::vector<std::string> const& languages);

} // namespace legwork
