// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// All rows. A new phrase is one row in the file of its sheet; it is said by its id: phrase.h.
#pragma once

#include "words/rows/directory.h"
#include "words/rows/figures.h"
#include "words/rows/frame.h"
#include "words/rows/label.h"
#include "words/rows/load.h"
#include "words/rows/load_notes.h"
#include "words/rows/load_results.h"
#include "words/rows/load_steps.h"
#include "words/rows/note.h"
#include "words/rows/wire.h"

#include <algorithm>
#include <array>

namespace legwork {

template <std::size_t... N>
constexpr auto joined(std::array<Row, N> const&... lists) {
    std::array<Row, (N + ...)> all;
    auto to = all.begin();
    ((to = std::copy(lists.begin(), lists.end(), to)), ...);
    return all;
}
inline constexpr auto kRows =
    joined(kFigureRows, kFrameRows, kDirectoryRows, kLabelRows, kNoteRows, kWireRows, kLoadRows, kLoadArithmeticRows,
           kLoadStepRows, kLoadTopicRows, kLoadMethodRows, kLoadNoteRows, kLoadResultRows);

// kRows.size() when there is none.
constexpr std::size_t row_number(std::string_view id) {
    std::size_t i = 0;
    while (i < kRows.size() && kRows[i].id != id) ++i;
    return i;
}

} // namespace legwork
