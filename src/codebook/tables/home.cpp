// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "codebook/dwelling.h"
#include "codebook/positions.h"
#include "codebook/protection_rows.h"
#include "codebook/tables/tables.h"
#include "units/text.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;

std::string joined_names(RoomPlaces places) {
    return places.empty() ? "-" : fmt::format("{}", fmt::join(names(places), ", "));
}

std::string asked(GfciRow const& row) {
    std::string words = row.asks == Asks::yes ? "yes" : "perhaps";
    if (row.asks == Asks::perhaps && !row.hangs_on.empty()) words = fmt::format("if {}", row.hangs_on);
    if (row.most) words += fmt::format("; breaker up to {}", text(*row.most));
    if (auto const& until = row.until)
        words += fmt::format("; listed heating and cooling not before {}-{:02}-{:02}{}", until->year, until->month,
                             until->day, row.unless_adopted.empty() ? "" : " where the amendment of 2022 is adopted");
    return words;
}

struct Part {
    Household part;
    std::string_view words, topic;
};
constexpr Part kParts[] = {{Household::kitchen, "kitchen counter", "need-kitchen"},
                           {Household::laundry, "laundry", "need-laundry"},
                           {Household::utility, "utility room", "need-laundry/utility"},
                           {Household::bath, "bathroom", "need-bath"},
                           {Household::garage, "garage", "need-garage"},
                           {Household::outdoor, "outdoors", "need-outdoor"}};

std::string sharing(HouseholdCircuits const& h) {
    if (!h.own) return "whatever its code lets share them";
    std::vector<std::string> with = names(h.with_places);
    if (h.with_lighting) with.emplace_back("lights of the same place");
    if (h.with_one_room) with.emplace_back("all of the one room it serves");
    return with.empty() ? "nothing else" : fmt::format("{}", fmt::join(with, ", "));
}

// The use, and which of its kind.
std::string used(OwnCircuit const& own) {
    std::string words(own.use);
    if (own.poles > 0) words += own.poles == 1 ? ", one pole" : ", two poles";
    if (own.above_w) words += fmt::format(", above {} W", own.above_w->value);
    if (!own.which.empty()) words += fmt::format(" {}", own.which);
    return words;
}

std::string left_free(PositionsTable const& t, int number) {
    return std::to_string(number) + (t.room_for_two_pole ? ", two of them beside each other" : "");
}
} // namespace

std::vector<TablePart> gfci_table() {
    return by_edition({"what", "at", "asked", "section"}, "", [](CodeBook const& b) {
        Rows rows;
        for (GfciRow const& row : gfci_rows(b))
            rows.push_back({{std::string(row.what), joined_names(row.places), asked(row), section_words(b, row.topic)},
                            cite(b, row.topic).source});
        std::ranges::move(unread_rows(b, "gfci-needed/", 4), std::back_inserter(rows));
        return rows;
    });
}

std::vector<TablePart> afci_rooms_table() {
    return by_edition({"what", "asked"}, "afci-needed", [](CodeBook const& b) {
        if (b.afci.is_unread()) return Rows{};
        auto const& t = afci_table(b);
        auto const source = cite(b, "afci-needed").source;
        return Rows{{{"circuits", std::string(t.what)}, source},
                    {{"breakers", t.least_amps > 0 ? fmt::format("{} A to {} A", t.least_amps, t.most_amps)
                                                   : fmt::format("up to {} A", t.most_amps)},
                     source},
                    {{"rooms", joined_names(t.rooms)}, source},
                    {{"perhaps, as the words do not tell", joined_names(t.perhaps)}, source},
                    {{"let off", joined_names(t.let_off)}, source}};
    });
}

std::vector<TablePart> switch_neutral_table() {
    return by_edition({"what", "asked"}, "need-neutral-at-switch", [](CodeBook const& b) {
        if (b.switches.is_unread()) return Rows{};
        auto const& t = switch_table(b);
        auto const source = cite(b, "need-neutral-at-switch").source;
        return Rows{{{"rooms", t.rooms.empty() ? "every place" : joined_names(t.rooms)}, source},
                    {{"switches of lights only", t.lighting_only ? "yes" : "no"}, source},
                    {{"let off in conduit", t.not_in_conduit ? "yes" : "no"}, source}};
    });
}

std::vector<TablePart> household_table() {
    return by_edition(
        {"part", "circuits", "breakers", "in every dwelling", "shared with", "section"}, "", [](CodeBook const& b) {
            Rows rows;
            for (Part const& p : kParts) {
                if (b.household.of(p.part).is_unread()) {
                    rows.push_back({{std::string(p.words), "not read yet", "-", "-", "-", "-"}, Source::unread});
                    continue;
                }
                if (!b.household.of(p.part).get()) continue; // silent
                auto const& h = household_circuits(b, p.part);
                rows.push_back({{std::string(p.words), std::to_string(h.circuits.value),
                                 h.amps ? fmt::format("{} A", h.amps->value) : "any",
                                 h.always ? (h.in_flats ? "yes" : "in a single dwelling") : "where there is one",
                                 sharing(h), section_words(b, p.topic)},
                                h.circuits.source});
            }
            return rows;
        });
}

std::vector<TablePart> counter_table() {
    return by_edition({"what", "figure"}, "need-kitchen-share", [](CodeBook const& b) {
        if (b.counter.is_unread()) return Rows{};
        auto const& t = counter_circuit(b);
        Rows rows;
        if (t.receptacles_most)
            rows.push_back({{"receptacles on one circuit, at most", std::to_string(t.receptacles_most->value)},
                            t.receptacles_most->source});
        if (t.one_receptacle_circuits)
            rows.push_back({{"circuits that do for a counter with one receptacle",
                             std::to_string(t.one_receptacle_circuits->value)},
                            t.one_receptacle_circuits->source});
        if (t.unsplit_amps)
            rows.push_back(
                {{"breaker of a circuit whose receptacles are not split", fmt::format("{} A", t.unsplit_amps->value)},
                 t.unsplit_amps->source});
        rows.push_back(
            {{"a circuit of other kitchen receptacles counts", t.wall_receptacles_count ? "yes" : "no"}, t.source});
        rows.push_back({{"receptacles there may share it", joined_names(t.with_places)}, t.source});
        rows.push_back(
            {{"uses that may share it", t.with_uses.empty() ? "-" : fmt::format("{}", fmt::join(t.with_uses, ", "))},
             t.source});
        return rows;
    });
}

std::vector<TablePart> own_circuit_table() {
    return by_edition({"use", "may share it", "outlets", "section"}, "", [](CodeBook const& b) {
        Rows rows;
        for (Use const& u : uses())
            for (OwnCircuit const& own : b.own_circuits.rows)
                if (own.use == u.name)
                    rows.push_back(
                        {{used(own), own.with.empty() ? "nothing" : fmt::format("{}", fmt::join(own.with, ", ")),
                          own.one_outlet ? "one" : "any number", section_words(b, own.topic)},
                         own.source});
        std::ranges::move(unread_rows(b, "need-dedicated/", 4), std::back_inserter(rows));
        return rows;
    });
}

std::vector<TablePart> position_table() {
    return by_edition(
        {"service up to", "positions", "with central electric heating"}, "panel-spare-spaces", [](CodeBook const& b) {
            if (b.positions.is_unread()) return Rows{};
            auto const* t = dwelling_positions(b);
            if (!t) return Rows{{{"any", "no number", "no number"}, {}}};
            Rows rows;
            for (PositionsRow const& r : t->rows)
                rows.push_back(
                    {{text(r.up_to), std::to_string(r.positions), std::to_string(r.with_central_heating)}, t->source});
            if (rows.empty()) rows.push_back({{"any", "no number", "no number"}, t->source});
            auto const free = left_free(*t, t->left_free);
            rows.push_back(
                {{t->when_new ? "left free in a new panel, at least" : "left free of them, at least", free, free},
                 t->source});
            if (auto const flat = std::to_string(t->left_free_in_flat); flat != free)
                rows.push_back({{"the same in a unit of an apartment building", flat, flat}, t->source});
            return rows;
        });
}

} // namespace legwork
