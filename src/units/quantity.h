// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder units/: what everything else is reckoned and written in. Each kind of figure is a type of its own, so that
// no ampere is added to a volt and no foot to a metre; text.h is where people's words become figures and back. Nothing
// here knows of a circuit.
//
// Electrical quantities as their own types. What is compared is counted in whole grains, so "best" and "equal" are
// exact: amperes in milliamperes, volts in whole volts, volt-amperes in thousandths, so that V x A needs no rounding.
#pragma once

#include <compare>
#include <cstdint>

namespace legwork {

template <class Tag>
struct Quantity {
    std::int64_t count = 0;

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.count + b.count}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.count - b.count}; }
    friend constexpr Quantity operator*(Quantity a, std::int64_t n) { return {a.count * n}; }
    friend constexpr Quantity operator/(Quantity a, std::int64_t n) { return {a.count / n}; }
    constexpr Quantity& operator+=(Quantity b) { return count += b.count, *this; }
};

using Amps = Quantity<struct AmpsTag>;               // grain: 1 mA
using Volts = Quantity<struct VoltsTag>;             // grain: 1 V
using Volume = Quantity<struct VolumeTag>;           // grain: 0.001 mm³, so that cubic inches are whole
using VoltAmperes = Quantity<struct VoltAmperesTag>; // grain: 0.001 VA; watts of a load are read as VA

constexpr VoltAmperes operator*(Volts v, Amps a) { return {v.count * a.count}; }
// Rounded down to the milliampere.
constexpr Amps operator/(VoltAmperes s, Volts v) { return {s.count / v.count}; }

// Part of a quantity in percent, rounded to the nearest grain (halves away from zero).
template <class Tag>
constexpr Quantity<Tag> percent(Quantity<Tag> q, std::int64_t p) {
    auto const product = q.count * p;
    return {(product >= 0 ? product + 50 : product - 50) / 100};
}

constexpr double value(Amps a) { return static_cast<double>(a.count) / 1000.0; }
constexpr double value(VoltAmperes s) { return static_cast<double>(s.count) / 1000.0; }
constexpr double value(Volts v) { return static_cast<double>(v.count); }

// Nearest whole VA, halves away from zero. The one rounding of a load (facts: the balance works in whole VA).
constexpr std::int64_t whole_va(VoltAmperes s) { return (s.count >= 0 ? s.count + 500 : s.count - 500) / 1000; }

inline namespace literals {
constexpr Amps operator""_A(unsigned long long n) { return {static_cast<std::int64_t>(n) * 1000}; }
constexpr Amps operator""_mA(unsigned long long n) { return {static_cast<std::int64_t>(n)}; }
constexpr Volts operator""_V(unsigned long long n) { return {static_cast<std::int64_t>(n)}; }
constexpr VoltAmperes operator""_VA(unsigned long long n) { return {static_cast<std::int64_t>(n) * 1000}; }
} // namespace literals

static_assert(120_V * 20_A == 2400_VA); // and 120_V + 20_A does not compile
static_assert(2400_VA / 120_V == 20_A);
static_assert(percent(20_A, 80) == 16_A);

} // namespace legwork
