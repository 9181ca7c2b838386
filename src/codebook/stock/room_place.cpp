// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/room_place.h"

#include "codebook/stock/room_words.h"

#include <algorithm>
#include <optional>
#include <vector>

namespace legwork {

namespace {
using enum RoomPlace;

using Words = std::vector<std::string>;

bool is_word_byte(char c) {
    auto const u = static_cast<unsigned char>(c);
    return (u >= 'a' && u <= 'z') || (u >= 'A' && u <= 'Z') || (u >= '0' && u <= '9') || u >= 0x80;
}

// Lower case and without accents (UTF-8's Latin-1 part); "" between what is not said in one breath: commas, "and".
Words words_of(std::string_view text) {
    constexpr std::string_view plain = "aaaaaaaceeeeiiiidnooooo ouuuuytsaaaaaaaceeeeiiiidnooooo ouuuuyty";
    static_assert(plain.size() == 64);
    Words all;
    std::string word;
    auto const end = [&] {
        if (word == "and" || word == "et" || word == "y" || word == "or" || word == "ou" || word == "o")
            all.emplace_back();
        else if (!word.empty())
            all.push_back(word);
        word.clear();
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        char const c = text[i];
        auto const next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0u;
        if (static_cast<unsigned char>(c) == 0xC3 && (next & 0xC0u) == 0x80u)
            word += plain[next - 0x80u], ++i;
        else if (is_word_byte(c))
            word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        else {
            end();
            if (std::string_view(",;/&+()").find(c) != std::string_view::npos) all.emplace_back();
        }
    }
    end();
    return all;
}

bool is_singular_of(std::string_view singular, std::string_view word) {
    if (word == singular) return true;
    for (std::string_view const plural : {"s", "es", "x"})
        if (word.size() == singular.size() + plural.size() && word.starts_with(singular) && word.ends_with(plural))
            return true;
    return false;
}

// How many words from `at` on are this phrase; 0: they are not.
std::size_t match(Words const& words, std::size_t at, std::string_view phrase) {
    std::size_t n = 0;
    while (!phrase.empty()) {
        auto const blank = phrase.find(' ');
        bool const last = blank == std::string_view::npos;
        if (at + n >= words.size()) return 0;
        auto const word = phrase.substr(0, blank);
        if (last ? !is_singular_of(word, words[at + n]) : words[at + n] != word) return 0;
        phrase = last ? std::string_view{} : phrase.substr(blank + 1);
        ++n;
    }
    return n;
}

struct PlaceMention {
    RoomPlace place;
    std::size_t first, past; // words
};

// Every phrase, the longest at each word.
std::vector<PlaceMention> phrases_in(Words const& words) {
    std::vector<PlaceMention> all;
    for (std::size_t at = 0; at < words.size();) {
        std::optional<RoomPlace> place;
        std::size_t longest = 0;
        for (PlaceWords const& row : place_words(words[at].empty() ? ' ' : words[at].front()))
            if (auto const n = match(words, at, row.words); n > longest) {
                longest = n;
                place = row.place;
            }
        if (place) all.push_back({*place, at, at + longest});
        at += std::max<std::size_t>(longest, 1);
    }
    return all;
}

// "Garden and lane walls": a plural after the next word is said of both.
bool shares_a_feature(Words const& words, std::size_t past) {
    if (past + 2 >= words.size() || !words[past].empty()) return false;
    std::string_view last = words[past + 2];
    if (!last.ends_with('s')) return false;
    last.remove_suffix(1);
    return is_landmark_word(LandmarkWord::feature, last);
}

// "Studio over garage", "outlet near the bathroom", "kitchen side"; of a name beside a room also "bath wall". By the
// sink or at the counter is what is asked, so these are never landmarks only.
bool is_only_a_landmark(Words const& words, PlaceMention const& f, bool room_known) {
    if (f.place == sink || f.place == counter) return false;
    if (f.past < words.size()) {
        if (is_landmark_word(LandmarkWord::after, words[f.past])) return true;
        if (room_known && is_landmark_word(LandmarkWord::feature, words[f.past])) return true;
        if (room_known && shares_a_feature(words, f.past)) return true;
    }
    std::size_t at = f.first;
    while (at > 0 && is_landmark_word(LandmarkWord::article, words[at - 1])) --at;
    return at > 0 && is_landmark_word(LandmarkWord::before, words[at - 1]);
}

// "Hall bath", "Kitchen porch": the last word says what it is, those before it where it leads from. What holds whole
// rooms stays: "Garage closet", "Basement bathroom". "Hall outside" is a hall, and what follows its landmark.
bool is_said_of(PlaceMention const& f, PlaceMention const& next) {
    constexpr RoomPlaces led_from{bathroom, closet, hall, stair, outdoor, eaves};
    constexpr RoomPlaces holds_rooms{
        basement, unfinished_basement, garage, outbuilding, workshop, boathouse, attic, laundry, house, dock};
    return f.past == next.first && led_from.has(next.place) && !holds_rooms.has(f.place);
}
bool is_preposition(Words const& words, PlaceMention const& f, PlaceMention const& previous) {
    return words[f.first] == "outside" && previous.past == f.first;
}

RoomPlaces read(std::string_view text, bool room_known) {
    Words const words = words_of(text);
    auto found = phrases_in(words);
    for (std::size_t i = 1; i < found.size(); ++i)
        if (is_preposition(words, found[i], found[i - 1])) found.erase(found.begin() + static_cast<std::ptrdiff_t>(i));
    RoomPlaces places;
    for (std::size_t i = 0; i < found.size(); ++i) {
        bool const said_of = i + 1 < found.size() && is_said_of(found[i], found[i + 1]);
        if (!said_of && !is_only_a_landmark(words, found[i], room_known)) places.add(found[i].place);
    }
    return places;
}

// A use that is a place by itself, wherever the words put it.
RoomPlaces always_of(Use const& use) {
    if (use.demand == Demand::small_appliance) return {kitchen, counter};
    if (use.demand == Demand::pool) return {hot_tub};
    if (use.place == UsePlace::laundry) return {laundry};
    if (!use.receptacle) return {};
    if (use.place == UsePlace::bathroom) return {bathroom};
    if (use.place == UsePlace::outdoor) return {outdoor};
    if (use.place == UsePlace::garage) return {garage};
    return {};
}

// Where a thing stands when nobody says where.
RoomPlaces usual_of(Use const& use) {
    if (use.place == UsePlace::kitchen) return {kitchen};
    if (use.place == UsePlace::bathroom) return {bathroom};
    if (use.place == UsePlace::outdoor) return {outdoor};
    if (use.shop) return {workshop};
    return {};
}

// Whatever the building is, a room in it that people use as one tells more.
constexpr RoomPlaces kOfAnyBuilding{loft, hall, stair, closet, utility, workshop, attic, house};
bool only_vague(RoomPlaces p) {
    RoomPlaces all = kOfAnyBuilding;
    all.add(p);
    return all == kOfAnyBuilding;
}

// What stands in the open has no rooms: room "Outside", name "foot of the stair".
constexpr RoomPlaces kOpenAir{dock, outdoor, eaves, hot_tub, boat_hoist, sink};

RoomPlaces of_words(std::string_view name, std::string_view room) {
    RoomPlaces places = read(room, false);
    if (places.empty()) return read(name, false);
    RoomPlaces by_name = read(name, true);
    if (places.without(kOpenAir).empty()) by_name = by_name.of(kOpenAir);
    bool const told_better = places == RoomPlaces{house} && !by_name.empty();
    if (told_better) return by_name;
    places.add(by_name.without({house}));
    return places;
}

// A building of its own that people live in: what is not told of a room there is told of a house.
bool is_home(std::string_view building) {
    constexpr std::string_view homes[] = {"suite",      "apartment",  "cottage",     "cabin",         "bunkie",
                                          "chalet",     "bungalow",   "home",        "farmhouse",     "farm house",
                                          "tiny house", "main house", "guest house", "laneway house", "maison",
                                          "casa",       "logement"};
    Words const words = words_of(building);
    if (words == Words{"house"}) return true;
    for (std::size_t at = 0; at < words.size(); ++at)
        if (!words[at].empty() && std::ranges::any_of(homes, [&](auto home) { return match(words, at, home) > 0; }))
            return true;
    return false;
}

void add_building(RoomPlaces& places, std::string_view building) {
    if (building.empty() || !only_vague(places)) return;
    RoomPlaces whole = read(building, false);
    if (whole.empty() && places.empty()) whole = is_home(building) ? RoomPlaces{house} : RoomPlaces{workshop};
    places.add(whole);
}

// `elsewhere`: in a room of its own name that is in no list ("Sales floor"). A refrigerator there is in no kitchen.
void add_use(RoomPlaces& places, Use const& use, bool elsewhere) {
    bool const untold = places.without({house, counter}).empty();
    RoomPlaces const usual = usual_of(use);
    if (untold && !usual.empty() && !(elsewhere && usual.has(kitchen))) {
        places = places.of({counter});
        places.add(usual);
    }
    RoomPlaces const always = always_of(use);
    if (always == RoomPlaces{outdoor} && places.any_of({dock, eaves})) return;
    if (always == RoomPlaces{garage} && places.any_of({outbuilding, boathouse})) return;
    if (untold && !always.empty()) places = places.without({house});
    places.add(always);
}
} // namespace

RoomPlaces places_in(std::string_view words) { return read(words, false); }

RoomPlaces places_of(Use const* use, std::string_view name, std::string_view room, std::string_view building) {
    RoomPlaces places = of_words(name, room);
    add_building(places, building);
    if (use) add_use(places, *use, !words_of(room).empty() && !places.has(house));
    // A counter is a kitchen's where a kitchen is: a till stands on one too.
    return places.has(kitchen) ? places : places.without({counter});
}

std::string_view name(RoomPlace place) {
    switch (place) {
    case kitchen: return "kitchen";
    case counter: return "kitchen counter";
    case dining: return "dining area";
    case living: return "living area";
    case bedroom: return "bedroom";
    case loft: return "loft";
    case hall: return "hall";
    case stair: return "stair";
    case closet: return "closet";
    case laundry: return "laundry area";
    case bathroom: return "bathroom";
    case utility: return "utility room";
    case basement: return "basement";
    case unfinished_basement: return "unfinished basement";
    case crawl_space: return "crawl space";
    case attic: return "attic";
    case garage: return "garage";
    case outbuilding: return "outbuilding";
    case workshop: return "workshop";
    case boathouse: return "boathouse";
    case dock: return "dock";
    case outdoor: return "outdoors";
    case eaves: return "eaves";
    case house: return "rooms of the house";
    case sink: return "sink";
    case hot_tub: return "hot tub or pool";
    case boat_hoist: break;
    }
    return "boat hoist";
}

std::vector<std::string> names(RoomPlaces places) {
    std::vector<std::string> all;
    for (int i = 0; i <= static_cast<int>(boat_hoist); ++i)
        if (auto const p = static_cast<RoomPlace>(i); places.has(p)) all.emplace_back(name(p));
    return all;
}

} // namespace legwork
