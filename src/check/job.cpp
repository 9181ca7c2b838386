// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/say.h"
#include "check/themes.h"
#include "codebook/uses.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct ToMeasure {
    std::string_view key, what, how;
};
// In the order of a walk: at the panel, then along the cable.
constexpr std::array kOfCircuits{
    ToMeasure{"breaker", "the breaker's rating", "read it on the breaker's handle"},
    ToMeasure{"poles", "its number of poles", "see whether one handle or two take it off"},
    ToMeasure{"space", "its space", "trace it with the breaker off, and write the number beside the breaker"},
    ToMeasure{"cable", "the cable", "read the print on its jacket in the panel, power off"},
    ToMeasure{"segments", "the cables of its run", "read the print on each jacket at the boxes, power off"},
    ToMeasure{"colors", "the colours in its cable", "open the box at its end, power off, and write them down"},
    ToMeasure{"length", "the length of the cable", "walk the run with a tape, panel to box, bends and drops included"},
    ToMeasure{"load", "the load",
              "add up the nameplates, or clamp the hot with everything of it running and write `measured`"},
    ToMeasure{"measured", "the current", "clamp the hot with everything of it running"},
    ToMeasure{"mca", "the minimum circuit ampacity", "read it on the unit's nameplate"},
    ToMeasure{"mop", "the largest fuse or breaker", "read it on the unit's nameplate"},
    ToMeasure{"outlets", "the receptacle types", "look at the slots; the type is moulded into the face"},
    ToMeasure{"outlet_count", "how many outlets it has", "switch it off and count what is dead"},
    ToMeasure{"hot", "which wire is its hot", "look at the breaker's terminal"},
    ToMeasure{"box", "its first box", "follow the cable from the panel"},
};
constexpr std::array kOfPanels{
    ToMeasure{"main", "the main's rating", "read it on the main's handle"},
    ToMeasure{"bus", "the bus rating", "read it on the label in the panel's door"},
    ToMeasure{"output", "the source's output", "read it on its nameplate"},
    ToMeasure{"spaces", "the number of spaces", "count the positions of the bus, filled or not"},
    ToMeasure{"tandem", "which spaces take half-size breakers", "read it on the label in the panel's door"},
};

template <class Rows>
std::string how_to(Rows const& rows, std::string_view key) {
    auto const at = std::ranges::find(rows, key, &ToMeasure::key);
    if (at == rows.end()) return fmt::format("`{}`: look it up on the spot", key);
    return fmt::format("{}: {}", at->what, at->how);
}

bool has(std::vector<std::string> const& keys, std::string_view key) {
    return std::ranges::find(keys, key) != keys.end();
}

// What hangs on the circuit decides which figures it must have.
struct Needs {
    bool cable = true, load = true;
};
Needs needs_of(Job const& job, Circuit const& c) {
    Use const* use = use_named(c.use);
    bool const no_load_of_its_own = use && (use->source || use->demand == Demand::none);
    Needs needs;
    if (c.use == "spare" || c.use == "main" || c.use == "surge protector") needs.cable = false;
    needs.load = !no_load_of_its_own && !fed_panel(job, c) && !c.off;
    return needs;
}

std::vector<std::string> missing_keys(Job const& job, Circuit const& c) {
    std::vector<std::string> keys;
    auto const add = [&](std::string_view key) {
        if (!has(keys, key)) keys.emplace_back(key);
    };
    auto const needs = needs_of(job, c);
    if (!c.breaker && c.use != "spare") add("breaker");
    Circuit const* mate = partner(job, c);
    auto const& run = c.run.empty() && mate ? mate->run : c.run;
    bool const no_kind = run.empty() || std::ranges::any_of(run, [](Segment const& s) { return s.kind.empty(); });
    bool const no_length = run.empty() || std::ranges::any_of(run, [](Segment const& s) { return !s.length; });
    if (needs.cable && no_kind) add("cable");
    if (needs.cable && no_length) add("length");
    if (needs.load && !c.load && !c.measured) add("load");
    for (std::string const& key : c.asked)
        if (key != "name" && key != "room" && !(key == "load" && c.measured)) add(key);
    return keys;
}

template <class Rows>
std::string list_of(Rows const& rows, std::vector<std::string> keys) {
    auto const rank = [&](std::string const& k) { return std::ranges::find(rows, k, &ToMeasure::key); };
    std::ranges::stable_sort(keys, {}, rank);
    std::string all;
    for (std::string const& k : keys) all += (all.empty() ? "" : "; ") + how_to(rows, k);
    return all;
}

// "the cable and the load"
template <class Rows>
std::string names_of(Rows const& rows, std::vector<std::string> const& keys) {
    std::vector<std::string> names;
    for (ToMeasure const& row : rows)
        if (has(keys, row.key)) names.emplace_back(row.what);
    for (std::string const& k : keys)
        if (std::ranges::find(rows, k, &ToMeasure::key) == rows.end()) names.push_back("`" + k + "`");
    return listed(names);
}

Findings job_unknown(Case const& c) {
    Findings found;
    auto const say = [&](Where where, std::string const& who, std::string const& names, std::string const& list) {
        auto f = finding(c, "job-unknown", Severity::note, std::move(where));
        f.message = fmt::format("Of {} this is not known: {}. What hangs on it was not judged", who, names);
        f.fix = "Go and find out: " + list;
        found.push_back(std::move(f));
    };
    for (Panel const& p : c.job.panels)
        if (!p.asked.empty())
            say({p.name, {}, p.asked.front()}, fmt::format("panel \"{}\"", p.name), names_of(kOfPanels, p.asked),
                list_of(kOfPanels, p.asked));
    for (Circuit const& circuit : c.job.circuits) {
        auto const keys = missing_keys(c.job, circuit);
        if (!keys.empty())
            say(about(circuit, keys.front()), circuit.mark, names_of(kOfCircuits, keys), list_of(kOfCircuits, keys));
    }
    for (Cable const& cable : c.job.cables) {
        auto keys = cable.asked;
        if (cable.kind.empty() && !has(keys, "kind")) keys.emplace_back("kind");
        if (!cable.length && !has(keys, "length")) keys.emplace_back("length");
        if (!keys.empty())
            say({"", {cable.mark}, keys.front()}, "cable " + cable.mark, names_of(kOfCircuits, keys),
                list_of(kOfCircuits, keys));
    }
    return found;
}

Findings job_assumed(Case const& c) {
    Findings found;
    Where guessed{"", {}, "name"};
    std::vector<std::pair<std::string, std::vector<std::string>>> by_use; // in the order of the file
    for (Circuit const& circuit : c.job.circuits) {
        if (!circuit.use_guessed || circuit.use.empty()) continue;
        guessed.circuits.push_back(circuit.mark);
        auto at = std::ranges::find_if(by_use, [&](auto const& group) { return group.first == circuit.use; });
        if (at == by_use.end()) at = by_use.insert(at, {circuit.use, {}});
        at->second.push_back(circuit.mark);
    }
    if (!by_use.empty()) {
        std::string all;
        for (auto const& [use, marks] : by_use)
            all += fmt::format("{}{} as {}", all.empty() ? "" : "; ", listed(marks), use);
        auto f = finding(c, "job-assumed", Severity::note, guessed);
        f.message = fmt::format("Taken from the names: {}", all);
        f.fix = "Write `use` where this is wrong; loads, wires and protection are judged by it";
        found.push_back(std::move(f));
    }
    if (!c.job.dwelling) {
        auto f = finding(c, "job-assumed", Severity::note, {});
        f.message =
            "The job has no [dwelling] table, so it was taken for no dwelling: arc-fault protection and the circuits "
            "that a dwelling must have were not checked";
        f.fix = "If people live or sleep there, add [dwelling] with its area";
        found.push_back(std::move(f));
    }
    return found;
}

constexpr Rule kRules[] = {
    {"job-assumed", "What was taken for granted is said aloud.",
     "A use guessed from a name decides which rules apply, and a job without a [dwelling] table is spared those of a "
     "home. If the guess is wrong, so is the verdict.",
     "Read the list once; write `use`, or the [dwelling] table, where it is wrong.", job_assumed},
    {"job-unknown", "Every figure that the verdict hangs on is known.",
     "What is not known counts as nothing in the balance and is not judged: an unknown load is no light load, and an "
     "unknown cable is no large one.",
     "Go and look: breaker handles, cable jackets, nameplates, a clamp meter, a tape. Write what you find in place of "
     "\"?\".",
     job_unknown},
    {"job-accept-unused", "Every [[accept]] of the job covers a finding that stands.",
     "An acceptance outlives its fault. Left in the file it would hide the same fault when it comes back in another "
     "year, and nobody would know that it was never looked at.",
     "Take the [[accept]] out once the fault is put right, or correct the circuit or panel that it names.", nullptr},
};
} // namespace

std::span<Rule const> job_rules() { return kRules; }

} // namespace legwork
