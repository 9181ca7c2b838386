// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Keys that are read and do nothing yet. Who typed them counts on them, so silence would be a lie.
#include "rules/job/list.h"
#include "words/spoken.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// One row a key, until it does something: then its row goes. `said`: what it stands at, by mark or name; [""] at the
// head of the file; empty where nobody typed it.
using Names = std::vector<std::string>;
struct IdleKey {
    std::string_view key, would; // what becomes of it; empty of the language, which is told by sheet
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

constexpr std::string_view kNameUnsaid = "no sheet is in that language", kUncut = "no length is cut by it",
                           kUnjudged = "nothing is judged by it";
// Languages of the job, and of each those sheets that do not speak it: all of them when it is not the first.
struct Silent {
    std::string language;
    std::vector<std::string> sheets;
};
std::vector<Silent> silent_in(Building const& b) {
    std::vector<Silent> all;
    for (std::string const& l : b.languages) {
        Silent silent{l, {}};
        for (SpokenSheet const& s : spoken_sheets())
            if (spoken(s.name, b.languages).language() != l) silent.sheets.emplace_back(s.name);
        if (l != english().language() && !silent.sheets.empty()) all.push_back(std::move(silent));
    }
    return all;
}
bool is_spoken(Building const& b, std::string_view language) {
    return std::ranges::any_of(
        spoken_sheets(), [&](SpokenSheet const& s) { return spoken(s.name, b.languages).language() == language; });
}

// "only the directory is in \"fr\": the other sheets are in English"
std::string spoken_words(Building const& b) {
    std::vector<std::string> all;
    for (auto const& [language, sheets] : silent_in(b)) {
        std::vector<std::string> others;
        for (SpokenSheet const& s : spoken_sheets())
            if (std::ranges::count(sheets, s.name) == 0) others.emplace_back(s.name);
        if (language != b.languages.front())
            all.push_back(fmt::format("no sheet is in \"{}\", since sheets speak the first language", language));
        else if (others.empty())
            all.push_back(fmt::format("no sheet is in \"{}\" yet: they are in English", language));
        else
            all.push_back(
                fmt::format("only the {1} is in \"{0}\": the other sheets are in English", language, listed(others)));
    }
    return fmt::format("{}", fmt::join(all, ", and "));
}

constexpr std::array kIdle{
    IdleKey{"language", "", [](Building const& b) { return at_head(!silent_in(b).empty()); }},
    IdleKey{"name_fr", kNameUnsaid,
            [](Building const& b) {
                return circuits(b, [&](Circuit const& c) { return !c.name_fr.empty() && !is_spoken(b, "fr"); });
            },
            true},
    IdleKey{"name_es", kNameUnsaid,
            [](Building const& b) {
                return circuits(b, [&](Circuit const& c) { return !c.name_es.empty() && !is_spoken(b, "es"); });
            },
            true},
    IdleKey{"tails", kUncut, [](Building const& b) { return at_head(b.tails.has_value()); }},
    IdleKey{"loop", kUncut, [](Building const& b) { return at_head(b.loop.has_value()); }},
    IdleKey{"runs_with", "situations say what runs together",
            [](Building const& b) { return circuits(b, [](Circuit const& c) { return !c.runs_with.empty(); }); }, true},
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

// "tails (no length is cut by it)", "name_fr of K1 and K2 (no sheet is in that language)"
std::string words(Building const& b, IdleKey const& idle, Names const& names) {
    return fmt::format("{}{} ({})", idle.key, names == Names{""} ? "" : " of " + listed(names),
                       idle.would.empty() ? spoken_words(b) : std::string(idle.would));
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
        all.push_back(words(c.building, idle, names));
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
