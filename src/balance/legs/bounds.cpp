// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/bounds.h"

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace legwork {

namespace {

std::vector<std::int64_t> column(LegProblem const& p, std::size_t k) {
    std::vector<std::int64_t> all{p.constant[k]};
    for (Decision const& d : p.decisions) all.push_back(d.d[k]);
    return all;
}

// x = r y with |r| <= 1, in all places.
bool is_fraction(std::vector<std::int64_t> const& x, std::vector<std::int64_t> const& y) {
    auto const i = std::ranges::find_if(y, [](std::int64_t v) { return v != 0; }) - y.begin();
    auto const n = static_cast<std::size_t>(i);
    if (n == y.size()) return std::ranges::all_of(x, [](std::int64_t v) { return v == 0; });
    if (std::abs(x[n]) > std::abs(y[n])) return false;
    auto const common = std::gcd(x[n], y[n]);
    auto const p = x[n] / common, q = y[n] / common;
    for (std::size_t k = 0; k < x.size(); ++k)
        if (y[k] % q != 0 || y[k] / q * p != x[k]) return false;
    return true;
}

bool is_idle(std::vector<std::int64_t> const& x, std::vector<std::int64_t> const& other) {
    auto const changes = [](auto const& c) {
        return std::any_of(c.begin() + 1, c.end(), [](std::int64_t v) { return v != 0; });
    };
    if (!changes(x) && !changes(other)) return std::abs(x[0]) <= std::abs(other[0]);
    return is_fraction(x, other);
}

void drop(LegProblem& p, std::size_t k) {
    auto const at = static_cast<std::ptrdiff_t>(k);
    p.constant.erase(p.constant.begin() + at);
    for (Decision& d : p.decisions) d.d.erase(d.d.begin() + at);
}

std::int64_t bound_of(std::vector<std::int64_t> const& x) {
    std::int64_t divisor = 0, sum = x[0], rest = std::abs(x[0]), largest = 0;
    for (std::size_t i = 1; i < x.size(); ++i) {
        divisor = std::gcd(divisor, x[i]);
        sum += x[i];
        rest += std::abs(x[i]);
        largest = std::max(largest, std::abs(x[i]));
    }
    if (divisor == 0) return std::abs(x[0]);
    auto const modulus = 2 * divisor;
    auto const r = (sum % modulus + modulus) % modulus;
    return std::max(std::min(r, modulus - r), largest - (rest - largest));
}

} // namespace

LegProblem without_idle_situations(LegProblem p) {
    // From the last: of two that say the same the first stays.
    for (std::size_t k = p.situations(); k-- > 0;) {
        auto const x = column(p, k);
        for (std::size_t j = 0; j < p.situations(); ++j)
            if (j != k && is_idle(x, column(p, j))) {
                drop(p, k);
                break;
            }
    }
    return p;
}

std::int64_t quick_lower_bound(LegProblem const& p) {
    std::int64_t bound = 0;
    for (std::size_t k = 0; k < p.situations(); ++k) bound = std::max(bound, bound_of(column(p, k)));
    return bound;
}

} // namespace legwork
