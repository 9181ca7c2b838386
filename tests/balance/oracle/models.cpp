// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// T is an integer and at least the parity of the loads; an absolute gap of one half and no relative one then prove it.

#include "balance/oracle/models.h"

#include <algorithm>
#include <cstdlib>
#include <sstream>

namespace legwork::oracle {

namespace {
struct Term {
    std::int64_t factor;
    std::string variable;
};
using Terms = std::vector<Term>;

class Model {
public:
    void row(Terms const& terms, char const* relation, std::int64_t right) {
        if (terms.empty()) return;
        rows_ << " r" << ++count_ << ":";
        for (Term const& t : terms)
            rows_ << (t.factor < 0 ? "\n  - " : "\n  + ") << std::abs(t.factor) << ' ' << t.variable;
        rows_ << "\n  " << relation << ' ' << right << '\n';
    }
    // -T <= constant + terms <= T
    void within_t(Terms terms, std::int64_t constant) {
        terms.push_back({-1, "T"});
        row(terms, "<=", -constant);
        terms.back().factor = 1;
        row(terms, ">=", -constant);
    }
    void at_least(std::int64_t bound) { least_ = std::max(least_, bound); }
    std::string choice(std::size_t i, std::size_t j) {
        binaries_ << " x" << i << "_" << j << '\n';
        return "x" + std::to_string(i) + "_" + std::to_string(j);
    }
    std::string text() const {
        return "Minimize\n obj: T\nSubject To\n" + rows_.str() + "Bounds\n T >= " + std::to_string(least_) +
               "\nGenerals\n T\nBinaries\n" + binaries_.str() + "End\n";
    }

private:
    std::ostringstream rows_, binaries_;
    std::int64_t least_ = 0;
    int count_ = 0;
};

Terms nonzero(Terms terms) {
    std::erase_if(terms, [](Term const& t) { return t.factor == 0; });
    return terms;
}
} // namespace

std::string full_model(Board const& board, std::optional<int> max_moves) {
    Model m;
    std::vector<Terms> imbalance(board.constant.size());
    Terms moves;
    std::vector<Terms> spaces(32);
    for (std::size_t i = 0; i < board.pieces.size(); ++i) {
        Terms one;
        for (std::size_t j = 0; j < board.pieces[i].choices.size(); ++j) {
            Choice const& c = board.pieces[i].choices[j];
            auto const x = m.choice(i, j);
            one.push_back({1, x});
            moves.push_back({c.moves, x});
            for (std::size_t s = 0; s < imbalance.size(); ++s) imbalance[s].push_back({c.d[s], x});
            for (std::size_t s = 0; s < 32; ++s)
                if (c.spaces >> s & 1) spaces[s].push_back({1, x});
        }
        m.row(one.empty() ? Terms{{0, "T"}} : one, "=", 1); // a piece with nowhere to stand: 0 = 1
    }
    for (std::size_t s = 0; s < 32; ++s) m.row(spaces[s], "<=", board.held >> s & 1 ? 0 : 1);
    for (std::size_t s = 0; s < imbalance.size(); ++s) m.within_t(nonzero(imbalance[s]), board.constant[s]);
    if (max_moves) m.row(nonzero(moves), "<=", *max_moves);
    return m.text();
}

std::string compact_model(Legs const& legs, std::optional<int> max_moves) {
    Model m;
    std::vector<Terms> imbalance(legs.constant.size());
    auto constant = legs.constant;
    Terms on_a, moves;
    std::int64_t spare_moves = max_moves.value_or(0);
    for (std::size_t i = 0; i < legs.decisions.size(); ++i) {
        Decision const& d = legs.decisions[i];
        auto const x = m.choice(i, 0); // 1: on leg A
        for (std::size_t s = 0; s < imbalance.size(); ++s) {
            imbalance[s].push_back({2 * d.d[s], x});
            constant[s] -= d.d[s];
        }
        if (d.counts) on_a.push_back({1, x});
        moves.push_back({d.on_a ? -d.cost : d.cost, x});
        if (d.on_a) spare_moves -= d.cost;
    }
    for (std::size_t s = 0; s < imbalance.size(); ++s) {
        m.within_t(nonzero(imbalance[s]), constant[s]);
        m.at_least(std::abs(constant[s]) % 2);
    }
    m.row(on_a, ">=", legs.least_on_a);
    m.row(on_a, "<=", legs.most_on_a);
    if (max_moves) m.row(moves, "<=", spare_moves);
    return m.text();
}

} // namespace legwork::oracle
