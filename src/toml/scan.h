// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The gate before the TOML library. toml11 3.7.1 overflows the stack on deep nesting, takes integers past 64 bits for
// others, and its time grows with the square of a line's values; so a text reaches it only when this scanner, which is
// total and linear, has found its grammar whole (TOML 1.0, without the meaning: keys given twice are left to toml11)
// and its size within bounds. toml11 refuses most of what is no TOML by itself, but at the line's first letter and
// without the way out. The scanner also knows where keys stand, which toml11 does not tell.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct TomlLimits {
    std::size_t bytes = 1U << 20;
    int nesting = 32;                  // arrays, inline tables and the parts of headers and dotted keys, added up
    std::size_t values = 12'000;       // parts of keys, and array elements: 30 for each of 400 circuits
    std::size_t crowding = 50'000'000; // per value the bytes of its line, added up: 0.1 s of toml11
};

struct TomlFault {
    std::size_t at = 0; // byte
    std::string message, fix;
};

struct TomlScan {
    std::optional<TomlFault> fault; // the first
    // What toml11 is given: the text without comments and empty lines, which it reads slowly.
    std::string significant;
    // Byte of the file where the value begins whose first byte in `significant` is `at`, and where its key begins (for
    // an array element: the value).
    std::size_t original(std::size_t at) const;
    std::size_t key_of(std::size_t value_begin) const;

    struct Kept { // `significant` from `to` on is the file from `from` on
        std::size_t to, from;
    };
    struct KeyAt {
        std::size_t value, key;
    };
    std::vector<Kept> kept;
    std::vector<KeyAt> keys; // by value
};

TomlScan scan_toml(std::string_view bytes, TomlLimits const& limits = {});

// What is wrong with the bytes before they are looked at as TOML. Nothing when they are UTF-8 text of a bearable size.
std::optional<TomlFault> byte_fault(std::string_view bytes, TomlLimits const& limits);

} // namespace legwork
