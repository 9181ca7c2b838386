// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <compare>

namespace legwork {

struct Date {
    int year = 0, month = 0, day = 0;
    friend auto operator<=>(Date const&, Date const&) = default;
};

} // namespace legwork
