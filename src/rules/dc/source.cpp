// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What hangs on a block of fuses against what the converter, supply or battery gives, and against what the block is
// made for. Against its main fuse panel-main-overloaded holds the loads.
#include "reckon/dc_run.h"
#include "reckon/leg_amps.h"
#include "reckon/run_drop.h"
#include "rules/dc/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <span>

namespace legwork {

namespace {
struct MostDrawn {
    double amperes = 0;
    std::string situation = "connected";
};

MostDrawn worst_of(Case const& c, Panel const& panel, std::span<Situation const* const> all) {
    MostDrawn most;
    for (Feed const& feed : panel.feeds)
        for (Situation const* s : all)
            if (double const amperes = leg_amps(c, panel, s, feed).a; amperes > most.amperes)
                most = {amperes, std::string(name_of(s))};
    return most;
}

// In the worst named situation; with everything on where there is none, or where none has anything of it on.
MostDrawn most_drawn(Case const& c, Panel const& panel) {
    auto const all = situations(c.building);
    auto const named = worst_of(c, panel, std::span(all).subspan(1));
    return named.amperes > 0 ? named : worst_of(c, panel, all);
}

Amps sum_of_fuses(Panel const& panel) {
    Amps sum;
    for (Circuit const* circuit : panel.circuits)
        if (circuit->breaker && !circuit->off && !circuit->is_source()) sum += *circuit->breaker;
    return sum;
}

// What lets no more through to the block than it is made for; a battery's output is no limit.
bool is_held(Panel const& panel) {
    return (panel.main && *panel.main <= *panel.bus) ||
           (panel.power_supply && panel.output && *panel.output <= *panel.bus) ||
           (panel.feeder && panel.feeder->breaker && *panel.feeder->breaker <= *panel.bus);
}

class Block {
public:
    Block(Case const& c, Panel const& panel, Inspection& seen) : c_(c), panel_(panel), seen_(seen) {}

    void judge() {
        auto const drawn = most_drawn(c_, panel_);
        if (panel_.output && drawn.amperes > 0)
            against(drawn, *panel_.output, "output", "what feeds it gives",
                    "Leave something off in that situation, or take a larger converter, supply or battery");
        if (panel_.bus && drawn.amperes > 0)
            against(drawn, *panel_.bus, "bus", "the block is made for", "Move load to another block, or take a larger");
        if (!panel_.bus) return;
        bool const too_large = panel_.main && *panel_.main > *panel_.bus;
        Amps const sum = sum_of_fuses(panel_);
        bool const known =
            std::ranges::all_of(panel_.circuits, [](Circuit const* c) { return c->breaker.has_value(); });
        if (!too_large && !is_held(panel_) && sum <= *panel_.bus && !known) return; // of some fuse it is not known
        seen_.looked();
        if (too_large)
            return found("main", fmt::format("The fuse ahead of panel \"{}\" is {}, and the block is made for {}",
                                             panel_.name, amps(value(*panel_.main)), amps(value(*panel_.bus))));
        if (sum > *panel_.bus && !is_held(panel_))
            found("bus", fmt::format("The fuses of panel \"{}\" add up to {}, the block is made for {}, and the job "
                                     "tells of no fuse ahead of it",
                                     panel_.name, amps(value(sum)), amps(value(*panel_.bus))));
    }

private:
    void against(MostDrawn const& drawn, Amps most, std::string key, std::string_view what, std::string fix) {
        if (!is_over(drawn.amperes, most) && !loads_known(panel_)) return; // more may be drawn than is known
        seen_.looked();
        if (is_over(drawn.amperes, most)) {
            found(std::move(key),
                  fmt::format("Panel \"{}\" draws {} {}, more than {}, {}", panel_.name, amps(drawn.amperes),
                              in_situation(drawn.situation), what, amps(value(most))),
                  std::move(fix));
            return;
        }
        seen_.margin(drawn.amperes / value(most),
                     [&] { return fmt::format("{} in panel \"{}\"", used_of(drawn.amperes, most), panel_.name); });
    }

    void found(std::string key, std::string message, std::string fix = {}) {
        auto f = finding(c_, dc_source, Gravity::usual, {panel_.name, {}, std::move(key)});
        f.message = std::move(message);
        f.fix = fix.empty() ? fmt::format("Put a fuse of {} or less ahead of the block, at the battery, and write it "
                                          "as  main",
                                          amps(value(*panel_.bus)))
                            : std::move(fix);
        seen_.found(std::move(f));
    }

    Case const& c_;
    Panel const& panel_;
    Inspection& seen_;
};

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels)
        if (panel.is_dc()) Block(c, panel, seen).judge();
    return seen.verdict();
}
} // namespace

constinit Rule const dc_source{
    .id = "dc-source",
    .asks = "What hangs on a block of fuses is within what its source gives and what the block is made for.",
    .why = "A converter that is asked for too much shuts down, and all lights with it; a block of fuses has a bus as "
           "thin as a strip of brass, and twelve fuses of 15 A let through 180 A where it is made for 100 A. Only a "
           "fuse ahead of it, at the battery, holds that back.",
    .remedy = "Add up what runs together; take the supply with something to spare (80 % is usual); fuse the block at "
              "the battery for no more than is marked on it.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
