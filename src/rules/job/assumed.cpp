// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/source_words.h"
#include "rules/directory/naming.h"
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

// "L1 and L2 as lighting; K1 as kitchen counter"
std::string uses_taken(Building const& building) {
    std::string all;
    for (auto const& [use, marks] : guessed_uses(building))
        all += fmt::format("{}{} as {}", all.empty() ? "" : "; ", listed(marks), use->name);
    return all;
}

// Somebody whom a name or a room seems to mean, without saying so for sure.
std::optional<PersonInName> guessed_person(Circuit const& circuit) {
    if (!circuit.listed || circuit.is_spare()) return std::nullopt;
    for (auto const& text : {circuit.name, circuit.room})
        if (auto person = person_in(text); person && !person->sure) return person;
    return std::nullopt;
}

// One note for all that was taken from the words of names.
void judge_names(Case const& c, Inspection& seen) {
    Where guessed{"", {}, "name"};
    std::vector<std::string> persons;
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.use) seen.looked();
        auto const person = guessed_person(circuit);
        if (person) persons.push_back(fmt::format("\"{}\" ({})", person->words, circuit.mark));
        if (circuit.use_guessed || person) guessed.circuits.push_back(circuit.mark);
    }
    if (guessed.circuits.empty()) return;
    auto const uses = uses_taken(c.building);
    auto f = finding(c, job_assumed, Gravity::usual, guessed);
    f.message = "Taken from the names: " + uses;
    if (!persons.empty())
        f.message += fmt::format("{}{} as somebody who lives there", uses.empty() ? "" : "; ", listed(persons));
    if (!uses.empty()) f.fix = "Write `use` where this is wrong; loads, wires and protection are judged by it";
    if (!persons.empty())
        f.fix += fmt::format("{}Where nobody is meant, accept dir-person for that circuit, with the reason",
                             uses.empty() ? "" : ". ");
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

// The name of the job, of a panel or a building, or where a panel is fed from, that reads so; empty when none does.
std::string wheeled_name(Building const& building) {
    if (is_on_wheels(building.name)) return building.name;
    for (Panel const& p : building.panels)
        for (std::string const* words : {&p.name, &p.building, &p.fed_from})
            if (is_on_wheels(*words)) return *words;
    return {};
}

void judge_wheels(Case const& c, Inspection& seen) {
    auto const name = wheeled_name(c.building);
    if (name.empty()) return;
    auto f = finding(c, job_assumed, Gravity::usual, {});
    f.message =
        fmt::format("\"{}\" reads like a trailer or a park model, and was judged like a building: other rules may "
                    "hold there, and none of them is checked (NEC Articles 551 and 552; CSA Z240)",
                    name);
    f.fix = "Ask which rules it is inspected by before the wires are bought";
    seen.found(std::move(f));
}

Verdict judge(Case const& c) {
    Inspection seen;
    judge_names(c, seen);
    judge_places(c, seen);
    judge_dwelling(c, seen);
    judge_wheels(c, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const job_assumed{
    .id = "job-assumed",
    .asks = "What was taken for granted is said aloud.",
    .why = "A use guessed from a name decides which rules apply, a name may seem to mean somebody, and a job without a "
           "[dwelling] table is spared the rules of a home. If the guess is wrong, so is the verdict.",
    .remedy = "Read the list once; write `use`, or the [dwelling] table, where it is wrong.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
