// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/named_things.h"

#include "codebook/stock/plain_words.h"

#include <algorithm>
#include <array>
#include <span>
#include <utility>

namespace legwork {

namespace {
constexpr std::string_view kJoins[] = {"and", "plus", "et", "y"};
// What follows says where, up to the next comma.
constexpr std::string_view kLocating[] = {"near",     "by",      "beside", "behind", "opposite", "over",    "above",
                                          "under",    "below",   "next",   "at",     "on",       "in",      "of",
                                          "between",  "from",    "to",     "with",   "along",    "through", "around",
                                          "inside",   "outside", "toward", "près",   "sous",     "sur",     "dans",
                                          "derrière", "devant",  "sobre",  "bajo",   "cerca",    "junto",   "detrás"};
// Of those what tells whose it is or where it stands itself, not what it is beside.
constexpr std::string_view kThere[] = {"at", "on", "in", "of", "with", "inside", "dans", "sur"};
// A part that ends in one of these is a place beside a thing, not the thing.
constexpr std::string_view kSites[] = {"wall",   "side",   "corner", "end",    "alcove",  "nook",  "area",
                                       "zone",   "recess", "door",   "window", "cabinet", "space", "niche",
                                       "closet", "room",   "shed",   "post",   "shelf",   "half",  "halves"};

bool is_one_of(std::span<std::string_view const> words, std::string_view word) {
    return std::ranges::find(words, word) != words.end();
}

std::string lower(std::string_view word) {
    std::string out(word);
    for (char& c : out)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return out;
}

class Cutter {
public:
    explicit Cutter(std::string_view name) {
        for (std::size_t i = 0; i < name.size(); ++i)
            if (!is_short_form_slash(name, i)) take(name[i]);
        end_breath();
    }
    std::vector<std::vector<NamePart>> breaths;

private:
    void take(char c) {
        switch (c) {
        case ' ':
        case '\t': return end_word();
        case ',':
        case ';':
        case ':':
        case '(':
        case ')': return end_breath();
        case '&':
        case '+': return end_part();
        case '/': return end_part(), void(slashed_ = true);
        default: word_ += c;
        }
    }
    void end_word() {
        if (word_.empty()) return;
        auto const folded = lower(word_);
        if (is_one_of(kJoins, folded))
            end_part_here();
        else if (is_one_of(kLocating, folded)) {
            located_ = true;
            beside_ = beside_ || !is_one_of(kThere, folded);
        } else {
            if (!located_) part_ += (part_.empty() ? "" : " ") + word_;
            if (!beside_) places_ += (places_.empty() ? "" : " ") + word_;
        }
        word_.clear();
    }
    void end_part() { end_word(), end_part_here(); }
    void end_part_here() {
        if (!part_.empty() || !places_.empty())
            breath_.push_back({part_, places_, true, std::exchange(slashed_, false) && !breath_.empty()});
        part_.clear();
        places_.clear();
    }
    void end_breath() {
        end_part();
        auto const named = std::ranges::count_if(breath_, [](NamePart const& p) { return !p.words.empty(); });
        for (NamePart& p : breath_) p.alone = named <= 1;
        if (!breath_.empty()) breaths.push_back(std::move(breath_));
        breath_ = {};
        located_ = slashed_ = beside_ = false;
    }

    std::string word_, part_, places_;
    std::vector<NamePart> breath_;
    bool located_ = false, slashed_ = false, beside_ = false;
};

std::string last_word(std::string_view words) {
    auto const blank = words.rfind(' ');
    return lower(blank == std::string_view::npos ? words : words.substr(blank + 1));
}

// "Laundry" said of a place is no washing machine: "Water heater, laundry".
std::string without_laundry(std::string_view words) {
    std::string out;
    for (std::size_t at = 0; at < words.size();) {
        auto const end = std::min(words.find(' ', at), words.size());
        auto const word = words.substr(at, end - at);
        if (lower(word) != "laundry") out += (out.empty() ? "" : " ") + std::string(word);
        at = end + 1;
    }
    return out;
}

Use const* guessed(std::string_view words, Circuit const& c) { return use_named(guess_use(words, {}, c.poles, {})); }

bool is_laundry_use(Use const* use) { return use && use->demand == Demand::laundry; }

// What the part names; of "laundry" alone nothing.
Use const* thing_in(NamePart const& part, Circuit const& c) {
    if (is_one_of(kSites, last_word(part.words))) return nullptr;
    Use const* use = guessed(part.words, c);
    return is_laundry_use(use) ? guessed(without_laundry(part.words), c) : use;
}

// "Furnace and laundry" feeds both; "Lights, bath and laundry" and "Heaters and laundry" tell rooms.
bool feeds_laundry_beside(std::vector<NamePart> const& breath, Circuit const& c) {
    auto const is_laundry = [&](NamePart const& p) {
        Use const* use = guessed(p.words, c);
        return is_laundry_use(use) && !thing_in(p, c);
    };
    auto const is_one_thing = [&](NamePart const& p) {
        Use const* use = thing_in(p, c);
        return use && !use->lighting && !use->heating && !use->receptacle;
    };
    return std::ranges::any_of(breath, is_laundry) && std::ranges::any_of(breath, is_one_thing);
}
// "Fridge/freezer" and "Oven/microwave" are one unit each.
struct OneUnit {
    std::string_view whole, half;
};
constexpr OneUnit kOneUnits[] = {{"refrigerator", "freezer"}, {"oven", "microwave"}};

// What a slash makes a part of its neighbour; null where it does not.
Use const* half_of_a_unit(Use const* before, Use const* after) {
    for (OneUnit const& unit : kOneUnits) {
        Use const *whole = use_named(unit.whole), *half = use_named(unit.half);
        if ((before == whole && after == half) || (before == half && after == whole)) return half;
    }
    return nullptr;
}
} // namespace

std::vector<std::vector<NamePart>> breaths_of(std::string_view name) { return Cutter(name).breaths; }

std::vector<Use const*> things_of(Circuit const& c) {
    std::vector<Use const*> things;
    auto const add = [&](Use const* use) {
        if (use && std::ranges::find(things, use) == things.end()) things.push_back(use);
    };
    std::vector<Use const*> halves;
    add(c.use);
    for (auto const& breath : breaths_of(c.name)) {
        Use const* before = nullptr;
        for (NamePart const& part : breath) {
            Use const* use = thing_in(part, c);
            if (use && (!use->receptacle || !part.alone)) add(use);
            if (part.slashed) halves.push_back(half_of_a_unit(before, use));
            before = use;
        }
        if (feeds_laundry_beside(breath, c)) add(use_named("laundry"));
    }
    std::erase_if(things, [&](Use const* use) { return std::ranges::find(halves, use) != halves.end(); });
    bool const only_lights = !things.empty() && std::ranges::all_of(things, &Use::lighting);
    if (only_lights && names_receptacles(c.name)) add(use_named("receptacles")); // "Lights + plugs", "Lights, plugs"
    return things;
}

std::string thing_name(Use const& use) {
    if (use.lighting) return "lights";
    std::string words(use.name);
    return use.receptacle && !use.unspecific ? words + " receptacles" : words;
}

RoomPlaces places_beside(std::string_view name, RoomPlaces home) {
    RoomPlaces beside;
    for (auto const& breath : breaths_of(name)) {
        if (breath.size() == 1) continue;
        RoomPlaces others;
        bool at_home = false;
        for (NamePart const& part : breath) {
            RoomPlaces places = places_in(part.places);
            Use const* use = use_named(guess_use(part.words, {}, 1, {}));
            if (is_laundry_use(use)) places.add(RoomPlace::laundry); // "Bathroom and washer"
            if (places.any_of(home))
                at_home = true;
            else
                others.add(places);
        }
        if (at_home) beside.add(others);
    }
    return beside;
}

} // namespace legwork
