// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/join.h"

#include <algorithm>
#include <utility>

namespace legwork {

namespace {

// Sums of two halves stay within 31 bits: the caller sees to it.
using Value = std::int32_t;

// `Width` situations; 0: as many as the lists say.
template <int Width>
class Run {
public:
    Run(Join const& j, Value limit, Found const& found) : j_(j), limit_(limit), found_(found) {}

    bool run() {
        if (j_.left.empty() || j_.right.empty()) return true;
        if (bound(0, 0) < limit_) visit(0, 0);
        return !j_.effort.is_over();
    }

private:
    std::size_t width() const { return Width ? static_cast<std::size_t>(Width) : j_.left.situations(); }

    // No pair of the two boxes is below; the limit when the counts rule all of them out.
    Value bound(std::size_t l, std::size_t r) const {
        auto const& a = j_.left.node(l);
        auto const& b = j_.right.node(r);
        if (a.least_on_a + b.least_on_a > j_.most_on_a || a.most_on_a + b.most_on_a < j_.least_on_a) return limit_;
        auto const *low_a = j_.left.least(l), *low_b = j_.right.least(r), *high_a = j_.left.most(l),
                   *high_b = j_.right.most(r);
        Value worst = 0;
        for (std::size_t k = 0; k < width(); ++k)
            worst = std::max({worst, low_a[k] + low_b[k], -(high_a[k] + high_b[k])});
        return worst;
    }

    void visit(std::size_t l, std::size_t r) {
        if (!j_.effort.spend(8)) return;
        auto const& a = j_.left.node(l);
        auto const& b = j_.right.node(r);
        if (!a.right && !b.right) return compare(a, b);
        bool const split_left = a.right && (!b.right || a.end - a.begin >= b.end - b.begin);
        std::pair<std::size_t, std::size_t> one{l, r}, two{l, r};
        if (split_left)
            one.first = l + 1, two.first = static_cast<std::size_t>(a.right);
        else
            one.second = r + 1, two.second = static_cast<std::size_t>(b.right);
        auto bound_one = bound(one.first, one.second), bound_two = bound(two.first, two.second);
        if (bound_two < bound_one) std::swap(one, two), std::swap(bound_one, bound_two);
        if (bound_one < limit_) visit(one.first, one.second);
        if (bound_two < limit_) visit(two.first, two.second);
    }

    void compare(HalfList::Node const& a, HalfList::Node const& b) {
        if (!j_.effort.spend(static_cast<std::int64_t>(a.end - a.begin) * (b.end - b.begin))) return;
        for (std::size_t i = a.begin; i < a.end; ++i) {
            auto const* p = j_.left.point(i);
            for (std::size_t n = b.begin; n < b.end; ++n) {
                auto const* q = j_.right.point(n);
                Value worst = 0;
                for (std::size_t k = 0; k < width(); ++k) {
                    Value const d = p[k] + q[k];
                    worst = std::max({worst, d, -d});
                }
                if (worst >= limit_) continue;
                int const on_a = j_.left.on_a(i) + j_.right.on_a(n);
                if (on_a < j_.least_on_a || on_a > j_.most_on_a) continue;
                limit_ = static_cast<Value>(std::min<std::int64_t>(limit_, found_(worst, i, n)));
            }
        }
    }

    Join const& j_;
    Value limit_;
    Found const& found_;
};

} // namespace

bool join(Join const& halves, std::int64_t limit, Found const& found) {
    auto const top = static_cast<Value>(std::min<std::int64_t>(limit, std::numeric_limits<Value>::max()));
    switch (halves.left.situations()) {
    case 1: return Run<1>(halves, top, found).run();
    case 2: return Run<2>(halves, top, found).run();
    case 3: return Run<3>(halves, top, found).run();
    case 4: return Run<4>(halves, top, found).run();
    case 8: return Run<8>(halves, top, found).run();
    default: return Run<0>(halves, top, found).run();
    }
}

} // namespace legwork
