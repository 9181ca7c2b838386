// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Solar and battery on the bus. An interlocked inlet never feeds it together with the main, so it is not judged here.
#include "reckon/backfeed.h"
#include "rules/panel/list.h"
#include "units/text.h"

#include <fmt/format.h>

namespace legwork {

namespace {
// What comes back through a feeder is in part the other panel's question.
Gravity::Of gravity(Backfeed const& b) { return b.all_behind_feeders ? Gravity::doubtful : Gravity::usual; }

Where about_sources(Panel const& panel, Backfeed const& b, std::string key = {}) {
    Where where{panel.name, {}, std::move(key)};
    for (Circuit const* s : b.sources) where.circuits.push_back(s->mark);
    return where;
}

std::string main_words(Backfeed const& b) { return b.ahead_is_feeder ? "the feeder's breaker" : "the main"; }

std::string feeding(Panel const& panel, Backfeed const& b) {
    return fmt::format("{} {} the bus of panel \"{}\" beside {}", listed(about_sources(panel, b).circuits),
                       b.sources.size() == 1 ? "feeds" : "feed", panel.name, main_words(b));
}

// "125 % of the output of 40 A, 50 A,"; "its breaker, 40 A,"
std::string share_words(Case const& c, Backfeed const& b, Amps share) {
    auto const part = backfeed(c.book).output_percent;
    auto const counted = text(share);
    if (part && b.output) return fmt::format("{} % of the output of {}, {},", part->value, text(*b.output), counted);
    return fmt::format("{}, {},", b.sources.size() == 1 ? "its breaker" : "their breakers", counted);
}

// The most that still fits, in words of what counts; empty when nothing does.
std::string most_words(Case const& c, Backfeed const& b) {
    Amps const left = *b.most - *b.ahead;
    if (left <= Amps{}) return {};
    auto const part = backfeed(c.book).output_percent;
    if (!part) return fmt::format("source breakers of {} in all", text(left));
    return fmt::format("an output of {}", text(Amps{left.count * 100 / part->value}));
}

// Holds only while nobody adds a breaker, which a job file cannot promise.
std::string or_all_breakers(Case const& c, Backfeed const& b) {
    if (!b.all_breakers) return {};
    bool const remembered = backfeed(c.book).all_breakers == Source::memory;
    return fmt::format(". All breakers but {} add up to {}, within the bus: the code takes that too{} with a sign that "
                       "they must stay within it; then accept this finding by [[accept]]",
                       main_words(b), text(*b.all_breakers), remembered ? " (from memory)" : "");
}

Finding too_much(Case const& c, Panel const& panel, Backfeed const& b) {
    auto f = finding(c, panel_backfeed, gravity(b), about_sources(panel, b));
    auto const limit =
        fmt::format("a bus of {} takes at most {} ({} %)", text(*b.bus), text(*b.most), b.bus_percent.value);
    auto const fits = most_words(c, b);
    f.message =
        fits.empty()
            ? fmt::format("{}, and {} alone is {}: {}", feeding(panel, b), main_words(b), text(*b.ahead), limit)
            : fmt::format("{}: {} and {}, {}, make {}, and {}", feeding(panel, b), share_words(c, b, b.share.least),
                          main_words(b), text(*b.ahead), text(*b.ahead + b.share.least), limit);
    f.fix = fmt::format("{} a smaller main where the load calculation allows it, fit a panel with a larger bus, or "
                        "connect the source ahead of the main",
                        fits.empty() ? "Fit" : fmt::format("Stay within {}; or fit", fits)) +
            or_all_breakers(c, b);
    return f;
}

struct MissingFigure {
    std::string key, what, how;
};
std::vector<MissingFigure> missing(Case const& c, Panel const& panel, Backfeed const& b) {
    std::vector<MissingFigure> all;
    if (!b.bus) all.push_back({"bus", "the rating of the bus", "the bus rating on the label in the panel's door"});
    if (!b.ahead)
        all.push_back({"main", panel.feeder_said ? "the main, or the feeder's breaker" : "the main",
                       "the main's rating on its handle"});
    if (b.share.exact()) return all;
    if (backfeed(c.book).output_percent)
        all.push_back({"output", "the output of the source", "the output in amperes on the source's nameplate"});
    else
        all.push_back({"", "the breaker of the source", "the rating on the source's breaker"});
    return all;
}

Finding not_known(Case const& c, Panel const& panel, Backfeed const& b) {
    std::vector<std::string> what, how;
    for (MissingFigure const& m : missing(c, panel, b)) {
        what.push_back(m.what);
        how.push_back(m.how);
    }
    auto f = finding(c, panel_backfeed, Gravity::doubtful, about_sources(panel, b));
    f.message = fmt::format("{}. Whether the bus takes both cannot be told: {} {} not known", feeding(panel, b),
                            listed(what), what.size() == 1 ? "is" : "are");
    auto const end = main_end(c, panel);
    for (Circuit const* s : b.sources)
        if (end && placement_of(c.plan, s->mark) && !at_far_end(c, panel, *s, *end))
            f.message += fmt::format(". {} does not stand at the end away from the main", s->mark);
    auto const fits = b.bus && b.ahead ? most_words(c, b) : std::string();
    f.fix = fmt::format("Read {}. {}", listed(how),
                        fits.empty() ? fmt::format("Main and source together may be at most {} % of the bus, at "
                                                   "opposite ends of it",
                                                   b.bus_percent.value)
                                     : fmt::format("At most {} fits, at the end away from the main", fits));
    return f;
}

std::string one_of(std::vector<int> const& spaces) {
    std::string all;
    for (int const s : spaces) all += (all.empty() ? "space " : " or ") + std::to_string(s);
    return all;
}

std::optional<Finding> misplaced(Case const& c, Panel const& panel, Backfeed const& b, Circuit const& source) {
    auto const end = main_end(c, panel);
    bool const far = end && at_far_end(c, panel, source, *end);
    bool const stays = source.fixed && source.space;
    if (far && stays) return std::nullopt;
    // An output that is not given may be small enough to stand anywhere.
    bool const sure = end && *b.ahead + b.share.least > *b.bus;
    auto f = finding(c, panel_backfeed, sure ? gravity(b) : Gravity::doubtful, {panel.name, {source.mark}, "space"});
    auto const where = spaces_of(c, source.mark);
    std::vector<std::string> wrong, cure;
    if (!end) {
        wrong.emplace_back("which end the main is at is not said");
        cure.emplace_back("look where the main or its lugs are and write `main_at`");
    } else if (!far) {
        wrong.push_back(where.empty() ? "it has no space" : fmt::format("it stands on {}", where));
        cure.push_back(fmt::format("move it so that it takes {}", one_of(far_spaces(panel, *end))));
    }
    if (!stays) {
        wrong.emplace_back("it is not `fixed`, so a balance may move it");
        cure.emplace_back("write its `space` and `fixed = true`");
    }
    f.message =
        fmt::format("{}: {} and {}, {}, make {}, more than the bus of {}. That is allowed up to {} ({} %) only "
                    "with the source at the end away from the main, for good; {}",
                    feeding(panel, b), share_words(c, b, *b.share.most), main_words(b), text(*b.ahead),
                    text(*b.ahead + *b.share.most), text(*b.bus), text(*b.most), b.bus_percent.value, listed(wrong));
    f.fix = listed(cure);
    if (!f.fix.empty() && f.fix[0] >= 'a') f.fix[0] = static_cast<char>(f.fix[0] - 'a' + 'A');
    f.fix += or_all_breakers(c, b);
    return f;
}

void tell_margin(Panel const& panel, Backfeed const& b, Inspection& seen) {
    if (b.leave != BackfeedLeave::sum && b.leave != BackfeedLeave::far_end) return;
    Amps const limit = b.leave == BackfeedLeave::sum ? *b.bus : *b.most, both = *b.ahead + *b.share.most;
    seen.margin(value(both) / value(limit),
                [&] { return fmt::format("{} on the bus of panel \"{}\"", used_of(value(both), limit), panel.name); });
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        auto const b = backfeed_of(c, panel);
        if (b.leave == BackfeedLeave::none_asked) continue;
        seen.looked();
        if (b.leave == BackfeedLeave::too_much) seen.found(too_much(c, panel, b));
        if (b.leave == BackfeedLeave::not_known) seen.found(not_known(c, panel, b));
        tell_margin(panel, b, seen);
        if (b.leave != BackfeedLeave::far_end) continue;
        for (Circuit const* source : b.sources) seen.found(misplaced(c, panel, b, *source));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_backfeed{
    .id = "panel-backfeed",
    .asks = "A bus is not fed beyond what it carries by its main and by solar or a battery together.",
    .why = "The main guards the bus only while it is the one way in. A source at work brings its current from the "
           "other side, and loads between the two can draw both without any breaker knowing. At opposite ends the "
           "currents meet in the middle and no stretch carries the sum, so a little more than the bus rating is "
           "allowed there. A generator inlet interlocked with the main never works beside it and is not meant.",
    .remedy = "Put the source's breaker at the end away from the main and write `fixed = true`; keep its output within "
              "what the bus leaves; or fit a smaller main, a larger panel, or a connection ahead of the main.",
    .gravity = {.nec = {Grade::error},
                .ce = {Grade::warning},
                .doubt = "a figure is not known, or all sources stand behind feeders"},
    .judge = judge,
};

} // namespace legwork
