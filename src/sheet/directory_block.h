// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The panel drawn as it hangs: two columns of lines around a spine with the leg letters.
#pragma once

#include "sheet/common_frame.h"
#include "sheet/directory_entries.h"
#include "sheet/pen.h"

namespace legwork {

// How the panel hangs, as a picture in rows: which way the rows run and which column is left. Of a turned panel the
// left column of the picture is its upper row of handles, from left to right, the right column its lower one.
class Hanging {
public:
    explicit Hanging(Panel const& panel);

    // A stretch of one visible column, in rows from the top of the picture.
    struct Stretch {
        int column = 0; // 0 left, 1 right
        double from = 0, to = 0;
    };
    Stretch stretch(Spot slot) const;
    int rows() const { return layout_.rows(); }
    Leg leg_of_row(int row) const; // of the row that is seen at `row` from 0
    bool legs_by_column() const { return by_column_; }
    Leg leg_of_column(int column) const;
    bool turned() const { return turned_; }
    // Where the main breaker stands in the picture, when the file says it.
    std::optional<PanelEnd> main_end() const;

private:
    Layout layout_;
    std::optional<PanelEnd> main_at_;
    bool rows_reversed_, columns_swapped_, turned_, by_column_;
};

// The contiguous stretches of an entry: one, or two where its slots lie apart.
std::vector<Hanging::Stretch> stretches(Hanging const& hanging, std::vector<Spot> const& slots);

// Something the lines had no room for: printed in a list below.
struct BelowNote {
    int space = 0;     // the first of its spaces
    std::string where; // "5+7"
    std::string mark, words;
};

struct BlockResult {
    std::vector<BelowNote> notes;
    std::vector<std::string> shortened; // marks of circuits whose name was cut
};

struct BlockSpan {
    int from = 0, to = 0; // rows of the picture, half open
};

struct BlockInput {
    TextWidth const& widths;
    Hanging const& hanging;
    PanelEntries const& entries;
    bool shows_legs; // false on direct current
    Catalogue const& catalogue;
};

// Least and greatest height of a line.
inline constexpr Mm kLeastRow = 8.5, kGreatestRow = 11.0;

// The lines of these rows, from (x, y) over `width`, `row` high each.
BlockResult panel_block(Pen const& pen, BlockInput const& input, BlockSpan span, Mm x, Mm y, Mm width, Mm row);

// True when the line of this entry shows its name whole on a block that is so wide, however low its rows come to be.
// Told by the widest that letters can be; false does not mean that the name is cut.
bool surely_shows_name(Entry const& entry, Catalogue const& catalogue, Mm width);

// Rows for each page, at most `most` a page, parted where no breaker and no tie spans two pages if that can be.
std::vector<BlockSpan> page_spans(Hanging const& hanging, PanelEntries const& entries, int most);

} // namespace legwork
