// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Quantities as people type and read them. Parsing returns a value or a reason; nothing here throws.
#pragma once

#include "units/length.h"
#include "units/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace legwork {

template <class T>
struct Parsed {
    std::optional<T> value;
    std::string why; // empty when there is a value; else what is wrong and the way out, one sentence
};

// "20 A", "6.4 A", "500 mA". Refuses a missing or another unit, negatives, zero and more than 10 000 A.
Parsed<Amps> parse_amps(std::string_view text);
// "1500 VA", "1.5 kVA", "3000 W", "3 kW". Refuses a missing or another unit, negatives and more than 10 MVA. 0 is fine.
Parsed<VoltAmperes> parse_load(std::string_view text);
// A load as above, or the current that it draws at volts of its own: "12 A", 0 too. Refuses what both refuse.
Parsed<std::variant<VoltAmperes, Amps>> parse_load_or_amps(std::string_view text);
// "9.5 m", "300 mm", "12 cm", "31 ft", "14 in", "31' 6\"", "31 ft 6 in". Refuses more than 10 km, negatives.
Parsed<Length> parse_length(std::string_view text);
// "64 m²", "64 m2", "690 ft²", "690 sq ft". Refuses zero, negatives and more than 100 000 m².
Parsed<Area> parse_area(std::string_view text);

// "524 mL", "0.5 L", "520 cm³", "32 in³", "32 cu in". Refuses zero, negatives and more than 100 L.
Parsed<Volume> parse_volume(std::string_view text);

// The units that a good area was typed in.
UnitSystem units_of_area(std::string_view text);

std::string text(Amps a);                     // "20 A", "6.4 A" (no trailing zeros, three decimals at most)
std::string text(VoltAmperes s);              // "1500 VA" (whole VA)
std::string text(Volts v);                    // "240 V"
std::string text(Length l, UnitSystem units); // "9.5 m", "0.3 m"; "31 ft", "31 ft 6 in"
std::string text(Area a, UnitSystem units);   // "64 m²", "690 ft²" (two decimals at most)

// What may stand behind the number of a quantity, in small letters.
enum class UnitsOf { current, load, length, area, volume };
std::vector<std::string_view> unit_names(UnitsOf kind);

} // namespace legwork
