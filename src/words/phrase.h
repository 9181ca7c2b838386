// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder words/: what is said on sheets, as values. A phrase is a row's id with its arguments; a catalogue turns it
// into words of its language (catalogue.h). So nobody who composes or judges sees words, and two languages serve at
// once.
//
//     Phrase const off = say("directory/off-with", position);   // rows/directory.h: "off together with {place}"
//     catalogue.words(off);                                     // "coupure commune avec 5+7"
//
// An id that has no row, or another number of arguments than its row, does not build.
#pragma once

#include "units/quantity.h"
#include "words/rows.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

class Phrase {
public:
    enum class Kind {
        as_it_stands, // a name that a person typed, a mark, a section: the same in every language
        figure,       // digits with "." before decimals
        row,
    };

    Phrase() = default; // nothing
    Phrase(std::string as_it_stands) : text_(std::move(as_it_stands)) {}
    Phrase(char const*) = delete; // fixed words want a row
    Phrase(std::size_t row, std::vector<Phrase> arguments)
        : kind_(Kind::row), row_(row), arguments_(std::move(arguments)) {}
    static Phrase figure(std::string digits);
    // "panel Main", but "Garage panel" as it stands: the name alone where it has the row's own words already.
    static Phrase unless_said(Phrase row_of_a_name);

    Kind kind() const { return kind_; }
    bool empty() const { return kind_ != Kind::row && text_.empty(); }
    std::string const& text() const { return text_; }                   // of what is no row
    std::size_t row() const { return row_; }                            // of kRows
    std::vector<Phrase> const& arguments() const { return arguments_; } // of a row
    bool unless_said() const { return unless_said_; }
    friend bool operator==(Phrase const&, Phrase const&) = default;

private:
    Kind kind_ = Kind::as_it_stands;
    bool unless_said_ = false;
    std::size_t row_ = 0;
    std::string text_;
    std::vector<Phrase> arguments_;
};

using Phrases = std::vector<Phrase>;

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
