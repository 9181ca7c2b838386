// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A language that says each phrase as its id with the arguments behind it, and a face on which no word takes room: what
// then differs on a sheet hangs on words.
#pragma once

#include "sheet/sheets.h"
#include "words/catalogue.h"
#include "words/rows.h"

#include <string>
#include <vector>

namespace legwork {

class NoWidth : public TextWidth {
public:
    Mm width(std::string_view, Mm, Weight) const override { return 0; }
    std::vector<std::string> missing(std::string_view) const override { return {}; }
};

// "#directory/off-with# 5+7"
inline Catalogue ids_for_words() {
    std::vector<std::string> patterns;
    for (Row const& row : kRows) {
        auto pattern = "#" + std::string(row.id) + "#";
        for (auto at = blank_in(row.english, 0); at.begin != row.english.npos; at = blank_in(row.english, at.end))
            pattern += " {" + std::string(at.name) + "}";
        patterns.push_back(std::move(pattern));
    }
    return {"ids", std::move(patterns)};
}

// Every mark where it stands, without the words of texts.
inline std::string shape_of(std::vector<Sheet> sheets) {
    std::string shape;
    for (Sheet& sheet : sheets) {
        shape += sheet.name + " " + sheet.panel + "\n";
        for (Page& page : sheet.pages) {
            for (Mark& mark : page.marks)
                if (auto* text = std::get_if<Text>(&mark)) text->words = text->words.empty() ? "" : "words";
            shape += dump(page) + "\n";
        }
    }
    return shape;
}

} // namespace legwork
