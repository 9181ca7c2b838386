// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The rows of the keys against the reader.
#include "job/keys/circuit.h"
#include "job/keys/keys.h"
#include "job/made_text.h"

#include "catch.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <set>

using namespace legwork;

namespace {

// A job in which this table holds one more line.
std::string with_line(KeyTable const& table, std::string_view line) {
    auto const dot = table.name.find('.');
    auto const outer = table.name.substr(0, dot);
    auto const* row = find(kJobFileKeys, outer);
    std::string inner(line);
    if (dot != table.name.npos) {
        auto const* own = find(*row->table, table.name.substr(dot + 1));
        inner = fmt::format(fmt::runtime(own->takes == Takes::tables ? "{} = [{{ {} }}]" : "{} = {{ {} }}"), own->name,
                            line);
    }
    return outer == "job"
               ? fmt::format("[job]\n{}\n", inner)
               : made::job_with(fmt::format(fmt::runtime(row->takes == Takes::tables ? "[[{}]]\n{}\n" : "[{}]\n{}\n"),
                                            outer, inner));
}

bool tells(std::vector<std::string> const& told, std::string const& words) {
    return std::ranges::any_of(told, [&](std::string const& one) { return one.find(words) != std::string::npos; });
}

std::vector<KeyTable const*> tables() {
    auto all = with_inner(kJobFileKeys);
    all.erase(all.begin());
    return all;
}

std::string joined_complaints(std::string_view bytes) {
    return fmt::format("{}", fmt::join(made::complaints(bytes), "\n"));
}

} // namespace

TEST_CASE("every key that has a row is read, and takes its example and each of its words", "[job][keys]") {
    for (KeyTable const* table : tables())
        for (Key const& key : table->keys) {
            auto values = std::vector<std::string>{std::string(key.example)};
            for (auto const& word : words_of(key.words)) values.push_back(fmt::format("\"{}\"", word));
            for (auto const& value : values) {
                auto const told = made::complaints(with_line(*table, fmt::format("{} = {}", key.name, value)));
                CAPTURE(table->name, key.name, value, told);
                CHECK_FALSE(tells(told, fmt::format("there is no key \"{}\"", key.name)));
                CHECK_FALSE(tells(told, fmt::format("\"{}\" takes", key.name)));
                CHECK_FALSE(tells(told, fmt::format("\"{}\" cannot be", key.name)));
                CHECK_FALSE(tells(told, fmt::format("{} = ", key.name) + value + " is not"));
            }
        }
}

TEST_CASE("a key that is needed is missed, and its example is the way out", "[job][keys]") {
    for (KeyTable const* table : tables())
        for (Key const& key : table->keys)
            if (key.needed && table->name.find('.') == table->name.npos) {
                CAPTURE(table->name, key.name);
                CHECK(tells(made::complaints(with_line(*table, "")),
                            fmt::format("\"{0}\" is missing | add  {0} = {1}", key.name, key.example)));
            }
}

TEST_CASE("each row says what a person asks of a key", "[job][keys]") {
    for (KeyTable const* table : with_inner(kJobFileKeys)) {
        std::set<std::string_view> names;
        CHECK_FALSE(table->help.empty());
        for (Key const& key : table->keys) {
            CAPTURE(table->name, key.name);
            CHECK(names.insert(key.name).second);
            CHECK_FALSE(key.help.empty());
            CHECK(key.help.back() != '.');
            CHECK_FALSE(key.example.empty());
            CHECK_FALSE(kind_in_words(key).empty());
        }
    }
}

TEST_CASE("a column of a spreadsheet names one key of a circuit", "[job][keys]") {
    std::set<std::string_view> headers;
    for (Key const& key : kCircuitTable.keys)
        if (!key.header.empty()) {
            CAPTURE(key.name, key.header);
            CHECK(headers.insert(key.header).second);
        }
    CHECK(headers.size() + 1 == kCircuitTable.keys.size()); // segments do not fit into a cell
}

TEST_CASE("a key that is not known, and near none, is answered with all keys of its table", "[job][keys]") {
    for (KeyTable const* table : tables()) {
        if (table->each) continue; // its keys are marks
        CAPTURE(table->name);
        auto const told = joined_complaints(with_line(*table, "frobnicate_xyz = 1"));
        CHECK_THAT(told,
                   Contains("take it away, or write one of: " + fmt::format("{}", fmt::join(names_of(*table), ", "))));
    }
}

TEST_CASE("a table in the wrong brackets does not hide the mistakes inside it", "[job][keys]") {
    auto const panel =
        joined_complaints("[job]\ncode = \"NEC 2023\"\n[panel]\nname = \"Main\"\nspacs = 8\nsupply = \"120/240\"\n");
    CHECK_THAT(panel, Contains("begin each of them with  [[panel]]") && Contains("did you mean \"spaces\"?"));
    auto const job = joined_complaints("[[job]]\ncode = \"NEC 2023\"\nuints = \"inch\"\n");
    CHECK_THAT(job, Contains("write one table:  [job]") && Contains("did you mean \"units\"?"));
    CHECK_THAT(job, !Contains("is missing | begin the file"));
    auto const peak = joined_complaints(made::job_with("[[dwelling.peak]]\namps = \"62 A\"\nday = 3\n"));
    CHECK_THAT(peak, Contains("in single brackets") && Contains("did you mean \"days\"?"));
}

TEST_CASE("a half of a space may be typed in a capital", "[job][keys]") {
    auto const job = made::good(made::job_with("[[circuit]]\nmark = \"K1\"\nspace = \"17A\"\n"));
    CHECK(job.circuits[0].space == Spot{17, 'a'});
}

TEST_CASE("the first word of a cable kind proposes the kinds that begin so", "[job][keys]") {
    auto words = made::words();
    words.cable_kinds = {"16/2 speaker", "16/4 lighting strip", "16/4 speaker", "cat6"};
    auto const read = read_job(made::job_with("[[circuit]]\nmark = \"K1\"\ncable = \"16/4\"\n"), words);
    REQUIRE(read.problems.size() == 1);
    CHECK(read.problems[0].fix == "did you mean \"16/4 lighting strip\" or \"16/4 speaker\"?");
}
