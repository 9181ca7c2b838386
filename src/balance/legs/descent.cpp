// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/descent.h"

#include "balance/legs/join.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <tuple>

namespace legwork {

namespace {

// One descent of the largest panel, even when the time is out: some ten milliseconds.
constexpr std::int64_t kOwedSteps = 5'000'000;

// A fixed sequence of numbers (the multiplier and increment are those of Knuth's MMIX; from memory).
class Sequence {
public:
    explicit Sequence(std::uint64_t start) : state_(start * 2 + 1) {}
    std::size_t below(std::size_t n) {
        state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<std::size_t>((state_ >> 33) % n);
    }

private:
    std::uint64_t state_;
};

struct Score {
    std::int64_t worst = 0, sum = 0;
    friend auto operator<=>(Score const&, Score const&) = default;
};

class Walk {
public:
    Walk(LegProblem const& p, Assignment start, int most_moves = std::numeric_limits<int>::max(),
         Footing const* footing = nullptr)
        : p_(p),
          footing_(footing),
          choice_(std::move(start)),
          d_(differences(p, choice_)),
          on_a_(count_on_a(p, choice_)),
          moves_(moves_of(p, choice_)),
          most_moves_(most_moves) {}

    // To the nearest place that no change of one or two decisions betters.
    void down(Effort& effort) {
        while (step(effort)) {
        }
    }
    Assignment const& choice() const { return choice_; }
    Score score() const {
        return score_of([](std::size_t) { return std::int64_t{0}; });
    }

private:
    template <class Change>
    Score score_of(Change change) const {
        Score s;
        for (std::size_t k = 0; k < d_.size(); ++k) {
            auto const d = std::abs(d_[k] + change(k));
            s.worst = std::max(s.worst, d);
            s.sum += d;
        }
        return s;
    }
    std::int64_t turned(std::size_t i, std::size_t k) const { return (choice_[i] ? -2 : 2) * p_.decisions[i].d[k]; }
    int turned_count(std::size_t i) const { return p_.decisions[i].is_single ? (choice_[i] ? -1 : 1) : 0; }
    int turned_moves(std::size_t i) const {
        auto const& d = p_.decisions[i];
        return choice_[i] ? d.minus_moves - d.plus_moves : d.plus_moves - d.minus_moves;
    }
    bool allowed(int on_a, int moves) const {
        return on_a >= p_.least_on_a && on_a <= p_.most_on_a && moves <= most_moves_;
    }

    // Still has a layout with those turned. Asked of those only that would be better.
    bool stands(std::size_t i, std::size_t j, Effort& effort) {
        if (!footing_ || (!footing_->bound[i] && !footing_->bound[j])) return true;
        auto const turn = [&] {
            choice_[i] = !choice_[i];
            if (j != i) choice_[j] = !choice_[j];
        };
        turn();
        bool const found = footing_->stands(choice_, effort);
        turn();
        return found;
    }

    bool step(Effort& effort) {
        auto const n = choice_.size();
        // Paid as if every change were looked at in full: a step is all or nothing, so that the plan is the same on
        // every machine.
        if (!effort.spend(static_cast<std::int64_t>(n * (n + 1) * d_.size()))) return false;
        Score best = score();
        std::size_t one = n, two = n;
        for (std::size_t i = 0; i < n; ++i) {
            if (allowed(on_a_ + turned_count(i), moves_ + turned_moves(i)))
                if (auto const s = score_of([&](std::size_t k) { return turned(i, k); });
                    s < best && stands(i, i, effort))
                    best = s, one = i, two = n;
            for (std::size_t j = i + 1; j < n; ++j) {
                if (!allowed(on_a_ + turned_count(i) + turned_count(j), moves_ + turned_moves(i) + turned_moves(j)))
                    continue;
                auto const s = score_of([&](std::size_t k) { return turned(i, k) + turned(j, k); });
                if (s < best && stands(i, j, effort)) best = s, one = i, two = j;
            }
        }
        if (one == n) return false;
        for (std::size_t const i : {one, two}) {
            if (i == n) continue;
            for (std::size_t k = 0; k < d_.size(); ++k) d_[k] += turned(i, k);
            on_a_ += turned_count(i);
            moves_ += turned_moves(i);
            choice_[i] = !choice_[i];
        }
        return true;
    }

    LegProblem const& p_;
    Footing const* footing_;
    Assignment choice_;
    std::vector<std::int64_t> d_;
    int on_a_, moves_, most_moves_;
};

// Brings the count of singles on leg A into range by turning the first that can be turned, from a place that varies.
void mend_count(LegProblem const& p, Assignment& choice, std::size_t from) {
    int on_a = count_on_a(p, choice);
    for (std::size_t n = 0; n < choice.size(); ++n) {
        auto const i = (n + from) % choice.size();
        if (!p.decisions[i].is_single) continue;
        if (on_a < p.least_on_a && !choice[i]) choice[i] = true, ++on_a;
        if (on_a > p.most_on_a && choice[i]) choice[i] = false, --on_a;
    }
}

// The first start keeps what costs no moves, the others are scattered.
Assignment start(LegProblem const& p, int number) {
    Assignment choice(p.decisions.size());
    Sequence numbers(static_cast<std::uint64_t>(number));
    for (std::size_t i = 0; i < choice.size(); ++i)
        choice[i] = number == 0 ? p.decisions[i].plus_moves <= p.decisions[i].minus_moves : numbers.below(2) == 0;
    if (!choice.empty()) mend_count(p, choice, numbers.below(choice.size()));
    return choice;
}

// The problem of some decisions alone, the others as chosen.
LegProblem rest_held(LegProblem const& p, Assignment const& choice, std::vector<std::size_t> const& open) {
    LegProblem part;
    part.constant = differences(p, choice);
    int on_a = count_on_a(p, choice);
    for (std::size_t const i : open) {
        Decision const& d = p.decisions[i];
        for (std::size_t k = 0; k < d.d.size(); ++k) part.constant[k] -= (choice[i] ? 1 : -1) * d.d[k];
        on_a -= choice[i] && d.is_single;
        part.decisions.push_back(d);
    }
    part.least_on_a = p.least_on_a - on_a;
    part.most_on_a = p.most_on_a - on_a;
    return part;
}

} // namespace

std::optional<Assignment> descend(LegProblem const& p, int starts, std::int64_t enough, Effort& effort) {
    if (!p.has_room()) return {};
    std::optional<Assignment> best;
    Score least;
    for (int n = 0; n < starts; ++n) {
        Walk walk(p, start(p, n));
        auto owed = effort.owed(n == 0 ? kOwedSteps : 0);
        walk.down(owed);
        effort.settle(owed);
        if (auto const s = walk.score(); !best || s < least) {
            best = walk.choice();
            least = s;
        }
        if (least.worst <= enough || effort.is_over()) break;
    }
    return best;
}

Assignment descend_within(LegProblem const& p, Assignment start, int most_moves, Footing const* footing,
                          Effort& effort) {
    Walk walk(p, std::move(start), most_moves, footing);
    walk.down(effort);
    return walk.choice();
}

namespace {

// Turns a few at random and goes down again; keeps what is not worse.
Assignment kicked(LegProblem const& p, Assignment best, std::int64_t enough, Effort& effort) {
    Sequence numbers(1);
    Score least = Walk(p, best).score();
    for (std::size_t round = 0; !effort.is_over() && least.worst > enough; ++round) {
        Assignment next = best;
        for (std::size_t k = 0; k < 4 + round % 8; ++k) {
            auto const i = numbers.below(next.size());
            next[i] = !next[i];
        }
        mend_count(p, next, numbers.below(next.size()));
        Walk walk(p, std::move(next));
        walk.down(effort);
        if (auto const s = walk.score(); s <= least) {
            least = s;
            best = walk.choice();
        }
    }
    return best;
}

// One exact neighbourhood: the best assignment that differs in the open decisions only.
void open_up(LegProblem const& p, Assignment& best, std::vector<std::size_t> const& open, Effort& effort) {
    auto const part = rest_held(p, best, open);
    auto const both = halves(groups(part, true, false));
    HalfList const left(both.left, part.constant, kAnyMoves, effort);
    HalfList const right(both.right, std::vector<std::int64_t>(p.situations(), 0), kAnyMoves, effort);
    if (effort.is_over()) return;
    Assignment inner(open.size());
    bool better = false;
    Limits limits{{worst_difference(p, best)}, -1};
    join({left, right, part.least_on_a, part.most_on_a, effort}, limits,
         [&](std::int64_t worst, int, HalfList::Point i, HalfList::Point j) {
             left.write(i, inner);
             right.write(j, inner);
             better = true;
             limits.worst[0] = worst;
         });
    for (std::size_t i = 0; better && i < open.size(); ++i) best[open[i]] = inner[i];
}

} // namespace

Assignment improve(LegProblem const& p, Assignment best, std::int64_t enough, Effort& effort) {
    constexpr std::size_t kOpen = 32;
    auto part = effort.part(effort.left() / 2);
    best = kicked(p, std::move(best), enough, part);
    effort.charge(part);
    Sequence numbers(2);
    while (!effort.is_over() && worst_difference(p, best) > enough) {
        std::vector<std::size_t> open(p.decisions.size());
        for (std::size_t i = 0; i < open.size(); ++i) open[i] = i;
        for (std::size_t i = 0; i < std::min(kOpen, open.size()); ++i)
            std::swap(open[i], open[i + numbers.below(open.size() - i)]);
        open.resize(std::min(kOpen, open.size()));
        open_up(p, best, open, effort);
    }
    return best;
}

} // namespace legwork
