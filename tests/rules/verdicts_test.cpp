// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What each rule says it looked at. Silence is not enough: a rule passes only where it could judge something.
#include "balance/balance.h"
#include "building/resolve.h"
#include "judged_file.h"
#include "made_job.h"
#include "rule_ids.h"
#include "source_folder.h"

#include "catch.h"
#include <rapidcheck.h>

#include <algorithm>
#include <filesystem>
#include <map>

using namespace made;
using Kind = Verdict::Kind;
namespace fs = std::filesystem;

namespace {
constexpr std::string_view kBoathouse = "examples/boathouse.toml", kBungalow = "examples/bungalow.toml";

// How the words of a job stand on sheets that take all of them.
Printed all_printed(typed::Job const& job) {
    Printed p;
    p.sheets.emplace_back();
    for (typed::Circuit const& c : job.circuits) {
        p.sheets[0].names.push_back({{c.panel, {c.mark}, "name"}, true});
        p.letters.push_back({{c.panel, {c.mark}, "name"}, ""});
    }
    return p;
}

std::vector<Outcome> outcomes(typed::Job const& job, std::string_view edition = {}) {
    if (edition.empty()) edition = job.code.empty() ? std::string_view("NEC 2023") : job.code;
    auto const& book = *code_book(edition);
    return check(resolve(job), as_filed(resolve(job)), book, all_printed(job)).outcomes;
}
Verdict verdict_of(std::string_view rule, std::vector<Outcome> const& all) {
    auto const at = std::ranges::find_if(all, [&](Outcome const& o) { return o.rule->id == rule; });
    REQUIRE(at != all.end());
    return at->verdict;
}
Verdict verdict_of(std::string_view rule, typed::Job const& job, std::string_view edition = {}) {
    return verdict_of(rule, outcomes(job, edition));
}

typed::Job file(std::string_view path) {
    auto job = job_of(bytes_of(std::string(path)));
    REQUIRE(job);
    return *job;
}

// A panel with nothing in it, in no dwelling.
typed::Job empty() { return job({}); }

std::vector<std::string> sound_files() {
    std::vector<std::string> files{std::string(kBoathouse), std::string(kBungalow), "examples/orchard-shed.toml",
                                   "examples/faulty.toml"};
    for (auto const& entry : fs::directory_iterator(in_sources("tests/sound")))
        files.push_back("tests/sound/" + entry.path().filename().string());
    std::ranges::sort(files);
    return files;
}

// The kind and the numbers of a verdict belong together.
void holds_together(Outcome const& o) {
    auto const& v = o.verdict;
    CAPTURE(o.rule->id, name(v.kind()), v.looked_at(), v.nearest());
    CHECK((v.kind() == Kind::fired) == !v.findings().empty());
    CHECK((v.kind() == Kind::passed) == (v.findings().empty() && v.looked_at() > 0));
    CHECK((v.kind() == Kind::nothing) == (v.looked_at() == 0));
    if (!v.nearest().empty()) CHECK(v.kind() == Kind::passed);
    for (Finding const& f : v.findings()) CHECK(f.rule == o.rule->id);
}
} // namespace

namespace {
typed::Job with(typed::Job made, void (*change)(typed::Job&)) {
    change(made);
    return made;
}
typed::Job at_home(std::vector<typed::Circuit> circuits) {
    auto made = job(std::move(circuits));
    made.dwelling = typed::Dwelling{};
    made.dwelling->area = Area{90'000'000};
    return made;
}
typed::Segment piece(std::string kind, std::string to) { return {std::move(kind), from_mm(4000), std::move(to)}; }

// Where a rule passes, and where it has nothing to look at; for those that no common job shows.
struct Shown {
    std::string_view rule, edition;
    typed::Job passes, nothing;
};
std::vector<Shown> made_for_one() {
    auto const both = two_pole("SH", 1).outlets({"5-20R", "6-20R"}).cable("12/3");
    auto const on_halves = job({one_pole("L1").space(3, 'a'), one_pole("L2").space(3, 'b')});
    auto const in_pieces = one_pole("L1", 1).with([](typed::Circuit& c) {
        c.run = {piece("12/2", "B1"), piece("12/2", "")};
    });
    auto const counted =
        one_pole("R1", 1).breaker(15_A).with([](typed::Circuit& c) { c.load.reset(), c.outlet_count = 8; });
    auto const solar = two_pole("PV", 24).use("solar").with([](typed::Circuit& c) { c.fixed = true; });
    auto const shed = one_pole("SH", 1).with([](typed::Circuit& c) { c.building = "Shed"; });
    auto const loop = one_pole("L1", 1).use("lighting").called("Lights", "Hall").with([](typed::Circuit& c) {
        c.switch_loop = true;
        c.run = {piece("14/2", "Hall light"), piece("14/3", "Hall switch")};
    });
    auto const vague = one_pole("L1", 1).called("Lights");
    auto const pump = one_pole("D1", 1).breaker(10_A).cable("14/2").load(60_VA).with(
        [](typed::Circuit& c) { c.run[0].length = from_mm(2000); });
    auto const on_dc = job({pump}, SupplyKind::dc_12);
    return {
        {"mw-line-to-line", "NEC 2023", job({both}), job({two_pole("WH", 1)})},
        {"mw-one-pole-gfci", "NEC 2023", file(kBoathouse), pair_job({1}, {3})},
        {"mw-not-adjacent", "NEC 2023", file(kBoathouse), pair_job({1}, {3})}, // not tied
        {"mw-keep-on", "NEC 2023", file(kBoathouse), pair_job({1}, {3})},
        {"mw-neutral-current", "NEC 2023", pair_job({1}, {3}),
         with(pair_job({1}, {3}), [](typed::Job& j) { j.circuits[1].load.reset(); })},
        {"mw-unpaired", "NEC 2023", file(kBoathouse), job({one_pole("L1", 1)})},
        {"wire-smaller-downstream", "NEC 2023", job({in_pieces}), job({one_pole("L1", 1)})},
        {"wire-branch", "NEC 2023", job({one_pole("L1", 1).use("lighting")}), job({one_pole("L1", 1)})},
        {"wire-place", "NEC 2023",
         with(job({one_pole("L1", 1).cable("12/2 UF")}), [](typed::Job& j) { j.circuits[0].where = WirePlace::wet; }),
         job({one_pole("L1", 1)})},
        {"panel-bus", "NEC 2023", with(job({one_pole("L1", 1)}), [](typed::Job& j) { j.panels[0].bus = 125_A; }),
         job({one_pole("L1", 1)})},
        {"wire-outlet-count", "CE 2024", job({counted}), job({one_pole("L1", 1)})},
        {"wire-breaker-size", "NEC 2023", job({one_pole("L1", 1)}),
         with(empty(), [](typed::Job& j) { j.panels[0].main.reset(); })},
        {"wire-load-fits", "NEC 2023", job({one_pole("L1", 1)}), // a breaker alone is half of the question
         with(job({one_pole("L1", 1)}), [](typed::Job& j) { j.circuits[0].run.clear(); })},
        {"wire-continuous", "NEC 2023", job({one_pole("L1", 1).use("lighting")}),
         job({one_pole("R1", 1).use("receptacles")})},
        {"panel-two-legs", "NEC 2023", job({two_pole("WH", 1)}), job({two_pole("WH", 1)}, SupplyKind::bridged_120)},
        {"panel-no-tandem", "NEC 2023", with(on_halves, [](typed::Job& j) { j.panels[0].tandem = {3}; }),
         job({one_pole("L1", 1)})},
        {"panel-circuits", "NEC 2023",
         with(job({one_pole("L1", 1)}), [](typed::Job& j) { j.panels[0].circuits_max = 20; }),
         job({one_pole("L1", 1)})},
        {"panel-hang", "NEC 2023",
         with(job({one_pole("L1", 1)}), [](typed::Job& j) { j.panels[0].hang = Hang::turned_left; }),
         job({one_pole("L1", 1)})},
        {"panel-backfeed", "NEC 2023",
         with(job({solar}), [](typed::Job& j) { j.panels[0].bus = 225_A, j.panels[0].output = 16_A; }),
         job({one_pole("L1", 1)})},
        {"panel-neutral-terminals", "NEC 2023",
         with(job({one_pole("L1", 1)}), [](typed::Job& j) { j.panels[0].neutral_terminals = 12; }),
         job({one_pole("L1", 1)})},
        {"panel-feeder-wires", "NEC 2023", file("tests/sound/suite-over-garage.toml"), job({one_pole("L1", 1)})},
        {"panel-not-joined", "NEC 2023", file("tests/sound/suite-over-garage.toml"), job({one_pole("L1", 1)})},
        {"panel-outbuilding", "NEC 2023", job({shed}), job({one_pole("L1", 1)})},
        {"panel-spare-spaces", "CE 2024", file(kBoathouse), job({one_pole("L1", 1)})},
        {"panel-main-overloaded", "NEC 2023", job({one_pole("L1", 1)}),
         with(job({one_pole("L1", 1)}), [](typed::Job& j) { j.circuits[0].load.reset(); })},
        {"panel-legs-uneven", "NEC 2023", job({one_pole("L1", 1), one_pole("L2", 3)}),
         with(job({one_pole("L1", 1), one_pole("L2", 3)}), [](typed::Job& j) { j.circuits[0].load.reset(); })},
        {"tape-white-as-hot", "NEC 2023", job({one_pole("L1", 1)}), empty()},
        {"gfci-needed", "NEC 2023", job({one_pole("R1", 1).use("bathroom").gfci(Protection::breaker)}),
         job({one_pole("L1", 1).use("lighting").called("Lights", "Hall")})},
        {"afci-needed", "NEC 2023",
         at_home({one_pole("R1", 1).use("receptacles").called("Outlets", "Bedroom").afci(Protection::breaker)}),
         job({one_pole("R1", 1).use("receptacles").called("Outlets", "Bedroom")})}, // no dwelling
        {"need-dedicated", "CE 2024", file(kBoathouse), at_home({one_pole("L1", 1).use("lighting")})},
        {"need-kitchen-share", "CE 2024", file(kBoathouse), at_home({one_pole("L1", 1).use("lighting")})},
        {"need-neutral-at-switch", "NEC 2023", at_home({loop}), job({loop})},
        {"load-service", "CE 2024", file(kBoathouse),
         with(file(kBoathouse), [](typed::Job& j) { j.panels[0].main.reset(); })},
        {"dc-fuse", "NEC 2023", on_dc, with(on_dc, [](typed::Job& j) { j.circuits[0].breaker.reset(); })},
        {"dc-drop", "NEC 2023", on_dc, with(on_dc, [](typed::Job& j) { j.circuits[0].load.reset(); })},
        {"dc-source", "NEC 2023", with(on_dc, [](typed::Job& j) { j.panels[0].output = 20_A; }), on_dc},
        {"tape-dc", "NEC 2023", on_dc, job({one_pole("L1", 1)})},
        {"job-accept-unused", "NEC 2023",
         with(job({vague}),
              [](typed::Job& j) {
                  j.accepts = {{"dir-vague", "one room", "R. Doe", "L1", ""}};
              }),
         job({vague})},
    };
}

// A rule of a plain fault: it passes on a job without it, and a panel with no circuits has nothing for it.
constexpr std::string_view kPlain[] = {"mw-one-panel",     "mw-same-space",   "mw-in-phase-supply", "mw-opposite-legs",
                                       "mw-disconnect",    "mw-unequal",      "mw-conductors",      "wire-breaker-fits",
                                       "wire-outlet",      "wire-conductors", "wire-drop",          "panel-240-on-120",
                                       "panel-dead-space", "panel-no-room",   "dir-unnamed",        "dir-vague",
                                       "dir-duplicate",    "dir-person",      "dir-name-too-long",  "dir-no-letter",
                                       "tape-as-neutral",  "tape-green",      "need-kitchen",       "need-laundry",
                                       "need-bath",        "need-outdoor"};
// Of a sound job: this many, in other files.
constexpr std::pair<std::string_view, std::string_view> kElsewhere[] = {{"need-garage", kBungalow}};
// They tell what to do whenever there is something to do it to, so they never pass.
constexpr std::string_view kNotes[] = {"mw-pigtail",        "mw-grouping", "mw-open-neutral", "panel-208-heat",
                                       "panel-sub-neutral", "panel-sign",  "job-no-effect",   "need-disconnect"};
// The job itself is always there to look at.
constexpr std::string_view kAlways[] = {"job-assumed", "job-unknown"};
} // namespace

TEST_CASE("verdicts: every rule that is checked has one, and is shown to pass and to have nothing",
          "[check][verdict]") {
    std::vector<std::string_view> shown(std::begin(kPlain), std::end(kPlain));
    shown.insert(shown.end(), std::begin(kNotes), std::end(kNotes));
    shown.insert(shown.end(), std::begin(kAlways), std::end(kAlways));
    for (auto const& [rule, path] : kElsewhere) shown.push_back(rule);
    for (auto const& one : made_for_one()) shown.push_back(one.rule);
    auto const all = outcomes(file(kBoathouse));
    for (auto const& agreed : agreed::kRules) {
        CAPTURE(agreed.id);
        CHECK(std::ranges::count(shown, agreed.id) == 1);
        CHECK(std::ranges::count(all, agreed.id, [](Outcome const& o) { return o.rule->id; }) == 1);
    }
    REQUIRE(all.size() == std::size(agreed::kRules));
}

TEST_CASE("verdicts: passed with something looked at, nothing where there is nothing", "[check][verdict]") {
    auto const passes = [](std::string_view rule, typed::Job const& made, std::string_view edition) {
        auto const v = verdict_of(rule, made, edition);
        CAPTURE(rule, name(v.kind()), v.looked_at(), v.findings().empty() ? "" : v.findings()[0].message);
        CHECK(v.kind() == Kind::passed);
        CHECK(v.looked_at() > 0);
    };
    auto const has_nothing = [](std::string_view rule, typed::Job const& made, std::string_view edition) {
        auto const v = verdict_of(rule, made, edition);
        CAPTURE(rule, name(v.kind()), v.looked_at(), v.findings().empty() ? "" : v.findings()[0].message);
        CHECK(v.kind() == Kind::nothing);
        CHECK(v.looked_at() == 0);
    };
    for (auto const rule : kPlain) {
        passes(rule, file(kBoathouse), {});
        has_nothing(rule, empty(), {});
    }
    for (auto const& [rule, path] : kElsewhere) {
        passes(rule, file(path), {});
        has_nothing(rule, empty(), {});
    }
    for (auto const& one : made_for_one()) {
        passes(one.rule, one.passes, one.edition);
        has_nothing(one.rule, one.nothing, one.edition);
    }
    for (auto const rule : kNotes) has_nothing(rule, job({}, SupplyKind::dc_12), "NEC 2023");
}

TEST_CASE("wire-drop: without lengths there is nothing to look at", "[check][verdict][wire]") {
    for (auto const& path : sound_files()) {
        auto made = job_of(bytes_of(path));
        if (!made) continue;
        CAPTURE(path);
        CHECK(verdict_of("wire-drop", *made).looked_at() > 0);
        for (typed::Circuit& c : made->circuits)
            for (typed::Segment& s : c.run) s.length.reset();
        auto const v = verdict_of("wire-drop", *made);
        CHECK(v.kind() == Kind::nothing);
        CHECK(v.looked_at() == 0);
    }
}

TEST_CASE("wire-drop: a circuit whose length is not known was not looked at", "[check][verdict][wire]") {
    auto made = job({one_pole("L1", 1), one_pole("L2", 3)});
    REQUIRE(verdict_of("wire-drop", made).looked_at() == 2);
    made.circuits[1].run[0].length.reset();
    auto const v = verdict_of("wire-drop", made);
    REQUIRE(v.looked_at() == 1);
    REQUIRE_THAT(v.nearest(), Contains("on L1"));
    made.circuits[1].run = {piece("12/2", "B1"), piece("12/2", "")}; // at least what the first piece loses
    made.circuits[1].run[1].length.reset();
    REQUIRE(verdict_of("wire-drop", made).looked_at() == 1);
    made.circuits[1].run[0].length = from_mm(200'000); // which is too much already
    REQUIRE(verdict_of("wire-drop", made).looked_at() == 2);
    REQUIRE(verdict_of("wire-drop", made).kind() == Kind::fired);
}

// Sources: Ohm's law; NEC 210.20(A), 80 % of 20 A; Table 310.16, 12 AWG.
TEST_CASE("verdicts: the nearest to its limit is told in figures", "[check][verdict]") {
    auto const nearest = [](std::string_view rule, typed::Job const& made) {
        auto const v = verdict_of(rule, made, "NEC 2023");
        CAPTURE(rule, name(v.kind()));
        REQUIRE(v.kind() == Kind::passed);
        return v.nearest();
    };
    auto const two =
        job({one_pole("L1", 1).use("lighting").load(600_VA), one_pole("L2", 3).use("lighting").load(1584_VA)});
    CHECK(nearest("wire-continuous", two) == "13.2 of 16 A on L2");
    CHECK(nearest("wire-load-fits", two) == "13.2 of 20 A on the breaker of L2");
    CHECK(nearest("wire-breaker-fits", two) == "a breaker of 20 of 20 A on 12 AWG of L1");
    // 13.2 A over 2 x 10 m of 12 AWG at 75 °C, 6.5 ohm/km.
    CHECK(nearest("wire-drop", two) == "drop 1.4 % of 3 % on L2");
    CHECK(nearest("panel-main-overloaded", two) == "13.2 of 100 A on the main of panel \"Main\"");
    auto pair = pair_job({1}, {3});
    pair.circuits[0].load = 1200_VA, pair.circuits[1].load = 600_VA;
    CHECK(nearest("mw-neutral-current", pair) == "5 of 20 A in the neutral of K1+K2");
    auto marked = two;
    marked.panels[0].circuits_max = 8, marked.panels[0].neutral_terminals = 4;
    CHECK(nearest("panel-circuits", marked) == "2 of 8 poles in panel \"Main\"");
    CHECK(nearest("panel-neutral-terminals", marked) == "2 of 4 neutral terminals in panel \"Main\"");
    CHECK(nearest("mw-unequal", pair).empty()); // compares no figure with a limit
}

TEST_CASE("verdicts: kind, count and findings belong together, in every job and edition", "[check][verdict]") {
    for (auto const& path : sound_files()) {
        auto const made = job_of(bytes_of(path));
        if (!made) continue;
        for (auto const& edition : editions()) {
            CAPTURE(path, edition);
            auto const& book = *code_book(edition);
            auto const all = check(resolve(*made), as_filed(resolve(*made)), book, all_printed(*made));
            std::size_t findings = 0;
            for (Outcome const& o : all.outcomes) holds_together(o), findings += o.verdict.findings().size();
            CHECK(findings == all.findings.size());
        }
    }
}

TEST_CASE("verdicts: kind, count and findings belong together, whatever is not known", "[check][verdict][property]") {
    auto const files = sound_files();
    auto const lose = [](typed::Circuit& c) {
        auto const lost = [] { return *rc::gen::inRange(0, 3) == 0; };
        if (lost()) c.breaker.reset();
        if (lost()) c.load.reset();
        if (lost()) c.run.clear();
        if (lost()) c.outlets.clear();
        if (lost()) c.use.clear();
        if (lost()) c.name.clear();
        if (lost()) c.existing = !c.existing;
        for (typed::Segment& s : c.run)
            if (lost()) s.length.reset();
    };
    REQUIRE(rc::check([&] {
        auto made = job_of(bytes_of(*rc::gen::elementOf(files)));
        RC_PRE(made.has_value());
        for (typed::Circuit& c : made->circuits) lose(c);
        if (*rc::gen::inRange(0, 3) == 0) made->dwelling.reset();
        for (Outcome const& o : outcomes(*made, *rc::gen::elementOf(editions()))) {
            auto const& v = o.verdict;
            RC_ASSERT((v.kind() == Kind::fired) == !v.findings().empty());
            RC_ASSERT((v.kind() == Kind::passed) == (v.findings().empty() && v.looked_at() > 0));
            RC_ASSERT((v.kind() == Kind::nothing) == (v.looked_at() == 0));
            RC_ASSERT(v.nearest().empty() || v.kind() == Kind::passed);
        }
    }));
}
