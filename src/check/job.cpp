// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/measure.h"
#include "check/say.h"
#include "check/themes.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string who(ToMeasure const& m) {
    switch (m.thing) {
    case Thing::panel: return fmt::format("panel \"{}\"", m.id);
    case Thing::supply: return fmt::format("source \"{}\"", m.id);
    case Thing::cable: return "cable " + m.id;
    case Thing::dwelling: return "the dwelling";
    case Thing::job: return "the job";
    default: return m.id;
    }
}

// The finding's place: of a source the panel that it feeds.
Where where(ToMeasure const& m) {
    if (m.thing == Thing::circuit) return {m.panel, {m.id}, m.key};
    if (m.thing == Thing::cable) return {"", {m.id}, m.key};
    if (m.thing == Thing::supply) return {m.panel, {}, "supplies"};
    return {m.panel, {}, m.key};
}

std::string what(ToMeasure const& m) { return m.how.what.empty() ? "`" + m.key + "`" : std::string(m.how.what); }

std::string how(ToMeasure const& m) {
    return what(m) + ": " + (m.how.how.empty() ? "look it up on the spot" : std::string(m.how.how));
}

// All figures of one thing in one note.
Findings job_unknown(Case const& c) {
    Findings found;
    auto const all = to_measure(c);
    for (auto first = all.begin(); first != all.end();) {
        auto const last = std::find_if(
            first, all.end(), [&](ToMeasure const& m) { return m.thing != first->thing || m.id != first->id; });
        std::vector<std::string> names, ways;
        ToMeasure const* lead = nullptr;
        for (auto m = first; m != last; ++m) {
            if (!m->noted) continue;
            if (!lead) lead = &*m;
            names.push_back(what(*m));
            ways.push_back(how(*m));
        }
        if (lead) {
            auto f = finding(c, "job-unknown", Severity::note, where(*lead));
            f.message =
                fmt::format("Of {} this is not known: {}. What hangs on it was not judged", who(*lead), listed(names));
            f.fix = fmt::format("Go and find out: {}", fmt::join(ways, "; "));
            found.push_back(std::move(f));
        }
        first = last;
    }
    return found;
}

Findings job_assumed(Case const& c) {
    Findings found;
    Where guessed{"", {}, "name"};
    std::vector<std::pair<std::string, std::vector<std::string>>> by_use; // in the order of the file
    for (typed::Circuit const& circuit : c.job.circuits) {
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
