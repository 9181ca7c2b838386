// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How grave each rule's findings are under each family of codes.
#pragma once

#include "rules/finding.h"
#include "codebook/code_book.h"

#include <span>
#include <string>
#include <string_view>

namespace legwork {

// In short: E error, W warning, N note, "E/W" an error on new work and a warning where `existing = true`, "-" silent;
// several by comma. A finding whose deciding number is from memory is at most a warning, whatever stands here.
struct Gravity {
    std::string_view rule;
    std::string_view nec, ce;
};
std::span<Gravity const> gravities();
Gravity const* gravity_of(std::string_view rule); // null when there is none
std::string_view in(Gravity const& g, Family family);

// The same for people: "an error; a warning where `existing = true`", "silent".
std::string gravity_words(std::string_view short_form);
// Whether a finding of this severity can come of the short form; a note never of "E".
bool allows(std::string_view short_form, Severity severity);

} // namespace legwork
