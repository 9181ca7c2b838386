// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the sheet of the load calculation says around the steps, as phrases only.
#pragma once

#include "page/text_width.h"
#include "reckon/service.h"
#include "words/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// What the star behind a section means: its number is from memory (one), or what it says is (two).
enum class RuleMark { none, number, content };
RuleMark rule_mark(LoadStep const& s);
RuleMark rule_mark(LoadResult const& r);
// "220.61*": the edition stands above the column.
Phrase rule_words(LoadStep const& s);
Phrase rule_words(LoadResult const& r); // empty where it stands on none
// What the stars among these mean, one line each.
Phrases star_words(std::vector<RuleMark> const& marks);

// Lines of arithmetic: each reckoning on its own line where all do not fit on one, and no figure parted from its sign
// or its unit.
std::vector<std::string> arithmetic_lines(TextWidth const& widths, std::string_view arithmetic, Weight weight,
                                          Mm x_height, Mm width);

// "service" or "feeder".
Phrase supply_word(Panel const& panel);
// "Panel Main: service, 240 V between the hots; the main is good for 200 A."
Phrase facts_words(PanelLoad const& load);
// "10000 + 6600 = 16600 VA"; of many that they are the bold figures above; empty of one.
Phrase total_words(LoadSteps const& steps, std::int64_t total_va);
// "Leg A alone: K1 1200 + K2 900 = 2100 VA" and so on to the half of what both carry; empty where both carry alike.
Phrases leg_words(PanelLoad const& load);
// The sentences of the box: whether it is complete, and whether the present service carries it.
Phrases verdict_words(PanelLoad const& load);

// The legs that it is reckoned for hang on where one-pole circuits stand.
bool hangs_on_spaces(PanelLoad const& load);

} // namespace legwork
