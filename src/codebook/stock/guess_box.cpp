// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/guess_box.h"

#include <string>

namespace legwork {

bool is_switch_box(std::string_view name) {
    std::string small;
    for (char const c : name) small += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return small.find("switch") != small.npos;
}

} // namespace legwork
