// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/job/list.h"
#include "rules/job/measure.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto not_known = Gravity::second; // it has to be read or measured; else sizes of new work are missing

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

// Of one thing what nobody knows, and what nobody has chosen yet; without what others tell of.
struct Gaps {
    ToMeasure const* lead = nullptr; // the first of them
    std::vector<std::string> unknown, unchosen, ways;
    std::string_view choose; // what to do about those not chosen
};
Gaps gaps_of(std::span<ToMeasure const> of_one_thing) {
    Gaps gaps;
    for (ToMeasure const& m : of_one_thing) {
        if (!m.noted) continue;
        if (!gaps.lead) gaps.lead = &m;
        (m.chosen ? gaps.unchosen : gaps.unknown).push_back(what(m));
        if (m.chosen)
            gaps.choose = m.how.how;
        else
            gaps.ways.push_back(how(m));
    }
    return gaps;
}

std::string message(Gaps const& gaps) {
    auto const of = who(*gaps.lead);
    if (gaps.unchosen.empty())
        return fmt::format("Of {} this is not known: {}. What hangs on it was not judged", of, listed(gaps.unknown));
    auto told = fmt::format("Of {}, new work, this is still to be chosen: {}", of, listed(gaps.unchosen));
    if (!gaps.unknown.empty()) told += fmt::format("; and this is not known: {}", listed(gaps.unknown));
    return told + ". What hangs on it was not judged, and the sheets say that sizes are missing";
}

std::string fix(Gaps const& gaps) {
    if (gaps.unchosen.empty()) return fmt::format("Go and find out: {}", fmt::join(gaps.ways, "; "));
    auto told = fmt::format("Choose {}: {}", listed(gaps.unchosen), gaps.choose);
    for (auto const& way : gaps.ways) told += "; " + way;
    return told + ". If the circuit is there already, say existing = true and read them there";
}

// All figures of one thing in one finding; nothing where others tell of them.
std::optional<Finding> say(Case const& c, std::span<ToMeasure const> of_one_thing) {
    auto const gaps = gaps_of(of_one_thing);
    if (!gaps.lead) return std::nullopt;
    bool const choose = !gaps.unchosen.empty();
    auto f = finding(c, job_unknown, choose ? Gravity::usual : not_known, where(*gaps.lead));
    f.lacks_sizes = choose;
    f.message = message(gaps);
    f.fix = fix(gaps);
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
              "place of \"?\". Breaker and cable of new work are chosen: `legwork check --propose` works them out, and "
              "until they stand in the file the sheets carry a band that says so.",
    .gravity = {.nec = {Grade::warning, Grade::note}, .ce = {Grade::warning, Grade::note}},
    .judge = judge,
};

} // namespace legwork
