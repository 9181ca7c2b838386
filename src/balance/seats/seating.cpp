// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/seats/seating.h"

#include "balance/place/neat.h"
#include "balance/seats/seating_layout.h"

#include <algorithm>
#include <limits>

namespace legwork {

namespace {

using Kind = Sitter::Kind;
using Pair = SeatingMatch::Pair;

constexpr int kMostNodes = 3000;
constexpr std::int64_t kStepsANode = 2000;

std::size_t at(int i) { return static_cast<std::size_t>(i); }

class Search {
public:
    Search(Seats const& seats, Signs const& signs, std::vector<int> distances, int limit, bool any, Effort& effort)
        : seats_(seats),
          sitters_(seats.sitters(signs)),
          graph_(seats, sitters_, std::move(distances)),
          limit_(limit),
          any_(any),
          effort_(effort) {}

    void run() {
        SeatingNode root;
        for (bool const wall : seats_.model().wall) root.free.push_back(!wall);
        root.settled.assign(sitters_.size(), -1);
        root.bare.assign(sitters_.size(), false);
        root.kind.assign(sitters_.size(), 0);
        root.next_seat.assign(sitters_.size(), 0);
        root.split.assign(sitters_.size(), false);
        classify();
        if (!has_cells(root)) return;
        for (std::size_t i = 0; i < sitters_.size(); ++i)
            if (sitters_[i].kind == Kind::single) root.kind[i] = only_kind(root, i);
        visit(root);
    }
    std::optional<DealtSeats> const& best() const { return best_; }
    bool is_certain() const { return certain_; }
    std::vector<Sitter> const& sitters() const { return sitters_; }

private:
    // Equal pairs of short wires have one number, so that they are not tried in every order.
    void classify() {
        for (std::size_t i = 0; i < sitters_.size(); ++i) {
            alike_.push_back(i);
            for (std::size_t j = 0; j < i && sitters_[i].kind == Kind::pair; ++j)
                if (are_alike(sitters_[i], sitters_[j])) {
                    alike_[i] = j;
                    break;
                }
        }
    }
    static bool are_alike(Sitter const& x, Sitter const& y) {
        return x.kind == y.kind && x.lift == y.lift &&
               std::ranges::equal(x.seats, y.seats, [](Seat const& s, Seat const& t) {
                   return s.cells == t.cells && s.cost == t.cost && s.fate == t.fate;
               });
    }

    bool has_cells(SeatingNode const& root) const {
        std::ptrdiff_t wanted = 0;
        for (Sitter const& s : sitters_) wanted += s.is_wide() ? 2 : 1;
        return wanted <= std::ranges::count(root.free, true);
    }
    // The only kind of cells that a single's seats are of; 0: both.
    signed char only_kind(SeatingNode const& n, std::size_t i) const {
        bool first = false, second = false;
        for (Seat const& s : sitters_[i].seats)
            if (n.free[at(s.cells[0])]) (seats_.side(s.cells[0]) > 0 ? first : second) = true;
        // Without any seat it fails, whatever its kind is.
        return static_cast<signed char>(first == second ? (first ? 0 : 1) : first ? 1 : -1);
    }

    void visit(SeatingNode const& n) {
        if (done_) return;
        if (++nodes_ > kMostNodes || !effort_.spend(kStepsANode)) return give_up();
        // A seat on two cells of one kind is no edge of the graph: it is settled before there is one.
        if (auto const askew = askew_sitter(n)) return branch_on_seats(n, *askew, 0);
        if (!own_pairs_pack(n)) return;
        DealtSeats d{n, {}, {}};
        auto const found = graph_.match(n, d.match, effort_);
        if (found == EdgeCover::Answer::gave_up) return give_up();
        if (found == EdgeCover::Answer::no) return;
        int const bound = d.match.cost + graph_.least_of_open(n);
        if (bound >= limit_) return;
        // The matching says where pairs go, not which. One that gets none of its own is matched cell by cell; if its
        // cells then make no seat, each seat is tried.
        if (auto const odd = deal(d)) {
            if (sitters_[*odd].kind != Kind::pair || n.split[*odd]) return branch_on_seats(n, *odd, bound);
            d.node.split[*odd] = true;
            return visit(d.node);
        }
        auto const completed = graph_.complete(n, d.match, effort_);
        if (completed == EdgeCover::Answer::gave_up) return give_up();
        // Open singles may have wanted the same cells. Only where all have their cheapest is nothing left to look for
        // here.
        bool const whole = completed == EdgeCover::Answer::yes && d.match.cost == bound;
        if (completed == EdgeCover::Answer::yes) offer(std::move(d));
        if (!whole) branch_on_kind(n, bound);
    }
    void give_up() {
        certain_ = false;
        done_ = true;
    }
    void offer(DealtSeats d) {
        if (d.match.cost >= limit_) return;
        limit_ = d.match.cost;
        best_ = std::move(d);
        done_ = done_ || any_;
    }

    std::optional<std::size_t> askew_sitter(SeatingNode const& n) const {
        for (std::size_t i = 0; i < sitters_.size(); ++i)
            if (sitters_[i].is_wide() && graph_.is_open(n, i) && !n.bare[i])
                for (Seat const& s : sitters_[i].seats)
                    if (graph_.is_askew(s) && graph_.may_take(n, i, s)) return i;
        return {};
    }

    // Pairs of short wires need sites of their own beside each other: of those whose seats are all among one's, no more
    // than fit there.
    bool own_pairs_pack(SeatingNode const& n) const {
        std::vector<std::vector<bool>> sites; // by upper cell
        std::vector<int> others;              // seats that are no site
        std::vector<std::size_t> who;
        for (std::size_t i = 0; i < sitters_.size(); ++i) {
            if (sitters_[i].kind != Kind::pair || !graph_.is_open(n, i)) continue;
            who.push_back(i);
            sites.emplace_back(n.free.size(), false);
            others.push_back(0);
            for (Seat const& s : sitters_[i].seats) {
                if (!graph_.may_take(n, i, s)) continue;
                int const upper = std::min(s.cells[0], s.cells[1]);
                if (seats_.model().joined(upper, std::max(s.cells[0], s.cells[1])))
                    sites.back()[at(upper)] = true;
                else
                    ++others.back();
            }
        }
        for (std::size_t k = 0; k < who.size(); ++k) {
            int fit = 0, asked = 0;
            for (std::size_t c = 0; c < n.free.size(); ++c)
                if (sites[k][c]) ++fit, ++c;
            for (std::size_t j = 0; j < who.size(); ++j) {
                bool within = true;
                for (std::size_t c = 0; c < n.free.size() && within; ++c) within = !sites[j][c] || sites[k][c];
                asked += within && others[j] == 0;
            }
            if (asked > fit + others[k]) return false;
        }
        return true;
    }

    // Deals the pairs of the matching out. The one who does not come off, if any.
    std::optional<std::size_t> deal(DealtSeats& d) const {
        std::vector<int> own(sitters_.size(), 0);
        for (Pair const& p : d.match.pairs)
            if (p.sitter >= 0 && ++own[at(p.sitter)] > 1) return at(p.sitter);
        d.pair_of.assign(sitters_.size(), -1);
        std::vector<int> owner(d.match.pairs.size(), -1);
        std::optional<std::size_t> left;
        for (std::size_t i = 0; i < sitters_.size(); ++i) {
            if (sitters_[i].kind != Kind::pair || !graph_.is_open(d.node, i) || own[i]) continue;
            if (d.node.split[i]) {
                if (d.match.seat_of[i] < 0) return i;
                continue;
            }
            std::vector<bool> seen(owner.size(), false);
            if (!claim(d, i, owner, seen) && (!left || sitters_[i].seats.size() < sitters_[*left].seats.size()))
                left = i;
        }
        for (std::size_t p = 0; p < owner.size(); ++p)
            if (owner[p] >= 0) d.pair_of[at(owner[p])] = static_cast<int>(p);
        return left;
    }
    bool suits(std::size_t sitter, Pair const& p) const {
        return p.sitter < 0 && std::ranges::any_of(sitters_[sitter].seats, [&](Seat const& s) {
                   return s.fate == Fate::lift && std::minmax(s.cells[0], s.cells[1]) == std::minmax(p.upper, p.lower);
               });
    }
    bool claim(DealtSeats const& d, std::size_t sitter, std::vector<int>& owner, std::vector<bool>& seen) const {
        for (std::size_t p = 0; p < owner.size(); ++p) {
            if (seen[p] || !suits(sitter, d.match.pairs[p])) continue;
            seen[p] = true;
            // Who has it makes way if another one suits too.
            if (owner[p] >= 0 && !claim(d, at(owner[p]), owner, seen)) continue;
            owner[p] = static_cast<int>(sitter);
            return true;
        }
        return false;
    }

    // Every seat of its own; and none of them. No branch is cheaper than `bound`.
    void branch_on_seats(SeatingNode const& n, std::size_t i, int bound) {
        Sitter const& s = sitters_[i];
        for (std::size_t k = n.next_seat[alike_[i]]; k < s.seats.size(); ++k) {
            if (bound >= limit_) return;
            if (!graph_.may_take(n, i, s.seats[k])) continue;
            SeatingNode next = n;
            next.settled[i] = static_cast<int>(k);
            next.next_seat[alike_[i]] = k + 1;
            next.cost += s.seats[k].cost;
            for (int const c : s.seats[k].cells) next.free[at(c)] = false;
            visit(next);
        }
        if (n.bare[i] ||
            (s.kind == Kind::pair && std::ranges::none_of(s.seats, [&](Seat const& x) { return graph_.is_askew(x); })))
            return;
        SeatingNode next = n;
        next.bare[i] = true;
        visit(next);
    }
    void branch_on_kind(SeatingNode const& n, int bound) {
        std::optional<std::size_t> tightest;
        std::ptrdiff_t fewest = 0;
        for (std::size_t i = 0; i < sitters_.size(); ++i) {
            if (sitters_[i].kind != Kind::single || !graph_.is_open(n, i) || n.kind[i] != 0) continue;
            auto const open =
                std::ranges::count_if(sitters_[i].seats, [&](Seat const& s) { return graph_.may_take(n, i, s); });
            if (!tightest || open < fewest) tightest = i, fewest = open;
        }
        if (!tightest) return;
        SeatingNode one = n, two = n;
        one.kind[*tightest] = 1;
        two.kind[*tightest] = -1;
        bool const swapped = least_seat(two, *tightest) < least_seat(one, *tightest);
        visit(swapped ? two : one);
        if (bound < limit_) visit(swapped ? one : two);
    }
    // The cheapest that it may take, and then how few there are.
    std::pair<int, std::ptrdiff_t> least_seat(SeatingNode const& n, std::size_t i) const {
        std::pair<int, std::ptrdiff_t> least{kNoSeat, 0};
        for (Seat const& s : sitters_[i].seats)
            if (graph_.may_take(n, i, s)) least.first = std::min(least.first, s.cost), --least.second;
        return least;
    }

    Seats const& seats_;
    std::vector<Sitter> sitters_;
    SeatingGraph graph_;
    std::vector<std::size_t> alike_;
    int limit_; // only layouts that cost less are wanted
    bool any_;  // the first of them will do
    Effort& effort_;
    std::optional<DealtSeats> best_;
    int nodes_ = 0;
    bool certain_ = true, done_ = false;
};

} // namespace

SeatingAnswer cheapest_seating(Seats const& seats, Signs const& signs, Effort& effort) {
    Search search(seats, signs, {}, kNoSeat, false, effort);
    search.run();
    SeatingAnswer answer{{}, search.is_certain()};
    if (search.best()) answer.seating = seating_of(seats, search.sitters(), *search.best());
    return answer;
}

std::optional<Seating> neat_seating(Seats const& seats, Signs const& signs, int cost, Effort& effort) {
    Neatness const neat(seats.model());
    std::vector<int> distances;
    for (int const space : seats.model().space_of_cell) distances.push_back(neat.distance(space));
    Search search(seats, signs, std::move(distances), cost + 1, true, effort);
    search.run();
    if (!search.best()) return {};
    return seating_of(seats, search.sitters(), *search.best());
}

} // namespace legwork
