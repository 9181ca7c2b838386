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
#include <fmt/ranges.h>

namespace legwork {

namespace {

std::string_view kind_of(TomlValue const& v) {
    static constexpr std::array<std::string_view, 8> kinds{
        "true or false", "a whole number", "a number with a point", "text", "a date", "a time", "a list", "a table"};
    return kinds[v.is.index()];
}

std::size_t most_letters(Key const& row) {
    bool const says = row.most > 0 && (row.takes == Takes::text || row.takes == Takes::feeder);
    return says ? static_cast<std::size_t>(row.most) : TableReader::kMostLetters;
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

// A key without a row is nobody's: it is then told as unknown, which no test of it will overlook.
Key const& TableReader::row(std::string_view key) const {
    static constexpr Key none{.name = "", .takes = Takes::text, .example = "\"...\"", .help = ""};
    auto const* found = find(*keys_, key);
    return found ? *found : none;
}

bool TableReader::is_a(std::string_view key, std::initializer_list<Takes> kinds) const {
    return std::ranges::find(kinds, row(key).takes) != kinds.end();
}

std::vector<std::string> TableReader::words(std::string_view key) const { return words_of(row(key).words); }

std::string TableReader::example(std::string_view key) const { return fmt::format("{} = {}", key, row(key).example); }

TomlEntry const* TableReader::entry(std::string_view key) {
    assert(find(*keys_, key));
    if (!find(*keys_, key)) return nullptr;
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

void TableReader::complain_missing(std::string_view key) {
    complain(key, fmt::format("\"{}\" is missing", key), fmt::format("add  {}", example(key)));
}

void TableReader::unknown_word(std::size_t at, std::string_view key, std::string_view said,
                               std::span<std::string const> known) {
    auto const list = listed_by(row(key).takes);
    auto const otherwise = list.empty() ? fmt::format("it takes {}", kind_in_words(row(key)))
                                        : fmt::format("copy one from what  {}  lists", list);
    out_->add(at, fmt::format("{}: \"{}\" cannot be {}", what_, key, quoted(said)),
              out_->full() ? std::string() : did_you_mean(said, known, otherwise));
}

template <class T>
T const* TableReader::as(std::string_view key) {
    auto const* found = entry(key);
    if (!found) return nullptr;
    if (auto const* v = std::get_if<T>(&found->value.is)) return v;
    complain(key, fmt::format("\"{}\" takes {}, not {}", key, kind_in_words(row(key)), kind_of(found->value)),
             fmt::format("write  {}", example(key)));
    return nullptr;
}

bool TableReader::good_text(std::string_view key, std::string const& said, std::size_t at) {
    if (has_control(said)) {
        out_->add(at, fmt::format("{}: \"{}\" holds a line end, a tab or a control character", what_, key),
                  "write it as one line of plain text");
        return false;
    }
    auto const letters = character_count(said);
    auto const most = most_letters(row(key));
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

std::string TableReader::text(std::string_view key) {
    auto const* said = as<std::string>(key);
    bool const good = said && good_text(key, *said, value_at(key));
    return good && !trimmed(*said).empty() ? *said : std::string();
}

std::optional<bool> TableReader::flag(std::string_view key) {
    assert(is_a(key, {Takes::flag}));
    auto const* said = as<bool>(key);
    return said ? std::optional(*said) : std::nullopt;
}

std::optional<int> TableReader::number(std::string_view key) {
    assert(is_a(key, {Takes::number, Takes::count}));
    auto const* said = as<std::int64_t>(key);
    if (!said || !within(key, *said, row(key).least, row(key).most, value_at(key))) return std::nullopt;
    return static_cast<int>(*said);
}

std::optional<int> TableReader::count(std::string_view key) {
    assert(is_a(key, {Takes::count}));
    return is_question(key) ? std::nullopt : number(key);
}

std::vector<int> TableReader::numbers(std::string_view key, std::optional<int> most) {
    assert(is_a(key, {Takes::numbers, Takes::word_or_numbers}));
    auto const* list = as<TomlArray>(key);
    std::vector<int> numbers;
    if (!list) return numbers;
    for (auto const& one : *list) {
        auto const* number = std::get_if<std::int64_t>(&one.is);
        if (!number)
            out_->add(one.begin, fmt::format("{}: \"{}\" is a list of whole numbers, not {}", what_, key, kind_of(one)),
                      fmt::format("write  {} = [1, 2]", key));
        else if (within(key, *number, row(key).least, most.value_or(row(key).most), one.begin))
            numbers.push_back(static_cast<int>(*number));
    }
    return numbers;
}

std::vector<PlacedText> TableReader::texts(std::string_view key) {
    auto const* list = as<TomlArray>(key);
    std::vector<PlacedText> texts;
    if (!list) return texts;
    for (auto const& one : *list) {
        auto const* text = std::get_if<std::string>(&one.is);
        if (!text)
            out_->add(one.begin, fmt::format("{}: \"{}\" is a list of texts, not {}", what_, key, kind_of(one)),
                      "put each of them in quotes");
        else if (good_text(key, *text, one.begin))
            texts.push_back({*text, one.begin});
    }
    return texts;
}

std::string TableReader::word(std::string_view key) {
    assert(!row(key).words.empty());
    auto said = text(key);
    auto const known = words(key);
    if (said.empty() || std::ranges::find(known, said) != known.end()) return said;
    unknown_word(value_at(key), key, said, known);
    return {};
}

std::optional<Date> TableReader::date(std::string_view key) {
    auto const* found = entry(key);
    if (!found) return std::nullopt;
    if (auto const* d = std::get_if<TomlDate>(&found->value.is)) return Date{d->year, d->month, d->day};
    auto const* said = std::get_if<std::string>(&found->value.is);
    if (said && is_date(*said))
        return Date{std::stoi(said->substr(0, 4)), std::stoi(said->substr(5, 2)), std::stoi(said->substr(8))};
    complain(key, fmt::format("\"{}\" takes a date of the calendar, without a time", key),
             fmt::format("write  {}", example(key)));
    return std::nullopt;
}

std::optional<std::int64_t> TableReader::millionths(std::string_view key) {
    assert(is_a(key, {Takes::share}));
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

std::optional<Amps> TableReader::amps(std::string_view key) {
    assert(is_a(key, {Takes::current}));
    return quantity<Amps>(key, "a current", parse_amps);
}
std::optional<std::variant<VoltAmperes, Amps>> TableReader::load(std::string_view key) {
    assert(is_a(key, {Takes::load}));
    return quantity<std::variant<VoltAmperes, Amps>>(key, "a load", parse_load_or_amps);
}
std::optional<Length> TableReader::length(std::string_view key) {
    assert(is_a(key, {Takes::length, Takes::millimetres}));
    return quantity<Length>(key, "a length", parse_length);
}
std::optional<Area> TableReader::area(std::string_view key) {
    assert(is_a(key, {Takes::area}));
    return quantity<Area>(key, "an area", parse_area);
}
std::optional<Volume> TableReader::volume(std::string_view key) {
    assert(is_a(key, {Takes::volume}));
    return quantity<Volume>(key, "a volume", parse_volume);
}

std::optional<double> TableReader::millimetres(std::string_view key) {
    assert(is_a(key, {Takes::millimetres}));
    auto const* found = entry(key);
    if (!found) return std::nullopt;
    std::optional<double> mm;
    if (auto const* whole = std::get_if<std::int64_t>(&found->value.is))
        mm = static_cast<double>(*whole);
    else if (auto const* decimal = std::get_if<double>(&found->value.is))
        mm = *decimal;
    else if (std::holds_alternative<std::string>(found->value.is)) {
        auto const said = length(key);
        if (!said) return std::nullopt; // it has complained
        mm = legwork::millimetres(*said);
    }
    if (!mm || !std::isfinite(*mm)) {
        complain(key, fmt::format("{} must be a length", key),
                 fmt::format("write millimetres, or a text with a unit: {} = 210, {} = \"8.5 in\"", key, key));
        return std::nullopt;
    }
    if (*mm >= row(key).least && *mm <= row(key).most) return mm;
    complain(key, fmt::format("{} is {} mm", key, *mm), fmt::format("from {} to {} mm", row(key).least, row(key).most));
    return std::nullopt;
}

std::optional<TableReader> TableReader::table(std::string_view key, std::string what) {
    auto const* found = entry(key);
    if (!found) return std::nullopt;
    auto const* table = std::get_if<TomlTable>(&found->value.is);
    auto const* list = std::get_if<TomlArray>(&found->value.is);
    auto const at = table || !list || list->empty() ? found->at : list->front().begin;
    if (!table) {
        complain(key, fmt::format("\"{}\" takes a table, not {}", key, kind_of(found->value)),
                 is_file() ? fmt::format("begin it with  [{}]  in single brackets", key)
                           : fmt::format("write one table:  {}", example(key)));
        if (list && !list->empty()) table = std::get_if<TomlTable>(&list->front().is);
        if (!table) return std::nullopt;
    }
    assert(row(key).table);
    TableReader inner(*table, at, *row(key).table, *out_);
    if (!what.empty()) inner.call_it(std::move(what));
    return inner;
}

std::vector<TableReader> TableReader::tables(std::string_view key, std::string const& what) {
    std::vector<TableReader> readers;
    auto const* found = entry(key);
    if (!found) return readers;
    assert(row(key).table);
    auto const add = [&](TomlTable const& table, std::size_t at) {
        readers.emplace_back(table, at, *row(key).table, *out_);
        if (!what.empty()) readers.back().call_it(what);
    };
    auto const* list = std::get_if<TomlArray>(&found->value.is);
    if (!list) {
        complain(key, fmt::format("\"{}\" is a list of tables, not {}", key, kind_of(found->value)),
                 is_file() ? fmt::format("begin each of them with  [[{}]]  in double brackets", key)
                           : fmt::format("write  {}", example(key)));
        if (auto const* one = std::get_if<TomlTable>(&found->value.is)) add(*one, found->at);
        return readers;
    }
    for (auto const& one : *list)
        if (auto const* t = std::get_if<TomlTable>(&one.is))
            add(*t, one.begin);
        else
            out_->add(one.begin, fmt::format("{}: \"{}\" is a list of tables, not of {}", what_, key, kind_of(one)),
                      "write each as a table: { key = value }");
    return readers;
}

std::string TableReader::required_text(std::string_view key) {
    auto said = text(key);
    auto const* found = entry(key);
    auto const* typed = found ? std::get_if<std::string>(&found->value.is) : nullptr;
    if (!found)
        complain_missing(key);
    else if (typed && trimmed(*typed).empty() && !has_control(*typed))
        complain(key, fmt::format("\"{}\" is empty", key), fmt::format("write  {}", example(key)));
    return said;
}

std::optional<int> TableReader::required_number(std::string_view key) {
    if (!has(key)) complain_missing(key);
    return number(key);
}

void TableReader::finish() {
    std::vector<std::string> known; // in the order of the rows
    for (auto const& name : names_of(*keys_))
        if (std::ranges::find(known_, name) != known_.end()) known.push_back(name);
    for (auto const& e : *table_) {
        if (std::ranges::find(known_, e.key) != known_.end()) continue;
        std::string fix;
        if (!out_->full()) {
            auto const near = nearest(e.key, known);
            fix = near.empty() ? fmt::format("take it away, or write one of: {}", fmt::join(known, ", "))
                               : fmt::format("did you mean \"{}\"?", near);
        }
        out_->add(e.at, fmt::format("{}: there is no key {}", what_, quoted(e.key)), std::move(fix));
    }
}

} // namespace legwork
