// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A use from the words of a name. Phrases are tried from the top: a thing before a place, a place before plain
// receptacles. Words fit whole, plurals too; a trailing * takes any ending. "Boiler room" is a place, not a boiler, and
// what follows "near" or "by" is a landmark.
#include "codebook/stock/plain_words.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/room_place.h"
#include "codebook/stock/use_words.h"
#include "codebook/stock/uses.h"

#include <algorithm>
#include <array>
#include <optional>
#include <vector>

namespace legwork {

namespace {
struct Phrase {
    std::string_view words, use;
    Counts counts;
};
std::vector<Phrase> all_phrases() {
    std::vector<Phrase> all;
    for (PhraseList const& list : use_words::kPhraseLists)
        for (auto rest = list.phrases; !rest.empty();) {
            auto const comma = std::min(rest.find(','), rest.size());
            all.push_back({rest.substr(0, comma), list.use, list.counts});
            rest.remove_prefix(std::min(comma + 1, rest.size()));
        }
    return all;
}
constexpr std::array<std::string_view, 9> kReceptacleWords{"gfci",   "gfi",   "receptacle",    "outlet", "plug",
                                                           "socket", "prise", "tomacorriente", "enchufe"};

constexpr std::array<std::string_view, 5> kPlaces{"room", "house", "shed", "closet", "hut"};
constexpr std::array<std::string_view, 8> kBesides{"near",     "by",    "beside", "behind",
                                                   "opposite", "under", "below",  "above"};

std::string joined(std::vector<std::string> const& words) {
    std::string out = " ";
    for (std::string const& word : words)
        if (!word.empty() && word != ",") out += word + ' ';
    return out;
}

// One blank between words, also in front and behind. Of "Outlet by the furnace, left" without the landmark.
std::string folded(std::string_view text) { return joined(plain_words(text)); }
std::string folded_without_landmarks(std::string_view text) {
    std::vector<std::string> kept;
    bool beside = false;
    auto const words = plain_words(text);
    for (std::size_t i = 0; i < words.size(); ++i) {
        bool const next_to = words[i] == "next" && i + 1 < words.size() && words[i + 1] == "to";
        if (words[i] == "," || words[i] == "for") beside = false;
        if (next_to || std::ranges::find(kBesides, words[i]) != kBesides.end()) beside = true;
        if (!beside) kept.push_back(words[i]);
    }
    return joined(kept);
}

// What follows the phrase at its first place in the text, from the blank on; nothing when it is not there.
std::optional<std::string_view> after(std::string_view text, std::string_view phrase) {
    bool const any_ending = phrase.back() == '*';
    if (any_ending) phrase.remove_suffix(1);
    for (auto at = text.find(phrase); at != std::string_view::npos; at = text.find(phrase, at + 1)) {
        if (text[at - 1] != ' ') continue; // the text begins with a blank, the phrase does not
        auto rest = text.substr(at + phrase.size());
        if (any_ending) rest = rest.substr(rest.find(' '));
        for (std::string_view const plural : {"", "s", "es", "x"})
            if (rest.starts_with(plural) && rest.substr(plural.size()).front() == ' ')
                return rest.substr(plural.size());
    }
    return std::nullopt;
}

bool has(std::string_view text, std::string_view phrase) { return after(text, phrase).has_value(); }

// The phrase stands there and names the thing itself, not the room it is in.
bool has_thing(std::string_view text, std::string_view phrase) {
    auto const rest = after(text, phrase);
    return rest && std::ranges::none_of(kPlaces, [&](std::string_view place) {
               return rest->substr(1).starts_with(std::string(place) + " ");
           });
}

bool contradicts(Use const& use, int poles, std::vector<std::string> const& outlets) {
    if ((use.poles == Poles::one && poles != 1) || (use.poles == Poles::two && poles != 2)) return true;
    return std::ranges::any_of(outlets, [&](std::string const& name) {
        Receptacle const* r = receptacle_named(name);
        return r && (use.lighting || use.heating || (use.poles == Poles::one && r->hots != 1) ||
                     (use.poles == Poles::two && r->hots != 2));
    });
}

bool has_receptacles(std::string_view words) {
    auto const named = [&](std::string_view w) {
        auto const rest = after(words, w);
        if (!rest) return false;
        // "Lighting outlets" are lights.
        auto const before = words.substr(0, words.size() - rest->size());
        return w != "outlet" || (before.find(" lighting outlet") == std::string::npos &&
                                 before.find(" light outlet") == std::string::npos);
    };
    return std::ranges::any_of(kReceptacleWords, named);
}

// Places that have counters of their own.
constexpr RoomPlaces kOtherCounters{RoomPlace::bathroom,  RoomPlace::laundry,     RoomPlace::utility,
                                    RoomPlace::garage,    RoomPlace::outbuilding, RoomPlace::workshop,
                                    RoomPlace::boathouse, RoomPlace::outdoor,     RoomPlace::dock};
bool is_in_a_kitchen(std::string_view name, std::string_view room) {
    RoomPlaces told = places_in(name);
    told.add(places_in(room));
    return told.has(RoomPlace::kitchen) || !told.any_of(kOtherCounters);
}

struct NameRead {
    std::string words, where;
    bool receptacles, kitchen;
};
bool is_said(Phrase const& p, NameRead const& name) {
    using enum Counts;
    switch (p.counts) {
    case as_place: return name.receptacles && has(name.where, p.words);
    case without_receptacle: return !name.receptacles && has_thing(name.words, p.words);
    case in_a_kitchen: return name.kitchen && has_thing(name.words, p.words);
    case as_thing: break;
    }
    return has_thing(name.words, p.words);
}
} // namespace

bool names_receptacles(std::string_view name) { return has_receptacles(folded(name)); }

std::string guess_use(std::string_view name, std::string_view room, int poles,
                      std::vector<std::string> const& outlets) {
    static std::vector<Phrase> const phrases = all_phrases();
    auto const all = folded(name), where = all + folded(room);
    if (all == " spare ") return "spare";
    bool const kitchen = is_in_a_kitchen(name, room);
    for (std::string const& words : {folded_without_landmarks(name), all}) { // "Under-counter fridge" is all landmark
        NameRead const read{words, where, has_receptacles(words), kitchen};
        for (Phrase const& p : phrases) {
            if (!is_said(p, read)) continue;
            Use const* use = use_named(p.use);
            if (use && !contradicts(*use, poles, outlets)) return std::string(p.use);
        }
    }
    return {};
}

} // namespace legwork
