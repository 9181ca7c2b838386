// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A translation held against the rows.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace legwork::words_test {

// What is wrong with it; `whole`: beginnings of ids whose rows must all be there.
std::vector<std::string> faults_of(std::string_view po, std::vector<std::string_view> const& whole);

// The template that translators begin with: every row, untranslated.
std::string pot();

} // namespace legwork::words_test
