// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <cstddef>
#include <iterator>
#include <random>

namespace fuzz {

// The same throws for the same seed, on every machine.
class Dice {
public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    std::size_t below(std::size_t n) { return n == 0 ? 0 : engine_() % n; }
    bool once_in(std::size_t n) { return below(n) == 0; }
    // Of a list that is not empty.
    auto const& one_of(auto const& list) { return list[below(std::size(list))]; }

private:
    std::minstd_rand engine_;
};

} // namespace fuzz
