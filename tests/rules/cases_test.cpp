// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Job files with their verdict in lines that begin with "#:" (tests/cases/). What each case shows was reported by
// people who wire small buildings, retold; the verdicts follow the rules' own sources.
//   #: exit 1                        of `legwork check`
//   #: error mw-opposite-legs D1 D2  a finding of this gravity and rule that names these circuits, perhaps others too
//   #: absent mw-disconnect          none of this rule
//   #: text 30 A                     stands in some message or fix
//   #: neutral Main connected 10.0   amperes of a panel in a situation, within 0.1
#include "judged_file.h"
#include "source_folder.h"

#include "catch.h"
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <iterator>
#include <sstream>

using namespace made;
using namespace legwork;

namespace {
std::vector<std::string> split(std::string const& line) {
    std::istringstream in(line);
    return {std::istream_iterator<std::string>(in), {}};
}

// A finding of this rule that names all these circuits; others may be named too.
bool has(JudgedFile const& v, std::string const& rule, std::vector<std::string> const& marks,
         std::string_view severity) {
    return std::ranges::any_of(v.findings, [&](Finding const& f) {
        auto const& at = f.where.circuits;
        return f.rule == rule && (severity.empty() || name(f.severity) == severity) &&
               std::ranges::all_of(marks, [&](auto const& m) { return std::ranges::find(at, m) != at.end(); });
    });
}

bool neutral_is(JudgedFile const& v, std::string const& panel, std::string const& situation, double amperes) {
    for (PanelPlan const& p : v.plan.panels)
        for (SituationLoad const& s : p.situations)
            if (p.panel == panel && s.name == situation) return std::abs(s.neutral_a - amperes) <= 0.1;
    return false;
}

bool holds(JudgedFile const& v, std::vector<std::string> const& words) {
    std::string const& kind = words.at(0);
    if (kind == "exit") return v.exit == std::stoi(words.at(1));
    std::vector<std::string> const rest(words.begin() + 2, words.end());
    if (kind == "absent") return !has(v, words.at(1), rest, "");
    if (kind == "neutral") return neutral_is(v, words.at(1), words.at(2), std::stod(words.at(3)));
    if (kind == "text") {
        auto const text = fmt::format("{}", fmt::join(words.begin() + 1, words.end(), " "));
        return std::ranges::any_of(v.findings, [&](Finding const& f) {
            return f.message.find(text) != std::string::npos || f.fix.find(text) != std::string::npos;
        });
    }
    return has(v, words.at(1), rest, kind);
}
} // namespace

TEST_CASE("field cases: every verdict holds", "[check][cases]") {
    int cases = 0;
    for (auto const& entry : std::filesystem::directory_iterator(in_sources("tests/cases"))) {
        if (entry.path().extension() != ".toml") continue;
        ++cases;
        auto const bytes = bytes_of("tests/cases/" + entry.path().filename().string());
        auto const verdict = judge(bytes);
        std::istringstream lines(bytes);
        int wanted = 0;
        for (std::string line; std::getline(lines, line);) {
            if (!line.starts_with("#:")) continue;
            ++wanted;
            CAPTURE(entry.path().filename().string(), line);
            CHECK(holds(verdict, split(line.substr(2))));
        }
        CAPTURE(entry.path().filename().string());
        CHECK(wanted > 0);
    }
    REQUIRE(cases >= 17);
}
