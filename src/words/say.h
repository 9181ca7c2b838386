// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How phrases are made. An id that has no row, or another number of arguments than its row, does not build.
#pragma once

#include "units/quantity.h"
#include "words/phrase.h"
#include "words/rows.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

namespace legwork {

// The row of an id that takes N arguments; looked up while compiling.
template <std::size_t N>
struct RowFor {
    std::size_t number;
    consteval RowFor(char const* id) : number(row_number(id)) {
        if (number == kRows.size()) throw "no row has this id: add it to words/rows/";
        if (arguments_of(kRows[number].english) != N) throw "the row of this id takes another number of arguments";
    }
};
template <class... Arguments>
Phrase say(RowFor<sizeof...(Arguments)> row, Arguments... arguments) {
    return {row.number, Phrases{Phrase(std::move(arguments))...}};
}

// What no language changes: a mark, a section, "120/240".
Phrase as_is(std::string_view text);
Phrase figure(std::int64_t n);
Phrase figure(Amps a); // "6.4"
// Of "20 A" or "6.4 A", as units/text.h writes a figure and its unit.
Phrase with_unit(std::string_view figure_and_unit);
Phrase said(Amps a);        // "20 A"
Phrase said(VoltAmperes s); // "1500 VA"
Phrase said(Volts v);       // "240 V"
// One after another: "{words}, {more}". Nothing for none.
Phrase joined(RowFor<2> by, Phrases const& some);

} // namespace legwork
