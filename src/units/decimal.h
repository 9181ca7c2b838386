// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Numbers as people type them, kept exact: "9.5", "1/2", "6 1/2". No floating point on the way to whole grains.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace legwork {

struct Ratio {
    std::int64_t num = 0, den = 1; // den > 0
};

struct Amount {
    enum class State { good, none, negative, comma, too_large, malformed } state = State::none;
    Ratio ratio; // of a good one: below 10^9, in steps of 10^-6 or a fraction with a denominator up to 64
};

// Takes an amount off the front of `rest`, leading blanks included.
Amount take_amount(std::string_view& rest);
// Takes a word of letters or prime marks off the front of `rest`, leading blanks included.
std::string_view take_unit(std::string_view& rest);
// "31'-6\"": takes one dash off the front.
void skip_dash(std::string_view& rest);

std::string_view trimmed(std::string_view text);  // of blanks, no-break spaces included
std::string small_letters(std::string_view text); // A to Z only

// a x b to the nearest whole, halves away from zero; nothing past 64 bits.
std::optional<std::int64_t> rounded(Ratio a, Ratio b);
// For amounts and the factors of units only: no overflow there.
Ratio product(Ratio a, Ratio b);
Ratio sum(Ratio a, Ratio b);
constexpr double as_double(Ratio r) { return static_cast<double>(r.num) / static_cast<double>(r.den); }

} // namespace legwork
