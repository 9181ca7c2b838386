// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/seat_room.h"

#include "balance/seats/line_pass.h"
#include "balance/seats/line_room.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr std::size_t kMostKnown = 100'000;
constexpr std::int64_t kStepsToAsk = 200; // what is known already
// One choice of legs is not worth more than this; some milliseconds.
constexpr std::int64_t kStepsALook = 4'000'000, kStepsToTidy = 1'000'000, kStepsToNarrow = 20'000'000;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

} // namespace

SeatRoom::SeatRoom(PanelModel const& model) : model_(model), seats_(model) {}

std::string SeatRoom::key(Signs const& signs) const {
    std::string words;
    for (int const u : seats_.limited()) words += signs[at(u)] > 0 ? '+' : signs[at(u)] < 0 ? '-' : '0';
    return words;
}

int SeatRoom::least_moves(Signs const& signs) const {
    int moves = 0;
    for (std::size_t i = 0; i < model_.units.size(); ++i)
        if (!model_.units[i].held) moves += unit_moves(model_, model_.units[i], signs[i]).least();
    return moves;
}

Room::Extra SeatRoom::extra_moves(Signs const& signs, Effort& effort) const {
    effort.spend(kStepsToAsk);
    auto const words = key(signs);
    if (auto const known = known_.find(words); known != known_.end() && !known->second) return {};
    auto part = effort.part(kStepsALook);
    auto const answer = cheapest_seating(seats_, signs, part);
    effort.charge(part);
    bool const is_known = answer.seating || answer.is_certain;
    if (is_known && known_.size() < kMostKnown) known_[words] = answer.seating.has_value();
    if (!answer.seating) return {kImpossible, answer.is_certain};
    return {answer.seating->cost / kMoveCost - least_moves(signs), answer.is_certain};
}

bool SeatRoom::stands(Signs const& signs, Effort& effort) const {
    effort.spend(kStepsToAsk);
    if (auto const known = known_.find(key(signs)); known != known_.end()) return known->second;
    return extra_moves(signs, effort).moves < kImpossible;
}

std::optional<Rooming> SeatRoom::rooming(Signs const& signs, Effort& effort) const {
    auto part = effort.part(kStepsALook);
    auto const answer = cheapest_seating(seats_, signs, part);
    effort.charge(part);
    if (!answer.seating) return {};
    part = effort.part(kStepsToTidy);
    auto const neat = neat_seating(seats_, signs, answer.seating->cost, part);
    effort.charge(part);
    return neat ? neat->rooming : answer.seating->rooming;
}

// The counts need no look: every seating has a cell for everybody.
Room::Fewest SeatRoom::fewest_moves(int, int, Effort& effort) const {
    auto part = effort.part(kStepsToNarrow);
    auto const answer = cheapest_seating(seats_, Signs(model_.units.size(), 0), part);
    effort.charge(part);
    if (!answer.seating) return {{}, {}, answer.is_certain};
    return {answer.seating->cost / kMoveCost, answer.seating->signs, answer.is_certain};
}

LegProblem SeatRoom::narrowed(LegProblem problem, Effort& effort) const {
    if (!problem.has_room()) return problem;
    auto part = effort.part(kStepsToNarrow);
    std::vector<bool> may_plus(model_.units.size(), false), may_minus = may_plus;
    auto const look = [&](Signs const& signs) {
        auto const answer = cheapest_seating(seats_, signs, part);
        if (answer.seating)
            for (std::size_t u = 0; u < signs.size(); ++u) {
                if (answer.seating->signs[u] > 0) may_plus[u] = true;
                if (answer.seating->signs[u] < 0) may_minus[u] = true;
            }
        return answer.seating || !answer.is_certain;
    };
    // Each layout that is found shows of every unit one leg that it can have: only for the other one need be looked.
    std::vector<signed char> forced(problem.decisions.size(), 0);
    if (look(Signs(model_.units.size(), 0)))
        for (std::size_t i = 0; i < forced.size(); ++i) {
            int const unit = problem.decisions[i].unit;
            if (std::ranges::count(seats_.limited(), unit) == 0) continue;
            Signs signs(model_.units.size(), 0);
            if (signs[at(unit)] = 1; !may_plus[at(unit)] && !look(signs)) forced[i] = -1;
            if (signs[at(unit)] = -1; !may_minus[at(unit)] && !look(signs)) forced[i] = 1;
        }
    effort.charge(part);
    return open_legs(problem, forced).problem;
}

std::unique_ptr<Room> room_of(PanelModel const& model) {
    // Seats can do all that lines can, but take longer: only where lines would be wrong, or would leave cases out.
    auto seats = std::make_unique<SeatRoom>(model);
    if (!seats->bound_units().empty()) return seats;
    auto line = std::make_unique<LineRoom>(model);
    if (line->is_exact()) return line;
    return seats;
}

} // namespace legwork
