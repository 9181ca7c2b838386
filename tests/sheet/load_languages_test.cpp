// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A language changes the words of the load sheet and nothing else: shown by one that says each phrase as its id, with
// the arguments behind it, on a face whose letters have no width.
#include "ids_language.h"
#include "load_fixture.h"

#include "catch.h"

#include <regex>
#include <set>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

std::string without_ids(std::string const& words) {
    static std::regex const id("#[a-z]+/[a-z0-9-]+#");
    return std::regex_replace(words, id, " ");
}

// Two letters and more.
std::set<std::string> words_in(std::string const& text) {
    static std::regex const word("(?:[A-Za-z]|[\xc3-\xc5][\x80-\xbf]){2,}");
    std::set<std::string> words;
    for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at) words.insert(at->str());
    return words;
}

// A job with all that its sheets are composed of.
struct Made {
    explicit Made(std::string const& path)
        : bytes(bytes_of(path)), job(read_text(bytes)), building(resolve(job)), plan(as_filed(building)) {}

    static std::string bytes_of(std::string const& path) {
        std::ifstream file(in_sources(path), std::ios::binary);
        return {std::istreambuf_iterator<char>(file), {}};
    }
    CodeBook const& book() const { return *code_book(job.code); }
    std::vector<Sheet> sheets(Catalogue const& catalogue) const {
        NoWidth const widths;
        Findings const none;
        return compose_load({building, plan, none, book(), widths, "house.toml", catalogue}, load_letter());
    }

    // What the job says itself, units, sections, and uses by their names in job files.
    std::set<std::string> own_words() const {
        auto own = bytes + " house toml VA AWG kW ft " + std::string(book().edition);
        for (Circuit const& c : building.circuits)
            if (c.use) own += " " + std::string(c.use->name);
        for (Panel const& panel : building.panels) {
            auto const load = panel_load(building, plan, book(), panel);
            if (!load.load) continue;
            for (auto const* steps : {&load.load->steps, &load.load->neutral})
                for (LoadStep const& s : *steps) own += " " + s.reference.section;
            for (LoadResult const& r : load.results)
                if (r.reference) own += " " + r.reference->section;
        }
        return words_in(own);
    }

    std::string bytes;
    typed::Job job;
    Building building;
    Plan plan;
};

// Words on the pages that are no id and not the job's own.
std::set<std::string> strange(Made const& made, std::vector<Sheet> const& sheets) {
    auto const own = made.own_words();
    std::set<std::string> found;
    for (auto const& word : words_in(without_ids(all_words(sheets))))
        if (!own.contains(word)) found.insert(word);
    return found;
}

std::vector<std::string> words_of(std::vector<Sheet> const& sheets) {
    std::vector<std::string> words;
    for (Sheet const& sheet : sheets)
        for (Page const& page : sheet.pages)
            for (Text const& t : texts(page)) words.push_back(t.words);
    return words;
}

} // namespace

TEST_CASE("load: ids for words change no line, no place and no figure", "[sheet][load][words]") {
    auto const other = ids_for_words();
    std::size_t sheets = 0, figures = 0;
    for (auto const& path : job_files()) {
        CAPTURE(path);
        Made const made(path);
        auto const said = made.sheets(other), usual = made.sheets(english());
        auto const shape = shape_of(said);
        REQUIRE((shape == shape_of(usual))); // pages of marks, which nobody wants to read
        auto const words = words_of(said), usual_words = words_of(usual);
        for (std::size_t i = 0; i < words.size(); ++i) {
            if (!is_figure(usual_words[i])) continue;
            auto digits = without_ids(words[i]);
            std::erase(digits, ' ');
            CHECK(digits == usual_words[i]);
            ++figures;
        }
        sheets += said.size();
    }
    CHECK(sheets > 40);
    CHECK(figures > 400);
}

TEST_CASE("load: no word of the program's own stands on the sheet but in a phrase", "[sheet][load][words]") {
    auto const other = ids_for_words();
    std::set<std::string> said; // ids of the load sheet that some job's says
    for (auto const& path : job_files()) {
        CAPTURE(path);
        Made const made(path);
        auto const sheets = made.sheets(other);
        CHECK(strange(made, sheets) == std::set<std::string>{});
        // The scan is no use unless it finds the words where they are.
        if (!sheets.empty()) CHECK(strange(made, made.sheets(english())).size() > 20);
        static std::regex const id("#(load/[a-z0-9-]+)#");
        auto const words = all_words(sheets);
        for (std::sregex_iterator at(words.begin(), words.end(), id), end; at != end; ++at) said.insert(at->str(1));
    }
    CHECK(said.size() > 120);
}

TEST_CASE("load: what is asked of a figure is asked of its value, not of its words", "[sheet][load][words]") {
    auto const job = read_text(R"([job]
name = "House at the weir"
code = "NEC 2023"
[dwelling]
[[panel]]
name = "Main"
spaces = 24
supply = "120/240"
main = "100 A"
[[circuit]]
mark = "WH"
name = "Water heater"
use = "water heater"
poles = 2
)");
    auto const building = resolve(job);
    auto const plan = as_filed(building);
    NoWidth const widths;
    auto const texts_with = [&](Catalogue const& catalogue, std::string_view words) {
        auto const all = words_of(
            compose_load({building, plan, {}, *code_book(job.code), widths, "house.toml", catalogue}, load_letter()));
        return std::ranges::count_if(all, [&](std::string const& w) { return w.find(words) != w.npos; });
    };
    // "11880 VA so far", but never "not known so far".
    CHECK(texts_with(english(), " VA so far") > 0);
    CHECK(texts_with(english(), "known so far") == 0);
    CHECK(texts_with(ids_for_words(), "#load/value-so-far#") ==
          texts_with(english(), " VA so far") + texts_with(english(), " A so far"));
}

TEST_CASE("load: each topic of a step has a phrase for an edition that nobody has read", "[sheet][load][words]") {
    for (auto const& path : job_files()) {
        Made const made(path);
        for (Panel const& panel : made.building.panels) {
            auto const load = panel_load(made.building, made.plan, made.book(), panel);
            if (!load.load) continue;
            for (LoadStep const& s : load.load->steps) {
                CAPTURE(path, std::string(s.topic));
                auto const row = row_number(fmt::format("load/topic-{}", s.topic));
                REQUIRE(row < kRows.size());
                std::string words(s.topic);
                std::ranges::replace(words, '-', ' ');
                CHECK(kRows[row].english == words);
            }
        }
    }
}
