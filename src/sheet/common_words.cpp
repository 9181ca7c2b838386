// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/common_words.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {

struct NameIn {
    std::string_view language, key;
    std::string Circuit::*name;
};
constexpr std::array kNames{NameIn{"fr", "name_fr", &Circuit::name_fr}, NameIn{"es", "name_es", &Circuit::name_es}};
constexpr NameIn kName{"", "name", &Circuit::name};

NameIn const& said_name(std::string_view language, Circuit const& c) {
    auto const at = std::ranges::find(kNames, language, &NameIn::language);
    return at != kNames.end() && !(c.*at->name).empty() ? *at : kName;
}

} // namespace

std::string const& name_in(std::string_view language, Circuit const& c) { return c.*said_name(language, c).name; }
std::string_view name_key_in(std::string_view language, Circuit const& c) { return said_name(language, c).key; }

} // namespace legwork
