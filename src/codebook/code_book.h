// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One code edition: it names every one of its tables, or it does not build. Rules ask the book; they never ask which
// edition it is. Every number carries how it was come by.
//
//     codebook/            the book, the types of its tables, how an edition cites (cite.h, topics.h, sections.h)
//     codebook/editions/   a folder of rows each (nec_2023/), what several share (nec/, ce/), the list of all
//     codebook/stock/      what is the same under every code: uses, cable kinds, receptacles, wire, words for places
//     codebook/tables/     the tables as text, for explain --table
//
// What nobody has read in an edition is `unread`, and nothing is taken over from another in silence: a section says so
// (sections.h), a table is not there (code_page.h), a list leaves the row out. Numbers without which no wire can be
// reckoned are always there; one with the source `unread` stands in from another edition, and whatever is reckoned by
// it says so. No rule judges by any of them: it says that it does not (rules/unread.h). checked_edition.h holds
// sections and tables of an edition against each other.
#pragma once

#include "codebook/code_page.h"
#include "units/gauge.h"
#include "units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

enum class Family { nec, ce };

// Ampacity in amperes of not more than three current-carrying conductors in a cable or raceway, 30 °C around; 0: not
// made.
struct AmpacityRow {
    Gauge gauge;
    int copper_60, copper_75, copper_90, aluminium_60, aluminium_75, aluminium_90;
};

// Largest breaker on a small wire, whatever its ampacity.
struct SmallWireRow {
    Gauge gauge;
    Metal metal;
    Amps breaker;
    Source source;
};

// Smallest wire for a main or feeder that carries the whole load of one dwelling.
struct DwellingFeederRow {
    Amps breaker;
    std::optional<Gauge> copper, aluminium; // nothing: larger than 4/0, or not known
    Source source;
};

struct Figure {
    std::int64_t value; // unit: see the field
    Source source;
    constexpr Figure(std::int64_t is, Source by) : value(is), source(by) {} // neither can be left out
};

// Receptacle ratings (A) that may stand on a circuit with two or more receptacle outlets (a duplex counts as two).
struct ReceptacleRow {
    int circuit; // A
    int least, most;
    Source source;
    bool larger_disputed = false; // one above `most`: readings of the code differ
};

// Branch-circuit demand of one household range.
struct RangeDemand {
    Figure base_va, base_up_to_va;                       // 8 kW up to 12 kW
    Figure excess_percent;                               // of the base for each whole kW above, or of the excess itself
    bool per_kilowatt;                                   // true: a percent of the base for each kW or major part of it
    std::optional<Figure> small_up_to_va, small_percent; // a smaller range may be taken at this percent
    std::optional<Figure> large_from_va, large_least_breaker; // from this nameplate on at least this breaker (A)
};

// What may be done to a conductor whose colour does not say its job. See cable/run.h for what a sheet makes of it.
enum class Remarking {
    not_asked, // the code asks for no tape here
    allowed,   // tape at both ends and wherever it can be reached and seen
    disputed,  // letter of the code and custom differ: ask first
    never,
    unread, // not known: ask first
};
struct RemarkingRow {
    Remarking as;
    Source source;
    std::string_view topic; // of cite.h
};
struct RemarkingTable {
    RemarkingRow white_as_hot_in_cable, white_as_hot_in_conduit;
    RemarkingRow white_in_switch_loop; // as the feed, never as the switched return
    Gauge large_from;                  // smallest size that counts as large
    RemarkingRow small_as_neutral_in_cable, small_as_neutral_in_conduit, large_as_neutral; // any colour but green
    RemarkingRow green;                                                                    // as hot or neutral
};

struct SectionTable;        // sections.h
struct BranchLimits;        // branch_limits.h
struct CablePlaces;         // cable_places.h
struct OutletCounts;        // outlet_count.h
struct DropLimits;          // drop_limits.h
struct Demands;             // demands.h
struct BackfeedTable;       // backfeed.h
struct PositionsTable;      // positions.h
struct OutbuildingSupplies; // outbuilding.h
struct GfciTable;           // protection_rows.h
struct AfciTable;           // protection.h
struct SwitchTable;         // protection_rows.h
struct HouseholdTable;      // dwelling.h
struct CounterCircuit;      // dwelling.h
struct OwnCircuitTable;     // dwelling.h
struct DemandFactors;       // demand_factors.h

struct CodeBook {
    std::string_view edition; // "NEC 2023"
    Family family;
    SectionTable const& sections;

    std::span<AmpacityRow const> ampacities;
    Source ampacities_source;
    std::span<SmallWireRow const> small_wires;
    std::span<DwellingFeederRow const> dwelling_feeders; // none: a dwelling's feeder is a feeder as any other
    std::span<int const> standard_breakers;              // A, rising
    Source standard_breakers_source;

    int terminals_above_100_a;       // °C column for circuits above 100 A or wire larger than 1 AWG
    std::optional<int> cable_column; // °C column that a non-metallic sheathed cable is held to, whatever its terminals
    bool
        next_size_up_on_receptacles; // next standard breaker above the ampacity on a circuit of several receptacles too

    Figure continuous_percent; // a continuous load within this share of breaker and wire
    bool presumes_continuous;  // a load is continuous unless shown otherwise
    bool dwelling_lighting_continuous;
    Figure heating_breaker_percent; // fixed resistance heating: breaker up to this share of the wire's ampacity, then
                                    // the next standard size; 100: no easement
    bool heating_wire_in_full;      // the continuous share is of the breaker only
    bool heating_is_continuous;   // by the code's word; else it asks the share of the wire, and the breaker's hangs on
                                  // whether it runs for hours
    Figure motor_wire_percent;    // of a motor's current, least ampacity of its wire
    Figure motor_breaker_percent; // of a motor's current, largest breaker (then the next standard size)
    Figure motor_breaker_most_percent;                         // where it will not start
    std::optional<Figure> motor_breaker_most_above_100_a = {}; // of a breaker above 100 A; nothing: the same
    Figure welder_breaker_percent;                             // of the ampacity of a welder's wire
    RangeDemand const& range;

    std::span<ReceptacleRow const> receptacles;
    std::optional<Source> lone_receptacle; // one single receptacle of a circuit: no less than the circuit, larger is
                                           // fine; nothing: the table serves it too
    BranchLimits const& branch_limits;
    CablePlaces const& cable_places;
    CodePage<OutletCounts> outlet_count;
    RemarkingTable const& remarking;
    DropLimits const& drop_limits;
    Demands const& demands;

    BackfeedTable const& backfeed;
    CodePage<PositionsTable> positions;
    CodePage<OutbuildingSupplies> outbuilding;

    GfciTable const& gfci;
    CodePage<AfciTable> afci;
    CodePage<SwitchTable> switches;
    HouseholdTable const& household;
    CodePage<CounterCircuit> counter;
    OwnCircuitTable const& own_circuits;

    CodePage<DemandFactors> demand_factors;
};

std::span<CodeBook const* const> code_books(); // by family and year
// Null when there is no such edition.
CodeBook const* code_book(std::string_view edition);
std::vector<std::string> editions(); // "CE 2018", ... "NEC 2023"
std::vector<CodeBook const*> books_of(Family family);

// The column of one temperature (60, 75 or 90 °C); nothing for sizes not in the table or not made.
std::optional<Amps> ampacity(CodeBook const& book, Gauge gauge, Metal metal, int celsius);
std::optional<SmallWireRow> small_wire(CodeBook const& book, Gauge gauge, Metal metal);
// The row of a feeder breaker of this rating for a whole dwelling; nothing outside the table.
std::optional<DwellingFeederRow> dwelling_feeder(CodeBook const& book, Amps breaker);
// The smallest standard breaker at or above; nothing above the largest of the table.
std::optional<Amps> standard_breaker_at_or_above(CodeBook const& book, Amps amps);
// The largest standard breaker at or below; nothing under the smallest.
std::optional<Amps> standard_breaker_at_or_below(CodeBook const& book, Amps amps);
// Branch-circuit demand of one range of this nameplate, never over it.
VoltAmperes range_demand(CodeBook const& book, VoltAmperes nameplate);

} // namespace legwork
