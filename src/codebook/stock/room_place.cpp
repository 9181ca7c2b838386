// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/room_place.h"

#include "codebook/stock/plain_words.h"
#include "codebook/stock/room_words.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <vector>

namespace legwork {

namespace {
using enum RoomPlace;

using Words = std::vector<std::string>;

bool is_singular_of(std::string_view singular, std::string_view word) {
    if (word == singular) return true;
    constexpr std::array<std::string_view, 3> plurals{"s", "es", "x"};
    return std::ranges::any_of(plurals, [&](std::string_view plural) {
        return word.size() == singular.size() + plural.size() && word.starts_with(singular) && word.ends_with(plural);
    });
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

// Where "and" or a comma stands.
bool is_break(std::string_view word) { return word.empty() || word == ","; }

struct PlaceMention {
    RoomPlaces places;
    std::size_t first, past; // words
    bool fixture = false;
};

// Every phrase, the longest at each word.
std::vector<PlaceMention> phrases_in(Words const& words) {
    std::vector<PlaceMention> all;
    for (std::size_t at = 0; at < words.size();) {
        PlaceWords const* longest_row = nullptr;
        std::size_t longest = 0;
        for (PlaceWords const& row : place_words(words[at].empty() ? ' ' : words[at].front()))
            if (auto const n = match(words, at, row.words); n > longest) {
                longest = n;
                longest_row = &row;
            }
        if (longest_row && !longest_row->places.empty())
            all.push_back(
                {longest_row->places, at, at + longest, is_landmark_word(LandmarkWord::fixture, longest_row->words)});
        at += std::max<std::size_t>(longest, 1);
    }
    return all;
}

// "Garden and lane walls": a plural after the next word is said of both.
bool shares_a_feature(Words const& words, std::size_t past) {
    if (past + 2 >= words.size() || !is_break(words[past])) return false;
    std::string_view last = words[past + 2];
    if (!last.ends_with('s')) return false;
    last.remove_suffix(1);
    return is_landmark_word(LandmarkWord::feature, last);
}

// "Studio over garage", "outlet near the bathroom", "kitchen side"; of a name beside a room also "bath wall". By the
// sink or at the counter is what is asked, so these are never landmarks only.
bool is_only_a_landmark(Words const& words, PlaceMention const& f, bool room_known) {
    if (f.places.any_of({sink, counter}) || f.fixture) return false;
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
        basement, unfinished_basement, garage, outbuilding, workshop, boathouse, attic, laundry, dock};
    if (f.past != next.first || next.places.has(hot_tub)) return false;
    if (f.places == RoomPlaces{house}) return true; // "Upstairs bathroom"
    return next.places.any_of(led_from) && !f.places.any_of(holds_rooms);
}
bool is_preposition(Words const& words, PlaceMention const& f, PlaceMention const& previous) {
    return words[f.first] == "outside" && previous.past == f.first;
}

// Rooms that make the basement they are in a finished one.
constexpr RoomPlaces kFinished{living, bedroom, dining, kitchen};

// "Basement, finished", "Basement bedroom": the words beside it tell what the basement is.
RoomPlaces basement_of(Words const& words, PlaceMention const& f, PlaceMention const* next) {
    if (!f.places.has(basement)) return f.places;
    constexpr std::string_view finished[] = {"finished", "fini", "finie", "terminado"}, open[] = {"unfinished", "raw"},
                               hardly[] = {"semi", "half", "partly", "partially"}, no[] = {"not", "non", "un"};
    auto const is_in = [](auto const& list, std::string_view word) {
        return std::ranges::find(list, word) != std::end(list);
    };
    for (std::size_t i = 0; i < words.size(); ++i) {
        std::string_view const before = i > 0 ? std::string_view(words[i - 1]) : "";
        bool const told = is_in(finished, words[i]);
        if (is_in(open, words[i]) || (told && is_in(no, before))) return {unfinished_basement};
        if (told) return is_in(hardly, before) ? f.places : RoomPlaces{finished_basement};
    }
    bool const holds_a_room = next && next->first == f.past && next->places.any_of(kFinished);
    return holds_a_room ? RoomPlaces{finished_basement} : f.places;
}

// "Island and peninsula" are one place, the counter's.
bool is_one_place(RoomPlaces a, RoomPlaces b) { return a == b || (a.has(counter) && b.has(counter)); }

struct PlacesRead {
    RoomPlaces all, joined;
};
PlacesRead read_both(std::string_view text, bool room_known) {
    Words const words = plain_words(text);
    auto found = phrases_in(words);
    for (std::size_t i = 1; i < found.size(); ++i)
        if (is_preposition(words, found[i], found[i - 1])) found.erase(found.begin() + static_cast<std::ptrdiff_t>(i));
    PlacesRead places;
    PlaceMention const* last = nullptr; // that counts
    bool joined = false;
    for (std::size_t i = 0; i < found.size(); ++i) {
        PlaceMention const* next = i + 1 < found.size() ? &found[i + 1] : nullptr;
        if ((next && is_said_of(found[i], *next)) || is_only_a_landmark(words, found[i], room_known)) continue;
        for (auto at = last ? last->past : words.size(); last && at < found[i].first; ++at)
            joined = joined || (words[at].empty() && !is_one_place(last->places, found[i].places));
        places.all.add(basement_of(words, found[i], next));
        last = &found[i];
    }
    if (joined) places.joined = places.all;
    return places;
}

RoomPlaces read(std::string_view text, bool room_known) { return read_both(text, room_known).all; }

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
    if (use.place == UsePlace::garage) return {garage};
    if (use.place == UsePlace::attic) return {attic};
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
    if (places == RoomPlaces{basement} && by_name.any_of(kFinished)) places = {finished_basement};
    if (places == RoomPlaces{basement} && by_name.any_of({finished_basement, unfinished_basement}))
        places = {}; // "Basement", "Finished part of the basement": the name tells which
    places.add(by_name.without({house}));
    return places;
}

// A building of its own that people live in: what is not told of a room there is told of a house.
bool is_home(std::string_view building) {
    constexpr std::string_view homes[] = {"suite",      "apartment",  "cottage",     "cabin",         "bunkie",
                                          "chalet",     "bungalow",   "home",        "farmhouse",     "farm house",
                                          "tiny house", "main house", "guest house", "laneway house", "maison",
                                          "casa",       "logement"};
    Words const words = plain_words(building);
    if (words == Words{"house"}) return true;
    for (std::size_t at = 0; at < words.size(); ++at)
        if (!is_break(words[at]) && std::ranges::any_of(homes, [&](auto home) { return match(words, at, home) > 0; }))
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

RoomPlaces joined_places(std::string_view name, std::string_view room) {
    RoomPlaces joined = read_both(name, !room.empty()).joined;
    joined.add(read_both(room, false).joined);
    return joined;
}

bool told_indoors(std::string_view name, std::string_view room) {
    constexpr std::string_view indoors[] = {"indoor", "indoors",   "inside",     "head",
                                            "heads",  "interieur", "interieure", "interior"};
    RoomPlaces const in = read(room, false);
    if (!in.without({house}).empty() && !in.any_of({outdoor, dock, eaves})) return true;
    auto const says = [&](std::string const& word) { return std::ranges::find(indoors, word) != std::end(indoors); };
    return std::ranges::any_of(plain_words(name), says) || std::ranges::any_of(plain_words(room), says);
}

RoomPlaces places_of(Use const* use, std::string_view name, std::string_view room, std::string_view building) {
    RoomPlaces places = of_words(name, room);
    add_building(places, building);
    if (use) add_use(places, *use, !plain_words(room).empty() && !places.has(house));
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
    case finished_basement: return "finished basement";
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
