// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// An edition whose tables and sections contradict each other does not build: a table is there where a section speaks,
// and nothing is there, or its source is `unread`, where nobody has read the section. So whoever asks whether a section
// is unread (rules/unread.h) knows whether the table behind it may be used.
#pragma once

#include "codebook/backfeed.h"
#include "codebook/branch_limits.h"
#include "codebook/cable_places.h"
#include "codebook/demand_factors.h"
#include "codebook/drop_limits.h"
#include "codebook/dwelling.h"
#include "codebook/outbuilding.h"
#include "codebook/outlet_count.h"
#include "codebook/positions.h"
#include "codebook/protection_rows.h"
#include "codebook/sections.h"

namespace legwork {

namespace agreement {

class Compared {
public:
    constexpr explicit Compared(CodeBook const& book) : book_(book) {}
    constexpr section_rows::Name first_fault() const { return fault_; } // a topic; none where all agree

    template <class Table>
    constexpr void page(std::string_view topic, CodePage<Table> const& page) {
        auto const& says = section(topic);
        expect(topic, says.is_unread() == page.is_unread() && (!says.speaks() || page.get()));
    }
    constexpr void number(std::string_view topic, Source source) {
        expect(topic, section(topic).is_unread() == (source == Source::unread));
    }
    constexpr void number(std::string_view topic, Figure figure) { number(topic, figure.source); }
    template <class Rows>
    constexpr void numbers(std::string_view topic, Rows const& rows) {
        for (auto const& row : rows) number(topic, row.source);
    }
    // Rows that each name their topic, all of it under `prefix`.
    template <class Rows>
    constexpr void list(std::string_view prefix, Rows const& rows) {
        for (auto const& row : rows) expect(row.topic, section(row.topic).speaks() || is_custom(row.topic));
        for (Topic const& t : kTopics)
            if (t.name.starts_with(prefix) && section(t.name).speaks() && t.name != "gfci-needed/elsewhere")
                expect(t.name, std::ranges::find(rows, t.name, &std::ranges::range_value_t<Rows>::topic) != rows.end());
    }
    constexpr void method(std::string_view topic, bool has) { expect(topic, section(topic).speaks() == has); }
    // A table without rows is the code's silence, and nothing else is.
    constexpr void silence(std::string_view topic, bool none) { expect(topic, section(topic).is_silent() == none); }
    constexpr void remarking(RemarkingRow const& row) {
        number(row.topic, row.source);
        expect(row.topic, (row.as == Remarking::unread) == (row.source == Source::unread));
    }

private:
    constexpr Section const& section(std::string_view topic) const {
        return book_.sections.of_topic[topic_number(topic).value()];
    }
    static constexpr bool is_custom(std::string_view topic) {
        return kTopics[topic_number(topic).value()].basis == Topic::Basis::custom;
    }
    constexpr void expect(std::string_view topic, bool is) {
        if (!is && fault_.none()) fault_ = section_rows::Name(topic);
    }

    CodeBook const& book_;
    section_rows::Name fault_;
};

template <class To>
constexpr void compare_wires(To& all, CodeBook const& b) {
    all.number("wire-breaker-fits/large", b.ampacities_source);
    all.numbers("wire-breaker-fits", b.small_wires);
    all.numbers("wire-breaker-fits/dwelling-feeder", b.dwelling_feeders);
    all.silence("wire-breaker-fits/dwelling-feeder", b.dwelling_feeders.empty());
    all.silence("load-service/dwelling-wire", b.dwelling_feeders.empty());
    all.number("wire-breaker-size", b.standard_breakers_source);
    all.number("wire-continuous", b.continuous_percent);
    all.number("wire-breaker-fits/heating", b.heating_breaker_percent);
    all.number("wire-load-fits/motor", b.motor_wire_percent);
    all.number("wire-breaker-fits/motor", b.motor_breaker_percent);
    all.number("wire-breaker-fits/motor", b.motor_breaker_most_percent);
    all.number("wire-breaker-fits/welder", b.welder_breaker_percent);
    all.number("wire-load-fits/range", b.range.base_va);
    all.number("wire-load-fits/range", b.range.excess_percent);
    all.numbers("wire-outlet/amperes", b.receptacles);
    if (b.lone_receptacle) all.number("wire-outlet/single", *b.lone_receptacle);
    auto const& branch = b.branch_limits;
    if (branch.lights) all.number("wire-branch", *branch.lights);
    if (branch.receptacles) all.number("wire-branch", *branch.receptacles);
    all.method("wire-branch/heavy-duty", branch.heavy_duty_above.has_value());
    all.method("wire-branch/small", branch.small.has_value());
    all.numbers("wire-place", b.cable_places.rows);
    all.number("wire-place/burial", b.cable_places.burial.cable);
    all.page("wire-outlet-count", b.outlet_count);
}

template <class To>
constexpr void compare_panels(To& all, CodeBook const& b) {
    all.number("wire-drop", b.drop_limits.part_percent);
    all.number("wire-drop/total", b.drop_limits.total_percent);
    all.number("panel-backfeed", b.backfeed.bus_percent);
    all.number("panel-backfeed", b.backfeed.dwelling_bus_percent);
    all.page("panel-spare-spaces", b.positions);
    all.page("panel-outbuilding", b.outbuilding);
    for (auto const& row : {b.remarking.white_as_hot_in_cable, b.remarking.white_as_hot_in_conduit,
                            b.remarking.white_in_switch_loop, b.remarking.small_as_neutral_in_cable,
                            b.remarking.small_as_neutral_in_conduit, b.remarking.large_as_neutral, b.remarking.green})
        all.remarking(row);
}

template <class To>
constexpr void compare_dwellings(To& all, CodeBook const& b) {
    all.list("gfci-needed/", b.gfci.rows);
    all.page("afci-needed", b.afci);
    all.page("need-neutral-at-switch", b.switches);
    all.page("need-kitchen", b.household.kitchen);
    all.page("need-laundry", b.household.laundry);
    all.page("need-laundry/utility", b.household.utility);
    all.page("need-bath", b.household.bath);
    all.page("need-garage", b.household.garage);
    all.page("need-outdoor", b.household.outdoor);
    all.page("need-kitchen-share", b.counter);
    all.list("need-dedicated/", b.own_circuits.rows);
}

template <class To>
constexpr void compare_loads(To& all, CodeBook const& b) {
    all.page("load-service", b.demand_factors);
    DemandFactors const* factors = b.demand_factors.get();
    if (!factors) return;
    all.method("load-service/optional", factors->optional.has_value());
    all.method("load-service/existing", factors->existing.has_value());
    all.method("load-service/neutral", factors->neutral.has_value());
}

// Shows each table and figure, with the topic that it belongs to, to whoever looks at them (here and
// tables/sources.cpp).
template <class To>
constexpr void compare(To& all, CodeBook const& book) {
    compare_wires(all, book);
    compare_panels(all, book);
    compare_dwellings(all, book);
    compare_loads(all, book);
}

consteval section_rows::Name first_fault(CodeBook const& book) {
    Compared all(book);
    compare(all, book);
    return all.first_fault();
}

template <section_rows::Name kTopic>
struct Agrees {
    static_assert(kTopic.none(), "an edition's table and its section disagree: unread in one and there in the other");
};

} // namespace agreement

template <CodeBook const& kBook>
consteval CodeBook const* checked() {
    static_assert(!kBook.edition.empty() && !kBook.ampacities.empty() && !kBook.small_wires.empty() &&
                      !kBook.standard_breakers.empty() && !kBook.receptacles.empty(),
                  "an edition has a name, and the tables without which no wire can be reckoned");
    agreement::Agrees<agreement::first_fault(kBook)>();
    return &kBook;
}

} // namespace legwork
