// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "units/text.h"
#include "units/decimal.h"

#include <array>
#include <cstdlib>
#include <fmt/format.h>
#include <span>

namespace legwork {

namespace {

struct Unit {
    std::string_view name; // small letters
    Ratio grains;          // in one of it
};

constexpr std::array kCurrents{Unit{"a", {1000, 1}},      Unit{"ma", {1, 1}},      Unit{"ka", {1'000'000, 1}},
                               Unit{"amp", {1000, 1}},    Unit{"amps", {1000, 1}}, Unit{"ampere", {1000, 1}},
                               Unit{"amperes", {1000, 1}}};
constexpr std::array kLoads{Unit{"va", {1000, 1}},      Unit{"kva", {1'000'000, 1}}, Unit{"w", {1000, 1}},
                            Unit{"kw", {1'000'000, 1}}, Unit{"watt", {1000, 1}},     Unit{"watts", {1000, 1}}};
constexpr std::array kMetres{Unit{"m", {1'000'000, 1}},     Unit{"mm", {1000, 1}},
                             Unit{"cm", {10'000, 1}},       Unit{"metre", {1'000'000, 1}},
                             Unit{"meter", {1'000'000, 1}}, Unit{"metres", {1'000'000, 1}},
                             Unit{"meters", {1'000'000, 1}}};
// 1 in = 25.4 mm exactly. Primes and curly quotes as word processors type them.
constexpr std::array kFeet{Unit{"ft", {304'800, 1}},          Unit{"ft.", {304'800, 1}},
                           Unit{"feet", {304'800, 1}},        Unit{"foot", {304'800, 1}},
                           Unit{"'", {304'800, 1}},           Unit{"\xE2\x80\xB2", {304'800, 1}},
                           Unit{"\xE2\x80\x99", {304'800, 1}}};
constexpr std::array kInches{Unit{"in", {25'400, 1}},           Unit{"in.", {25'400, 1}},
                             Unit{"inch", {25'400, 1}},         Unit{"inches", {25'400, 1}},
                             Unit{"\"", {25'400, 1}},           Unit{"''", {25'400, 1}},
                             Unit{"\xE2\x80\xB3", {25'400, 1}}, Unit{"\xE2\x80\x9D", {25'400, 1}}};
// (0.3048 m)^2 = 92 903.04 mm^2
constexpr std::array kAreas{
    Unit{"m\xC2\xB2", {1'000'000, 1}},     Unit{"m2", {1'000'000, 1}},           Unit{"m^2", {1'000'000, 1}},
    Unit{"sq m", {1'000'000, 1}},          Unit{"sqm", {1'000'000, 1}},          Unit{"square metres", {1'000'000, 1}},
    Unit{"square meters", {1'000'000, 1}}, Unit{"ft\xC2\xB2", {9'290'304, 100}}, Unit{"ft2", {9'290'304, 100}},
    Unit{"ft^2", {9'290'304, 100}},        Unit{"sq ft", {9'290'304, 100}},      Unit{"sqft", {9'290'304, 100}},
    Unit{"sq. ft.", {9'290'304, 100}},     Unit{"sf", {9'290'304, 100}},         Unit{"square feet", {9'290'304, 100}}};

// 25.4 mm cubed = 16 387.064 mm^3
constexpr std::array kVolumes{
    Unit{"ml", {1'000'000, 1}},          Unit{"l", {1'000'000'000, 1}},    Unit{"cm\xC2\xB3", {1'000'000, 1}},
    Unit{"cm3", {1'000'000, 1}},         Unit{"cm^3", {1'000'000, 1}},     Unit{"cc", {1'000'000, 1}},
    Unit{"in\xC2\xB3", {16'387'064, 1}}, Unit{"in3", {16'387'064, 1}},     Unit{"in^3", {16'387'064, 1}},
    Unit{"cu in", {16'387'064, 1}},      Unit{"cu. in.", {16'387'064, 1}}, Unit{"cubic inches", {16'387'064, 1}}};

Unit const* unit_named(std::string_view name, std::span<Unit const> units) {
    for (auto const& unit : units)
        if (unit.name == name) return &unit;
    return nullptr;
}

// What one kind of quantity is called, may be, and how it is typed.
struct Kind {
    std::string_view noun, example;
    std::int64_t most; // grains
    std::string_view most_text;
    bool zero;
};

template <class T>
Parsed<T> refused(std::string why) {
    return {std::nullopt, std::move(why)};
}

template <class T>
Parsed<T> checked(std::optional<std::int64_t> grains, Kind const& kind) {
    if (!grains || *grains > kind.most)
        return refused<T>(
            fmt::format("{} is at most {} here: check the number and its unit", kind.noun, kind.most_text));
    if (*grains == 0 && !kind.zero)
        return refused<T>(fmt::format("{} cannot be 0: give one, as \"{}\"", kind.noun, kind.example));
    return {T{*grains}, ""};
}

// What a number that does not stand in front, or is not followed by a known unit, needs.
std::string number_fault(Amount const& amount, Kind const& kind) {
    switch (amount.state) {
    case Amount::State::negative: return fmt::format("{} cannot be negative: write it without the minus", kind.noun);
    case Amount::State::too_large:
        return fmt::format("{} is at most {} here: check the number", kind.noun, kind.most_text);
    case Amount::State::comma: return "a comma can be read in two ways: write 1500 or 1.5";
    case Amount::State::none: return fmt::format("begin with a number, then the unit: \"{}\"", kind.example);
    default: return fmt::format("this number is not one: write \"{}\"", kind.example);
    }
}

// Nobody needs 40 characters for one quantity, and messages quote what was typed.
Amount take_short_amount(std::string_view& rest) {
    if (rest.size() > 40) return {Amount::State::malformed, {}};
    return take_amount(rest);
}

std::string missing_unit(std::string_view number, std::string_view unit) {
    return fmt::format("write the unit: \"{} {}\"", number, unit);
}

constexpr std::string_view kUnitOfLoad = "the unit of a load is VA, kVA, W or kW: \"1500 VA\"";
constexpr std::string_view kUnitOfLoadOrAmps =
    "the unit of a load is VA, kVA, W or kW: \"1500 VA\"; or A, of the current at the circuit's own volts: \"12 A\"";

std::string trimmed_decimal(double value, int decimals) {
    auto text = fmt::format("{:.{}f}", value, decimals);
    if (text.find('.') == std::string::npos) return text;
    while (text.back() == '0') text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

// Divides or multiplies by 120 V to show how the other quantity is got.
std::string amps_from_load(std::string_view typed, double va) {
    return fmt::format("this is a load, a current is in amperes: divide by the volts ({} / 120 V = {} A)", typed,
                       trimmed_decimal(va / 120.0, 1));
}
} // namespace

std::vector<std::string_view> unit_names(UnitsOf kind) {
    std::vector<std::string_view> names;
    auto const add = [&](std::span<Unit const> units) {
        for (Unit const& unit : units) names.push_back(unit.name);
    };
    switch (kind) {
    case UnitsOf::load: add(kLoads); [[fallthrough]]; // or the current that it draws
    case UnitsOf::current: add(kCurrents); break;
    case UnitsOf::length: add(kMetres), add(kFeet), add(kInches); break;
    case UnitsOf::area: add(kAreas); break;
    case UnitsOf::volume: add(kVolumes); break;
    }
    return names;
}

Parsed<Amps> parse_amps(std::string_view typed) {
    constexpr Kind kind{"a current", "20 A", 10'000'000, "10 000 A", false};
    auto const all = trimmed(typed);
    auto rest = all;
    auto const amount = take_short_amount(rest);
    if (amount.state != Amount::State::good) return refused<Amps>(number_fault(amount, kind));
    auto const unit = small_letters(trimmed(rest));
    if (unit.empty()) return refused<Amps>(missing_unit(all, "A"));
    if (auto const* u = unit_named(unit, kCurrents)) return checked<Amps>(rounded(amount.ratio, u->grains), kind);
    if (auto const* u = unit_named(unit, kLoads))
        return refused<Amps>(amps_from_load(all, as_double(amount.ratio) * as_double(u->grains) / 1000));
    if (unit == "v" || unit == "kv") return refused<Amps>("this is a voltage, a current is in amperes: \"20 A\"");
    return refused<Amps>("the unit of a current is A or mA: \"20 A\"");
}

Parsed<VoltAmperes> parse_load(std::string_view typed) {
    constexpr Kind kind{"a load", "1500 VA", 10'000'000'000, "10 000 kVA", true};
    auto const all = trimmed(typed);
    auto rest = all;
    auto const amount = take_short_amount(rest);
    if (amount.state != Amount::State::good) return refused<VoltAmperes>(number_fault(amount, kind));
    auto const unit = small_letters(trimmed(rest));
    if (unit.empty()) return refused<VoltAmperes>(missing_unit(all, "VA"));
    if (auto const* u = unit_named(unit, kLoads)) return checked<VoltAmperes>(rounded(amount.ratio, u->grains), kind);
    if (unit_named(unit, kCurrents))
        return refused<VoltAmperes>("this is a current, a load is in VA or W: multiply it by the circuit's volts");
    if (unit == "hp")
        return refused<VoltAmperes>(
            "horsepower is what the shaft gives: take amperes x volts from the nameplate, in VA");
    if (unit == "btu" || unit == "btu/h" || unit == "btuh")
        return refused<VoltAmperes>(
            "BTU is heat moved, not current drawn: take amperes x volts from the nameplate, in VA");
    if (unit == "kwh" || unit == "wh")
        return refused<VoltAmperes>("this is an energy, a load is in VA or W: \"1500 W\"");
    return refused<VoltAmperes>(std::string(kUnitOfLoad));
}

Parsed<std::variant<VoltAmperes, Amps>> parse_load_or_amps(std::string_view typed) {
    using Either = std::variant<VoltAmperes, Amps>;
    constexpr Kind kind{"a load in amperes", "12 A", 10'000'000, "10 000 A", true};
    auto rest = trimmed(typed);
    auto const amount = take_short_amount(rest);
    auto const unit = small_letters(trimmed(rest));
    if (amount.state == Amount::State::good)
        if (auto const* u = unit_named(unit, kCurrents)) {
            auto const amps = checked<Amps>(rounded(amount.ratio, u->grains), kind);
            return amps.value ? Parsed<Either>{*amps.value, ""} : refused<Either>(amps.why);
        }
    auto const load = parse_load(typed);
    if (load.value) return {*load.value, ""};
    return refused<Either>(load.why == kUnitOfLoad ? std::string(kUnitOfLoadOrAmps) : load.why);
}

Parsed<Length> parse_length(std::string_view typed) {
    constexpr Kind kind{"a length", "9.5 m", 10'000'000'000, "10 km", true};
    constexpr std::string_view units = "the unit of a length is m, cm, mm, ft or in: \"9.5 m\", \"31 ft 6 in\"";
    auto const all = trimmed(typed);
    auto rest = all;
    auto const amount = take_short_amount(rest);
    if (amount.state != Amount::State::good) return refused<Length>(number_fault(amount, kind));
    auto const first = small_letters(take_unit(rest));
    if (first.empty() && trimmed(rest).empty())
        return refused<Length>(fmt::format("write the unit: \"{} m\" or \"{} ft\"", all, all));
    if (auto const* u = unit_named(first, kMetres); u && trimmed(rest).empty())
        return checked<Length>(rounded(amount.ratio, u->grains), kind);
    if (auto const* u = unit_named(first, kInches); u && trimmed(rest).empty())
        return checked<Length>(rounded(amount.ratio, u->grains), kind);
    auto const* feet = unit_named(first, kFeet);
    if (!feet) return refused<Length>(std::string(units));
    skip_dash(rest);
    if (trimmed(rest).empty()) return checked<Length>(rounded(amount.ratio, feet->grains), kind);
    auto const more = take_amount(rest);
    auto const* inches = unit_named(small_letters(trimmed(rest)), kInches);
    if (more.state != Amount::State::good || !inches)
        return refused<Length>("behind the feet write inches with their unit: \"31 ft 6 in\", \"31' 6\\\"\"");
    if (as_double(more.ratio) >= 12) return refused<Length>("a foot has 12 inches: write \"31 ft 6 in\"");
    return checked<Length>(rounded(sum(product(amount.ratio, {12, 1}), more.ratio), inches->grains), kind);
}

Parsed<Area> parse_area(std::string_view typed) {
    constexpr Kind kind{"an area", "64 m²", 100'000'000'000, "100 000 m²", false};
    auto const all = trimmed(typed);
    auto rest = all;
    auto const amount = take_short_amount(rest);
    if (amount.state != Amount::State::good) return refused<Area>(number_fault(amount, kind));
    auto const unit = small_letters(trimmed(rest));
    if (unit.empty()) return refused<Area>(fmt::format("write the unit: \"{} m²\" or \"{} ft²\"", all, all));
    if (auto const* u = unit_named(unit, kAreas)) return checked<Area>(rounded(amount.ratio, u->grains), kind);
    return refused<Area>("the unit of an area is m² or ft²: \"64 m²\", \"690 sq ft\"");
}

Parsed<Volume> parse_volume(std::string_view typed) {
    constexpr Kind kind{"a volume", "524 mL", 100'000'000'000, "100 L", false};
    auto const all = trimmed(typed);
    auto rest = all;
    auto const amount = take_short_amount(rest);
    if (amount.state != Amount::State::good) return refused<Volume>(number_fault(amount, kind));
    auto const unit = small_letters(trimmed(rest));
    if (unit.empty()) return refused<Volume>(fmt::format("write the unit: \"{} mL\" or \"{} in³\"", all, all));
    if (auto const* u = unit_named(unit, kVolumes)) return checked<Volume>(rounded(amount.ratio, u->grains), kind);
    return refused<Volume>("the unit of a volume is mL or in³: \"524 mL\", \"32 in³\"");
}

UnitSystem units_of_area(std::string_view typed) {
    return small_letters(typed).find('f') == std::string::npos ? UnitSystem::metric : UnitSystem::inch; // ft, sq ft
}

std::string text(Amps a) { return trimmed_decimal(value(a), 3) + " A"; }
std::string text(VoltAmperes s) { return fmt::format("{} VA", whole_va(s)); }
std::string text(Volts v) { return fmt::format("{} V", v.count); }

std::string text(Length l, UnitSystem units) {
    if (units == UnitSystem::metric) return trimmed_decimal(metres(l), 3) + " m";
    if (l.count < 0) return "-" + text(Length{-l.count}, units);
    if (l < Length{304'800}) { // under a foot, quarters of an inch
        auto const quarters = (l.count * 4 + 12'700) / 25'400;
        static constexpr std::array<std::string_view, 4> parts{"", "1/4", "1/2", "3/4"};
        auto const part = parts[static_cast<std::size_t>(quarters % 4)];
        if (quarters / 4 == 0 && !part.empty()) return fmt::format("{} in", part);
        if (quarters < 48) return fmt::format("{}{}{} in", quarters / 4, part.empty() ? "" : " ", part);
    }
    auto const inches = (l.count + 12'700) / 25'400;
    if (inches % 12 == 0) return fmt::format("{} ft", inches / 12);
    return fmt::format("{} ft {} in", inches / 12, inches % 12);
}

std::string text(Area a, UnitSystem units) {
    return units == UnitSystem::metric ? trimmed_decimal(square_metres(a), 2) + " m²"
                                       : trimmed_decimal(square_feet(a), 2) + " ft²";
}

} // namespace legwork
