// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where each edition speaks of what a rule asks. One table; a new topic is one row.
#pragma once

#include "codebook/code_book.h"

#include <array>
#include <span>
#include <string_view>

namespace legwork {

struct Citation {
    std::string_view topic;              // a rule id, or "rule-id/aspect" where one rule needs more than one section
    std::array<std::string_view, 3> nec; // 2017, 2020, 2023; empty where that code does not speak
    std::array<std::string_view, 3> ce;  // 2018, 2021, 2024
    // How the content was come by. Where only the section's number in that edition is from memory, the section says so.
    Source nec_source, ce_source;
};

std::span<Citation const> citations();
bool has_citation(std::string_view topic);

// The section of this edition for a topic of the table. An unknown aspect falls back to its rule's row, an unknown
// topic to an empty section; both are mistakes of ours and stop a debug build.
Reference cite(CodeBook const& book, std::string_view topic);

} // namespace legwork
