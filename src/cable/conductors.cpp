// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/conductors.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// Lower is sooner: the order in which a hot takes a conductor. Common practice, no source: black, then red, then blue.
int hot_rank(Insulation i) {
    if (is_green(i)) return 5;
    if (is_white(i)) return 4;
    constexpr std::array kFirst{Insulation::black, Insulation::red, Insulation::blue};
    return static_cast<int>(std::ranges::find(kFirst, i) - kFirst.begin());
}

// Gives the conductors of one cable their jobs, each at most one.
class Assignment {
public:
    Assignment(std::vector<WireColor> const& colors, CableTask const& task) : task_(task) {
        for (WireColor const& color : colors) {
            bool const bare = color.is == Insulation::bare;
            conductors_.push_back(conductor(color, bare ? ConductorJob::ground : ConductorJob::spare));
            free_.push_back(!bare);
        }
    }

    CableConductors run() {
        if (task_.wires == Wires::dc)
            direct_current();
        else if (task_.wires == Wires::switch_loop)
            switch_loop();
        else
            alternating_current();
        leftovers();
        return {std::move(conductors_), missing_hots_, missing_neutrals_};
    }

private:
    using Slot = std::optional<std::size_t>;

    template <class Fits>
    Slot first(Fits fits) const {
        for (std::size_t i = 0; i < conductors_.size(); ++i)
            if (free_[i] && fits(conductors_[i])) return i;
        return std::nullopt;
    }
    Slot of_color(WireColor const& color) const {
        return first([&](Conductor const& c) { return c.color == color.name; });
    }
    Slot plain(Insulation i) const {
        return first([i](Conductor const& c) { return c.insulation == i; });
    }
    Slot white() const {
        return first([](Conductor const& c) { return is_white(c.insulation); });
    }
    Slot green() const {
        return first([](Conductor const& c) { return is_green(c.insulation); });
    }
    // The free conductor that a hot takes first (or, `last`, that it would take last), no rank above `limit`.
    Slot by_rank(int limit, bool last = false) const {
        Slot best;
        for (std::size_t i = 0; i < conductors_.size(); ++i) {
            if (!free_[i] || hot_rank(conductors_[i].insulation) > limit) continue;
            int const rank = hot_rank(conductors_[i].insulation);
            if (!best || (last ? rank >= hot_rank(conductors_[*best].insulation)
                               : rank < hot_rank(conductors_[*best].insulation)))
                best = i;
        }
        return best;
    }
    Slot for_hot() const { return by_rank(5); }
    // No white: the colour that a hot would take last, green only when nothing else is left.
    Slot for_neutral() const {
        if (auto const w = white()) return w;
        if (auto const other = by_rank(3, true)) return other;
        return by_rank(5);
    }

    bool give(Slot slot, ConductorJob job, std::string const& circuit) {
        if (!slot) return false;
        conductors_[*slot].job = job;
        conductors_[*slot].circuit = circuit;
        free_[*slot] = false;
        return true;
    }

    void alternating_current() {
        // Hots asked for by colour, then the white for the neutral, then the hots that take what comes.
        std::vector<bool> done(task_.hots.size());
        for (std::size_t i = 0; i < done.size(); ++i) {
            if (!task_.hots[i].color) continue;
            done[i] = true;
            if (!give(of_color(*task_.hots[i].color), ConductorJob::hot, task_.hots[i].circuit)) ++missing_hots_;
        }
        bool has_neutral = task_.neutral && give(white(), ConductorJob::neutral, task_.neutral_circuit);
        for (std::size_t i = 0; i < done.size(); ++i)
            if (!done[i] && !give(for_hot(), ConductorJob::hot, task_.hots[i].circuit)) ++missing_hots_;
        if (task_.neutral && !has_neutral) {
            has_neutral = give(for_neutral(), ConductorJob::neutral, task_.neutral_circuit);
            missing_neutrals_ += !has_neutral;
        }
        if (!task_.neutral && task_.white_is_neutral && task_.third == ThirdWire::unsaid)
            give(white(), ConductorJob::neutral, task_.neutral_circuit);
        third();
    }

    void third() {
        if (task_.third == ThirdWire::switched) give(by_rank(4), ConductorJob::switched, task_.third_circuit);
        if (task_.third == ThirdWire::traveller) give(by_rank(4), ConductorJob::traveller, task_.third_circuit);
        if (task_.third == ThirdWire::interconnect) give(by_rank(4), ConductorJob::interconnect, task_.third_circuit);
    }

    // From a light's box to its switch: a three-wire brings the neutral along, a two-wire has its white as the feed.
    void switch_loop() {
        auto const& circuit = task_.hots.front().circuit;
        bool const two_hots =
            std::ranges::count_if(conductors_, [](Conductor const& c) { return hot_rank(c.insulation) < 4; }) > 1;
        if (two_hots) {
            give(by_rank(3), ConductorJob::hot, circuit);
            give(by_rank(3), ConductorJob::switched, circuit);
            give(white(), ConductorJob::neutral, circuit);
            return;
        }
        give(by_rank(3), ConductorJob::switched, circuit);
        if (!give(white(), ConductorJob::hot, circuit) && !give(for_hot(), ConductorJob::hot, circuit)) ++missing_hots_;
    }

    // A strip's cable: the plus and the channels, whatever house wiring makes of their colours. What no channel stands
    // for (the cable was said to have other wires) is capped.
    void strip() {
        auto const& circuit = task_.hots.front().circuit;
        bool has_plus = false;
        for (std::size_t i = 0; i < conductors_.size() && i < task_.channels.size(); ++i) {
            bool const plus = task_.channels[i] == kPlusChannel;
            conductors_[i].job = plus ? ConductorJob::hot : ConductorJob::channel;
            conductors_[i].circuit = circuit;
            if (!plus) conductors_[i].channel = task_.channels[i];
            has_plus |= plus;
        }
        missing_hots_ += !has_plus;
    }

    // Positive: red where there is one. Negative: black, else white.
    void direct_current() {
        if (!task_.channels.empty()) return strip();
        for (auto const& hot : task_.hots) {
            Slot slot = hot.color ? of_color(*hot.color) : plain(Insulation::red);
            if (!slot && !hot.color) slot = by_rank(4);
            if (!give(slot, ConductorJob::hot, hot.circuit)) ++missing_hots_;
        }
        Slot slot = plain(Insulation::black);
        if (!slot) slot = by_rank(4);
        if (task_.neutral && !give(slot, ConductorJob::neutral, task_.neutral_circuit)) ++missing_neutrals_;
    }

    // A green that nothing needed is the ground; then the cable's own, unless the colours named one.
    void leftovers() {
        if (!task_.power) return; // a green in an extra-low-voltage cable is a wire like others, never the ground
        bool const bare = std::ranges::count(conductors_, Insulation::bare, &Conductor::insulation) > 0;
        if (!bare && give(green(), ConductorJob::ground, "")) return;
        if (bare || !task_.ground) return;
        conductors_.push_back(
            conductor(wire_color(task_.wiring == Wiring::conduit ? "green" : "bare"), ConductorJob::ground));
    }

    CableTask const& task_;
    std::vector<Conductor> conductors_;
    std::vector<bool> free_;
    int missing_hots_ = 0, missing_neutrals_ = 0;
};

} // namespace

Conductor conductor(WireColor const& color, ConductorJob job) {
    Conductor c;
    c.color = color.name;
    c.insulation = color.is;
    c.job = job;
    return c;
}

CableConductors conductors_of(std::vector<WireColor> const& colors, CableTask const& task, CodeBook const& book) {
    auto result = Assignment(colors, task).run();
    for (Conductor& c : result.conductors) remark(c, colors, task, book);
    return result;
}

} // namespace legwork
