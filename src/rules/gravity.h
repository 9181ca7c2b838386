// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How grave a rule's findings are: by family of codes, and by what they hang on.
#pragma once

#include "codebook/code_book.h"
#include "rules/finding.h"

#include <array>
#include <span>
#include <string>
#include <string_view>

namespace legwork {

enum class Grade {
    silent, // that family does not ask it
    error,
    error_on_new_work, // a warning where `existing = true`
    warning,
    note,
};
std::string_view letters(Grade g); // "E", "E/W", "W", "N", "-"
std::string_view words(Grade g);   // "an error", "silent"
Severity severity(Grade g, bool existing);

// The grades of a rule. The first is that of its plain fault; what the others hang on is said by names beside its
// record. A family with fewer grades has the last of them for the rest.
struct Gravity {
    enum Of : std::size_t {
        usual,
        second,
        third,
        doubtful, // its plain fault, but what decides is not known: at most a warning
    };
    std::array<Grade, 3> nec{}, ce{};
    std::string_view doubt =
        {}; // what is not known then, after "where": "a figure is not known"; empty: never doubtful
};
std::span<Grade const> grades(Gravity const& g, Family family); // at least one
Grade grade(Gravity const& g, Family family, Gravity::Of of);

// Each grade once, in the order of the record.
std::string letters(Gravity const& g, Family family); // "E/W, W, N"
std::string words(Gravity const& g, Family family);   // "an error, on existing work a warning; or a note"

} // namespace legwork
