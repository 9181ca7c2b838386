// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder words/: what is said on sheets, as values. A phrase is a row's id with its arguments; a catalogue turns it
// into words of its language (catalogue.h). So nobody who composes or judges sees words, and two languages serve at
// once.
//
//     Phrase const off = say("directory/off-with", position);   // say.h; rows/directory.h: "off together with {place}"
//     catalogue.words(off);                                     // "coupure commune avec 5+7"
#pragma once

#include <cstddef>
#include <string>
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

} // namespace legwork
