// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a rule found out, and how grave that is.
#include "rules/gravity.h"
#include "rules/verdict.h"

#include "catch.h"

using namespace legwork;

namespace {
Finding a_finding(Severity severity, Source source = Source::seen) {
    Finding f;
    f.severity = severity;
    f.message = "It is wrong";
    f.fix = "Put it right!";
    f.reference.source = source;
    return f;
}
} // namespace

TEST_CASE("verdict: what looked at nothing has not passed", "[check][verdict]") {
    REQUIRE(Inspection{}.verdict().kind() == Verdict::Kind::nothing);
    Inspection margin_of_nothing;
    margin_of_nothing.margin(0.5, [] { return std::string("8 of 16 A"); });
    REQUIRE(margin_of_nothing.verdict().kind() == Verdict::Kind::nothing);
    REQUIRE(margin_of_nothing.verdict().nearest().empty());
    Inspection seen;
    seen.looked();
    seen.looked(2);
    REQUIRE(seen.verdict().kind() == Verdict::Kind::passed);
    REQUIRE(seen.verdict().looked_at() == 3);
}

TEST_CASE("verdict: of what passed, the nearest to its limit is told", "[check][verdict]") {
    Inspection seen;
    seen.looked(3);
    seen.margin(0.2, [] { return std::string("3 of 15 A"); });
    seen.margin(0.9, [] { return std::string("18 of 20 A"); });
    bool asked = false;
    seen.margin(0.5, [&] { return asked = true, std::string("10 of 20 A"); });
    REQUIRE(seen.verdict().nearest() == "18 of 20 A");
    REQUIRE_FALSE(asked);
    seen.found(a_finding(Severity::error));
    REQUIRE(seen.verdict().kind() == Verdict::Kind::fired);
    REQUIRE(seen.verdict().nearest().empty()); // the finding says it
    REQUIRE(seen.verdict().looked_at() == 3);
}

TEST_CASE("verdict: what nobody has read is neither passed nor silent", "[check][verdict]") {
    Inspection seen;
    seen.looked(4);
    seen.unread(a_finding(Severity::note));
    REQUIRE(seen.verdict().kind() == Verdict::Kind::unread);
    REQUIRE(seen.verdict().findings().size() == 1); // the note that says so
    seen.found(a_finding(Severity::warning));       // of what was read
    REQUIRE(seen.verdict().kind() == Verdict::Kind::fired);
    REQUIRE(seen.verdict().findings().size() == 2);
}

// Source: the agreed list, "a finding whose deciding number is from memory is at most a warning".
TEST_CASE("verdict: no error hangs on a number from memory or from one page of notes", "[check][verdict]") {
    auto const told = [](Severity severity, Source source) {
        Inspection seen;
        seen.looked();
        seen.found(a_finding(severity, source));
        return seen.verdict().findings().at(0);
    };
    REQUIRE(told(Severity::error, Source::memory).severity == Severity::warning);
    REQUIRE(told(Severity::error, Source::noted).severity == Severity::warning);
    REQUIRE(told(Severity::note, Source::memory).severity == Severity::note);
    REQUIRE(told(Severity::error, Source::seen).severity == Severity::error);
    REQUIRE(told(Severity::error, Source::practice).severity == Severity::error);
    REQUIRE(told(Severity::error, Source::seen).message == "It is wrong."); // in whole sentences
    REQUIRE(told(Severity::error, Source::seen).fix == "Put it right!");
}

TEST_CASE("gravity: by family, by what it hangs on, and by what was there before", "[check][verdict]") {
    Gravity const g{.nec = {Grade::error_on_new_work, Grade::note}, .ce = {Grade::warning}};
    REQUIRE(letters(g, Family::nec) == "E/W, N");
    REQUIRE(words(g, Family::nec) == "an error, on existing work a warning; or a note");
    REQUIRE(letters(g, Family::ce) == "W");
    REQUIRE(letters(Gravity{.ce = {Grade::note}}, Family::nec) == "-");
    REQUIRE(words(Gravity{.ce = {Grade::note}}, Family::nec) == "silent");
    REQUIRE(grade(g, Family::nec, Gravity::usual) == Grade::error_on_new_work);
    REQUIRE(grade(g, Family::nec, Gravity::second) == Grade::note);
    REQUIRE(grade(g, Family::nec, Gravity::third) == Grade::note);
    REQUIRE(grade(g, Family::ce, Gravity::second) == Grade::warning); // that family tells no two cases apart
    REQUIRE(grade(g, Family::nec, Gravity::doubtful) == Grade::warning);
    REQUIRE(grade(Gravity{.nec = {Grade::note}}, Family::nec, Gravity::doubtful) == Grade::note);
    REQUIRE(severity(Grade::error_on_new_work, false) == Severity::error);
    REQUIRE(severity(Grade::error_on_new_work, true) == Severity::warning);
    REQUIRE(severity(Grade::error, true) == Severity::error);
    REQUIRE(severity(Grade::note, false) == Severity::note);
}
