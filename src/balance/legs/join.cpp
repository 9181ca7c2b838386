// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/join.h"

#include <algorithm>
#include <cstdlib>
#include <limits>
#include <utility>

namespace legwork {

namespace {

// Sums of two halves stay within 31 bits: the caller sees to it.
using Value = std::int32_t;
constexpr std::size_t kMostSituations = 16;

// `Width` situations; 0: as many as the lists say.
template <int Width>
class Meet {
public:
    Meet(Join const& j, Limits& limits, ShowPair const& found) : j_(j), limits_(limits), found_(found) {}

    bool run() {
        if (j_.left.empty() || j_.right.empty()) return true;
        if (auto const s = look(0, 0); s.bound < s.limit) visit(0, 0);
        return !j_.effort.is_over();
    }

private:
    struct Sight {
        Value bound, limit; // no pair of the two boxes is below `bound`; none is wanted that is not below `limit`
    };

    std::size_t width() const { return Width ? static_cast<std::size_t>(Width) : j_.left.situations(); }
    std::size_t on_a() const { return width(); }
    std::size_t moves() const { return width() + 1; }

    Value limit_of(int least_moves) const {
        auto const m = static_cast<std::size_t>(std::max(least_moves, limits_.done + 1));
        return m < limits_.worst.size()
                   ? static_cast<Value>(std::min<std::int64_t>(limits_.worst[m], std::numeric_limits<Value>::max()))
                   : 0;
    }

    Sight look(std::size_t l, std::size_t r) const {
        auto const *low_a = j_.left.least(l), *low_b = j_.right.least(r), *high_a = j_.left.most(l),
                   *high_b = j_.right.most(r);
        if (low_a[on_a()] + low_b[on_a()] > j_.most_on_a || high_a[on_a()] + high_b[on_a()] < j_.least_on_a)
            return {0, 0};
        if (high_a[moves()] + high_b[moves()] <= limits_.done) return {0, 0};
        Value worst = 0;
        for (std::size_t k = 0; k < width(); ++k)
            worst = std::max({worst, low_a[k] + low_b[k], -(high_a[k] + high_b[k])});
        return {worst, limit_of(low_a[moves()] + low_b[moves()])};
    }

    void visit(std::size_t l, std::size_t r) {
        if (!j_.effort.spend(8)) return;
        auto const& a = j_.left.node(l);
        auto const& b = j_.right.node(r);
        if (!a.right && !b.right) return compare(l, r);
        bool const split_left = a.right && (!b.right || a.end - a.begin >= b.end - b.begin);
        std::pair<std::size_t, std::size_t> one{l, r}, two{l, r};
        if (split_left)
            one.first = l + 1, two.first = static_cast<std::size_t>(a.right);
        else
            one.second = r + 1, two.second = static_cast<std::size_t>(b.right);
        auto first = look(one.first, one.second), second = look(two.first, two.second);
        // The more promising one first: the sooner a good pair is shown, the lower the limit for the rest.
        if (second.bound < first.bound) std::swap(one, two), std::swap(first, second);
        if (first.bound < first.limit) visit(one.first, one.second);
        if (second.bound >= second.limit) return;
        // Looked at again, since the first may have lowered the limit.
        if (second = look(two.first, two.second); second.bound < second.limit) visit(two.first, two.second);
    }

    // One point against all of a leaf, situation by situation, until none is below.
    void compare(std::size_t l, std::size_t r) {
        auto const &a = j_.left.node(l), &b = j_.right.node(r);
        if (!j_.effort.spend(std::int64_t{a.points()} * b.points())) return;
        int const least_moves = j_.left.least(l)[moves()] + j_.right.least(r)[moves()];
        for (std::size_t i = 0; i < a.points(); ++i) {
            Value below[kLanes];
            if (!any_below({l, i}, r, limit_of(least_moves), below)) continue;
            for (std::size_t n = 0; n < b.points(); ++n)
                if (below[n]) show({l, i}, {r, n});
        }
    }

    static constexpr std::size_t kLanes = HalfList::kLeaf;

    bool any_below(HalfList::Point p, std::size_t leaf, Value limit, Value (&below)[kLanes]) const {
        if (limit <= 0) return false;
        auto const points = static_cast<Value>(j_.right.node(leaf).points());
        for (std::size_t n = 0; n < kLanes; ++n) below[n] = static_cast<Value>(n) < points ? -1 : 0;
        // -limit < D < limit as one comparison without sign.
        auto const span = 2 * static_cast<std::uint32_t>(limit - 1);
        for (std::size_t k = 0; k < width(); ++k) {
            auto const offset = static_cast<std::uint32_t>(j_.left.value(p, k)) + static_cast<std::uint32_t>(limit - 1);
            auto const* const lanes = j_.right.column(leaf, k);
            Value any = 0;
            // Always all lanes and no early end: so the compiler makes vector instructions of it.
            for (std::size_t n = 0; n < kLanes; ++n) {
                below[n] &= static_cast<std::uint32_t>(lanes[n]) + offset <= span ? -1 : 0;
                any |= below[n];
            }
            if (!any) return false;
        }
        return true;
    }

    void show(HalfList::Point p, HalfList::Point q) {
        int const count = j_.left.value(p, on_a()) + j_.right.value(q, on_a());
        int const m = j_.left.value(p, moves()) + j_.right.value(q, moves());
        if (count < j_.least_on_a || count > j_.most_on_a || m <= limits_.done) return;
        Value worst = 0;
        for (std::size_t k = 0; k < width(); ++k)
            worst = std::max(worst, std::abs(j_.left.value(p, k) + j_.right.value(q, k)));
        if (worst < limit_of(m)) found_(worst, m, p, q);
    }

    Join const& j_;
    Limits& limits_;
    ShowPair const& found_;
};

} // namespace

bool join(Join const& halves, Limits& limits, ShowPair const& found) {
    if (halves.left.situations() > kMostSituations) return false; // the reader allows no more
    switch (halves.left.situations()) {
    case 1: return Meet<1>(halves, limits, found).run();
    case 2: return Meet<2>(halves, limits, found).run();
    case 3: return Meet<3>(halves, limits, found).run();
    case 4: return Meet<4>(halves, limits, found).run();
    case 8: return Meet<8>(halves, limits, found).run();
    default: return Meet<0>(halves, limits, found).run();
    }
}

} // namespace legwork
