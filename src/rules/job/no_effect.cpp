// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Keys that are read and do nothing yet. Who typed them counts on them, so silence would be a lie.
#include "rules/job/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// One row a key, until it does something: then its row goes.
struct IdleKey {
    std::string_view key, would; // what a person expects of it
    bool (*job)(Building const&);
    bool (*circuit)(Circuit const&);
};
bool is_no_job(Building const&) { return false; }
bool is_no_circuit(Circuit const&) { return false; }
constexpr std::array kIdle{
    IdleKey{"language", "sheets are in English",
            [](Building const& b) {
                return std::ranges::any_of(b.languages, [](std::string const& l) { return l != "en"; });
            },
            is_no_circuit},
    IdleKey{"name_fr", "sheets are in English", is_no_job, [](Circuit const& c) { return !c.name_fr.empty(); }},
    IdleKey{"name_es", "sheets are in English", is_no_job, [](Circuit const& c) { return !c.name_es.empty(); }},
    IdleKey{"tails", "no length is cut by it", [](Building const& b) { return b.tails.has_value(); }, is_no_circuit},
    IdleKey{"loop", "no length is cut by it", [](Building const& b) { return b.loop.has_value(); }, is_no_circuit},
    IdleKey{"runs_with", "situations say what runs together", is_no_job,
            [](Circuit const& c) { return !c.runs_with.empty(); }},
};

// "tails (no length is cut by it)", "name_fr of K1 and K2 (sheets are in English)"
std::string said(IdleKey const& idle, std::vector<std::string> const& marks) {
    return fmt::format("{}{} ({})", idle.key, marks.empty() ? "" : " of " + listed(marks), idle.would);
}

Verdict judge(Case const& c) {
    Inspection seen;
    Where where;
    std::vector<std::string> all;
    for (IdleKey const& idle : kIdle) {
        std::vector<std::string> marks;
        for (Circuit const& circuit : c.building.circuits)
            if (idle.circuit(circuit)) marks.push_back(circuit.mark);
        if (!idle.job(c.building) && marks.empty()) continue;
        seen.looked();
        if (all.empty() || (!marks.empty() && where.circuits.empty())) where.key = idle.key; // where it points
        for (std::string const& mark : marks)
            if (std::ranges::find(where.circuits, mark) == where.circuits.end()) where.circuits.push_back(mark);
        all.push_back(said(idle, marks));
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
