// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "words/say.h"

#include "units/text.h"

namespace legwork {

Phrase Phrase::figure(std::string digits) {
    Phrase made(std::move(digits));
    made.kind_ = Kind::figure;
    return made;
}

Phrase Phrase::unless_said(Phrase row_of_a_name) {
    row_of_a_name.unless_said_ = true;
    return row_of_a_name;
}

Phrase as_is(std::string_view text) { return Phrase(std::string(text)); }

Phrase figure(std::int64_t n) { return Phrase::figure(std::to_string(n)); }

Phrase figure(Amps a) {
    auto const words = text(a);
    return Phrase::figure(words.substr(0, words.find(' ')));
}

Phrase with_unit(std::string_view figure_and_unit) {
    auto const space = figure_and_unit.find(' ');
    if (space == std::string_view::npos) return as_is(figure_and_unit);
    auto const front = figure_and_unit.substr(0, space);
    bool const is_figure = front.find_first_not_of("0123456789.") == std::string_view::npos; // "120/240" is none
    return say("figure/with-unit", is_figure ? Phrase::figure(std::string(front)) : as_is(front),
               as_is(figure_and_unit.substr(space + 1)));
}

Phrase said(Amps a) { return with_unit(text(a)); }
Phrase said(VoltAmperes s) { return with_unit(text(s)); }
Phrase said(Volts v) { return with_unit(text(v)); }

Phrase joined(RowFor<2> by, Phrases const& some) {
    if (some.empty()) return {};
    Phrase all = some.front();
    for (std::size_t i = 1; i < some.size(); ++i) all = Phrase(by.number, {std::move(all), some[i]});
    return all;
}

} // namespace legwork
