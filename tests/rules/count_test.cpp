// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The agreed list of rules, the rules in the code, what `explain` says of them and the names of the tests are held
// against each other: none is missing, none is too many.
#include "balance/balance.h"
#include "building/resolve.h"
#include "codebook/cite.h"
#include "codebook/topics.h"
#include "judged_file.h"
#include "made_job.h"
#include "rule_ids.h"
#include "rules/check.h"
#include "rules/job/measure.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>
#include <filesystem>
#include <set>
#include <sstream>

using namespace made;
namespace fs = std::filesystem;

namespace {
using Ids = std::set<std::string_view>;

Ids agreed_ids() {
    Ids all(std::begin(agreed::kLater), std::end(agreed::kLater));
    for (auto const& r : agreed::kRules) all.insert(r.id);
    return all;
}

Ids without(Ids ids, std::span<std::string_view const> some) {
    for (auto const id : some) ids.erase(id);
    return ids;
}

Ids ids_in_code(bool checked) {
    Ids all;
    for (Rule const* r : rules())
        if (r->is_checked() == checked) all.insert(r->id);
    return all;
}

// What `explain` says of the rule allows a finding of this severity: of an error also a warning, where a number is from
// memory or where the rule says what may be in doubt.
bool allows(Rule const& rule, Family family, Finding const& f) {
    bool const unsure = f.reference.source == Source::memory || !rule.gravity.doubt.empty();
    return std::ranges::any_of(grades(rule.gravity, family), [&](Grade g) {
        if (f.severity == Severity::error) return g == Grade::error || g == Grade::error_on_new_work;
        if (f.severity == Severity::warning)
            return g == Grade::warning || g == Grade::error_on_new_work || (g == Grade::error && unsure);
        return g == Grade::note;
    });
}

// All names of test cases, one a line.
std::string test_names() {
    std::string all;
    for (auto const folder : {"rules", "sheet"}) // the sheets find names that are too long
        for (auto const& entry : fs::directory_iterator(in_sources("tests/") + std::string(folder))) {
            if (entry.path().extension() != ".cpp") continue;
            auto const text = bytes_of("tests/" + std::string(folder) + "/" + entry.path().filename().string());
            for (auto at = text.find("TEST_CASE("); at != std::string::npos; at = text.find("TEST_CASE(", at + 1)) {
                auto const begin = text.find('"', at);
                all += text.substr(begin, text.find("\", \"", begin) - begin) + "\n"; // the tags come next
            }
        }
    return all;
}

bool names(std::string const& text, std::string_view id) {
    constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz-";
    for (auto at = text.find(id); at != std::string::npos; at = text.find(id, at + 1)) {
        auto const end = at + id.size();
        bool const begins = at == 0 || letters.find(text[at - 1]) == std::string_view::npos;
        if (begins && (end == text.size() || letters.find(text[end]) == std::string_view::npos)) return true;
    }
    return false;
}

std::vector<std::string> job_files() {
    std::vector<std::string> files;
    for (auto const folder : {"examples", "tests/cases", "tests/sound"})
        for (auto const& entry : fs::directory_iterator(in_sources(folder)))
            if (entry.path().extension() == ".toml")
                files.push_back(std::string(folder) + "/" + entry.path().filename().string());
    std::ranges::sort(files);
    return files;
}
} // namespace

TEST_CASE("count: the code has the agreed rules and no others", "[check][count]") {
    REQUIRE(ids_in_code(false) == Ids(std::begin(agreed::kLater), std::end(agreed::kLater)));
    REQUIRE(ids_in_code(true) == without(agreed_ids(), agreed::kLater));
    REQUIRE(rules().size() == ids_in_code(true).size() + ids_in_code(false).size()); // none twice
    REQUIRE(rule_named("mw-nothing") == nullptr);
}

TEST_CASE("count: every rule is explained, has sections and a theme", "[check][count]") {
    for (Rule const* rule : rules()) {
        CAPTURE(rule->id);
        for (auto const text : {rule->asks, rule->why, rule->remedy}) {
            REQUIRE(text.size() > 20);
            REQUIRE(text.ends_with('.'));
        }
        REQUIRE(has_citation(rule->id));
        REQUIRE(theme_of(rule->id) != "Other");
    }
    for (Topic const& t : topics()) { // and no section without its rule
        auto const id = t.name.substr(0, t.name.find('/'));
        CAPTURE(t.name);
        CHECK(rule_named(id));
    }
}

TEST_CASE("count: gravity and acceptance are as agreed", "[check][count]") {
    for (auto const& r : agreed::kRules) {
        CAPTURE(r.id);
        Rule const* rule = rule_named(r.id);
        REQUIRE(rule);
        CHECK(letters(rule->gravity, Family::nec) == r.nec);
        CHECK(letters(rule->gravity, Family::ce) == r.ce);
        CHECK((rule->accept.of != Acceptance::Of::none) == r.may_be_accepted);
    }
    REQUIRE(rule_named("wire-outlet")->accept.of == Acceptance::Of::some);
}

TEST_CASE("count: every rule that is checked has a test of its name", "[check][count]") {
    auto const all = test_names();
    for (Rule const* rule : rules()) {
        if (!rule->is_checked()) continue;
        CAPTURE(rule->id);
        CHECK(names(all, rule->id));
    }
}

TEST_CASE("count: what hangs on a figure to measure is a rule", "[check][count]") {
    auto const known = agreed_ids();
    for (auto const thing : {Subject::circuit, Subject::cable, Subject::panel, Subject::supply, Subject::dwelling})
        for (HowToMeasure const& row : how_to_measure(thing)) {
            std::istringstream words{std::string(row.rules)};
            for (std::string id; words >> id;) {
                CAPTURE(row.key, id);
                CHECK(known.contains(id));
            }
        }
}

TEST_CASE("count: no finding is graver than its rule, in any job and any edition", "[check][count]") {
    for (auto const& file : job_files()) {
        auto job = job_of(bytes_of(file));
        if (!job) continue; // the file of mistakes
        auto const plan = as_filed(resolve(*job));
        for (auto const& edition : editions()) {
            auto const& book = *code_book(edition);
            job->code = edition;
            for (Finding const& f : check(resolve(*job), plan, book).findings) {
                CAPTURE(file, edition, f.rule, f.message);
                Rule const* rule = rule_named(f.rule);
                REQUIRE(rule);
                CHECK(allows(*rule, book.family, f));
                CHECK_FALSE((f.severity == Severity::error && f.reference.source == Source::memory));
                CHECK((f.reference.edition.empty() || f.reference.edition == edition));
            }
        }
    }
}

TEST_CASE("count: every rule survives an empty job in every edition", "[check][count]") {
    for (auto const& edition : editions())
        for (Rule const* rule : rules())
            REQUIRE(judged(*rule, {resolve(typed::Job{}), Plan{}, *code_book(edition)}).findings().size() <= 1);
}
