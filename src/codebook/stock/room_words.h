// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words that tell a place: English, French and Spanish, lower case, without accents, singular (a plural in -s, -es
// or -x of the last word is found under it). All of it is common usage, no source. A new word is added here only.
#pragma once

#include "codebook/stock/room_place.h"

#include <span>

namespace legwork {

struct PlaceWords {
    std::string_view words;
    RoomPlaces places; // of two parts both ("kitchen island"); empty: together these words are no place ("pool table")
};
// Those that begin with this letter.
std::span<PlaceWords const> place_words(char first);

enum class LandmarkWord {
    before,  // "near the garage", "over the garage"
    after,   // "kitchen side"
    feature, // "bath wall": of a room that is named elsewhere
    article,
    fixture, // "by the basin": what stands there decides, so it is never a landmark only
};
bool is_landmark_word(LandmarkWord kind, std::string_view word);

} // namespace legwork
