// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/job/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// The marks of each use that was guessed, in the order of the file.
std::vector<std::pair<Use const*, std::vector<std::string>>> guessed_uses(Building const& building) {
    std::vector<std::pair<Use const*, std::vector<std::string>>> by_use;
    for (Circuit const& circuit : building.circuits) {
        if (!circuit.use_guessed || !circuit.use) continue;
        auto at = std::ranges::find_if(by_use, [&](auto const& group) { return group.first == circuit.use; });
        if (at == by_use.end()) at = by_use.insert(at, {circuit.use, {}});
        at->second.push_back(circuit.mark);
    }
    return by_use;
}

void judge_uses(Case const& c, Inspection& seen) {
    Where guessed{"", {}, "name"};
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.use) continue;
        seen.looked();
        if (circuit.use_guessed) guessed.circuits.push_back(circuit.mark);
    }
    if (guessed.circuits.empty()) return;
    std::string all;
    for (auto const& [use, marks] : guessed_uses(c.building))
        all += fmt::format("{}{} as {}", all.empty() ? "" : "; ", listed(marks), use->name);
    auto f = finding(c, job_assumed, Gravity::usual, guessed);
    f.message = fmt::format("Taken from the names: {}", all);
    f.fix = "Write `use` where this is wrong; loads, wires and protection are judged by it";
    seen.found(std::move(f));
}

// Where cables run, as far as names alone tell.
void judge_places(Case const& c, Inspection& seen) {
    std::vector<Circuit const*> outdoors;
    for (Run const& run : c.building.runs)
        for (Circuit const* circuit : run.carries)
            if (run.of_circuit && run.piece.where_guessed && std::ranges::find(outdoors, circuit) == outdoors.end())
                outdoors.push_back(circuit);
    if (outdoors.empty()) return;
    std::vector<std::string> marks;
    for (Circuit const* circuit : outdoors) marks.push_back(circuit->mark);
    auto f = finding(c, job_assumed, Gravity::usual, about(outdoors, "name"));
    f.message = fmt::format("The cable of {} is taken to run outdoors, as the names say", listed(marks));
    f.fix = "Write `where` (\"dry\", \"outdoors\", \"buried\"): what cable may lie there is judged by it";
    seen.found(std::move(f));
}

void judge_dwelling(Case const& c, Inspection& seen) {
    seen.looked();
    if (c.building.dwelling) return;
    auto f = finding(c, job_assumed, Gravity::usual, {});
    f.message = "The job has no [dwelling] table, so it was taken for no dwelling: arc-fault protection and the "
                "circuits that a "
                "dwelling must have were not checked";
    f.fix = "If people live or sleep there, add [dwelling] with its area";
    seen.found(std::move(f));
}

Verdict judge(Case const& c) {
    Inspection seen;
    judge_uses(c, seen);
    judge_places(c, seen);
    judge_dwelling(c, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const job_assumed{
    .id = "job-assumed",
    .asks = "What was taken for granted is said aloud.",
    .why = "A use guessed from a name decides which rules apply, and a job without a [dwelling] table is spared those "
           "of a home. If the guess is wrong, so is the verdict.",
    .remedy = "Read the list once; write `use`, or the [dwelling] table, where it is wrong.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
