// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace legwork {

// American wire gauge sizes, thinnest first, so that "smaller wire" is "<". Use
// awg_number() for arithmetic (1/0 is 0, 4/0 is -3).
enum class Gauge {
    awg24,
    awg23,
    awg22,
    awg20,
    awg18,
    awg16,
    awg14,
    awg12,
    awg10,
    awg8,
    awg6,
    awg4,
    awg3,
    awg2,
    awg1,
    awg1_0,
    awg2_0,
    awg3_0,
    awg4_0
};

// What a wire is made of.
enum class Metal { copper, aluminium };

struct GaugeName {
    Gauge gauge;
    int number; // 1/0 is 0, 2/0 is -1, ...
    std::string_view name;
};

inline constexpr std::array kGauges{
    GaugeName{Gauge::awg24, 24, "24"},   GaugeName{Gauge::awg23, 23, "23"},   GaugeName{Gauge::awg22, 22, "22"},
    GaugeName{Gauge::awg20, 20, "20"},   GaugeName{Gauge::awg18, 18, "18"},   GaugeName{Gauge::awg16, 16, "16"},
    GaugeName{Gauge::awg14, 14, "14"},   GaugeName{Gauge::awg12, 12, "12"},   GaugeName{Gauge::awg10, 10, "10"},
    GaugeName{Gauge::awg8, 8, "8"},      GaugeName{Gauge::awg6, 6, "6"},      GaugeName{Gauge::awg4, 4, "4"},
    GaugeName{Gauge::awg3, 3, "3"},      GaugeName{Gauge::awg2, 2, "2"},      GaugeName{Gauge::awg1, 1, "1"},
    GaugeName{Gauge::awg1_0, 0, "1/0"},  GaugeName{Gauge::awg2_0, -1, "2/0"}, GaugeName{Gauge::awg3_0, -2, "3/0"},
    GaugeName{Gauge::awg4_0, -3, "4/0"},
};

constexpr std::string_view name(Gauge g) { return kGauges[static_cast<std::size_t>(g)].name; }
constexpr int awg_number(Gauge g) { return kGauges[static_cast<std::size_t>(g)].number; }

// "14" to "4/0"; nothing for any other text.
constexpr std::optional<Gauge> gauge_named(std::string_view text) {
    for (auto const& g : kGauges)
        if (g.name == text) return g.gauge;
    return std::nullopt;
}

static_assert(name(Gauge::awg2_0) == "2/0" && awg_number(Gauge::awg14) == 14);
static_assert(Gauge::awg14 < Gauge::awg12 && Gauge::awg1 < Gauge::awg1_0);

} // namespace legwork
