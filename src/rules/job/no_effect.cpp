// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Keys that are read and do nothing yet. Who typed them counts on them, so silence would be a lie.
#include "rules/job/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// One row a key, until it does something: then its row goes. `said`: what it stands at, by mark or name; [""] at the
// head of the file; empty where nobody typed it.
using Names = std::vector<std::string>;
struct IdleKey {
    std::string_view key, would; // what becomes of it
    Names (*said)(Building const&);
    bool of_circuits = false;
};
Names at_head(bool said) { return said ? Names{""} : Names{}; }

template <class List, class Name, class Said>
Names those(List const& list, Name name, Said said) {
    Names found;
    for (auto const& one : list)
        if (said(one)) found.push_back(one.*name);
    return found;
}
template <class Said>
Names circuits(Building const& b, Said said) {
    return those(b.circuits, &Circuit::mark, said);
}
template <class Said>
Names boxes(Building const& b, Said said) {
    return those(b.boxes, &WiringBox::name, said);
}

constexpr std::string_view kEnglish =
                               "of the sheets only the directory speaks another one, French where it is named first",
                           kUnshown = "the directory is not in that language", kUncut = "no length is cut by it",
                           kUnjudged = "nothing is judged by it";
constexpr std::array kIdle{
    IdleKey{"language", kEnglish,
            [](Building const& b) {
                return at_head(std::ranges::any_of(b.languages, [](std::string const& l) { return l != "en"; }));
            }},
    IdleKey{"name_fr", kUnshown,
            [](Building const& b) {
                bool const shown = !b.languages.empty() && b.languages.front() == "fr";
                return circuits(b, [&](Circuit const& c) { return !shown && !c.name_fr.empty(); });
            },
            true},
    IdleKey{"name_es", kUnshown,
            [](Building const& b) { return circuits(b, [](Circuit const& c) { return !c.name_es.empty(); }); }, true},
    IdleKey{"tails", kUncut, [](Building const& b) { return at_head(b.tails.has_value()); }},
    IdleKey{"loop", kUncut, [](Building const& b) { return at_head(b.loop.has_value()); }},
    IdleKey{"runs_with", "situations say what runs together",
            [](Building const& b) { return circuits(b, [](Circuit const& c) { return !c.runs_with.empty(); }); }, true},
    IdleKey{"supply", kUnjudged,
            [](Building const& b) {
                return those(b.situations, &Situation::name, [](Situation const& s) { return s.supply != nullptr; });
            }},
    IdleKey{"size", kUnjudged,
            [](Building const& b) { return boxes(b, [](WiringBox const& box) { return !box.size.empty(); }); }},
    IdleKey{"volume", kUnjudged,
            [](Building const& b) { return boxes(b, [](WiringBox const& box) { return box.volume.has_value(); }); }},
    IdleKey{"devices", kUnjudged,
            [](Building const& b) { return boxes(b, [](WiringBox const& box) { return !box.devices.empty(); }); }},
    IdleKey{"clamps", kUnjudged,
            [](Building const& b) { return boxes(b, [](WiringBox const& box) { return box.clamps.has_value(); }); }},
    IdleKey{"carries", kUnjudged,
            [](Building const& b) {
                return those(b.runs, &Run::mark, [](Run const& r) { return !r.of_circuit && !r.carries.empty(); });
            }},
    IdleKey{"role", kUnjudged,
            [](Building const& b) {
                return those(b.runs, &Run::mark, [](Run const& r) { return r.role != RunRole::unsaid; });
            }},
};

// "tails (no length is cut by it)", "name_fr of K1 and K2 (the directory is not in that language)"
std::string words(IdleKey const& idle, Names const& names) {
    return fmt::format("{}{} ({})", idle.key, names == Names{""} ? "" : " of " + listed(names), idle.would);
}

Verdict judge(Case const& c) {
    Inspection seen;
    Where where;
    Names all;
    for (IdleKey const& idle : kIdle) {
        auto const names = idle.said(c.building);
        if (names.empty()) continue;
        seen.looked();
        if (all.empty() || (idle.of_circuits && where.circuits.empty())) where.key = idle.key; // where it points
        if (idle.of_circuits)
            for (std::string const& mark : names)
                if (std::ranges::find(where.circuits, mark) == where.circuits.end()) where.circuits.push_back(mark);
        all.push_back(words(idle, names));
    }
    if (all.empty()) return seen.verdict();
    auto f = finding(c, job_no_effect, Gravity::usual, where, {}, false);
    f.message = fmt::format("Read, and without effect yet: {}", fmt::join(all, "; "));
    f.fix = "Do not count on it; it may stay in the file";
    seen.found(std::move(f));
    return seen.verdict();
}
} // namespace

constinit Rule const job_no_effect{
    .id = "job-no-effect",
    .asks = "What the file says has an effect, or it is said that it has none yet.",
    .why = "A length of slack that is asked for and not reckoned, or a second language that no sheet speaks, is missed "
           "only when the cable is cut or the sheet is on the wall.",
    .remedy = "Leave the key in the file if you like, and do by hand what it says.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
