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

using legwork::Key;
using legwork::Takes;

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

// As a table of this kind is called, so that others find it.
constexpr std::array<std::string_view, 5> kPanels{"Main", "Sub", "Shed", "Garage", "DC"};
constexpr std::array<std::string_view, 3> kSupplies{"Utility", "Generator", "Inverter"};
constexpr std::array<std::string_view, 4> kVolumes{"524 mL", "32 in³", "0.5 L", "?"};

std::string one_word(std::string_view parted, Dice& dice) { return quote(dice.one_of(legwork::words_of(parted))); }

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
    switch (key.row->takes) {
    case Takes::mark: return quote(new_mark(dice));
    case Takes::name:
        return quote(key.table == "panel"    ? dice.one_of(kPanels)
                     : key.table == "supply" ? dice.one_of(kSupplies)
                                             : dice.one_of(kNames));
    case Takes::edition: return quote(dice.one_of(v.editions));
    case Takes::use: return quote(dice.one_of(v.uses));
    case Takes::rule: return quote(dice.one_of(v.rules));
    case Takes::cable:
        return quote(dice.once_in(6) ? std::string_view(dice.one_of(v.cable_kinds)) : dice.one_of(kCables));
    case Takes::receptacles: return list_of(3, dice, [&] { return quote(dice.one_of(v.receptacles)); });
    case Takes::color: return quote(dice.one_of(kColors));
    case Takes::colors: return list_of(4, dice, [&] { return quote(dice.one_of(kColors)); });
    case Takes::circuit: return circuit();
    case Takes::circuits: return list_of(3, dice, circuit);
    case Takes::panel: return quote(one_there(there.panels, "Main", dice));
    case Takes::supply: return quote(one_there(there.supplies, "Utility", dice));
    case Takes::supplies: return list_of(3, dice, [&] { return quote(one_there(there.supplies, "Utility", dice)); });
    case Takes::feeder: return quote(one_there(there.panels, "Main", dice) + "/" + one_there(there.marks, "SP", dice));
    default: break;
    }
    // Only what stands several times means something: the word of a pair, the name of an outbuilding.
    if (key.key() == "multiwire" || key.key() == "revision")
        return quote(std::string(1, static_cast<char>('A' + dice.below(4))));
    if (key.key() == "building") return quote(dice.once_in(2) ? "House" : "Shed");
    return quote(dice.one_of(kNames));
}

std::string made_number(Key const& key, Dice& dice) {
    if (key.most <= 2) return fmt::format("{}", 1 + dice.below(2));
    return fmt::format("{}", dice.once_in(3) ? 1 + dice.below(84) : 2 * (1 + dice.below(16)));
}

} // namespace

std::string made_value(KnownKey const& key, NamesThere const& there, Dice& dice) {
    if (dice.once_in(10)) return std::string(dice.one_of(extremes()));
    Key const& row = *key.row;
    auto const spaces = [&] { return list_of(6, dice, [&] { return fmt::format("{}", 1 + dice.below(12)); }); };
    switch (row.takes) {
    case Takes::current: return quote(dice.one_of(kAmps));
    case Takes::load: return quote(dice.one_of(kLoads));
    case Takes::length: return quote(dice.one_of(kLengths));
    case Takes::area: return quote(dice.one_of(kAreas));
    case Takes::volume: return quote(dice.one_of(kVolumes));
    case Takes::number:
    case Takes::count: return made_number(row, dice);
    case Takes::space: {
        auto const space = 1 + dice.below(dice.once_in(5) ? 84 : 16);
        return dice.once_in(4) ? fmt::format("\"{}{}\"", space, dice.once_in(2) ? 'a' : 'B') : fmt::format("{}", space);
    }
    case Takes::numbers: return spaces();
    case Takes::share: return fmt::format("0.{}", dice.below(1000));
    case Takes::flag: return dice.once_in(4) ? "false" : "true";
    case Takes::date:
        return fmt::format("20{:02}-{:02}-{:02}", dice.below(100), 1 + dice.below(12), 1 + dice.below(28));
    case Takes::word: return one_word(row.words, dice);
    case Takes::word_or_flag: return dice.once_in(2) ? one_word(row.words, dice) : dice.once_in(2) ? "true" : "false";
    case Takes::word_or_words: return one_word(row.words, dice);
    case Takes::word_or_numbers: return dice.once_in(2) ? one_word(row.words, dice) : spaces();
    case Takes::texts:
    case Takes::groups_of_loads:
    case Takes::shares_of_loads:
    case Takes::table:
    case Takes::tables: return std::string(row.example);
    case Takes::millimetres: return std::string(dice.one_of(kMillimetres));
    default: return made_name(key, there, dice);
    }
}

std::vector<std::string> all_words() {
    auto const& v = vocabulary();
    std::vector<std::string> all;
    auto const add = [&all](auto const& words) { all.insert(all.end(), words.begin(), words.end()); };
    for (auto const& keys : {job_keys(), form_keys()})
        for (KnownKey const& k : keys) {
            all.emplace_back(k.key());
            all.emplace_back(k.row->example);
            add(legwork::words_of(k.row->words));
        }
    add(v.editions), add(v.uses), add(v.cable_kinds), add(v.receptacles), add(v.rules);
    add(kAmps), add(kLoads), add(kLengths), add(kAreas), add(kCables), add(kColors), add(extremes());
    return all;
}

} // namespace fuzz
