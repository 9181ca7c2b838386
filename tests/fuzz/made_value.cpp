// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Values as a person types them, so that a made file is understood more often than not.
#include "fuzz/known_keys.h"

#include "cli/vocabulary.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace fuzz {

namespace {

constexpr std::array<std::string_view, 12> kNames{
    "Counter, left of sink", "Receptacles, all walls", "Lights", "Range",    "Bath fan and heater", "Boat bay",
    "Été, prise nº 3",       "Water heater",           "Spare",  "Basement", "漢字 بِهِ 😀",           "x"};
constexpr std::array<std::string_view, 16> kAmps{"15 A",  "20 A",  "25 A",  "30 A",  "40 A", "50 A",   "60 A",  "100 A",
                                                 "125 A", "200 A", "400 A", "6.4 A", "80 A", "500 mA", "0.5 A", "?"};
constexpr std::array<std::string_view, 16> kLoads{"12 A",    "500 mA", "0 VA",   "1 VA",   "180 VA", "900 VA",
                                                  "1500 VA", "1.5 kW", "3 kW",   "4500 W", "9.6 kW", "12 kW",
                                                  "25 kVA",  "100 kW", "10 MVA", "?"};
constexpr std::array<std::string_view, 12> kLengths{"1 m",   "4 m",   "9.5 m", "30 m",       "80 m",  "250 m",
                                                    "31 ft", "14 in", "1 mm",  "31 ft 6 in", "10 km", "?"};
constexpr std::array<std::string_view, 7> kAreas{"64 m²", "45 m2", "690 ft²", "1500 sq ft", "100000 m²", "9 m²", "?"};
constexpr std::array<std::string_view, 16> kCables{"14/2", "14/3", "12/2",  "12/3",  "10/2", "10/3",  "8/3", "6/3",
                                                   "4/3",  "2/3",  "1/0/3", "4/0/3", "14/4", "500/3", "6/2", "?"};
constexpr std::array<std::string_view, 7> kColors{
    "black", "red", "white", "blue", "green", "bare", "white with red stripe"};
constexpr std::array<std::string_view, 8> kMillimetres{"5", "210", "279.4", "66.675", "\"8.5 in\"", "10", "0", "38.1"};

std::string quote(std::string_view text) { return fmt::format("\"{}\"", text); }

std::vector<std::string_view> parts(std::string_view words) {
    std::vector<std::string_view> all;
    for (std::size_t from = 0; from <= words.size();) {
        auto const bar = std::min(words.find('|', from), words.size());
        all.push_back(words.substr(from, bar - from));
        from = bar + 1;
    }
    return all;
}

// Numbers, lists and truths stand without quotes.
std::string word_or_value(std::string_view word) {
    bool const bare = word == "true" || word == "false" || word.starts_with('[') || word == "1" || word == "2";
    return bare ? std::string(word) : quote(word);
}

std::string new_mark(Dice& dice) {
    return fmt::format("{}{}", static_cast<char>('A' + dice.below(26)), dice.below(100));
}

std::string one_there(std::vector<std::string> const& there, std::string_view otherwise, Dice& dice) {
    return there.empty() ? std::string(otherwise) : dice.one_of(there);
}

template <class One>
std::string list_of(std::size_t most, Dice& dice, One const& one) {
    std::string text = "[";
    for (std::size_t n = dice.below(most + 1); n > 0; --n) text += one() + (n > 1 ? ", " : "");
    return text + "]";
}

legwork::Vocabulary const& vocabulary() {
    static auto const words = legwork::vocabulary();
    return words;
}

std::string made_name(KnownKey const& key, NamesThere const& there, Dice& dice) {
    auto const& v = vocabulary();
    auto const circuit = [&] { return quote(one_there(there.marks, "K1", dice)); };
    switch (key.kind) {
    case Kind::mark: return quote(new_mark(dice));
    case Kind::group: return quote(std::string(1, static_cast<char>('A' + dice.below(4))));
    case Kind::edition: return quote(dice.one_of(v.editions));
    case Kind::use: return quote(dice.one_of(v.uses));
    case Kind::rule: return quote(dice.one_of(v.rules));
    case Kind::cable:
        return quote(dice.once_in(6) ? std::string_view(dice.one_of(v.cable_kinds)) : dice.one_of(kCables));
    case Kind::receptacles: return list_of(3, dice, [&] { return quote(dice.one_of(v.receptacles)); });
    case Kind::colors: return list_of(4, dice, [&] { return quote(dice.one_of(kColors)); });
    case Kind::circuit: return circuit();
    case Kind::circuits: return list_of(3, dice, circuit);
    case Kind::panel: return quote(one_there(there.panels, "Main", dice));
    case Kind::supplies: return list_of(3, dice, [&] { return quote(one_there(there.supplies, "Utility", dice)); });
    case Kind::feeder: return quote(one_there(there.panels, "Main", dice) + "/" + one_there(there.marks, "SP", dice));
    default: return quote(dice.one_of(kNames));
    }
}

} // namespace

std::string made_value(KnownKey const& key, NamesThere const& there, Dice& dice) {
    if (dice.once_in(10)) return std::string(dice.one_of(extremes()));
    switch (key.kind) {
    case Kind::amps: return quote(dice.one_of(kAmps));
    case Kind::load: return quote(dice.one_of(kLoads));
    case Kind::length: return quote(dice.one_of(kLengths));
    case Kind::area: return quote(dice.one_of(kAreas));
    case Kind::count: return fmt::format("{}", dice.once_in(3) ? 1 + dice.below(84) : 2 * (1 + dice.below(16)));
    case Kind::space: {
        auto const space = 1 + dice.below(dice.once_in(5) ? 84 : 16);
        return dice.once_in(4) ? fmt::format("\"{}{}\"", space, dice.once_in(2) ? 'a' : 'b') : fmt::format("{}", space);
    }
    case Kind::spaces: return list_of(6, dice, [&] { return fmt::format("{}", 1 + dice.below(12)); });
    case Kind::share: return fmt::format("0.{}", dice.below(1000));
    case Kind::flag: return dice.once_in(4) ? "false" : "true";
    case Kind::date: return fmt::format("20{:02}-{:02}-{:02}", dice.below(100), 1 + dice.below(12), 1 + dice.below(28));
    case Kind::choice: return word_or_value(dice.one_of(parts(key.words)));
    case Kind::table: return std::string(key.words);
    case Kind::millimetres: return std::string(dice.one_of(kMillimetres));
    default: return made_name(key, there, dice);
    }
}

std::vector<std::string> all_words() {
    auto const& v = vocabulary();
    std::vector<std::string> all;
    auto const add = [&all](auto const& words) { all.insert(all.end(), words.begin(), words.end()); };
    for (auto const& keys : {job_keys(), form_keys()})
        for (KnownKey const& k : keys) {
            all.emplace_back(k.key);
            if (k.kind == Kind::choice) add(parts(k.words));
            if (k.kind == Kind::table) all.emplace_back(k.words);
        }
    add(v.editions), add(v.uses), add(v.cable_kinds), add(v.receptacles), add(v.rules);
    add(kAmps), add(kLoads), add(kLengths), add(kAreas), add(kCables), add(kColors), add(extremes());
    return all;
}

} // namespace fuzz
