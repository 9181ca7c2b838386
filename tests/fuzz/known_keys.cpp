// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "fuzz/known_keys.h"

#include "job/keys/keys.h"
#include "sheet/form_keys.h"

#include <array>

namespace fuzz {

namespace {

// The keys of the tables with a header; what lies in a table in braces is in its example.
std::vector<KnownKey> keys_of_tables(legwork::KeyTable const& file) {
    std::vector<KnownKey> all;
    for (auto const& table : file.keys)
        for (auto const& key : table.table->keys) all.push_back({table.name, &key});
    return all;
}

constexpr std::array kExtremes = std::to_array<std::string_view>({
    "\"\"",
    "\"?\"",
    "\"0 A\"",
    "\"0.001 A\"",
    "\"1 A\"",
    "\"6000 A\"",
    "\"9999999999 A\"",
    "\"-5 A\"",
    "\"0 VA\"",
    "\"1 VA\"",
    "\"999999 kW\"",
    "\"100 kVA\"",
    "\"1e9 W\"",
    "\"0 m\"",
    "\"1 mm\"",
    "\"999 km\"",
    "\"10000 m\"",
    "\"1/64 in\"",
    "\"0 m²\"",
    "\"999999999 m²\"",
    "\"1 sq ft\"",
    "0",
    "1",
    "-1",
    "84",
    "85",
    "1000",
    "9223372036854775807",
    "-9223372036854775808",
    "9223372036854775808",
    "0x7fff_ffff",
    "0o17",
    "0b11",
    "1e308",
    "-1e-308",
    "nan",
    "-inf",
    "0.0",
    "1.0",
    "0.000001",
    "0.0000001",
    "true",
    "false",
    "[]",
    "{}",
    "[[]]",
    "[1, 84]",
    "[84, 84, 1]",
    "1979-05-27",
    "9999-12-31",
    "1979-05-27T07:32:00Z",
    "07:32:00",
    "\"84\"",
    "\"84b\"",
    "\"1a\"",
    "\"7B\"",
    "'literal'",
    "\"\"\"\nmany\nlines\"\"\"",
    "'''\n'''",
    "\"\\u0041\\U0001F600\"",
    "\"\\u202E\"",
    "\"\xC3\xA9t\xC3\xA9\"",
    "\"\xF0\x9F\x98\x80\xF0\x9F\x98\x80\"",
    "\"\xD8\xA8\xD8\xA7\xD8\xA8\"",
    "\"\xE6\xBC\xA2\xE5\xAD\x97\"",
    "\"a/b\"",
    "\"..\"",
    "\"e\xCC\x81\xCC\x81\xCC\x81\xCC\x81\"",
    "\"&<>\\\"'\"",
    "\"{}\"",
    "\"%s%n\"",
});

} // namespace

std::vector<KnownKey> const& job_keys() {
    static auto const all = keys_of_tables(legwork::kJobFileKeys);
    return all;
}

std::vector<KnownKey> const& form_keys() {
    static auto const all = [] {
        std::vector<KnownKey> keys;
        for (auto const& key : legwork::kFormTable.keys) keys.push_back({"", &key});
        return keys;
    }();
    return all;
}

std::span<std::string_view const> extremes() { return kExtremes; }

} // namespace fuzz
