// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where an edition asks for ground-fault (GFCI) and arc-fault (AFCI) protection: by place, by use, and by how sure
// what the job says makes it. Sections and how each was come by stand in cite.h under the row's topic.
#pragma once

#include "codebook/code_book.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/room_place.h"

#include <array>
#include <compare>
#include <optional>
#include <span>
#include <vector>

namespace legwork {

// Whether a circuit feeds receptacles: said or plain from its use; likely (a dryer, a welder); or wired in.
enum class Plugged { no, perhaps, surely };

// What protection is asked about.
struct Outlets {
    Use const* use = nullptr; // null: not known
    RoomPlaces places;
    std::vector<Receptacle const*> types; // as listed; may be empty
    int poles = 1;
    std::optional<Amps> breaker;
    RoomPlaces joined{};            // of the places those that it serves side by side
    bool indoors = false;           // told to be: its room is, or the name says so
    bool in_dwelling = false;       // the job is one
    bool counter_elsewhere = false; // another circuit serves the kitchen counter
};
Plugged plugged(Outlets const& o);
// A thing that stands ready to be plugged in for good, as a refrigerator or a door opener.
bool always_plugged_in(Use const& use);
bool always_indoors(Use const& use); // by its nature, whatever it is a part of: an air handler

enum class Asks {
    no,
    relieved, // only until a day that has not come
    perhaps,  // hangs on what a job does not say (a distance, a floor's height), or is not sure
    yes,
};

struct Day {
    int year, month, day;
    friend constexpr auto operator<=>(Day const&, Day const&) = default;
};

// One line of what a code protects against ground faults.
struct GfciRow {
    enum class Of {
        receptacles,
        wired_in, // outlets that nothing is plugged into, save lighting
        lighting,
        use, // the uses below, plugged in or wired
    };
    enum class Elsewhere { same, perhaps, no }; // asked in buildings where nobody lives

    std::string_view topic; // of cite.h
    std::string_view what;  // "receptacles in bathrooms"
    Of of = Of::receptacles;
    RoomPlaces places{};                    // any of these; empty: wherever it stands
    std::array<std::string_view, 8> uses{}; // any of these; none: whatever it is
    Asks asks = Asks::no;                   // never `no` in an edition's rows
    std::string_view hangs_on{};            // of `perhaps`: "any of them serves the counter"
    Elsewhere elsewhere = Elsewhere::same;
    bool general = false;                  // not the receptacle of one appliance, which hides it
    bool unless_counter_elsewhere = false; // another circuit serves the counter: this one does not
    bool unless_indoors = false;           // of what stands outdoors where nothing else is told
    std::optional<Amps> most{};            // largest breaker
    bool any_volts = false;                // 240 V receptacles too, whatever the scope
    std::optional<Day> until{};            // listed heating and cooling equipment is let off before that day
    std::string_view unless_adopted{}; // that relief came after the edition's print: what it hangs on before that day,
                                       // in the place of `hangs_on`; empty: it stands in the book
};

struct GfciAsked {
    GfciRow const* row = nullptr; // null: nothing is asked
    Asks asks = Asks::no;
    std::string_view hangs_on{}; // of `perhaps`; empty when it is only not sure
    std::optional<Day> until{};  // the day its relief ended or will end
};
// The gravest row for these outlets, the first of equals. `today` is the job's date: without one a relief still runs.
GfciAsked gfci_asked(CodeBook const& book, Outlets const& o, std::optional<Day> today);
// Its use is not known, and some row asks for protection of what may be there: receptacles, or a thing that is wired
// in.
bool gfci_hangs_on_use(CodeBook const& book, Outlets const& o);

// Arc faults: asked in dwellings only.
struct AfciTable {
    int least_amps, most_amps; // breakers, 120 V circuits of one pole
    bool receptacles_only;     // else every outlet and device: lights, alarms, what is wired in
    RoomPlaces rooms, perhaps; // asked there; asked there as far as the words tell
    RoomPlaces let_off; // where a circuit with a lone place of these needs none, whatever else is asked; a counter's
                        // kitchen is no place beside it
    std::array<std::string_view, 4> uses_let_off;
    std::string_view there;                // "120 V circuits": of rooms that are named before
    std::string_view what;                 // "120 V circuits of kitchens, ..."
    std::string_view hangs_on, no_breaker; // of `perhaps`; no_breaker: where the breaker is not known
};
inline AfciTable const& afci_table(CodeBook const& book) { return book.afci.table(); }
Asks afci_asked(CodeBook const& book, Outlets const& o);

// Whether the switch of a lighting circuit must find a neutral in its box. Outlets of unknown place: perhaps.
Asks neutral_at_switch_asked(CodeBook const& book, Outlets const& o, bool conduit);

} // namespace legwork
