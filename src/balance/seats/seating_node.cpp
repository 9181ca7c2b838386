// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/seating_node.h"

#include <algorithm>
#include <limits>

namespace legwork {

namespace {

using Kind = Sitter::Kind;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

// Moves first, then tidiness: distances of a panel add up to less.
constexpr int kTidyBits = 20;
std::int64_t scaled(int cost, int untidy) { return std::int64_t{cost} * (std::int64_t{1} << kTidyBits) + untidy; }
int cost_part(std::int64_t scaled) { return static_cast<int>(scaled >> kTidyBits); }

} // namespace

SeatingGraph::SeatingGraph(Seats const& seats, std::vector<Sitter> const& sitters, std::vector<int> distances)
    : seats_(seats), sitters_(sitters), distances_(std::move(distances)) {
    auto const cells = at(seats.model().cells());
    distances_.resize(cells, 0);
    saved_.assign(cells, 0);
    for (int c = 0; c < seats.model().cells(); ++c) number_.push_back(of_kind_[seats.side(c) > 0 ? 0 : 1]++);
    for (Sitter const& s : sitters)
        if (s.kind == Kind::any_single)
            for (Seat const& seat : s.seats) {
                int& saved = saved_[at(seat.cells[0])];
                saved = std::max(saved, s.lift - seat.cost);
            }
}

bool SeatingGraph::may_take(SeatingNode const& n, std::size_t sitter, Seat const& seat) const {
    if (!n.free[at(seat.cells[0])] || (seat.is_two() && !n.free[at(seat.cells[1])])) return false;
    if (!seat.is_two()) return n.kind[sitter] == 0 || n.kind[sitter] == seats_.side(seat.cells[0]);
    return !n.bare[sitter] || (sitters_[sitter].kind == Kind::pair && !is_askew(seat));
}

std::int64_t SeatingGraph::edge_cost(int cost, Seat const& s) const {
    int untidy = 0;
    for (int const c : s.cells) {
        if (c < 0) continue;
        cost += saved_[at(c)];
        untidy += distances_[at(c)];
    }
    return scaled(cost, untidy);
}

// What reaches everywhere is charged as if it left its cell. A cell that nobody settled on gives back what staying
// there saves; an edge that takes the cell is charged that again (edge_cost).
int SeatingGraph::base_cost(SeatingNode const& n) const {
    int cost = n.cost;
    for (std::size_t i = 0; i < sitters_.size(); ++i)
        if (sitters_[i].kind == Kind::any_single || (sitters_[i].is_wide() && is_open(n, i) && !n.split[i]))
            cost += sitters_[i].lift;
    for (std::size_t c = 0; c < saved_.size(); ++c)
        if (n.free[c]) cost -= saved_[c];
    return cost;
}

// The graph of one branch. Cells of one kind, and the singles that want the other kind, are on one side of it.
class SeatingGraph::Builder {
public:
    Builder(SeatingGraph const& g, SeatingNode const& n)
        : g_(g), n_(n), vertex_(g.sitters_.size(), -1), split_right_(vertex_) {
        int count[2] = {g.of_kind_[0], g.of_kind_[1]};
        for (std::size_t i = 0; i < vertex_.size(); ++i) {
            bool const single = is_matched_single(i);
            edges_ += single + is_split(i) + (g.sitters_[i].is_wide() && g.is_open(n, i));
            if (single) vertex_[i] = count[n.kind[i] > 0 ? 1 : 0]++;
            if (!is_split(i)) continue;
            vertex_[i] = count[0]++;
            split_right_[i] = count[1]++;
        }
        cover_.emplace(count[0], count[1]);
        for (std::size_t i = 0; i < vertex_.size(); ++i) {
            if (vertex_[i] < 0) continue;
            is_right(i) ? cover_->must_right(vertex_[i]) : cover_->must_left(vertex_[i]);
            if (split_right_[i] >= 0) cover_->must_right(split_right_[i]);
        }
        join_anybody();
        for (std::size_t i = 0; i < vertex_.size(); ++i) join_own(i);
    }

    EdgeCover::Answer run(Effort& effort) { return cover_->run(edges_, effort); }

    SeatingMatch match() const {
        SeatingMatch m{g_.base_cost(n_) + cost_part(cover_->cost()), {}, std::vector<int>(vertex_.size(), -1), n_.free};
        std::vector<int> first(vertex_.size(), -1); // of each split pair: the cell found first
        for (int const edge : cover_->edge_of_left()) {
            if (edge < 0) continue;
            auto const& what = meanings_[at(edge)];
            if (what.upper >= 0) {
                m.pairs.push_back(what);
                m.free[at(what.upper)] = m.free[at(what.lower)] = false;
            } else if (what.lower >= 0) {
                m.free[at(what.lower)] = false;
                int& cell = first[at(what.sitter)];
                if (cell >= 0) m.seat_of[at(what.sitter)] = whole_seat(at(what.sitter), cell, what.lower);
                cell = what.lower;
            } else {
                m.seat_of[at(what.sitter)] = what.seat;
                m.free[at(g_.sitters_[at(what.sitter)].seats[at(what.seat)].cells[0])] = false;
            }
        }
        return m;
    }

private:
    bool is_split(std::size_t i) const { return g_.is_open(n_, i) && g_.sitters_[i].kind == Kind::pair && n_.split[i]; }
    bool is_right(std::size_t i) const { return !g_.sitters_[i].is_wide() && n_.kind[i] > 0; }
    // The seat on two cells that costs what its cells cost; -1: none.
    int whole_seat(std::size_t i, int cell, int other) const {
        auto const& seats = g_.sitters_[i].seats;
        for (std::size_t k = 0; k < seats.size(); ++k)
            if (std::minmax(seats[k].cells[0], seats[k].cells[1]) == std::minmax(cell, other) &&
                seats[k].cost == least_share(i, cell) + least_share(i, other) && g_.may_take(n_, i, seats[k]))
                return static_cast<int>(k);
        return -1;
    }
    int least_share(std::size_t i, int cell) const {
        int least = kNoSeat;
        for (Seat const& s : g_.sitters_[i].seats)
            if (std::ranges::count(s.cells, cell) > 0 && g_.may_take(n_, i, s)) least = std::min(least, share(s, cell));
        return least;
    }
    bool is_matched_single(std::size_t i) const {
        return g_.is_open(n_, i) && g_.sitters_[i].kind == Kind::single && n_.kind[i] != 0;
    }

    void join(Seat const& s, int cost, int untidy, SeatingMatch::Pair what) {
        bool const first = g_.seats_.side(s.cells[0]) > 0;
        cover_->add(g_.number_[at(s.cells[first ? 0 : 1])], g_.number_[at(s.cells[first ? 1 : 0])],
                    g_.edge_cost(cost, s) + untidy);
        what.upper = std::min(s.cells[0], s.cells[1]);
        what.lower = std::max(s.cells[0], s.cells[1]);
        meanings_.push_back(what);
    }

    // The sites where a pair may go, whoever it is. Of equal ones first those that pairs of short wires can have.
    void join_anybody() {
        auto const cells = n_.free.size();
        std::vector<bool> wanted(cells, false);
        bool anybody = false;
        for (std::size_t i = 0; i < vertex_.size(); ++i) {
            if (!g_.is_open(n_, i)) continue;
            anybody = anybody || g_.sitters_[i].kind == Kind::any_pair;
            if (g_.sitters_[i].kind != Kind::pair || is_split(i)) continue;
            for (Seat const& s : g_.sitters_[i].seats)
                if (s.fate == Fate::lift && g_.may_take(n_, i, s)) wanted[at(std::min(s.cells[0], s.cells[1]))] = true;
        }
        for (std::size_t c = 0; c + 1 < cells; ++c) {
            int const upper = static_cast<int>(c);
            if (!n_.free[c] || !n_.free[c + 1] || !g_.seats_.model().joined(upper, upper + 1)) continue;
            if (anybody || wanted[c]) join({{upper, upper + 1}, 0, Fate::lift, 0}, 0, wanted[c] ? 0 : 1, {});
        }
    }

    void join_own(std::size_t i) {
        Sitter const& s = g_.sitters_[i];
        if (!g_.is_open(n_, i) || s.kind == Kind::any_single) return;
        if (is_split(i)) return join_split(i);
        for (std::size_t k = 0; k < s.seats.size(); ++k) {
            Seat const& seat = s.seats[k];
            SeatingMatch::Pair const what{-1, -1, static_cast<int>(i), static_cast<int>(k)};
            if (g_.is_askew(seat) || !g_.may_take(n_, i, seat)) continue;
            if (s.is_wide()) {
                if (seat.fate != Fate::lift) join(seat, seat.cost - s.lift, 0, what);
            } else if (vertex_[i] >= 0) {
                auto const cell = g_.number_[at(seat.cells[0])];
                bool const right = n_.kind[i] > 0;
                cover_->add(right ? cell : vertex_[i], right ? vertex_[i] : cell, g_.edge_cost(seat.cost, seat));
                meanings_.push_back(what);
            }
        }
    }

    void join_split(std::size_t i) {
        for (int c = 0; c < static_cast<int>(n_.free.size()); ++c) {
            int const cost = n_.free[at(c)] ? least_share(i, c) : kNoSeat;
            if (cost >= kNoSeat) continue;
            bool const right = g_.seats_.side(c) > 0;
            cover_->add(right ? g_.number_[at(c)] : vertex_[i], right ? split_right_[i] : g_.number_[at(c)],
                        g_.edge_cost(cost, {{c, -1}, cost, Fate::lift, 0}));
            meanings_.push_back({-1, c, static_cast<int>(i), -1});
        }
    }

    SeatingGraph const& g_;
    SeatingNode const& n_;
    std::vector<int> vertex_, split_right_; // of each single that is matched, of each pair that is split; else -1
    int edges_ = 0;
    std::optional<EdgeCover> cover_;
    std::vector<SeatingMatch::Pair> meanings_; // of the edges; a single's have no cells, of a split pair's one each
};

EdgeCover::Answer SeatingGraph::match(SeatingNode const& n, SeatingMatch& m, Effort& effort) const {
    Builder builder(*this, n);
    auto const found = builder.run(effort);
    if (found == EdgeCover::Answer::yes) m = builder.match();
    return found;
}

EdgeCover::Answer SeatingGraph::complete(SeatingNode const& n, SeatingMatch& m, Effort& effort) const {
    std::vector<int> open;
    for (std::size_t i = 0; i < sitters_.size(); ++i)
        if (is_open(n, i) && sitters_[i].kind == Kind::single && n.kind[i] == 0) open.push_back(static_cast<int>(i));
    if (open.empty()) return EdgeCover::Answer::yes;
    EdgeCover cover(static_cast<int>(open.size()), seats_.model().cells());
    std::vector<int> seat_of_edge;
    for (std::size_t k = 0; k < open.size(); ++k) {
        auto const& seats = sitters_[at(open[k])].seats;
        for (std::size_t s = 0; s < seats.size(); ++s) {
            if (!m.free[at(seats[s].cells[0])]) continue;
            cover.add(static_cast<int>(k), seats[s].cells[0], edge_cost(seats[s].cost, seats[s]));
            seat_of_edge.push_back(static_cast<int>(s));
        }
    }
    auto const found = cover.run(static_cast<int>(open.size()), effort);
    if (found != EdgeCover::Answer::yes) return found;
    m.cost += cost_part(cover.cost());
    for (std::size_t k = 0; k < open.size(); ++k) {
        m.seat_of[at(open[k])] = seat_of_edge[at(cover.edge_of_left()[k])];
        m.free[at(sitters_[at(open[k])].seats[at(m.seat_of[at(open[k])])].cells[0])] = false;
    }
    return found;
}

int SeatingGraph::share(Seat const& s, int cell) {
    if (s.fate != Fate::keep_a && s.fate != Fate::keep_b) return s.cost / 2;
    return s.cells[s.fate == Fate::keep_a ? 0 : 1] == cell ? 0 : s.cost;
}

int SeatingGraph::least_of_open(SeatingNode const& n) const {
    int cost = 0;
    for (std::size_t i = 0; i < sitters_.size(); ++i) {
        if (!is_open(n, i) || sitters_[i].kind != Kind::single || n.kind[i] != 0) continue;
        int least = kNoSeat;
        for (Seat const& s : sitters_[i].seats)
            if (may_take(n, i, s)) least = std::min(least, s.cost);
        cost = std::min(kNoSeat, cost + least);
    }
    return cost;
}

} // namespace legwork
