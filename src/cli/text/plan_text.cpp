// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/text.h"

#include "cli/text/space_table.h"
#include "cli/text/words.h"
#include "panel/feeds.h"
#include "toml/problem.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr std::int64_t kBar = 40; // letters of the longest bar

std::string bar(std::int64_t va, std::int64_t longest) {
    return std::string(static_cast<std::size_t>(longest > 0 ? (va * kBar + longest / 2) / longest : 0), '#');
}

void print_situations(PanelPlan const& plan, Streams& streams) {
    if (plan.situations.empty() || !plan.imbalance_va) return;
    std::int64_t longest = 0;
    for (auto const& s : plan.situations) longest = std::max({longest, s.leg_a_va, s.leg_b_va});
    auto& out = streams.out;
    out << "\nLegs\n";
    for (auto const& s : plan.situations) {
        auto const apart = fmt::format("{}: {} VA apart, up to {:.1f} A in the neutral", fit_to_print(s.name),
                                       s.imbalance_va, s.neutral_a);
        out << "  " << in_lines(apart, streams.width, 4, 2) << '\n';
        out << fmt::format("    A {:>6} VA {}\n", s.leg_a_va, bar(s.leg_a_va, longest));
        out << fmt::format("    B {:>6} VA {}\n", s.leg_b_va, bar(s.leg_b_va, longest));
    }
}

void print_tradeoff(PanelPlan const& plan, std::ostream& out) {
    if (plan.tradeoff.size() < 2) return;
    // The last step that this plan's moves pay for.
    auto const dearer =
        std::ranges::find_if(plan.tradeoff, [&](TradeoffStep const& t) { return t.moves > plan.moves; });
    out << "\nWhat moves buy\n";
    for (auto at = plan.tradeoff.begin(); at != plan.tradeoff.end(); ++at)
        out << fmt::format("  {:>9} {:>7} VA apart{}\n", counted(at->moves, "move"), at->imbalance_va,
                           std::next(at) == dearer ? "   <- this plan" : "");
}

void print_proof(PanelPlan const& plan, Streams& streams) {
    if (!plan.imbalance_va || !plan.least_imbalance_va) return;
    auto told = fmt::format("Worst imbalance of this plan {} VA; ", *plan.imbalance_va);
    if (plan.proven)
        told += fmt::format("the least there is {} VA, proven: no plan does better.", *plan.least_imbalance_va);
    else
        told += fmt::format("best found {0} VA; the true least lies between {1} and {0}{2}.", *plan.least_imbalance_va,
                            plan.lower_bound_va.value_or(0),
                            plan.stopped_by_time ? ": the search was stopped by --seconds" : "");
    streams.out << '\n' << in_lines(told, streams.width, 0) << '\n';
}

std::string spots(std::vector<Spot> const& all) {
    std::vector<std::string> words;
    for (Spot const s : all) words.push_back(text(s));
    return joined(words, "+");
}

std::string landing(Placement const& p) {
    return fmt::format("{} on {}{}", p.circuit, spots(p.slots), p.leg ? fmt::format(" (leg {})", letter(*p.leg)) : "");
}

// All wires come off before the first one lands: half of two swapped circuits has nowhere to go otherwise.
void print_moves(PanelPlan const& plan, std::ostream& out) {
    std::vector<Placement const*> moved, fresh, changed;
    for (Placement const& p : plan.placements) {
        if (p.slots.empty()) continue;
        if (p.from.empty())
            fresh.push_back(&p);
        else if (changes_breaker(p))
            changed.push_back(&p);
        else if (p.from != p.slots)
            moved.push_back(&p);
    }
    if (!moved.empty()) {
        out << fmt::format("\n{}: with the panel dead,\n  take off\n", counted(static_cast<int>(moved.size()), "move"));
        for (auto const* p : moved) out << fmt::format("    {} from {}\n", p->circuit, spots(p->from));
        out << "  then land\n";
        for (auto const* p : moved) out << "    " << landing(*p) << '\n';
    }
    if (!changed.empty()) {
        out << "\nA full-size breaker in place of a half, with the panel dead\n";
        for (auto const* p : changed) out << fmt::format("    {}, in place of {}\n", landing(*p), spots(p->from));
    }
    if (!fresh.empty() && fresh.size() < plan.placements.size()) { // of a new panel the table says it all
        out << "\nNew circuits land\n";
        for (auto const* p : fresh) out << "    " << landing(*p) << '\n';
    }
}

std::string sources(Panel const& panel) {
    std::vector<std::string> words;
    for (Feed const& f : panel.feeds)
        words.push_back(f.source.empty() ? std::string(name(f.kind))
                                         : fmt::format("{} ({})", fit_to_print(f.source), name(f.kind)));
    return joined(words, " or ");
}

} // namespace

void print_panel_plan(Building const& building, PanelPlan const& plan, Streams& streams) {
    auto const* panel = panel_named(building, plan.panel);
    if (!panel) return;
    streams.out << in_lines(fmt::format("{}: {} spaces, {}{}", fit_to_print(panel->name), panel->spaces,
                                        sources(*panel), panel->main ? ", main " + text(*panel->main) : ""),
                            streams.width, 4)
                << '\n';
    if (!plan.why.empty()) {
        streams.out << "  " << in_lines("No plan: " + fit_to_print(plan.why), streams.width, 2, 2) << "\n\n";
        return;
    }
    print_space_table(building, *panel, plan, streams);
    print_situations(plan, streams);
    print_tradeoff(plan, streams.out);
    print_proof(plan, streams);
    print_moves(plan, streams.out);
    streams.out << '\n';
}

} // namespace legwork
