// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How figures and things of a job are spoken of: the same words for the same things in findings, proposals and lists.
#pragma once

#include "reckon/case.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

class Phrase; // words/phrase.h

// Ends it with a full stop when it has no end yet.
std::string as_sentence(std::string words);
std::string amps(double a);                                // "30 A", "15.8 A"
std::string used_of(double amperes, Amps limit);           // "13.2 of 16 A"
std::string listed(std::vector<std::string> const& words); // "K1", "K1 and K2", "K1, K2 and K3"
std::string both(Pair const& p);                           // "K1 and K2"
// "20 A"; of two poles "2P 20 A", whatever ties their handles; "? A" when it is not known.
std::string breaker_words(Circuit const& c);
Phrase breaker_phrase(Circuit const& c);
// Of all circuits of one cable, at least one: a pair on a two-pole breaker has "2P 20 A", on two single ones "20 A", or
// "15 and 20 A". Empty when none is known.
std::string breaker_words(std::vector<Circuit const*> const& cable);
Phrase breaker_phrase(std::vector<Circuit const*> const& cable);
std::string plural(std::size_t n, std::string_view one);     // "1 move", "3 moves"
std::string in_situation(std::string_view name);             // "with everything on", "in \"Winter evening\""
std::string spaces_of(Case const& c, std::string_view mark); // "space 7", "spaces 7 and 9"; empty without a place

} // namespace legwork
