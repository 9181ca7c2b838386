// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"

#include "codebook/cite_load.h"

#include <algorithm>
#include <cassert>

namespace legwork {

namespace {
using Sections = std::array<std::string_view, 3>;
constexpr Sections all(std::string_view s) { return {s, s, s}; }
constexpr Sections silent{};
constexpr auto seen = Source::seen, memory = Source::memory, practice = Source::practice;

// Physics (legs, poles, volts, conductors) needs no code: practice. "(number from memory)": the number of that section
// in that edition was not read on a page, its content was.
constexpr Sections kMultiwireMeaning = all("Article 100, branch circuit, multiwire");
constexpr Sections kCeMultiwireMeaning = all("Section 0, multi-wire branch circuit");

constexpr std::array kRuleCitations{
    // topic, NEC 2017 2020 2023, CE 2018 2021 2024, sources
    Citation{"mw-one-panel", all("210.4(A)"), kCeMultiwireMeaning, seen, practice},
    Citation{"mw-same-space", kMultiwireMeaning, kCeMultiwireMeaning, seen, practice},
    Citation{"mw-in-phase-supply", kMultiwireMeaning, kCeMultiwireMeaning, seen, practice},
    Citation{"mw-opposite-legs", kMultiwireMeaning, kCeMultiwireMeaning, seen, practice},
    Citation{"mw-not-adjacent", all("210.4(B), 240.15(B)(1)"), all("14-010(b)"), seen, seen},
    Citation{"mw-disconnect", all("210.4(B)"), all("14-010(b)"), seen, seen},
    Citation{"mw-disconnect/two-pole", all("240.15(B)(2)"), all("14-010(b)"), seen, seen},
    Citation{"mw-disconnect/tied-singles", all("240.15(B)(1)"), all("14-302(b)"), seen, seen},
    Citation{"mw-disconnect/lighting", all("210.4(B)"), all("14-010(b)"), seen, seen},
    Citation{"mw-line-to-line", all("210.4(C) Exception No. 2"), all("14-010(b)"), seen, seen},
    Citation{"mw-unequal", silent, silent, practice, practice},
    Citation{"mw-conductors", kMultiwireMeaning, kCeMultiwireMeaning, seen, practice},
    Citation{"mw-neutral-current",
             {"240.4, Table 310.15(B)(16)", "240.4, Table 310.16", "240.4, Table 310.16"},
             all("14-104(1), Table 2"),
             seen,
             seen},
    Citation{"mw-one-pole-gfci", all("110.3(B)"), silent, seen, practice},
    Citation{"mw-pigtail", all("300.13(B)"), all("4-030(4) (number from memory)"), seen, seen},
    Citation{"mw-grouping", all("200.4(B), 210.4(D)"), silent, seen, practice},
    Citation{"mw-open-neutral", all("300.13(B)"), all("4-030(4) (number from memory)"), seen, seen},
    Citation{"mw-unpaired", silent, silent, practice, practice},
    Citation{"mw-keep-on", silent, silent, practice, practice},

    Citation{"tape-white-as-hot", all("200.7(C)(1)"), all("4-030(1) (number from memory)"), seen, memory},
    Citation{"tape-white-as-hot/conduit", all("200.7(C)"), all("4-030 (number from memory)"), seen, seen},
    Citation{"tape-white-as-hot/switch-loop", all("200.7(C)(1)"), all("4-030(2) (number from memory)"), seen, seen},
    Citation{"tape-as-neutral", all("200.6(A)"), all("4-024(4) (number from memory)"), seen, seen},
    Citation{"tape-as-neutral/conduit", all("200.6(A)"), all("4-024(1) (number from memory)"), seen, seen},
    Citation{"tape-as-neutral/large", all("200.6(B)(4)"), all("4-026 (number from memory)"), seen, seen},
    Citation{"tape-green", all("250.119"), all("4-032 (number from memory)"), seen, seen},

    Citation{"wire-breaker-fits", all("240.4(D)"), all("14-104(2)"), seen, seen},
    Citation{"wire-breaker-fits/large",
             {"240.4, Table 310.15(B)(16)", "240.4, Table 310.16", "240.4, Table 310.16"},
             all("14-104(1), Table 2"),
             seen,
             seen},
    Citation{"wire-breaker-fits/cable",
             {"334.80, 240.4, Table 310.15(B)(16)", "334.80, 240.4, Table 310.16", "334.80, 240.4, Table 310.16"},
             all("14-104(1), Table 2"),
             seen,
             seen},
    Citation{"wire-breaker-fits/heating", all("240.4(D)"), all("62-114(7), (8)"), seen, seen},
    Citation{"wire-breaker-fits/motor", all("240.4(G), 430.52 (number from memory)"),
             all("28-200 (number from memory)"), memory, memory},
    Citation{"wire-breaker-fits/welder", all("630.12 (number from memory)"), all("42-008 (number from memory)"), memory,
             memory},
    Citation{"wire-breaker-fits/nameplate", all("240.4(G), 440.22, 440.32 (numbers from memory)"),
             all("28-106, 28-200 (numbers from memory)"), practice, practice},
    Citation{"wire-breaker-fits/aluminium",
             {"310.106(A) (number from memory)", "310.3(A)", "310.3(A)"},
             all("4-002"),
             seen,
             seen},
    Citation{"wire-breaker-fits/dwelling-feeder",
             {"310.15(B)(7)", "310.12", "310.12"},
             all("4-004, Table 39"),
             seen,
             memory},
    Citation{"wire-breaker-fits/kind", silent, silent, practice, practice},
    Citation{"wire-load-fits",
             {"210.19(A)(1), 210.20(A)", "210.19(A)(1), 210.20(A)", "210.19(A), 210.20(A)"},
             all("8-104(1)"),
             seen,
             seen},
    Citation{"wire-load-fits/range", all("220.55 note 4"), all("8-300"), seen, seen},
    Citation{"wire-load-fits/large-range", {"210.19(A)(3)", "210.19(A)(3)", "210.19(C)"}, silent, seen, practice},
    Citation{"wire-load-fits/motor", all("430.22"), all("28-106"), seen, seen},
    Citation{"wire-continuous",
             {"210.19(A)(1), 210.20(A)", "210.19(A)(1), 210.20(A)", "210.19(A), 210.20(A)"},
             all("8-104"),
             seen,
             seen},
    Citation{"wire-continuous/feeder", all("215.2(A)(1), 215.3, 430.24 (two numbers from memory)"),
             all("8-104, 28-108 (second number from memory)"), seen, seen},
    Citation{"wire-continuous/water-heater", all("422.13"), all("8-104"), seen, seen},
    Citation{"wire-continuous/heating",
             {"424.3(B) (number from memory)", "424.4(B) (number from memory)", "424.4(B) (number from memory)"},
             all("62-114(7), (8)"),
             seen,
             seen},
    Citation{"wire-continuous/vehicle-charger",
             {"625.41 (number from memory)", "625.41 (number from memory)", "625.41 (number from memory)"},
             all("8-104"),
             seen,
             seen},
    Citation{"wire-continuous/presumed", silent, all("8-104(3)"), practice, seen},
    Citation{"wire-conductors", silent, silent, practice, practice},
    Citation{"wire-conductors/four-wire", all("250.140"), silent, memory, practice},
    Citation{"wire-breaker-size", all("240.6(A)"), all("14-104(1)(a), Table 13"), seen, memory},
    Citation{"wire-drop", all("210.19, informational note"), all("8-102(1), (2)"), seen, seen},
    Citation{"wire-drop/feeder", all("215.2, informational note"), all("8-102(1)"), seen, seen},
    Citation{"wire-drop/total", all("210.19 and 215.2, informational notes"), all("8-102(1)"), seen, seen},
    Citation{"wire-smaller-downstream", silent, all("2-100(3)"), practice, seen},
    Citation{"wire-outlet-count", silent, all("8-304(1)(a)"), practice, seen},
    Citation{"wire-outlet", silent, silent, practice, practice},
    Citation{"wire-outlet/amperes", all("210.21(B)(3)"), silent, seen, memory},
    Citation{"wire-outlet/single", all("210.21(B)(1)"), silent, seen, memory},
    Citation{"wire-outlet/no-ground", all("406.4(A) (number from memory)"), silent, memory, memory},

    Citation{"panel-240-on-120", silent, silent, practice, practice},
    Citation{"panel-dead-space", silent, silent, practice, practice},
    Citation{"panel-two-legs", silent, silent, practice, practice},
    Citation{"panel-no-tandem", all("408.54, 110.3(B)"), silent, seen, practice},
    Citation{"panel-circuits", all("408.54"), silent, seen, practice},
    Citation{"panel-backfeed",
             {"705.12(B)(2)(3)(b)", "705.12(B)(3)(2)", "705.12(B)(2)"},
             all("64-112(4) (number from memory)"),
             seen,
             memory},
    Citation{"panel-spare-spaces", silent, all("8-108(1)"), practice, seen},
    Citation{"panel-spare-spaces/left", silent, all("8-108(2)"), practice, seen},
    Citation{"panel-sign", silent, silent, practice, practice},
    // A sign that an edition does not ask for has no section there.
    Citation{"panel-sign/service-disconnect", all("230.70(B)"), silent, memory, practice},
    Citation{"panel-sign/emergency-disconnect", {"", "230.85", "230.85(E)"}, silent, memory, practice},
    Citation{"panel-sign/largest-main", silent, all("2-100(2)"), practice, seen},
    Citation{"panel-sign/fault-current", all("110.24(A)"), silent, memory, practice},
    Citation{"panel-sign/calculated-load", silent, {"", "", "2-100 (number from memory)"}, practice, memory},
    Citation{"panel-sign/fed-from", all("408.4(B)"), silent, seen, practice},
    Citation{"panel-sign/outbuilding-disconnect", all("110.22(A)"), all("2-100(3)"), seen, seen},
    Citation{"panel-sign/several-sources", all("702.7(A)"), silent, memory, practice},
    Citation{"panel-sign/generator-inlet", all("702.7(C)"), silent, memory, practice},
    Citation{"panel-sign/single-120-volt", all("710.15(C)"), silent, memory, practice},
    Citation{"panel-sign/interactive-source", all("705.10"), all("84-030"), memory, memory},
    Citation{"panel-sign/far-source",
             {"705.12(B)(2)(3)(b)", "705.12(B)(3)(2)", "705.12(B)(2)"},
             all("64-112(4)"),
             seen,
             memory},
    Citation{"panel-sign/continuous-load", silent, all("2-100(4)"), practice, seen},
    Citation{"panel-hang", all("240.81"), silent, memory, practice},
    Citation{"panel-208-heat", silent, silent, practice, practice},
    Citation{"panel-feeder-wires", silent, silent, practice, practice},
    Citation{"panel-sub-neutral", all("250.142(B) (number from memory)"), all("10-210 (number from memory)"), memory,
             memory},
    Citation{"panel-neutral-terminals", all("408.41"), silent, seen, practice},
    Citation{"panel-outbuilding", all("225.30"), silent, seen, practice},
    Citation{"panel-no-room", silent, silent, practice, practice},
    Citation{"panel-legs-uneven", silent, silent, practice, practice},
    Citation{"panel-main-overloaded", silent, all("8-104(1)"), practice, seen},

    Citation{"dir-unnamed", all("408.4(A)"), all("2-100(3)"), seen, seen},
    Citation{"dir-vague", all("408.4(A)"), all("2-100(3)"), seen, seen},
    Citation{"dir-duplicate", all("408.4(A)"), all("2-100(3)"), seen, seen},
    Citation{"dir-person", all("408.4(A)"), silent, seen, practice},
    Citation{"dir-name-too-long", silent, silent, practice, practice},
    Citation{"dir-no-letter", silent, silent, practice, practice},

    Citation{"need-kitchen", all("210.11(C)(1), 210.52(B)(3)"), all("26-654, 26-722(d) (numbers from memory)"), seen,
             seen},
    Citation{"need-kitchen/split", silent, all("26-722(d)"), practice, seen},
    Citation{"need-laundry", all("210.11(C)(2), 210.52(F)"), all("26-654, 26-720(e) (numbers from memory)"), seen,
             memory},
    Citation{"need-bath", all("210.11(C)(3), 210.52(D)"), all("26-720(f)"), seen, seen},
    Citation{"need-garage", all("210.11(C)(4), 210.52(G)(1)"), all("26-656, 26-724 (numbers from memory)"), seen,
             memory},
    Citation{"need-outdoor", all("210.52(E)(1)"), all("26-656, 26-724(a) (numbers from memory)"), memory, memory},
    Citation{"need-kitchen-share", all("210.52(B)(2)"), all("26-654 (number from memory)"), memory, seen},
    Citation{"need-dedicated", silent, silent, practice, practice},
    Citation{"need-dedicated/central-heating", all("422.12"), all("26-806 (number from memory)"), seen, memory},
    Citation{"need-dedicated/vehicle-charger", all("625.40"), all("86-300 (number from memory)"), memory, memory},
    Citation{"need-dedicated/refrigerator", silent, all("26-654 (number from memory)"), practice, memory},
    Citation{"need-dedicated/microwave", silent, all("26-654 (number from memory)"), practice, memory},
    Citation{"need-dedicated/central-vacuum", silent, all("26-654 (number from memory)"), practice, seen},
    Citation{"need-dedicated/heating", silent, all("62-108 (number from memory)"), practice, memory},
    Citation{"gfci-needed", all("210.8(A)"), all("26-704"), seen, seen},
    Citation{"gfci-needed/elsewhere", all("210.8(B)"), silent, memory, practice},
    Citation{"gfci-needed/bathroom", all("210.8(A)(1)"), all("26-704"), seen, seen},
    Citation{"gfci-needed/garage", all("210.8(A)(2)"), silent, seen, practice},
    Citation{"gfci-needed/outdoor", all("210.8(A)(3)"), all("26-704"), seen, seen},
    Citation{"gfci-needed/crawl-space", all("210.8(A)(4)"), silent, seen, practice},
    Citation{"gfci-needed/basement", all("210.8(A)(5)"), silent, seen, practice},
    Citation{"gfci-needed/kitchen", all("210.8(A)(6)"), silent, seen, practice},
    Citation{"gfci-needed/sink", {"210.8(A)(7)", "210.8(A)(7)", "210.8(A)(8)"}, all("26-704"), seen, seen},
    Citation{"gfci-needed/boathouse", {"210.8(A)(8)", "210.8(A)(8)", "210.8(A)(9)"}, silent, seen, practice},
    Citation{"gfci-needed/laundry", {"210.8(A)(10)", "210.8(A)(10)", "210.8(A)(11)"}, silent, seen, practice},
    Citation{"gfci-needed/outdoor-outlets", {"", "210.8(F)", "210.8(F)"}, silent, seen, practice},
    Citation{"gfci-needed/appliance", {"210.8(D)", "210.8(D), 422.5(A)", "210.8(D)"}, silent, memory, practice},
    Citation{"gfci-needed/heated-floor", all("424.44 (number from memory)"), silent, memory, practice},
    Citation{"gfci-needed/crawl-space-lights",
             {"210.8(E) (number from memory)", "210.8(C) (number from memory)", "210.8(C) (number from memory)"},
             silent,
             memory,
             practice},
    Citation{"gfci-needed/vehicle-charger", all("625.54 (number from memory)"), silent, memory, practice},
    Citation{"gfci-needed/boat-hoist",
             {"210.8(C) (number from memory)", "555.9 (number from memory)", "555.9 (number from memory)"},
             silent,
             memory,
             practice},
    Citation{"gfci-needed/hot-tub", all("680.44 (number from memory)"), all("68-068 (number from memory)"), memory,
             memory},
    Citation{"gfci-needed/heating-near-tub", silent, all("Section 62"), practice, seen},
    Citation{"afci-needed",
             {"210.12(A)", "210.12(A)", "210.12(B)"},
             all("26-656, 26-658 (numbers from memory)"),
             seen,
             seen},
    Citation{"need-neutral-at-switch", all("404.2(C)"), all("4-022 (number from memory)"), seen, seen},

    Citation{"job-unknown", silent, silent, practice, practice},
    Citation{"job-assumed", silent, silent, practice, practice},
    Citation{"job-accept-unused", silent, silent, practice, practice},

    // Of rules that are explained and not checked yet.
    Citation{"box-full", {"314.16(B)", "314.16(B)(1)", "314.16(B)(1)"}, all("12-3034"), seen, seen},
    Citation{"box-mixed", all("725.136"), all("12-3030"), seen, seen},
    Citation{"run-hole", all("300.4(A)"), all("12-516"), seen, seen},
    Citation{"run-support", all("334.30"), all("12-510"), seen, seen},
    Citation{"run-bundle",
             {"310.15(B)(3)(a), 334.80", "310.15(C)(1), 334.80", "310.15(C)(1), 334.80"},
             all("4-004, Table 5C"),
             seen,
             seen},
    Citation{"dc-fuse", all("240.4"), all("14-104"), practice, practice},
    Citation{"dc-drop", silent, all("8-102"), practice, seen},
    Citation{"tape-dc", all("210.5(C)(2)"), silent, seen, practice},
};

constexpr auto kCitations = [] {
    std::array<Citation, kRuleCitations.size() + kLoadCitations.size()> both{};
    std::ranges::copy(kLoadCitations, std::ranges::copy(kRuleCitations, both.begin()).out);
    return both;
}();

Citation const* row(std::string_view topic) {
    auto const at = std::ranges::find(kCitations, topic, &Citation::topic);
    return at == kCitations.end() ? nullptr : &*at;
}
} // namespace

std::span<Citation const> citations() { return kCitations; }
bool has_citation(std::string_view topic) { return row(topic) != nullptr; }

Reference cite(CodeBook const& book, std::string_view topic) {
    Citation const* found = row(topic);
    assert(found && "a topic without a row in the table above");
    if (!found) found = row(topic.substr(0, topic.find('/')));
    if (!found) return {std::string(book.edition), {}, Source::practice};
    bool const nec = book.family == Family::nec;
    auto const section = (nec ? found->nec : found->ce)[book.column];
    return {std::string(book.edition), std::string(section), nec ? found->nec_source : found->ce_source};
}

} // namespace legwork
