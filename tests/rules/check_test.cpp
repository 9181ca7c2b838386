// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Running, sorting, accepting and counting findings.
#include "building/resolve.h"
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

#include <algorithm>

using namespace made;

namespace {
Finding a_finding(std::string rule, Severity severity, Where where) {
    Finding f;
    f.rule = std::move(rule);
    f.severity = severity;
    f.where = std::move(where);
    f.fix = "Do it";
    return f;
}
typed::Job three() { return job({one_pole("L1", 1), one_pole("L2", 3), one_pole("L3", 5)}); }
typed::Job accepting(typed::Job job, typed::Accept accept) {
    job.accepts.push_back(std::move(accept));
    return job;
}
} // namespace

TEST_CASE("findings: worst first, then in the file's order, as found where both are alike", "[check]") {
    auto const note = Severity::note, warning = Severity::warning, error = Severity::error;
    Findings all{a_finding("a", note, {"", {"L1"}, ""}),    a_finding("b", error, {"", {"L3", "L1"}, ""}),
                 a_finding("c", error, {"", {"L2"}, ""}),   a_finding("d", warning, {"", {"S1"}, ""}),
                 a_finding("e", warning, {"Main", {}, ""}), a_finding("f", warning, {}),
                 a_finding("g", error, {"", {"L2"}, ""}),   a_finding("h", warning, {"", {"L1"}, ""})};
    all.push_back(a_finding("i", error, {"", {"L1"}, ""}));
    all.back().accepted = true;
    auto made = three();
    made.cables = {{.mark = "S1", .name = "", .kind = "cat6", .from = "", .to = "", .length = {}, .asked = {}}};
    sort_findings(resolve(made), all);
    std::string order;
    for (Finding const& f : all) order += f.rule;
    REQUIRE(order == "cgbfehdai");
    REQUIRE(count(all, error) == 3); // the accepted one does not count
    REQUIRE(count(all, warning) == 4);
}

TEST_CASE("accept: by rule and a circuit of the finding, or the panel", "[check]") {
    Findings const one{a_finding("dir-vague", Severity::error, {"Main", {"L1", "L2"}, ""})};
    auto const taken = [&](typed::Accept accept) {
        auto findings = one;
        apply_accepts(resolve(accepting(three(), std::move(accept))), findings);
        return findings.at(0).accepted;
    };
    REQUIRE(taken({"dir-vague", "why", "who", "L2", ""}));
    REQUIRE(taken({"dir-vague", "why", "who", "", "Main"}));
    REQUIRE(taken({"dir-vague", "why", "who", "L1", "Main"}));
    REQUIRE_FALSE(taken({"dir-vague", "why", "who", "L3", ""}));
    REQUIRE_FALSE(taken({"dir-vague", "why", "who", "", "Shed"}));
    REQUIRE_FALSE(taken({"dir-vague", "why", "who", "L1", "Shed"}));
    REQUIRE_FALSE(taken({"dir-person", "why", "who", "L1", ""}));
    REQUIRE_FALSE(taken({"dir-vague", "why", "who", "", ""}));
    auto findings = one;
    apply_accepts(resolve(accepting(three(), {"dir-vague", "known here", "R. Doe", "L1", ""})), findings);
    REQUIRE(findings[0].accepted_why == "known here");
    REQUIRE(findings[0].accepted_by == "R. Doe");
    REQUIRE(count(findings, Severity::error) == 0);
}

TEST_CASE("accept: what burns or shocks stays an error, and says so", "[check]") {
    auto const rule =
        GENERATE("mw-one-panel", "mw-same-space", "mw-in-phase-supply", "mw-opposite-legs", "mw-conductors",
                 "mw-neutral-current", "mw-line-to-line", "mw-one-pole-gfci", "panel-240-on-120", "panel-dead-space",
                 "panel-two-legs", "tape-green", "wire-breaker-fits");
    Findings findings{a_finding(rule, Severity::error, {"Main", {"L1"}, ""})};
    auto const made = accepting(three(), {rule, "why", "who", "L1", ""});
    apply_accepts(resolve(made), findings);
    apply_accepts(resolve(made), findings); // more than once: the sheets' findings come later
    REQUIRE_FALSE(findings[0].accepted);
    REQUIRE(count(findings, Severity::error) == 1);
    REQUIRE_THAT(findings[0].fix, Contains("does not hold"));
    REQUIRE(findings[0].fix.find("does not hold") == findings[0].fix.rfind("does not hold"));
    REQUIRE_FALSE(may_be_accepted(findings[0]));
}

TEST_CASE("accept: by panel, also a finding that names only its circuits", "[check]") {
    auto made = three();
    made.circuits[2].panel = "Shed";
    auto const taken = [&](std::vector<std::string> circuits) {
        Findings findings{a_finding("tape-white-as-hot", Severity::note, {"", std::move(circuits), ""})};
        apply_accepts(resolve(accepting(made, {"tape-white-as-hot", "why", "who", "", "Main"})), findings);
        return findings[0].accepted;
    };
    REQUIRE(taken({"L1", "L2"}));
    REQUIRE_FALSE(taken({"L1", "L3"})); // one of them is in the other panel
    REQUIRE_FALSE(taken({}));
}

TEST_CASE("job-accept-unused: an acceptance that covers nothing", "[check][job]") {
    auto made = three();
    made.circuits[0].name = "Lights";
    made.accepts = {{"dir-vague", "one room", "R. Doe", "L1", ""}};
    auto const unused = [](typed::Job const& j, Printed const& printed = {}) {
        auto all = check(resolve(j), as_typed(j), *code_book(GENERATE("NEC 2023", "CE 2018")), printed).findings;
        std::erase_if(all, [](Finding const& f) { return f.rule != "job-accept-unused"; });
        return all;
    };
    SECTION("none while the finding stands") { REQUIRE(unused(made).empty()); }
    SECTION("the fault was put right") {
        made.circuits[0].name = "Lights, north wall";
        auto const found = unused(made);
        REQUIRE(in_short(found) == "warning");
        REQUIRE_THAT(found[0].message, Contains("dir-vague of L1"));
        REQUIRE(found[0].where.accept == 0);
    }
    SECTION("another circuit, a second [[accept]]") {
        made.accepts.push_back({"dir-vague", "one room", "R. Doe", "L2", "Main"});
        auto const found = unused(made);
        REQUIRE(in_short(found) == "warning");
        REQUIRE(found[0].where.accept == 1);
        REQUIRE_THAT(found[0].message, Contains("L2 in panel \"Main\""));
    }
    SECTION("one that does not hold is told at its finding, not here") {
        auto pair = pair_job({5}, {6}, Tie::none);
        pair.accepts = {{"mw-opposite-legs", "why", "who", "K1", ""}};
        REQUIRE(unused(pair).empty());
        pair.circuits[1].space = Spot{7, 0};
        auto const found = unused(pair);
        REQUIRE(in_short(found) == "warning");
        REQUIRE_THAT(found[0].fix, Contains("could not hold"));
    }
    SECTION("of a rule that is not checked yet") {
        made.accepts = {{"box-full", "deep box", "R. Doe", "L1", ""}};
        REQUIRE_THAT(unused(made).at(0).message, Contains("not checked yet"));
    }
    SECTION("what is found on the sheets counts") {
        made.accepts = {{"dir-name-too-long", "known here", "R. Doe", "L1", ""}};
        REQUIRE(in_short(unused(made)) == "warning");
        made.circuits[0].name = "Lights, north wall";
        Printed printed;
        printed.sheets.emplace_back().names.push_back({{"Main", {"L1"}, "name"}, false});
        REQUIRE(unused(made, printed).empty());
    }
}

TEST_CASE("accept: a receptacle of the wrong volts never, of the wrong amperes yes", "[check]") {
    Findings findings{a_finding("wire-outlet", Severity::error, {"Main", {"L1"}, ""}),
                      a_finding("wire-outlet", Severity::error, {"Main", {"L1"}, ""})};
    findings[0].never_accepted = true;
    apply_accepts(resolve(accepting(three(), {"wire-outlet", "why", "who", "L1", ""})), findings);
    REQUIRE_FALSE(findings[0].accepted);
    REQUIRE(findings[1].accepted);
}

TEST_CASE("check: runs every rule, sorts, accepts", "[check]") {
    auto made = pair_job({5}, {6}, Tie::none);
    made.circuits[0].name = "Lights";
    made.accepts = {{"dir-vague", "one room", "R. Doe", "K1", ""}};
    auto const all = check(resolve(made), as_typed(made), *code_book("NEC 2023")).findings;
    REQUIRE(std::ranges::is_sorted(all, {}, [](Finding const& f) { return std::pair(f.accepted, f.severity); }));
    REQUIRE(all.at(0).rule == "mw-opposite-legs");
    REQUIRE(all.back().rule == "dir-vague");
    REQUIRE(all.back().accepted);
    REQUIRE(check(resolve(typed::Job{}), Plan{}, *code_book("CE 2018")).findings.size() == 1); // no dwelling
}
