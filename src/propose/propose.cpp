// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sizes are found one after another, feeders first from the source outward, since what a branch may lose hangs on what
// its feeder loses. What is found stands in a copy of the job when the next is tried.
#include "propose/propose.h"

#include "cable/run.h"
#include "codebook/cite.h"
#include "codebook/usual.h"
#include "propose/feeder_objection.h"
#include "propose/sizing.h"
#include "reckon/say.h"
#include "rules/job/measure.h"
#include "rules/wire/list.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::vector<std::size_t> unknown_pieces(Job const& job, Circuit const& circuit) {
    auto const run = run_of(job, circuit);
    if (run.empty()) return {0};
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < run.size(); ++i)
        if (run[i].kind.empty()) all.push_back(i);
    return all;
}

bool lacks_sizes(Job const& job, Circuit const& circuit) {
    return circuit.use != "spare" && (!circuit.breaker || !unknown_pieces(job, circuit).empty());
}

std::string how_to_read(std::string_view key) {
    for (auto const& row : how_to_measure(Thing::circuit))
        if (row.key == key) return fmt::format("{}: {}", row.what, row.how);
    return {};
}

void put(Circuit& circuit, Proposal const& p) {
    if (p.breaker) circuit.breaker = p.breaker;
    if (p.has_cable() && circuit.run.size() < p.cables.size()) circuit.run.resize(p.cables.size());
    for (std::size_t i = 0; i < p.cables.size(); ++i)
        if (!p.cables[i].empty()) circuit.run[i].kind = p.cables[i];
}

class Proposer {
public:
    Proposer(Job const& job, Plan const& plan, CodeBook const& book) : job_(job), c_{job_, plan, book} {}

    std::vector<Proposal> all() {
        std::vector<Proposal> found;
        for (std::size_t const i : in_order()) {
            if (!lacks_sizes(job_, job_.circuits[i])) continue; // found with its pair by now, or nothing lacks
            for (Proposal& p : of(job_.circuits[i])) found.push_back(std::move(p));
        }
        std::ranges::sort(found, {}, [&](Proposal const& p) { return circuit_of(job_, p.circuit); });
        return found;
    }

private:
    // How many feeders stand ahead of what this circuit feeds: 0 for those that feed no panel come last.
    std::size_t depth(Circuit const& circuit) const {
        std::size_t steps = 1;
        Panel const* at = panel_of(job_, circuit.panel);
        while (at && at->feeder && steps <= job_.panels.size()) {
            at = panel_of(job_, at->feeder->panel);
            ++steps;
        }
        return steps;
    }
    std::vector<std::size_t> in_order() const {
        std::vector<std::pair<std::size_t, std::size_t>> order;
        for (std::size_t i = 0; i < job_.circuits.size(); ++i) {
            bool const feeder = fed_panel(job_, job_.circuits[i]);
            order.emplace_back(feeder ? depth(job_.circuits[i]) : job_.panels.size() + 2, i);
        }
        std::ranges::sort(order);
        std::vector<std::size_t> all;
        for (auto const& [at, i] : order) all.push_back(i);
        return all;
    }

    std::vector<Member> members(Circuit const& circuit) const {
        std::vector<Member> all;
        Circuit const* p = partner(job_, circuit);
        for (Circuit const* one : {&circuit, p})
            if (one) all.push_back({one, {}, !one->breaker, unknown_pieces(job_, *one)});
        if (p && p < &circuit) std::swap(all[0], all[1]);
        return all;
    }

    std::vector<Proposal> of(Circuit const& circuit) {
        if (std::ranges::find(done_, circuit.mark) != done_.end()) return {};
        auto group = members(circuit);
        std::vector<Proposal> found;
        for (Member& m : group) {
            done_.push_back(m.circuit->mark);
            found.push_back({m.circuit->mark, {}, {}, {}, {}, {}});
        }
        std::string trouble = fill(group, found);
        if (trouble.empty()) trouble = objection(found);
        if (trouble.empty())
            for (Proposal const& p : found) put(job_.circuits[index(p.circuit)], p);
        else
            for (Proposal& p : found) p = {p.circuit, {}, {}, std::move(p.steps), {}, trouble};
        std::erase_if(found, [&](Proposal const& p) {
            auto const m = std::ranges::find(group, p.circuit, [](Member const& one) { return one.circuit->mark; });
            return !m->lacks_breaker && m->lacks.empty();
        });
        return found;
    }

    std::size_t index(std::string_view mark) const {
        return static_cast<std::size_t>(circuit_of(job_, mark) - job_.circuits.data());
    }

    // What stands in the way; empty when every size was found.
    std::string fill(std::vector<Member>& group, std::vector<Proposal>& found) {
        for (Member const& m : group)
            if (m.circuit->existing && lacks_sizes(job_, *m.circuit)) return there_already(*m.circuit);
        for (std::size_t i = 0; i < group.size(); ++i) {
            Wanted& w = group[i].wanted = wanted(c_, *group[i].circuit);
            found[i].steps = w.steps;
            // With a breaker its wire can be sized whatever the load; a feeder's carries no more than that lets
            // through.
            auto const& given = group[i].circuit->breaker;
            if (given && w.whole_panel) w.wire = std::min(w.wire, *given);
            if (!w.find_out.empty() && (!given || on_dc(c_, *group[i].circuit)))
                return (group.size() > 1 ? "of " + found[i].circuit + " " : std::string()) + w.find_out;
        }
        for (Member const& m : group)
            if (auto wrong = wrong_breaker(m); !wrong.empty()) return wrong;
        Sizing sizing(c_, job_, group);
        std::string why;
        Amps breaker = 0_A;
        for (Member const& m : group) breaker = std::max(breaker, m.circuit->breaker.value_or(0_A));
        if (std::ranges::any_of(group, &Member::lacks_breaker)) {
            auto const size = sizing.breaker(why);
            if (!size) return why;
            breaker = *size;
        }
        for (std::size_t i = 0; i < group.size(); ++i) {
            say_breaker(group, i, breaker, found[i]);
            if (auto const known = sizing.known_wire(group[i], breaker)) found[i].steps.push_back(*known);
        }
        return fill_cables(sizing, group, breaker, found);
    }

    static std::string wrong_breaker(Member const& m) {
        auto const& given = m.circuit->breaker;
        auto const& most = m.wanted.most;
        if (given && *given < m.wanted.given)
            return fmt::format("another breaker: {} has {}, and {} or more is asked", m.circuit->mark, text(*given),
                               exact(m.wanted.given));
        if (given && most && *given > *most)
            return fmt::format("another breaker: {} has {}, and {} is the most", m.circuit->mark, text(*given),
                               exact(*most));
        return {};
    }

    std::string fill_cables(Sizing& sizing, std::vector<Member> const& group, Amps breaker,
                            std::vector<Proposal>& found) {
        if (std::ranges::all_of(group, [](Member const& m) { return m.lacks.empty(); })) return {};
        std::vector<Step> steps;
        std::string why;
        auto const gauge = sizing.wire(breaker, steps, why);
        if (!gauge) return why;
        for (std::size_t i = 0; i < group.size(); ++i) {
            Member const& m = group[i];
            if (m.lacks.empty()) continue;
            Proposal& p = found[i];
            p.steps.insert(p.steps.end(), steps.begin(), steps.end());
            p.cables.resize(m.lacks.back() + 1);
            for (std::size_t const piece : m.lacks) p.cables[piece] = sizing.kind(m, piece, *gauge);
            for (Step& s : conductor_steps(job_, *m.circuit, p.cables)) p.steps.push_back(std::move(s));
            if (!p.breaker) p.reference = cite(c_.book, sizing.decided());
        }
        return {};
    }

    void say_breaker(std::vector<Member> const& group, std::size_t i, Amps breaker, Proposal& p) const {
        Member const& m = group[i];
        if (!m.lacks_breaker) {
            p.steps.push_back(arithmetic(fmt::format("its breaker is {}", text(*m.circuit->breaker))));
            return;
        }
        p.breaker = breaker;
        auto const next = standard_breaker_at_or_above(c_.book, std::max(m.wanted.breaker, 15_A));
        std::string_view topic = m.wanted.topic.empty() ? "wire-load-fits" : m.wanted.topic;
        p.reference = cite(c_.book, topic);
        if (!m.wanted.topic.empty()) p.reference.source = m.wanted.source;
        std::string words = m.wanted.breaker < 15_A ? "the smallest breaker of a circuit" : "next standard breaker";
        if (m.wanted.breaker == breaker) words = "breaker";
        if (next && *next < breaker) {
            bool const by_pair = group.size() > 1 && group[1 - i].wanted.breaker > m.wanted.breaker;
            words = by_pair ? fmt::format("one size with {}", group[1 - i].circuit->mark)
                            : next_for_receptacles(*m.circuit, *next);
            p.steps.push_back(
                step(c_, fmt::format("{}: {}", words, text(breaker)), by_pair ? "mw-unequal" : "wire-outlet/amperes"));
            return;
        }
        p.steps.push_back(step(c_, fmt::format("{}: {}", words, text(breaker)), "wire-breaker-size"));
    }

    // Why it is not the standard breaker that the load would do with.
    static std::string next_for_receptacles(Circuit const& circuit, Amps without) {
        auto const outlets = outlets_words(circuit);
        if (!outlets.empty()) return fmt::format("the next breaker that {} may stand on", outlets);
        auto const usual = usual_receptacle(circuit.use, circuit.poles);
        if (usual.empty()) return "the next breaker that circuits of receptacles have";
        return fmt::format(
            "the next breaker that {}, the usual receptacle of a {}, may stand on (wired in without one, "
            "{} would do)",
            usual, circuit.use, text(without));
    }

    std::string there_already(Circuit const& circuit) const {
        std::vector<std::string> ways;
        if (!circuit.breaker) ways.push_back(how_to_read("breaker"));
        if (!unknown_pieces(job_, circuit).empty()) ways.push_back(how_to_read("cable"));
        if (ways.empty()) ways.push_back("what its partner has");
        return fmt::format("it is there already, so its sizes are read and not chosen ({})", fmt::join(ways, "; "));
    }

    // What the wire rules would say of the sizes found, were they in the job.
    std::string objection(std::vector<Proposal> const& found) const {
        Job trial = with_proposals(job_, found);
        Case const c{trial, c_.plan, c_.book};
        for (Proposal const& p : found)
            if (Panel const* fed = fed_panel(trial, *circuit_of(trial, p.circuit))) return feeder_objection(c, *fed);
        std::erase_if(trial.circuits, [&](Circuit const& o) {
            return std::ranges::find(found, o.mark, &Proposal::circuit) == found.end();
        });
        for (auto const* rule : {&wire_breaker_fits, &wire_load_fits, &wire_continuous, &wire_outlet, &wire_conductors})
            for (Finding const& f : judged(*rule, c).findings())
                if (f.severity != Severity::note) return as_sentence(f.message) + " " + as_sentence(f.fix);
        return {};
    }

    Job job_;
    Case c_;
    std::vector<std::string> done_;
};
} // namespace

bool Proposal::has_cable() const {
    return std::ranges::any_of(cables, [](std::string const& kind) { return !kind.empty(); });
}

std::vector<Proposal> proposals(Job const& job, Plan const& plan, CodeBook const& book) {
    return Proposer(job, plan, book).all();
}

Job with_proposals(Job job, std::vector<Proposal> const& proposed) {
    for (Proposal const& p : proposed)
        for (Circuit& circuit : job.circuits)
            if (circuit.mark == p.circuit) put(circuit, p);
    return job;
}

} // namespace legwork
