// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/table_reader.h"
#include "toml/scalar.h"
#include "units/decimal.h"
#include "units/text.h"
#include "units/utf8.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace legwork {

namespace {

std::string_view kind_of(TomlValue const& v) {
    static constexpr std::array<std::string_view, 8> kinds{
        "true or false", "a whole number", "a number with a point", "text", "a date", "a time", "a list", "a table"};
    return kinds[v.is.index()];
}

bool has_control(std::string_view text) {
    while (!text.empty()) {
        auto const c = utf8_front(text);
        if (c.length == 0 || is_control(c.code)) return true;
        text.remove_prefix(c.length);
    }
    return false;
}

} // namespace

std::vector<std::string> plain(std::vector<PlacedText> const& list) {
    std::vector<std::string> texts;
    for (auto const& one : list) texts.push_back(one.text);
    return texts;
}

TomlEntry const* TableReader::known_entry(std::string_view key) const {
    auto const found = std::ranges::find(*table_, key, &TomlEntry::key);
    return found == table_->end() ? nullptr : &*found;
}

TomlEntry const* TableReader::entry(std::string_view key) {
    if (std::ranges::find(known_, key) == known_.end()) known_.emplace_back(key);
    return known_entry(key);
}

bool TableReader::has(std::string_view key) { return entry(key) != nullptr; }

bool TableReader::is_question(std::string_view key) {
    auto const* found = entry(key);
    auto const* said = found && asked_ ? std::get_if<std::string>(&found->value.is) : nullptr;
    if (!said || *said != "?") return false;
    if (std::ranges::find(*asked_, key) == asked_->end()) asked_->emplace_back(key);
    return true;
}

std::size_t TableReader::value_at(std::string_view key) const {
    auto const* found = known_entry(key);
    return found ? found->value.begin : at_;
}

void TableReader::complain(std::string_view key, std::string message, std::string fix) {
    out_->add(value_at(key), fmt::format("{}: {}", what_, message), std::move(fix));
}

void TableReader::unknown_word(std::size_t at, std::string_view key, std::string_view said,
                               std::span<std::string const> known) {
    out_->add(at, fmt::format("{}: \"{}\" cannot be {}", what_, key, quoted(said)),
              out_->full() ? std::string() : did_you_mean(said, known, "look at the words this key takes"));
}

template <class T>
T const* TableReader::as(std::string_view key, std::string_view kind, std::string_view example) {
    auto const* found = entry(key);
    if (!found) return nullptr;
    if (auto const* v = std::get_if<T>(&found->value.is)) return v;
    complain(key, fmt::format("\"{}\" takes {}, not {}", key, kind, kind_of(found->value)),
             fmt::format("write  {} = {}", key, example));
    return nullptr;
}

bool TableReader::good_text(std::string_view key, std::string const& said, std::size_t at, std::size_t most) {
    if (has_control(said)) {
        out_->add(at, fmt::format("{}: \"{}\" holds a line end, a tab or a control character", what_, key),
                  "write it as one line of plain text");
        return false;
    }
    auto const letters = character_count(said);
    if (letters > most)
        out_->add(at, fmt::format("{}: \"{}\" has {} letters, {} at most", what_, key, letters, most), "shorten it");
    return letters <= most;
}

bool TableReader::within(std::string_view key, std::int64_t number, int least, int most, std::size_t at) {
    if (number >= least && number <= most) return true;
    out_->add(at, fmt::format("{}: \"{}\" cannot be {}", what_, key, number),
              least == most ? fmt::format("it can only be {}", least)
                            : fmt::format("give a number from {} to {}", least, most));
    return false;
}

std::string TableReader::text(std::string_view key, std::size_t most) {
    auto const* said = as<std::string>(key, "text in quotes", "\"...\"");
    bool const blank = said && trimmed(*said).empty();
    return said && !blank && good_text(key, *said, value_at(key), most) ? *said : std::string();
}

std::optional<bool> TableReader::flag(std::string_view key) {
    auto const* said = as<bool>(key, "true or false, without quotes", "true");
    return said ? std::optional(*said) : std::nullopt;
}

std::optional<int> TableReader::number(std::string_view key, int least, int most) {
    auto const* said = as<std::int64_t>(key, "a whole number without quotes", std::to_string(std::max(least, 2)));
    if (!said || !within(key, *said, least, most, value_at(key))) return std::nullopt;
    return static_cast<int>(*said);
}

std::optional<int> TableReader::count(std::string_view key, int least, int most) {
    return is_question(key) ? std::nullopt : number(key, least, most);
}

std::vector<int> TableReader::numbers(std::string_view key, int least, int most) {
    auto const* list = as<TomlArray>(key, "a list of whole numbers", "[1, 2]");
    std::vector<int> numbers;
    if (!list) return numbers;
    for (auto const& one : *list) {
        auto const* number = std::get_if<std::int64_t>(&one.is);
        if (!number)
            out_->add(one.begin, fmt::format("{}: \"{}\" is a list of whole numbers, not {}", what_, key, kind_of(one)),
                      fmt::format("write  {} = [1, 2]", key));
        else if (within(key, *number, least, most, one.begin))
            numbers.push_back(static_cast<int>(*number));
    }
    return numbers;
}

std::vector<PlacedText> TableReader::texts(std::string_view key) {
    auto const* list = as<TomlArray>(key, "a list of texts", "[\"...\", \"...\"]");
    std::vector<PlacedText> texts;
    if (!list) return texts;
    for (auto const& one : *list) {
        auto const* text = std::get_if<std::string>(&one.is);
        if (!text)
            out_->add(one.begin, fmt::format("{}: \"{}\" is a list of texts, not {}", what_, key, kind_of(one)),
                      "put each of them in quotes");
        else if (good_text(key, *text, one.begin, kMostLetters))
            texts.push_back({*text, one.begin});
    }
    return texts;
}

std::optional<Date> TableReader::date(std::string_view key) {
    auto const* found = entry(key);
    if (!found) return std::nullopt;
    if (auto const* d = std::get_if<TomlDate>(&found->value.is)) return Date{d->year, d->month, d->day};
    auto const* said = std::get_if<std::string>(&found->value.is);
    if (said && is_date(*said))
        return Date{std::stoi(said->substr(0, 4)), std::stoi(said->substr(5, 2)), std::stoi(said->substr(8))};
    complain(key, fmt::format("\"{}\" takes a date of the calendar, without a time", key),
             fmt::format("write  {} = 2026-05-02", key));
    return std::nullopt;
}

std::optional<std::int64_t> TableReader::millionths(std::string_view key) {
    auto const* found = entry(key);
    if (!found) return std::nullopt;
    auto const* whole = std::get_if<std::int64_t>(&found->value.is);
    auto const* decimal = std::get_if<double>(&found->value.is);
    double const share = whole ? static_cast<double>(*whole) : decimal ? *decimal : -1;
    if (share >= 0 && share <= 1) return std::llround(share * 1e6); // nan fails both
    complain(key, fmt::format("the share of {} is a number from 0 to 1", quoted(key)), "write 0.8 for 80 %");
    return std::nullopt;
}

template <class T, class Parse>
std::optional<T> TableReader::quantity(std::string_view key, std::string_view kind, Parse parse) {
    auto const* found = entry(key);
    if (!found) return std::nullopt;
    auto const& v = found->value;
    auto const* said = std::get_if<std::string>(&v.is);
    if (is_question(key)) return std::nullopt;
    bool const bare = std::holds_alternative<std::int64_t>(v.is) || std::holds_alternative<double>(v.is);
    if (!said && !bare) {
        complain(key, fmt::format("\"{}\" takes {}, not {}", key, kind, kind_of(v)), parse("").why);
        return std::nullopt;
    }
    auto const typed = said ? std::string_view(*said) : out_->source().bytes().substr(v.begin, v.end - v.begin);
    auto parsed = parse(typed);
    if (said && parsed.value) return parsed.value;
    complain(key, fmt::format("{} = {} is not {}", key, said ? quoted(typed) : fit_to_print(typed.substr(0, 40)), kind),
             parsed.value ? "put it in quotes" : parsed.why);
    return std::nullopt;
}

std::optional<Amps> TableReader::amps(std::string_view key) { return quantity<Amps>(key, "a current", parse_amps); }
std::optional<std::variant<VoltAmperes, Amps>> TableReader::load(std::string_view key) {
    return quantity<std::variant<VoltAmperes, Amps>>(key, "a load", parse_load_or_amps);
}
std::optional<Length> TableReader::length(std::string_view key) {
    return quantity<Length>(key, "a length", parse_length);
}
std::optional<Area> TableReader::area(std::string_view key) { return quantity<Area>(key, "an area", parse_area); }
std::optional<Volume> TableReader::volume(std::string_view key) {
    return quantity<Volume>(key, "a volume", parse_volume);
}

std::optional<TableReader> TableReader::table(std::string_view key, std::string what) {
    auto const* found = as<TomlTable>(key, "a table", "{ ... }");
    if (!found) return std::nullopt;
    return TableReader(*found, known_entry(key)->at, std::move(what), *out_);
}

std::vector<TableReader> TableReader::tables(std::string_view key, std::string const& what) {
    std::vector<TableReader> readers;
    auto const* found = entry(key);
    if (!found) return readers;
    auto const* list = std::get_if<TomlArray>(&found->value.is);
    if (!list) {
        complain(key, fmt::format("\"{}\" is a list of tables, not {}", key, kind_of(found->value)),
                 fmt::format("begin each of them with  [[{}]]  in double brackets", key));
        return readers;
    }
    for (auto const& one : *list)
        if (auto const* t = std::get_if<TomlTable>(&one.is))
            readers.emplace_back(*t, one.begin, what, *out_);
        else
            out_->add(one.begin, fmt::format("{}: \"{}\" is a list of tables, not of {}", what_, key, kind_of(one)),
                      "write each as a table: { key = value }");
    return readers;
}

std::string TableReader::required_text(std::string_view key, std::string_view example) {
    auto said = text(key);
    auto const* found = entry(key);
    auto const* typed = found ? std::get_if<std::string>(&found->value.is) : nullptr;
    if (!found)
        complain(key, fmt::format("\"{}\" is missing", key), fmt::format("add  {} = {}", key, example));
    else if (typed && trimmed(*typed).empty())
        complain(key, fmt::format("\"{}\" is empty", key), fmt::format("write  {} = {}", key, example));
    return said;
}

std::optional<int> TableReader::required_number(std::string_view key, int least, int most, std::string_view example) {
    if (!has(key)) complain(key, fmt::format("\"{}\" is missing", key), fmt::format("add  {} = {}", key, example));
    return number(key, least, most);
}

void TableReader::finish() {
    for (auto const& e : *table_) {
        if (std::ranges::find(known_, e.key) != known_.end()) continue;
        out_->add(e.at, fmt::format("{}: there is no key {}", what_, quoted(e.key)),
                  out_->full() ? std::string() : did_you_mean(e.key, known_, "take it away"));
    }
}

} // namespace legwork
