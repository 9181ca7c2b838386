// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/naming.h"
#include "check/say.h"
#include "check/themes.h"
#include "codebook/demands.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

namespace {
bool is_spare(typed::Circuit const& c) { return c.use == "spare"; } // its line in the directory says SPARE
bool has_name(typed::Circuit const& c) { return c.name.find_first_not_of(" \t\r\n") != std::string::npos; }

std::string quoted(typed::Circuit const& c) {
    return c.room.empty() ? fmt::format("\"{}\"", c.name) : fmt::format("\"{}\", {}", c.name, c.room);
}

Findings dir_unnamed(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (has_name(circuit) || is_spare(circuit)) continue;
        auto f = finding(c, "dir-unnamed", Severity::error, about(circuit, "name"));
        f.message = fmt::format("{} has no name, so its line of the directory would be blank", circuit.mark);
        f.fix =
            "Write what it feeds and where, for instance name = \"Receptacles, north wall\" and room = \"Loft\"; for a "
            "breaker without a wire, use = \"spare\"";
        found.push_back(std::move(f));
    }
    return found;
}

Findings dir_vague(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (!has_name(circuit) || is_spare(circuit) || circuit.use == "main") continue;
        auto [thing, place] = says(circuit.name, circuit.room);
        thing = thing || fed_panel(c.job, circuit);
        if (thing && place) continue;
        auto f = finding(c, "dir-vague", Severity::warning, about(circuit, "name"));
        auto const what = quoted(circuit);
        if (thing) {
            f.message = fmt::format("{} is called {}: it says what, but not where", circuit.mark, what);
            f.fix = fmt::format("Say the place too, in the name or as `room` (\"{}\" in room \"Loft\" is enough)",
                                circuit.name);
        } else if (place) {
            f.message = fmt::format("{} is called {}: it says where, but not what", circuit.mark, what);
            f.fix = fmt::format("Say what it feeds there (\"{}: receptacles\", \"{}: lights\")", circuit.name,
                                circuit.name);
        } else {
            f.message = fmt::format("{} is called {}: it says neither what it feeds nor where", circuit.mark, what);
            f.fix = "Write what it feeds and where (\"Receptacles, north wall\" in room \"Loft\")";
        }
        found.push_back(std::move(f));
    }
    return found;
}

Findings dir_duplicate(Case const& c) {
    std::map<std::string, std::vector<typed::Circuit const*>> same;
    std::vector<std::string> order;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (!has_name(circuit) || is_spare(circuit)) continue;
        auto const words = reads_as(circuit.name);
        auto const key = circuit.panel + '\n' + (words.empty() ? circuit.name : words) + '\n' + reads_as(circuit.room);
        if (same[key].empty()) order.push_back(key);
        same[key].push_back(&circuit);
    }
    Findings found;
    for (auto const& key : order) {
        auto const& alike = same[key];
        if (alike.size() < 2) continue;
        Where where{alike.front()->panel, {}, "name"};
        for (typed::Circuit const* one : alike) where.circuits.push_back(one->mark);
        auto f = finding(c, "dir-duplicate", Severity::warning, where);
        f.message =
            fmt::format("{} read the same in the directory: {}", listed(where.circuits), quoted(*alike.front()));
        f.fix = "Say what tells them apart: the wall, the side, the thing it feeds";
        found.push_back(std::move(f));
    }
    return found;
}

Findings dir_person(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (is_spare(circuit)) continue;
        auto person = person_in(circuit.name);
        bool const in_room = !person || !person->sure;
        if (auto const other = person_in(circuit.room); in_room && other && (!person || other->sure)) person = other;
        if (!person) continue;
        bool const forbidden = person->sure && demands(c.book).names_outlive_people && !circuit.existing;
        auto f = finding(c, "dir-person", forbidden ? Severity::error : Severity::warning,
                         about(circuit, person_in(circuit.name) ? "name" : "room"));
        f.message = person->sure
                        ? fmt::format("{} is named after somebody (\"{}\"): it is true only while they live there",
                                      circuit.mark, person->words)
                        : fmt::format("{} seems to be named after somebody (\"{}\"): will the next people know?",
                                      circuit.mark, person->words);
        f.fix = "Name the room by its place or its lasting use (\"Bedroom, north-east corner\", \"Guest room\")";
        found.push_back(std::move(f));
    }
    return found;
}

// id, what it asks, why, the usual remedy, the function. `explain` reads these aloud.
constexpr Rule kRules[] = {
    {"dir-unnamed", "Every circuit has a name.",
     "Somebody will stand at the panel in a hurry, or in the dark. A breaker without a name is switched off by trial, "
     "and "
     "everything else with it.",
     "Write what the circuit feeds and where. A breaker without a wire is `use = \"spare\"`.", dir_unnamed},
    {"dir-vague", "Name and room together say what a circuit feeds and where.",
     "\"Lights\" or \"Bedroom\" tells a stranger half of it. The codes ask for enough detail to tell each circuit from "
     "all others.",
     "Name the thing and the place: \"Lights\" in room \"Loft\", \"Receptacles, north wall\". What there is only one "
     "of "
     "(\"Dishwasher\") needs no place.",
     dir_vague},
    {"dir-duplicate", "No two circuits of a panel read the same.",
     "Two lines that say \"Bedroom\" mean that the one switched off is the wrong one half of the time.",
     "Add what tells them apart: the wall, the side, the floor, the thing.", dir_duplicate},
    {"dir-person", "No name depends on who lives there.",
     "\"Rosa's room\" is a riddle once Rosa has moved out. The NEC forbids descriptions that depend on who occupies "
     "the "
     "place; under the CE Code it is good practice.",
     "Name the room by where it is or by what it is for as long as it stands: \"Bedroom, north-east corner\", \"Men's "
     "washroom\".",
     dir_person},
    {"dir-name-too-long", "Each name fits its line of the form at the smallest size that can be read.",
     "A name that is cut off, or printed too small to read at arm's length, does not say what the breaker feeds.",
     "Shorten the name, move the place to `room` or the remark to `note`, or choose a larger form.", nullptr},
    {"dir-no-letter", "Every letter on the sheets is in the bundled typeface or in one of this machine's.",
     "A letter that no typeface has prints as a box with a number in it, which nobody at the panel can read.",
     "Write it in letters that print, or install a typeface that has them and print again.", nullptr},
};
} // namespace

std::span<Rule const> directory_rules() { return kRules; }

} // namespace legwork
