// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where each edition speaks of what a rule asks. The topics stand in topics.h, the answers with each edition.
#pragma once

#include "codebook/code_book.h"

#include <span>
#include <string_view>

namespace legwork {

struct Section;
struct Topic;

std::span<Topic const> topics();
bool has_citation(std::string_view topic);

// The section of this edition for a topic. An unknown aspect falls back to its rule's row, an unknown topic to an empty
// section; both are mistakes of ours and stop a debug build.
Reference cite(CodeBook const& book, std::string_view topic);

// What stands behind it; `topic` is one of topics().
Section const& section_of(CodeBook const& book, std::string_view topic);
// How the content was come by that these editions have of a topic: the least sure of those that were read.
Source source_of(std::span<CodeBook const* const> books, std::string_view topic);

} // namespace legwork
