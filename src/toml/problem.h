// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is wrong with a file a person typed, where, and the way out; and how one such mistake is printed.
#pragma once

#include "units/utf8.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct Place {
    int line = 0, column = 0; // from 1; columns in characters; 0 when not known
};

// A mistake of the file: it could not be understood (exit 2). All text is valid UTF-8 without control characters.
struct Problem {
    Place place;
    std::string message, fix; // what is wrong; the way out, imperative
    std::string line;         // the line of the file around the place, fit to print; empty when there is none
    int caret = 0;            // the character of `line` (from 1) that the place is; 0 when there is no line
};

// Total. For a terminal or a log, without a final newline:
//
//     job.toml:31:11: the unit is missing in "20"
//         breaker = "20"
//                   ^
//         write the unit: "20 A"
std::string render(Problem const& problem, std::string_view file);

// The text of a file with its lines; finds the place of a byte in about a microsecond whatever the line's length.
class SourceText {
public:
    explicit SourceText(std::string_view bytes); // `bytes` must outlive this
    std::string_view bytes() const { return bytes_; }
    Place place(std::size_t at) const; // past the end: the end
    // Message and fix at a byte of the file, with the line as far as it fits on a screen.
    Problem problem(std::size_t at, std::string message, std::string fix) const;

private:
    std::size_t line_begin(std::size_t at) const;
    std::size_t characters_before(std::size_t at) const;

    std::string_view bytes_;
    std::vector<std::size_t> lines_;  // where each line begins
    std::vector<std::size_t> counts_; // characters before every 512th byte
};

// Collects the mistakes of one file while it is read, in any order.
class Complaints {
public:
    explicit Complaints(SourceText const& source) : source_(&source) {}
    void add(std::size_t at, std::string message, std::string fix);
    bool empty() const { return found_.empty(); }
    bool full() const { return found_.size() >= 1000; } // enough: reading may leave out costly advice
    SourceText const& source() const { return *source_; }
    // In the order of the file; after the first 200 one that says how many more there are.
    std::vector<Problem> in_file_order() const;

private:
    struct Mistake {
        std::size_t at;
        std::string message, fix;
    };
    SourceText const* source_;
    std::vector<Mistake> found_;
    std::size_t left_out_ = 0;
};

// "text" in quotes for a message: cut after 40 characters, controls replaced.
std::string quoted(std::string_view text);

} // namespace legwork
