// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The JSON Schema of the job file, from the rows of its keys. It never refuses what the reader takes; what hangs on
// several keys or tables (a mark that is there, a panel that is fed) it cannot say.
#include "cli/json/json_values.h"
#include "cli/keys/keys.h"
#include "cli/vocabulary.h"
#include "job/keys/keys.h"
#include "job/read.h"
#include "toml/table_reader.h"
#include "units/gauge.h"
#include "units/power_cable.h"
#include "units/text.h"

#include <fmt/format.h>

namespace legwork {

namespace {

constexpr std::string_view kBlank = R"([ \u00a0\u202f])";
// What units/utf8.h takes for a control character.
constexpr std::string_view kControl = R"([\u0000-\u001f\u007f-\u009f\u2028-\u202e\u2066-\u2069])";
constexpr std::string_view kMark = "^[A-Za-z0-9-]{1,8}$";
constexpr std::string_view kDate = "^[0-9]{4}-[0-9]{2}-[0-9]{2}$";

// Of any text, of letters either way.
std::string pattern_of(std::string_view text) {
    std::string pattern;
    for (char const c : text) {
        if (c >= 'a' && c <= 'z')
            pattern += fmt::format("[{}{}]", c, static_cast<char>(c - 32));
        else if (std::string_view(".^$*+?()[]{}|\\/").find(c) != std::string_view::npos)
            pattern += fmt::format("\\{}", c);
        else
            pattern += c;
    }
    return pattern;
}

// A number and its unit; behind feet inches may stand. "?" while it is not known.
Json quantity(UnitsOf kind) {
    std::string units;
    for (auto const unit : unit_names(kind)) units += (units.empty() ? "" : "|") + pattern_of(unit);
    auto const again = kind == UnitsOf::length ? fmt::format("([^A-Za-z]*({}))?", units) : "";
    return {
        {"type", "string"},
        {"pattern", fmt::format(R"(^\?$|^{0}*[.0-9][^A-Za-z]*({1}){2}{0}*$)", R"([ \t\u00a0\u202f])", units, again)}};
}

Json any_of(Json first, Json second) { return {{"anyOf", Json::array({std::move(first), std::move(second)})}}; }

Json whole(Key const& key) { return {{"type", "integer"}, {"minimum", key.least}, {"maximum", key.most}}; }

Json list_of(Json item) { return {{"type", "array"}, {"items", std::move(item)}}; }

// A needed text is not blank.
Json text(Key const& key) {
    Json said{{"type", "string"}, {"maxLength", key.most > 0 ? key.most : static_cast<int>(TableReader::kMostLetters)}};
    said["not"] = {{"pattern", kControl}};
    if (key.needed) said["pattern"] = R"([^ \t\u00a0\u202f])";
    return said;
}

// One of these; where it is not needed, a blank is as good as nothing.
Json one_of(std::vector<std::string> const& words, bool needed = true) {
    Json known{{"enum", words}};
    if (needed) return known;
    return any_of(known, {{"type", "string"}, {"pattern", fmt::format("^{}*$", kBlank)}});
}

Json share() { return {{"type", "number"}, {"minimum", 0}, {"maximum", 1}}; }

Json space(Key const& key) {
    std::string numbers;
    for (int n = key.least; n <= key.most; ++n) numbers += fmt::format("{}{}", n == key.least ? "" : "|", n);
    return any_of(whole(key), {{"type", "string"}, {"pattern", fmt::format("^({})[abAB]?$", numbers)}});
}

Json cable(Vocabulary const& words) {
    std::string gauges;
    for (GaugeName const& g : kGauges)
        if (g.gauge >= Gauge::awg14) gauges += (gauges.empty() ? "" : "|") + pattern_of(g.name);
    auto named = one_of(words.cable_kinds, false);
    std::string types;
    for (CableTypeName const& t : kCableTypes) types += (types.empty() ? "" : "|") + pattern_of(t.name);
    named["anyOf"].push_back(
        {{"type", "string"}, {"pattern", fmt::format(R"(^\?$|^({})\/[234]( ({}))?$)", gauges, types)}});
    return named;
}

Json table_schema(KeyTable const& table, Vocabulary const& words);

Json tables_schema(Key const& key, Vocabulary const& words) {
    auto list = list_of(table_schema(*key.table, words));
    list["maxItems"] = key.most;
    return list;
}

Json groups() {
    auto group = list_of({{"type", "string"}});
    group["minItems"] = 2;
    group["uniqueItems"] = true;
    return list_of(group);
}

Json value_schema(Key const& key, Vocabulary const& words) {
    auto const known = [&] { return one_of(words_of(key.words), key.needed); };
    switch (key.takes) {
    case Takes::text:
    case Takes::name:
    case Takes::color:
    case Takes::feeder:
    case Takes::circuit:
    case Takes::panel:
    case Takes::supply: return text(key);
    case Takes::mark: return {{"type", "string"}, {"pattern", kMark}};
    case Takes::flag: return {{"type", "boolean"}};
    case Takes::number: return whole(key);
    case Takes::count: return any_of(whole(key), {{"const", "?"}});
    case Takes::numbers: return list_of(whole(key));
    case Takes::current: return quantity(UnitsOf::current);
    case Takes::load: return quantity(UnitsOf::load);
    case Takes::length: return quantity(UnitsOf::length);
    case Takes::area: return quantity(UnitsOf::area);
    case Takes::volume: return quantity(UnitsOf::volume);
    case Takes::millimetres: return any_of({{"type", "number"}}, quantity(UnitsOf::length));
    case Takes::share: return share();
    case Takes::date: return {{"type", "string"}, {"pattern", kDate}};
    case Takes::word: return known();
    case Takes::word_or_flag: return any_of({{"type", "boolean"}}, one_of(words_of(key.words)));
    case Takes::word_or_words: return any_of(known(), list_of(one_of(words_of(key.listed))));
    case Takes::word_or_numbers: return any_of(known(), list_of(whole(key)));
    case Takes::space: return space(key);
    case Takes::cable: return cable(words);
    case Takes::edition: return one_of(words.editions, key.needed);
    case Takes::use: return one_of(words.uses, key.needed);
    case Takes::rule: return one_of(words.rules, key.needed);
    case Takes::receptacles: return list_of(one_of(words.receptacles));
    case Takes::circuits: return list_of({{"type", "string"}, {"pattern", kMark}});
    case Takes::colors:
    case Takes::supplies:
    case Takes::texts: return list_of(text({.name = "", .takes = Takes::text, .example = "", .help = ""}));
    case Takes::groups_of_loads: return groups();
    case Takes::shares_of_loads: return {{"type", "object"}, {"additionalProperties", share()}};
    case Takes::table: return table_schema(*key.table, words);
    case Takes::tables: return tables_schema(key, words);
    }
    return Json::object();
}

Json key_schema(Key const& key, Vocabulary const& words) {
    auto schema = value_schema(key, words);
    if (schema.contains("items") && key.least > 0 && key.takes != Takes::numbers) schema["minItems"] = key.least;
    auto about = fmt::format("{}.", key.help);
    if (!key.otherwise.empty()) about += fmt::format(" When not said: {}.", key.otherwise);
    Json said{{"description", std::move(about)}};
    // What TOML and JSON write alike.
    if (auto const example = Json::parse(key.example, nullptr, false); !example.is_discarded())
        said["examples"] = Json::array({example});
    said.update(schema);
    return said;
}

Json table_schema(KeyTable const& table, Vocabulary const& words) {
    Json schema{{"type", "object"}, {"properties", Json::object()}, {"additionalProperties", false}};
    auto needed = Json::array();
    for (Key const& key : table.keys) {
        schema["properties"][std::string(key.name)] = key_schema(key, words);
        if (key.needed) needed.push_back(key.name);
    }
    if (!needed.empty()) schema["required"] = std::move(needed);
    return schema;
}

} // namespace

void write_job_schema(Streams& streams) {
    Json schema{{"$schema", "https://json-schema.org/draft/2020-12/schema"},
                {"title", "A job file of legwork"},
                {"description", fmt::format("{}.", kJobFileKeys.help)}};
    schema.update(table_schema(kJobFileKeys, vocabulary()));
    streams.out << schema.dump(2) << '\n'; // a schema is no result of ours: without write()'s first key
}

} // namespace legwork
