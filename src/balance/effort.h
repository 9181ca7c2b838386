// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How much may be searched: counted steps (about two nanoseconds each on a machine of 2020) and bytes, so that the same
// job gives the same plan on every machine. A clock is looked at only when the person set a hard stop.
#pragma once

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace legwork {

class Effort {
public:
    using Clock = std::chrono::steady_clock;

    Effort(std::int64_t steps, std::size_t bytes, std::optional<Clock::time_point> stop = {})
        : steps_(steps), bytes_(bytes), stop_(stop) {}

    // False once the steps are used up or the time has come; then for good.
    bool spend(std::int64_t steps) {
        steps_ -= steps;
        if (steps_ < 0) over_ = true;
        if (stop_ && (since_look_ += steps) > kLookEvery) {
            since_look_ = 0;
            if (Clock::now() >= *stop_) over_ = stopped_by_time_ = true;
        }
        return !over_;
    }
    bool is_over() const { return over_; }
    bool stopped_by_time() const { return stopped_by_time_; }
    std::int64_t left() const { return over_ || steps_ < 0 ? 0 : steps_; }
    std::size_t bytes() const { return bytes_; }

    // A part of what is left, to be spent on one thing; `charge` it back.
    Effort part(std::int64_t steps) const {
        Effort e(steps < left() ? steps : left(), bytes_, stop_);
        e.over_ = e.stopped_by_time_ = stopped_by_time_;
        return e;
    }
    void charge(Effort const& part, std::int64_t given) {
        steps_ -= (given < left() ? given : left()) - part.left();
        stopped_by_time_ = stopped_by_time_ || part.stopped_by_time_;
        over_ = over_ || stopped_by_time_ || steps_ < 0;
    }

private:
    static constexpr std::int64_t kLookEvery = 2'000'000;
    std::int64_t steps_, since_look_ = 0;
    std::size_t bytes_;
    std::optional<Clock::time_point> stop_;
    bool over_ = false, stopped_by_time_ = false;
};

} // namespace legwork
