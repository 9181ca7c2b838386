// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/scalar.h"
#include "toml/problem.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cstdint>
#include <fmt/format.h>

namespace legwork {

namespace {

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool all_digits(std::string_view t) { return !t.empty() && std::ranges::all_of(t, is_digit); }

// Digits of a base with single underscores between digits; the digits without them, or nothing.
std::optional<std::string> digits(std::string_view t, int base) {
    std::string plain;
    bool after_digit = false;
    for (char const c : t) {
        if (c == '_' && !after_digit) return std::nullopt;
        after_digit = c != '_';
        if (c == '_') continue;
        int const value = is_digit(c)            ? c - '0'
                          : c >= 'a' && c <= 'f' ? c - 'a' + 10
                          : c >= 'A' && c <= 'F' ? c - 'A' + 10
                                                 : 99;
        if (value >= base) return std::nullopt;
        plain += c;
    }
    return after_digit ? std::optional(plain) : std::nullopt;
}

std::string_view without_sign(std::string_view t) {
    if (t.starts_with('+') || t.starts_with('-')) t.remove_prefix(1);
    return t;
}

std::optional<std::string> whole_digits(std::string_view t) {
    auto const plain = digits(t, 10);
    return plain && plain->size() > 1 && plain->front() == '0' ? std::nullopt : plain;
}

bool fits(std::string const& number, int base) {
    std::int64_t value = 0;
    return std::from_chars(number.data(), number.data() + number.size(), value, base).ec == std::errc{};
}

enum class Integer { no, yes, too_large, too_long };

// toml11 doubles a 64-bit number once for each binary digit, a leading zero too.
constexpr std::size_t kMostBinaryDigits = 62;

Integer integer(std::string_view t) {
    auto const judge = [](std::optional<std::string> const& plain, int base) {
        return !plain ? Integer::no : fits(*plain, base) ? Integer::yes : Integer::too_large;
    };
    if (t.starts_with("0x")) return judge(digits(t.substr(2), 16), 16);
    if (t.starts_with("0o")) return judge(digits(t.substr(2), 8), 8);
    if (t.starts_with("0b")) {
        auto const plain = digits(t.substr(2), 2);
        return plain && plain->size() > kMostBinaryDigits ? Integer::too_long : judge(plain, 2);
    }
    auto plain = whole_digits(without_sign(t));
    if (plain && t.starts_with('-')) plain->insert(0, 1, '-');
    return judge(plain, 10);
}

bool is_float(std::string_view t) {
    t = without_sign(t);
    if (t == "inf" || t == "nan") return true;
    auto const e = std::min(t.find_first_of("eE"), t.size());
    if (e < t.size() && !digits(without_sign(t.substr(e + 1)), 10)) return false;
    auto const mantissa = t.substr(0, e);
    auto const point = mantissa.find('.');
    if (point == std::string_view::npos) return e < t.size() && whole_digits(mantissa).has_value();
    return whole_digits(mantissa.substr(0, point)) && digits(mantissa.substr(point + 1), 10);
}

int number(std::string_view t) {
    int value = 0;
    std::from_chars(t.data(), t.data() + t.size(), value);
    return value;
}

// "07:32:00", "07:32:00.999"
bool is_time(std::string_view t) {
    if (t.size() < 8 || t[2] != ':' || t[5] != ':') return false;
    if (!all_digits(t.substr(0, 2)) || !all_digits(t.substr(3, 2)) || !all_digits(t.substr(6, 2))) return false;
    if (number(t.substr(0, 2)) > 23 || number(t.substr(3, 2)) > 59 || number(t.substr(6, 2)) > 60)
        return false; // 60: a leap second
    return t.size() == 8 || (t[8] == '.' && all_digits(t.substr(9)));
}

// "07:32:00Z", "07:32:00-07:00"
bool is_time_with_offset(std::string_view t) {
    if (t.ends_with('Z') || t.ends_with('z')) return is_time(t.substr(0, t.size() - 1));
    if (t.size() < 14) return false;
    auto const offset = t.substr(t.size() - 6);
    return (offset[0] == '+' || offset[0] == '-') && is_time(t.substr(0, t.size() - 6)) &&
           is_time(std::string(offset.substr(1)) + ":00");
}

bool is_date_or_time(std::string_view t) {
    if (is_time(t)) return true;
    if (t.size() < 10 || !is_date(t.substr(0, 10))) return false;
    if (t.size() == 10) return true;
    if (t[10] != 'T' && t[10] != 't' && t[10] != ' ') return false;
    return is_time(t.substr(11)) || is_time_with_offset(t.substr(11));
}

} // namespace

bool is_date(std::string_view t) {
    if (t.size() != 10 || t[4] != '-' || t[7] != '-') return false;
    if (!all_digits(t.substr(0, 4)) || !all_digits(t.substr(5, 2)) || !all_digits(t.substr(8, 2))) return false;
    using namespace std::chrono;
    return year_month_day{year{number(t.substr(0, 4))}, month{static_cast<unsigned>(number(t.substr(5, 2)))},
                          day{static_cast<unsigned>(number(t.substr(8, 2)))}}
        .ok();
}

std::optional<ScalarFault> bare_value_fault(std::string_view t) {
    if (t == "true" || t == "false" || is_float(t) || is_date_or_time(t)) return std::nullopt;
    auto const whole = integer(t);
    if (whole == Integer::yes) return std::nullopt;
    if (whole == Integer::too_large)
        return ScalarFault{fmt::format("the number {} is too large", quoted(t)), "write a smaller one"};
    if (whole == Integer::too_long)
        return ScalarFault{fmt::format("the number {} has more than {} binary digits", quoted(t), kMostBinaryDigits),
                           "write it without 0b, in decimal digits"};
    if (t == "True" || t == "TRUE" || t == "yes" || t == "Yes" || t == "on")
        return ScalarFault{fmt::format("{} is no value", quoted(t)), "write true, in small letters and without quotes"};
    if (t == "False" || t == "FALSE" || t == "no" || t == "No" || t == "off")
        return ScalarFault{fmt::format("{} is no value", quoted(t)),
                           "write false, in small letters and without quotes"};
    if (t.size() >= 10 && t[4] == '-' && t[7] == '-')
        return ScalarFault{fmt::format("{} is no date of the calendar", quoted(t)), "write a date as 2026-05-02"};
    if (t.starts_with("\xE2\x80\x9C") || t.starts_with("\xE2\x80\x98"))
        return ScalarFault{"curly quotes do not hold a text", "type straight quotes: \"...\""};
    return ScalarFault{fmt::format("{} is no value", quoted(t)),
                       "put text, and a number with its unit, in quotes: \"20 A\""};
}

} // namespace legwork
