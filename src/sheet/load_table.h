// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The rows of a load calculation: item, section, arithmetic, and two columns of figures, of which the right one adds up
// to the total.
#pragma once

#include "reckon/service.h"
#include "sheet/load_blocks.h"

#include <string>
#include <vector>

namespace legwork {

enum class Spacing { wide, close }; // of the rows

class LoadTable {
public:
    // The columns suit all steps and results of this panel's sheet.
    LoadTable(SheetInput const& input, PanelLoad const& load, Mm width, Spacing spacing);

    Block head(Phrase const& title, bool listed) const; // of the columns; listed: with that for what goes into a
                                                        // later line
    Block step(LoadStep const& s, bool known) const;
    Block total(Phrase const& item, Phrase const& arithmetic, std::int64_t va) const;
    Block result(LoadResult const& r, bool so_far) const; // so_far: something is missing

    Block title(Phrase const& words) const;
    // Lines of running words, a block each.
    Blocks paragraph(std::string const& words, Mm x_height, Weight weight = Weight::regular, Mm above = 0) const;
    Block framed(Phrases const& sentences) const;

private:
    struct Row;
    struct Asked { // widths of a row's words on one line
        Mm item = 0, sum = 0;
    };
    void place_columns(Mm rule, Mm figures, std::vector<Asked> const& asked);
    Block laid(Row const& row) const;
    Block stacked(Row const& row) const;
    void end_with_line(Block& b) const;

    SheetInput const& input_;
    TextWidth const& widths_;
    Mm width_;
    double spacing_;
    bool stacked_ = false; // too narrow for columns
    Mm rule_ = 0, sums_ = 0, sums_width_ = 0;
    Mm listed_width_ = 0, counted_width_ = 0;
};

} // namespace legwork
