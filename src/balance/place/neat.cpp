// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/place/neat.h"

#include <algorithm>
#include <cstdlib>

namespace legwork {

namespace {

// Common practice, no source: a row nearer the main is worth a breaker's amperes; being a row nearer to the room's
// other circuits is worth somewhat less than one step of breaker size.
constexpr std::int64_t kRoomWeight = 4, kUsualAmps = 15, kMostAmps = 400, kGrain = 100;

std::int64_t weight(Circuit const& c) {
    if (c.is_spare()) return 1; // nothing to reach: the far end will do
    return c.breaker ? std::clamp<std::int64_t>(c.breaker->count / 1000, 1, kMostAmps) : kUsualAmps;
}

} // namespace

Neatness::Neatness(PanelModel const& model) : model_(model), layout_(model.panel->layout) {
    bool const row_one_on_top = model.panel->first == Corner::top_left || model.panel->first == Corner::top_right;
    if (model.panel->main_at) main_at_row_one_ = (*model.panel->main_at == PanelEnd::top) == row_one_on_top;
}

int Neatness::distance(int space) const {
    int const row = layout_.position(space).row;
    return main_at_row_one_ ? row - 1 : layout_.rows() - row;
}

void Neatness::look(std::vector<std::vector<Spot>> const& slots) {
    std::map<std::string, std::pair<std::int64_t, std::int64_t>> sums;
    for (std::size_t i = 0; i < slots.size(); ++i) {
        if (slots[i].empty() || model_.circuits[i]->room.empty()) continue;
        auto& [sum, count] = sums[model_.circuits[i]->room];
        sum += kGrain * distance(slots[i].front().space);
        ++count;
    }
    room_row_.clear();
    for (auto const& [room, s] : sums) room_row_[room] = s.first / s.second;
}

std::int64_t Neatness::cost(int circuit, int space) const {
    Circuit const& c = *model_.circuits[static_cast<std::size_t>(circuit)];
    auto const row = std::int64_t{distance(space)} * kGrain;
    auto cost = weight(c) * row;
    if (auto const room = room_row_.find(c.room); room != room_row_.end())
        cost += kRoomWeight * std::abs(row - room->second);
    return cost * 4 + layout_.position(space).column; // then the column of space 1
}

std::int64_t Neatness::cost(Unit const& unit, int space, int next_space) const {
    return cost(unit.a, space) + cost(unit.b >= 0 ? unit.b : unit.a, next_space);
}

} // namespace legwork
