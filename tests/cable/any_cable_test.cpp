// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Whatever is in the cable, what the tape notes may never say.
#include "cable/conductors.h"

#include "catch.h"
#include <rapidcheck.h>

#include <algorithm>

using namespace legwork;

namespace {
struct Made {
    std::vector<std::string> colors;
    CableTask task;
    CodeBook const* book = nullptr;
};

std::optional<WireColor> asked_for(std::string const& color) {
    return color.empty() ? std::nullopt : std::optional(wire_color(color));
}

rc::Gen<Made> any_cable() {
    return rc::gen::exec([] {
        Made m;
        auto const color = rc::gen::element<std::string>("black", "red", "blue", "white", "grey", "green", "yellow",
                                                         "bare", "white with red stripe", "Black");
        m.colors = *rc::gen::container<std::vector<std::string>>(color);
        if (m.colors.size() > 6) m.colors.resize(6);
        auto const hots = *rc::gen::inRange(1, 3);
        for (int i = 0; i < hots; ++i)
            m.task.hots.push_back(
                {i == 0 ? "K1" : "K2", asked_for(*rc::gen::element<std::string>("", "", "", "red", "white", "green"))});
        m.task.neutral = *rc::gen::arbitrary<bool>();
        m.task.white_is_neutral = *rc::gen::arbitrary<bool>();
        m.task.third = *rc::gen::element(ThirdWire::unsaid, ThirdWire::switched, ThirdWire::traveller,
                                         ThirdWire::interconnect, ThirdWire::spare, ThirdWire::neutral);
        m.task.wiring = *rc::gen::element(Wiring::cable, Wiring::conduit);
        m.task.gauge =
            *rc::gen::element(Gauge::awg14, Gauge::awg6, Gauge::awg4, Gauge::awg2, Gauge::awg1, Gauge::awg4_0);
        m.task.wires = *rc::gen::element(Wires::ac, Wires::ac, Wires::ac, Wires::switch_loop);
        m.book = code_book(*rc::gen::elementOf(editions()));
        return m;
    });
}

bool energized(Conductor const& c) { return c.job != ConductorJob::ground && c.job != ConductorJob::spare; }
bool current_hot(Conductor const& c) { return energized(c) && c.job != ConductorJob::neutral; }
} // namespace

TEST_CASE("any cable: every conductor has one job, and colour and tape never lie", "[cable]") {
    REQUIRE(rc::check([] {
        auto const made = *any_cable();
        auto const [wires, missing_hots, missing_neutrals] =
            conductors_of(wire_colors(made.colors), made.task, *made.book);
        auto const count = [&all = wires](ConductorJob job) { return std::ranges::count(all, job, &Conductor::job); };
        RC_ASSERT(wires.size() == made.colors.size() || wires.size() == made.colors.size() + 1);
        if (made.task.wires == Wires::ac) {
            RC_ASSERT(count(ConductorJob::hot) + missing_hots == static_cast<int>(made.task.hots.size()));
            RC_ASSERT(count(ConductorJob::neutral) + missing_neutrals >= (made.task.neutral ? 1 : 0));
            RC_ASSERT(count(ConductorJob::neutral) <= 1);
        }
        bool const small = made.task.gauge < made.book->remarking.large_from;
        for (Conductor const& w : wires) {
            RC_ASSERT(w.color != "bare" || w.job == ConductorJob::ground);
            RC_ASSERT((w.remark == Remark::as_made) == w.why.empty());
            RC_ASSERT((w.remark == Remark::tape || w.remark == Remark::ask_first) != w.tape.empty());
            if (!energized(w)) RC_ASSERT(w.remark == Remark::as_made);
            if (energized(w) && is_green(w.insulation)) RC_ASSERT(w.remark == Remark::forbidden);
            if (w.job == ConductorJob::neutral && is_white(w.insulation)) RC_ASSERT(w.remark == Remark::as_made);
            if (w.job == ConductorJob::neutral && !is_white(w.insulation) && !is_green(w.insulation)) {
                RC_ASSERT(w.remark != Remark::as_made);
                // 200.6(A); in a cable 200.6(E), whose exception of 2020 and 2023 lets small ones be marked.
                bool const never = made.task.wiring == Wiring::conduit || made.book->edition == "NEC 2017";
                if (made.book->family == Family::nec) RC_ASSERT((w.remark == Remark::forbidden) == (small && never));
                if (w.remark != Remark::forbidden) RC_ASSERT(w.tape == "white");
            }
            if (current_hot(w) && is_white(w.insulation)) {
                RC_ASSERT(w.remark == (made.task.wiring == Wiring::conduit ? Remark::forbidden : Remark::tape));
                RC_ASSERT(w.tape.empty() || (!is_white(wire_color(w.tape).is) && !is_green(wire_color(w.tape).is)));
            }
        }
        // A white is hot by our own choice only where nothing else was left.
        bool const asked = std::ranges::any_of(made.task.hots, [](auto const& h) { return h.color.has_value(); });
        bool const white_hot = std::ranges::any_of(
            wires, [](Conductor const& w) { return w.job == ConductorJob::hot && is_white(w.insulation); });
        bool const other_left = std::ranges::any_of(wires, [](Conductor const& w) {
            return w.job == ConductorJob::spare && !is_white(w.insulation) && !is_green(w.insulation);
        });
        if (!asked && made.task.wires == Wires::ac) RC_ASSERT(!(white_hot && other_left));
    }));
}
