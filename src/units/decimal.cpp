// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "units/decimal.h"

#include <algorithm>
#include <array>
#include <limits>

namespace legwork {

namespace {

__extension__ using Wide = __int128;

constexpr std::array<std::string_view, 4> kBlanks{" ", "\t", "\xC2\xA0",
                                                  "\xE2\x80\xAF"};                      // the last two: no-break spaces
constexpr std::array<std::string_view, 3> kDashes{"-", "\xE2\x88\x92", "\xE2\x80\x93"}; // minus sign, en dash

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool take_one_of(std::string_view& rest, auto const& list) {
    for (std::string_view const one : list)
        if (rest.starts_with(one)) return rest.remove_prefix(one.size()), true;
    return false;
}

void skip_blanks(std::string_view& rest) {
    while (take_one_of(rest, kBlanks)) {
    }
}

std::string_view take_digits(std::string_view& rest) {
    auto const size = static_cast<std::size_t>(std::ranges::find_if_not(rest, is_digit) - rest.begin());
    auto const digits = rest.substr(0, size);
    rest.remove_prefix(size);
    return digits;
}

// Up to 9 digits after leading zeros; nothing for more.
std::optional<std::int64_t> whole(std::string_view digits) {
    digits.remove_prefix(std::min(digits.find_first_not_of('0'), digits.size()));
    if (digits.size() > 9) return std::nullopt;
    std::int64_t value = 0;
    for (char const c : digits) value = value * 10 + (c - '0');
    return value;
}

constexpr Amount kMalformed{Amount::State::malformed, {}};

// The denominator of a fraction in front of `rest` ("/2"), nothing when there is no fraction.
std::optional<std::int64_t> take_denominator(std::string_view& rest) {
    auto look = rest;
    if (!look.starts_with('/')) return std::nullopt;
    look.remove_prefix(1);
    auto const den = whole(take_digits(look));
    if (!den || *den == 0 || *den > 64) return std::nullopt;
    rest = look;
    return den;
}

// " 1/2" behind a whole number.
Amount with_fraction(std::int64_t number, std::string_view& rest) {
    auto look = rest;
    skip_blanks(look);
    if (look.size() == rest.size()) return {Amount::State::good, {number, 1}};
    auto const digits = take_digits(look);
    auto const num = whole(digits);
    auto const den = digits.empty() || !num ? std::nullopt : take_denominator(look);
    if (!den) return {Amount::State::good, {number, 1}};
    if (*num >= *den) return kMalformed;
    rest = look;
    return {Amount::State::good, {number * *den + *num, *den}};
}

Amount with_decimals(std::int64_t number, std::string_view& rest) {
    rest.remove_prefix(1);
    auto digits = take_digits(rest);
    if (digits.empty() || rest.starts_with('.') || rest.starts_with(',')) return kMalformed;
    digits = digits.substr(0, digits.find_last_not_of('0') + 1);
    if (digits.size() > 6) digits = digits.substr(0, 6); // finer than any grain
    std::int64_t den = 1;
    for (char const c : digits) {
        number = number * 10 + (c - '0');
        den *= 10;
    }
    return {Amount::State::good, {number, den}};
}

} // namespace

std::string_view trimmed(std::string_view text) {
    skip_blanks(text);
    for (bool more = true; more;) {
        more = false;
        for (auto const blank : kBlanks)
            if (text.ends_with(blank)) text.remove_suffix(blank.size()), more = true;
    }
    return text;
}

std::string small_letters(std::string_view text) {
    std::string small(text);
    for (char& c : small)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
    return small;
}

Amount take_amount(std::string_view& rest) {
    skip_blanks(rest);
    if (take_one_of(rest, kDashes)) {
        skip_blanks(rest);
        return {!rest.empty() && is_digit(rest[0]) ? Amount::State::negative : Amount::State::none, {}};
    }
    auto const digits = take_digits(rest);
    bool const point = rest.starts_with('.') && rest.size() > 1 && is_digit(rest[1]);
    if (digits.empty() && !point) return {};
    auto const number = whole(digits);
    if (rest.starts_with(',')) return {Amount::State::comma, {}};
    if (!number) return {Amount::State::too_large, {}};
    if (rest.starts_with('.')) return with_decimals(*number, rest);
    if (auto const den = take_denominator(rest)) return {Amount::State::good, {*number, *den}};
    return with_fraction(*number, rest);
}

std::string_view take_unit(std::string_view& rest) {
    skip_blanks(rest);
    std::size_t size = 0;
    auto const letter = [](char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '.'; };
    while (size < rest.size() && letter(rest[size])) ++size;
    if (size == 0)
        for (std::string_view const mark :
             {"''", "'", "\"", "\xE2\x80\xB2", "\xE2\x80\xB3", "\xE2\x80\x99", "\xE2\x80\x9D"})
            if (rest.starts_with(mark)) {
                size = mark.size();
                break;
            }
    auto const unit = rest.substr(0, size);
    rest.remove_prefix(size);
    return unit;
}

void skip_dash(std::string_view& rest) {
    skip_blanks(rest);
    take_one_of(rest, kDashes);
}

std::optional<std::int64_t> rounded(Ratio a, Ratio b) {
    Wide const num = Wide{a.num} * b.num;
    Wide const den = Wide{a.den} * b.den;
    Wide const twice = num < 0 ? 2 * num - den : 2 * num + den;
    Wide const result = twice / (2 * den);
    if (result > std::numeric_limits<std::int64_t>::max() || result < std::numeric_limits<std::int64_t>::min())
        return std::nullopt;
    return static_cast<std::int64_t>(result);
}

Ratio product(Ratio a, Ratio b) { return {a.num * b.num, a.den * b.den}; }
Ratio sum(Ratio a, Ratio b) { return {a.num * b.den + b.num * a.den, a.den * b.den}; }

} // namespace legwork
