// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sizes are found one after another, feeders first from the source outward, since what a branch may lose hangs on what
// its feeder loses. What is found stands in a building of their own when the next is tried.
#include "propose/propose.h"

#include "building/trial.h"
#include "codebook/cite.h"
#include "codebook/stock/usual.h"
#include "propose/feeder_objection.h"
#include "propose/sizing.h"
#include "rules/job/measure.h"
#include "rules/wire/list.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace legwork {

namespace {
std::vector<std::size_t> unknown_pieces(Circuit const& circuit) {
    if (circuit.run.empty()) return {0};
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < circuit.run.size(); ++i)
        if (circuit.run[i].called.empty()) all.push_back(i);
    return all;
}

bool lacks_sizes(Circuit const& circuit) {
    return !circuit.is_spare() && (!circuit.breaker || !unknown_pieces(circuit).empty());
}

std::string how_to_read(std::string_view key) {
    for (auto const& row : how_to_measure(Subject::circuit))
        if (row.key == key) return fmt::format("{}: {}", row.what, row.how);
    return {};
}

class Proposer {
public:
    Proposer(Building const& building, Plan const& plan, CodeBook const& book)
        : building_(with_sizes(building, {})), c_{building_, plan, book} {}

    std::vector<Proposal> all() {
        for (std::size_t const i : in_order()) // found with its pair by now, or nothing lacks
            if (building_.circuits[i].listed && lacks_sizes(building_.circuits[i]) && !done_.contains(i))
                propose(building_.circuits[i]);
        std::vector<Proposal> all;
        for (auto& [number, proposal] : found_) all.push_back(std::move(proposal));
        return all;
    }

private:
    // How many feeders stand ahead of what this circuit feeds: 0 for those that feed no panel come last.
    std::size_t depth(Circuit const& circuit) const {
        std::size_t steps = 1;
        for (Panel const* at = circuit.panel; at && at->above && steps <= building_.panels.size(); at = at->above)
            ++steps;
        return steps;
    }
    std::vector<std::size_t> in_order() const {
        std::vector<std::pair<std::size_t, std::size_t>> order;
        for (Circuit const& c : building_.circuits)
            order.emplace_back(c.fed_panel() ? depth(c) : building_.panels.size() + 2, c.number);
        std::ranges::sort(order);
        std::vector<std::size_t> all;
        for (auto const& [at, i] : order) all.push_back(i);
        return all;
    }

    static std::vector<Member> members(Circuit const& circuit) {
        auto const member = [](Circuit const& c) { return Member{&c, {}, !c.breaker, unknown_pieces(c)}; };
        if (!circuit.pair) return {member(circuit)};
        return {member(*circuit.pair->first), member(*circuit.pair->second)};
    }

    void propose(Circuit const& circuit) {
        auto group = members(circuit);
        std::vector<Proposal> found;
        for (Member const& m : group) {
            done_.insert(m.circuit->number);
            found.push_back({m.circuit->mark, {}, {}, {}, {}, {}});
        }
        std::string trouble = fill(group, found);
        std::optional<Building> trial;
        if (trouble.empty()) {
            trial = with_proposals(building_, found);
            trouble = objection(*trial, group);
        }
        if (!trouble.empty())
            for (Proposal& p : found) p = {p.circuit, {}, {}, std::move(p.steps), {}, trouble};
        for (std::size_t i = 0; i < group.size(); ++i)
            if (group[i].lacks_breaker || !group[i].lacks.empty())
                found_.emplace(group[i].circuit->number, std::move(found[i]));
        if (trouble.empty()) building_ = std::move(*trial); // and with it goes what `group` points at
    }

    // What stands in the way; empty when every size was found.
    std::string fill(std::vector<Member>& group, std::vector<Proposal>& found) {
        for (Member const& m : group)
            if (m.circuit->existing && lacks_sizes(*m.circuit)) return there_already(*m.circuit);
        for (std::size_t i = 0; i < group.size(); ++i) {
            Wanted& w = group[i].wanted = wanted(c_, *group[i].circuit);
            found[i].steps = w.steps;
            // With a breaker its wire can be sized whatever the load; a feeder's carries no more than that lets
            // through.
            auto const& given = group[i].circuit->breaker;
            if (given && w.whole_panel) w.wire = std::min(w.wire, *given);
            if (!w.find_out.empty() && (!given || group[i].circuit->on_dc()))
                return (group.size() > 1 ? "of " + found[i].circuit + " " : std::string()) + w.find_out;
        }
        for (Member const& m : group)
            if (auto wrong = wrong_breaker(m); !wrong.empty()) return wrong;
        Sizing sizing(c_, group);
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
            for (Step& s : conductor_steps(*m.circuit, p.cables)) p.steps.push_back(std::move(s));
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
        auto const usual = usual_receptacle(use_name(circuit), circuit.poles);
        if (usual.empty()) return "the next breaker that circuits of receptacles have";
        return fmt::format(
            "the next breaker that {}, the usual receptacle of a {}, may stand on (wired in without one, "
            "{} would do)",
            usual, use_name(circuit), text(without));
    }

    static std::string there_already(Circuit const& circuit) {
        std::vector<std::string> ways;
        if (!circuit.breaker) ways.push_back(how_to_read("breaker"));
        if (!unknown_pieces(circuit).empty()) ways.push_back(how_to_read("cable"));
        if (ways.empty()) ways.emplace_back("what its partner has");
        return fmt::format("it is there already, so its sizes are read and not chosen ({})", fmt::join(ways, "; "));
    }

    // What the wire rules say of these circuits in the building that has the sizes found.
    std::string objection(Building const& trial, std::vector<Member> const& group) const {
        Case const c{trial, c_.plan, c_.book};
        for (Member const& m : group)
            if (Panel const* fed = trial.circuits[m.circuit->number].fed_panel()) return feeder_objection(c, *fed);
        auto const is_theirs = [&](Finding const& f) {
            return std::ranges::any_of(
                group, [&](Member const& m) { return std::ranges::count(f.where.circuits, m.circuit->mark) > 0; });
        };
        for (auto const* rule : {&wire_breaker_fits, &wire_load_fits, &wire_continuous, &wire_outlet, &wire_conductors})
            for (Finding const& f : judged(*rule, c).findings())
                if (f.severity != Severity::note && is_theirs(f)) return with_way_out(f.message, f.fix);
        return {};
    }

    Building building_; // filled up as sizes are found
    Case c_;
    std::set<std::size_t> done_; // by number of the circuit
    std::map<std::size_t, Proposal> found_;
};
} // namespace

bool Proposal::has_cable() const {
    return std::ranges::any_of(cables, [](std::string const& kind) { return !kind.empty(); });
}

std::vector<Proposal> proposals(Building const& building, Plan const& plan, CodeBook const& book) {
    return Proposer(building, plan, book).all();
}

Building with_proposals(Building const& building, std::vector<Proposal> const& proposed) {
    std::vector<Sizes> sizes;
    for (Proposal const& p : proposed)
        if (Circuit const* c = circuit_named(building, p.circuit)) sizes.push_back({c->number, p.breaker, p.cables});
    return with_sizes(building, sizes);
}

} // namespace legwork
