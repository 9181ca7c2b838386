// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/job/list.h"
#include "rules/job/measure.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string who(ToMeasure const& m) {
    switch (m.thing) {
    case Subject::panel: return fmt::format("panel \"{}\"", m.id);
    case Subject::supply: return fmt::format("source \"{}\"", m.id);
    case Subject::cable: return "cable " + m.id;
    case Subject::dwelling: return "the dwelling";
    case Subject::job: return "the job";
    default: return m.id;
    }
}

// The finding's place: of a source the panel that it feeds.
Where where(ToMeasure const& m) {
    if (m.thing == Subject::circuit) return {m.panel, {m.id}, m.key};
    if (m.thing == Subject::cable) return {"", {m.id}, m.key};
    if (m.thing == Subject::supply) return {m.panel, {}, "supplies"};
    return {m.panel, {}, m.key};
}

std::string what(ToMeasure const& m) { return m.how.what.empty() ? "`" + m.key + "`" : std::string(m.how.what); }

std::string how(ToMeasure const& m) {
    return what(m) + ": " + (m.how.how.empty() ? "look it up on the spot" : std::string(m.how.how));
}

// All figures of one thing in one note; nothing where others tell of them.
std::optional<Finding> say(Case const& c, std::span<ToMeasure const> of_one_thing) {
    std::vector<std::string> names, ways;
    ToMeasure const* lead = nullptr;
    for (ToMeasure const& m : of_one_thing) {
        if (!m.noted) continue;
        if (!lead) lead = &m;
        names.push_back(what(m));
        ways.push_back(how(m));
    }
    if (!lead) return std::nullopt;
    auto f = finding(c, job_unknown, Gravity::usual, where(*lead));
    f.message = fmt::format("Of {} this is not known: {}. What hangs on it was not judged", who(*lead), listed(names));
    f.fix = fmt::format("Go and find out: {}", fmt::join(ways, "; "));
    return f;
}

// Every circuit, cable, panel and source, the dwelling, and the job itself have figures to know.
int things_of(Building const& building) {
    auto const cables = std::ranges::count_if(building.runs, [](Run const& r) { return !r.of_circuit; });
    return static_cast<int>(building.circuits.size() + building.panels.size() + building.supplies.size()) +
           static_cast<int>(cables) + building.dwelling.has_value() + 1;
}

Verdict judge(Case const& c) {
    Inspection seen;
    seen.looked(things_of(c.building));
    auto const all = to_measure(c);
    for (auto first = all.begin(); first != all.end();) {
        auto const last = std::find_if(
            first, all.end(), [&](ToMeasure const& m) { return m.thing != first->thing || m.id != first->id; });
        seen.found(say(c, {first, last}));
        first = last;
    }
    return seen.verdict();
}
} // namespace

constinit Rule const job_unknown{
    .id = "job-unknown",
    .asks = "Every figure that the verdict hangs on is known.",
    .why = "What is not known counts as nothing in the balance and is not judged: an unknown load is no light load, "
           "and an unknown cable is no large one.",
    .remedy = "Go and look: breaker handles, cable jackets, nameplates, a clamp meter, a tape. Write what you find in "
              "place of \"?\".",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
