// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Volts lost along the branch, along the feeder, and along both. One finding a fault: a branch by itself, a feeder by
// itself (it then speaks for the branches behind it), or the sum where each part is within its own limit.
#include "reckon/run_drop.h"
#include "rules/wire/list.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string percent(double p) { return fmt::format("{:.1f} %", p); }

// "14 AWG", "12 AWG and 14 AWG"
std::string sizes(RunLength const& run) {
    std::vector<std::string> names;
    for (DropPiece const& p : run.pieces)
        if (auto name = wire_name(p.gauge, p.metal); std::ranges::find(names, name) == names.end())
            names.push_back(std::move(name));
    return listed(names);
}

// "over 66 ft of 14 AWG"
std::string over_run(Case const& c, RunLength const& run) {
    return fmt::format("over {}{} of {}", run.whole ? "" : "at least ", text(run.length, c.building.units), sizes(run));
}

// "pull 12 AWG all the way (2.6 %)": what brings a loss of `now` percent down to `limit`; empty where no wire does.
std::string larger_wire(RunLength const& run, Circuit const& circuit, double now, double limit) {
    auto const gauge = limit > 0 ? gauge_within(run.pieces, run.ohms * limit / now) : std::nullopt;
    if (!gauge) return {};
    auto larger = run.pieces;
    for (DropPiece& p : larger) p.gauge = std::max(p.gauge, *gauge);
    double const then = now * one_way_ohms(larger).value_or(run.ohms) / run.ohms;
    return fmt::format("pull {} {} ({})", wire_name(*gauge, circuit.metal),
                       how_far(*gauge, circuit.breaker.value_or(0_A)), percent(then));
}

class Drops {
public:
    explicit Drops(Case const& c) : c_(c), limits_(drop_limits(c.book)), feeders_(feeder_drops(c)) {}

    Verdict verdict() {
        for (Panel const& panel : c_.building.panels) {
            auto const& drop = drop_of(panel);
            bool const at_fault = drop && is_at_fault(limits_, *drop), ahead = is_told_ahead(c_, feeders_, panel);
            if (drop) judge_feeder(panel, *drop, at_fault, ahead);
            judge_branches(panel, drop, at_fault || ahead);
        }
        return seen_.verdict();
    }

private:
    Finding made(Where where, std::string_view topic) const {
        return finding(c_, wire_drop, Gravity::usual, std::move(where), topic);
    }

    // "Pull 12 AWG all the way (2.6 %)."
    std::string advice(std::string words) const {
        words.front() = static_cast<char>(words.front() - 'a' + 'A');
        return words + (limits_.demanded ? "." : ". The code advises it and does not demand it.");
    }

    // The legs, or the two hots, that the circuit hangs on.
    double on(LegPercents const& p, Panel const& panel, Circuit const& circuit) const {
        if (circuit.poles == 2) return p.between;
        Placement const* at = placement_of(c_.plan, circuit.mark);
        if (!at || at->slots.empty()) return std::max(p.a, p.b);
        return panel.layout.leg(at->slots.front().space) == Leg::a ? p.a : p.b;
    }

    // Of the branches of this panel that are within their own limit, the one that ends with the most lost.
    struct WorstBranch {
        Circuit const* circuit = nullptr;
        double percent = 0;
    };
    WorstBranch worst_branch(Panel const& panel, LegPercents const& ahead) const {
        WorstBranch worst;
        for (Circuit const* circuit : panel.circuits) {
            auto const d = branch_drop(c_, *circuit);
            if (!d || is_over_limit(d->percent(), limits_.part_percent)) continue;
            double const sum = d->percent() + on(ahead, panel, *circuit);
            if (sum > worst.percent) worst = {circuit, sum};
        }
        return worst;
    }

    bool is_over_by_itself(FeederDrop const& d) const { return is_over_limit(d.own.worst(), limits_.part_percent); }
    std::optional<FeederDrop> const& drop_of(Panel const& panel) const { return feeders_[panel.number]; }

    Finding feeder(Panel const& panel, FeederDrop const& d) const {
        auto f = made(about(*d.feeder, "length"), "wire-drop/feeder");
        f.message = fmt::format("The feeder {} of panel \"{}\" loses {} of its voltage at {}{} {}, wire at {:.0f} °C",
                                d.feeder->mark, panel.name, percent(d.own.worst()), amps(d.amperes), load_words(d),
                                over_run(c_, d.run), kDropCelsius);
        f.message += is_over_by_itself(d) ? fmt::format(": more than {} %", limits_.part_percent.value)
                                          : fmt::format("; with the feeders ahead of it {}, more than {} %",
                                                        percent(d.total.worst()), limits_.total_percent.value);
        auto const worst = worst_branch(panel, d.total);
        if (worst.circuit && is_over_limit(worst.percent, limits_.total_percent))
            f.message += fmt::format("; at the end of {} {} are lost in all, more than {} %", worst.circuit->mark,
                                     percent(worst.percent), limits_.total_percent.value);
        double const others = std::max(worst.percent, d.total.worst()) - d.own.worst();
        double const room = std::min<double>(static_cast<double>(limits_.part_percent.value),
                                             static_cast<double>(limits_.total_percent.value) - others);
        auto const cure = larger_wire(d.run, *d.feeder, d.own.worst(), room);
        f.fix =
            advice(cure.empty() ? "pull larger wire for the feeders ahead of it too, or feed it from nearer" : cure);
        return f;
    }

    std::string load_words(FeederDrop const& d) const {
        if (!d.load_known)
            return fmt::format(" ({} % of its breaker, since not every load is known)", limits_.unknown_percent.value);
        return c_.building.situations.empty() ? std::string() : " " + d.when;
    }

    // "drop 2.8 % of 3 % on K1"
    void margin(double lost, Figure const& limit, std::string_view where) {
        seen_.margin(lost / static_cast<double>(limit.value),
                     [&] { return fmt::format("drop {} of {} % {}", percent(lost), limit.value, where); });
    }

    // At least what is reckoned is lost, so a run that is known in part is judged only when that is too much.
    void judge_feeder(Panel const& panel, FeederDrop const& d, bool at_fault, bool ahead) {
        bool const is_known = d.run.whole && !d.run.pieces.empty() && (d.load_known || d.feeder->breaker);
        if (!at_fault && !is_known) return;
        seen_.looked();
        if (at_fault && (is_over_by_itself(d) || !ahead)) seen_.found(feeder(panel, d));
        if (at_fault) return;
        margin(d.own.worst(), limits_.part_percent, "on the feeder " + d.feeder->mark);
        margin(d.total.worst(), limits_.total_percent, fmt::format("on the feeders up to {}", d.feeder->mark));
    }

    void judge_branches(Panel const& panel, std::optional<FeederDrop> const& feeder, bool feeder_told) {
        std::vector<std::pair<Circuit const*, double>> by_sum;
        for (Circuit const* circuit : panel.circuits) {
            auto const d = branch_drop(c_, *circuit);
            if (!d) continue;
            double const sum = d->percent() + (feeder ? on(feeder->total, panel, *circuit) : 0);
            bool const sum_over = feeder && is_over_limit(sum, limits_.total_percent);
            bool const over = is_over_limit(d->percent(), limits_.part_percent), told = sum_over && !feeder_told;
            if (!over && !told && !d->run.whole) continue;
            seen_.looked();
            if (over)
                seen_.found(branch(*circuit, *d, told ? sum : 0));
            else if (told)
                by_sum.emplace_back(circuit, sum);
            else
                margins(*circuit, d->percent(), feeder ? sum : 0);
        }
        if (!by_sum.empty()) seen_.found(together(panel, *feeder, by_sum));
    }

    void margins(Circuit const& circuit, double own, double sum) {
        margin(own, limits_.part_percent, "on " + circuit.mark);
        if (sum > 0) margin(sum, limits_.total_percent, fmt::format("on {} and its feeder", circuit.mark));
    }

    Finding branch(Circuit const& circuit, BranchDrop const& d, double sum) const {
        auto f = made(about(circuit, "length"), {});
        std::string load;
        if (!d.load_known)
            load = fmt::format(" ({} % of its breaker, its load not being known)", limits_.unknown_percent.value);
        if (Circuit const* p = circuit.partner()) load += fmt::format(" with {} off", p->mark);
        f.message = fmt::format("{} loses {} of its voltage ({:.1f} V of {} V) at {}{} {}, wire at {:.0f} °C: more "
                                "than {} %",
                                circuit.mark, percent(d.percent()), d.volts, d.of.count, amps(d.amperes), load,
                                over_run(c_, d.run), kDropCelsius, limits_.part_percent.value);
        if (sum > 0)
            f.message +=
                fmt::format("; with its feeder {} in all, more than {} %", percent(sum), limits_.total_percent.value);
        auto const cure = larger_wire(d.run, circuit, d.percent(), room_of(d, sum));
        f.fix = advice(cure.empty() ? "bring the panel nearer to the load, or divide the load" : cure);
        if (!d.load_known) f.fix += " Or write its real load, which may be less.";
        add_dwelling_table(f, circuit);
        return f;
    }

    double room_of(BranchDrop const& d, double sum) const {
        auto const part = static_cast<double>(limits_.part_percent.value);
        return sum > 0 ? std::min(part, static_cast<double>(limits_.total_percent.value) - (sum - d.percent())) : part;
    }

    void add_dwelling_table(Finding& f, Circuit const& circuit) const {
        Use const* use = circuit.use;
        if (!c_.building.dwelling || limits_.dwelling_lengths.empty() || !use || !(use->lighting || use->receptacle))
            return;
        f.fix += fmt::format(" Or look its length up in {}: a dwelling's lighting and general-use circuits may go by "
                             "that table, whose lengths legwork does not have.",
                             limits_.dwelling_lengths);
    }

    Finding together(Panel const& panel, FeederDrop const& d,
                     std::vector<std::pair<Circuit const*, double>> const& over) const {
        Where where{panel.name, {}, "length"};
        std::vector<std::string> words;
        double worst = 0;
        for (auto const& [circuit, sum] : over) {
            where.circuits.push_back(circuit->mark);
            words.push_back(fmt::format("{} {}", circuit->mark, percent(sum)));
            worst = std::max(worst, sum);
        }
        auto f = made(std::move(where), "wire-drop/total");
        f.message = fmt::format("With the feeder {} ({} {}) more than {} % of the voltage is lost at the far end: {}",
                                d.feeder->mark, percent(d.own.worst()), over_run(c_, d.run),
                                limits_.total_percent.value, listed(words));
        double const room = static_cast<double>(limits_.total_percent.value) - (worst - d.own.worst());
        auto const cure = larger_wire(d.run, *d.feeder, d.own.worst(), room);
        f.fix = advice(cure.empty() ? "pull larger branches" : cure + " for the feeder, or larger branches");
        return f;
    }

    Case const& c_;
    DropLimits const& limits_;
    std::vector<std::optional<FeederDrop>> feeders_; // of each panel
    Inspection seen_;
};

Verdict judge(Case const& c) { return Drops(c).verdict(); }
} // namespace

constinit Rule const wire_drop{
    .id = "wire-drop",
    .asks = "No more than 3 % of the voltage is lost in a feeder or a branch, and 5 % in both.",
    .why = "Long thin wires eat voltage: lamps dim when the kettle starts, motors and compressors run hot, heaters "
           "give less than they say. The loss is current times resistance, out and back, at 75 °C, with all of the "
           "load at the end of the run; where the load is not known, 80 % of the breaker. A pair is reckoned one "
           "circuit at a time. The NEC advises these limits, the CE Code demands them; for lighting and general-use "
           "circuits of a dwelling the CE Code has a table of greatest lengths as well (8-102(3)), which legwork does "
           "not have and does not use. What is lost ahead of the first panel is not known and not counted.",
    .remedy = "Pull the next larger wire, bring the panel nearer to the load, or write the real load.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
