// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Says: an edition has no row for a topic
// Says: load-service/dwelling-wire
#include "codebook/editions/nec_2017/sections.h"

#include <utility>

using namespace legwork;
constexpr auto kRows = []<std::size_t... kAt>(std::index_sequence<kAt...>) {
    return std::array{nec_2017::kSectionRows[kAt]...}; // all but the last
}
(std::make_index_sequence<nec_2017::kSectionRows.size() - 1>());
constexpr SectionTable kSections = whole<kRows>();
