// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/loads.h"
#include "cable/run.h"
#include "check/leg_amps.h"
#include "check/multiwire.h"
#include "check/pair_place.h"
#include "codebook/cables.h"
#include "codebook/cite.h"
#include "codebook/uses.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Insulated conductors of the home run, and what it is called; nothing when it is not known.
struct HomeRun {
    std::string kind;
    int insulated = 0;
};
std::optional<HomeRun> home_run(std::initializer_list<typed::Circuit const*> members) {
    for (typed::Circuit const* c : members) {
        if (c->run.empty() || c->run.front().kind.empty()) continue;
        auto const kind = cable_kind(c->run.front().kind);
        if (!kind) return std::nullopt;
        for (typed::Circuit const* m : members)
            if (!m->colors.empty()) return HomeRun{kind->name, static_cast<int>(m->colors.size())};
        return HomeRun{kind->name, kind->power ? kind->insulated : 0};
    }
    return std::nullopt;
}

// The pairs of one panel that stand as a pair should, for notes that concern them all alike.
std::vector<typed::Pair> sound_pairs(Case const& c, typed::Panel const& panel) {
    std::vector<typed::Pair> found;
    for (typed::Pair const& p : pairs(c.job))
        if (p.first->panel == panel.name && !place_fault(c, p)) found.push_back(p);
    return found;
}

std::vector<std::string> cable_marks(Case const& c, std::vector<typed::Pair> const& some) {
    std::vector<std::string> marks;
    for (typed::Pair const& p : some) marks.push_back(cable_mark(c.job, *p.first));
    return marks;
}

// One note for all pairs of a panel: what it says holds for each.
template <class Say>
Findings one_note_a_panel(Case const& c, std::string_view rule, Say say) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels) {
        auto const some = sound_pairs(c, panel);
        if (some.empty()) continue;
        Where where{panel.name, {}, "multiwire"};
        for (typed::Circuit const& circuit : c.job.circuits)
            for (typed::Pair const& p : some)
                if (&circuit == p.first || &circuit == p.second) where.circuits.push_back(circuit.mark);
        auto f = finding(c, rule, Severity::note, std::move(where));
        say(f, listed(cable_marks(c, some)));
        found.push_back(std::move(f));
    }
    return found;
}

bool uses_a_neutral(Case const& c, typed::Circuit const& circuit) {
    Use const* use = use_named(circuit.use);
    return needs_neutral(c.job, circuit) || fed_panel(c.job, circuit) ||
           (use && (use->uses_neutral_at_240 || use->may_use_neutral_at_240));
}

struct NeutralWorst {
    double amperes = 0;
    std::string_view situation;
    std::string source;
};
NeutralWorst worst_neutral(Case const& c, typed::Pair const& p) {
    NeutralWorst worst;
    for (Feed const& feed : feeds(c.job, *panel_of(c.job, p.first->panel)))
        for (typed::Situation const* s : situations(c.job)) {
            double const n =
                neutral_amps(amps_of(*p.first, s, feed), amps_of(*p.second, s, feed), phase_degrees(feed.kind));
            if (n > worst.amperes) worst = {n, name_of(s), feed.source};
        }
    return worst;
}

double volts_between_legs(Case const& c, typed::Panel const& panel) {
    double most = 0;
    for (Feed const& f : feeds(c.job, panel)) most = std::max(most, value(legwork::volts_between_legs(f.kind)));
    return most;
}
} // namespace

Findings mw_conductors(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        auto const run = home_run({p.first, p.second});
        if (!run || run->insulated >= 3) continue;
        auto f = finding(c, "mw-conductors", Severity::error, about(p, "cable"));
        f.message = fmt::format("{} share one cable, {}, which has {} for power; two hots and their neutral need three",
                                both(p), run->kind, plural(static_cast<std::size_t>(run->insulated), "insulated wire"));
        f.fix = "Pull a cable with three insulated wires, or a cable of its own for each circuit";
        found.push_back(std::move(f));
    }
    return found;
}

Findings mw_neutral_current(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        auto const limit = neutral_ampacity(c, p);
        if (!limit || !panel_of(c.job, p.first->panel) || place_fault(c, p)) continue;
        auto const worst = worst_neutral(c, p);
        if (!is_over(worst.amperes, *limit)) continue;
        auto f = finding(c, "mw-neutral-current", Severity::error, about(p, "load"));
        f.message = fmt::format("{} of current in the neutral that {} share {}{}, on {} AWG good for {}",
                                amps(worst.amperes), both(p), in_situation(worst.situation),
                                worst.source.empty() ? "" : fmt::format(" from \"{}\"", worst.source),
                                name(*shared_gauge(p)), amps(value(*limit)));
        f.fix = "Move part of the larger load to another circuit, or pull a larger cable";
        found.push_back(std::move(f));
    }
    return found;
}

Findings mw_pigtail(Case const& c) {
    return one_note_a_panel(c, "mw-pigtail", [](Finding& f, std::string const& marks) {
        f.message =
            fmt::format("{}: at every box the shared neutral must stay joined when a device is taken off", marks);
        f.fix = "Splice the neutrals in the box and run one short wire (a pigtail) to each device; no neutral through "
                "the device's terminals";
    });
}

Findings mw_grouping(Case const& c) {
    if (cite(c.book, "mw-grouping").section.empty()) return {}; // this code does not ask it
    return one_note_a_panel(c, "mw-grouping", [](Finding& f, std::string const& marks) {
        f.message = fmt::format("{}: in the panel it must be plain which neutral belongs to which hots", marks);
        f.fix =
            "Tie each pair's hots and neutral together once in the panel, or put the printed N marker on the neutral";
    });
}

OpenNeutral open_neutral(double first_va, double second_va, double volts_between) {
    double const sum = first_va + second_va; // resistances in series: the voltages go as 1 / VA
    return {volts_between * second_va / sum, volts_between * first_va / sum};
}

Findings mw_open_neutral(Case const& c) {
    Findings found;
    for (typed::Pair const& p : pairs(c.job)) {
        typed::Panel const* panel = panel_of(c.job, p.first->panel);
        if (!panel || place_fault(c, p)) continue;
        double const volts = volts_between_legs(c, *panel);
        if (volts <= 0) continue;
        auto f = finding(c, "mw-open-neutral", Severity::note, about(p));
        auto const a = pole_va(*p.first, nullptr, 120_V), b = pole_va(*p.second, nullptr, 120_V);
        if (a > 0 && b > 0) {
            auto const [first, second] = open_neutral(static_cast<double>(a), static_cast<double>(b), volts);
            f.message =
                a == b ? fmt::format("If the neutral of {} opens, each sees {:.0f} V while both draw the same, and the "
                                     "lighter load up to {:.0f} V when they do not",
                                     both(p), first, volts)
                       : fmt::format("If the neutral of {} opens, {} sees {:.0f} V and {} sees {:.0f} V at the loads "
                                     "given: the lighter load gets the higher voltage",
                                     both(p), p.first->mark, first, p.second->mark, second);
        } else {
            f.message = fmt::format("If the neutral of {} opens, the circuit with the lighter load sees up to {:.0f} V",
                                    both(p), volts);
        }
        f.fix = "Tighten the neutral's splices and its terminal to the torque marked; never open it with a breaker on";
        found.push_back(std::move(f));
    }
    return found;
}

Findings mw_unpaired(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (!circuit.multiwire.empty() || !circuit.third.empty() || circuit.switch_loop) continue;
        auto const run = home_run({&circuit});
        if (!run || run->insulated < 3 || (circuit.poles == 2 && uses_a_neutral(c, circuit))) continue;
        auto f = finding(c, "mw-unpaired", Severity::warning, about(circuit, "cable"));
        f.message = fmt::format("{} is a {} circuit on {}: two of its {} insulated wires have work; what does the "
                                "third one do?",
                                circuit.mark, circuit.poles == 2 ? "two-pole" : "one-pole", run->kind, run->insulated);
        f.fix = "If it shares its neutral with another circuit, give both the same multiwire group; else say "
                "third = \"switched\", \"traveller\", \"spare\" or \"neutral\"";
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
