// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How much may be searched: counted steps (about two nanoseconds each on a machine of 2020) and bytes, so that the same
// job gives the same plan on every machine. Every loop pays for what it does, what it does once included. A clock is
// looked at only when the person set a hard stop, some thousand times a second.
#pragma once

#include <algorithm>
#include <chrono>
#include <cstddef>
#include <cstdint>
#include <optional>

namespace legwork {

class Effort {
public:
    using Clock = std::chrono::steady_clock;

    Effort(std::int64_t steps, std::size_t bytes, std::optional<Clock::time_point> stop = {})
        : start_(steps), steps_(steps), bytes_(bytes), stop_(stop) {}

    // So many seconds from now.
    static std::optional<Clock::time_point> after(std::optional<double> seconds) {
        if (!seconds) return {};
        std::chrono::duration<double> const wait(std::clamp(*seconds, 0.0, 1e6));
        return Clock::now() + std::chrono::duration_cast<Clock::duration>(wait);
    }

    // False once the steps are used up or the time has come; then for good.
    bool spend(std::int64_t steps) {
        steps_ -= steps;
        if (owed_ > 0 && (owed_ -= steps) > 0) return true;
        if (steps_ < 0) over_ = true;
        if (stop_ && (since_look_ += steps) > kLookEvery) {
            since_look_ = 0;
            if (Clock::now() >= *stop_) over_ = stopped_by_time_ = true;
        }
        return !over_;
    }
    bool is_over() const { return over_; }
    bool stopped_by_time() const { return stopped_by_time_; }
    std::int64_t left() const { return std::max(owed_, over_ || steps_ < 0 ? 0 : steps_); }
    std::size_t bytes() const { return bytes_; }

    // A part of what is left, to be spent on one thing; `charge` it back.
    Effort part(std::int64_t steps) const {
        Effort e(std::min(steps, left()), bytes_, stop_);
        e.over_ = e.stopped_by_time_ = stopped_by_time_;
        e.since_look_ = since_look_;
        e.owed_ = std::min(owed_, e.start_);
        e.sharers_ = sharers_;
        return e;
    }
    void charge(Effort const& part) {
        auto const spent = part.start_ - part.left();
        steps_ -= spent;
        owed_ = std::max<std::int64_t>(0, owed_ - spent);
        since_look_ = part.since_look_;
        stopped_by_time_ = stopped_by_time_ || part.stopped_by_time_;
        over_ = over_ || stopped_by_time_ || steps_ < 0;
    }
    // The same, to be done with before its share of the time is over: one of so many that are left of all sharers.
    Effort part_of_time(std::int64_t steps, std::int64_t shares, std::int64_t sharers) const {
        Effort e = part(steps);
        e.sharers_ = sharers;
        if (stop_) e.stop_ = Clock::now() + std::max(*stop_ - Clock::now(), Clock::duration::zero()) / shares;
        return e;
    }
    // That the share of one is over does not stop the next.
    void charge_share(Effort const& part) {
        steps_ -= part.start_ - part.left();
        over_ = over_ || steps_ < 0;
    }

    // For what is done even when nothing is left: so many steps are allowed whatever happens, or an equal share of what
    // a whole job may take so.
    Effort owed(std::int64_t steps) const {
        Effort e = *this;
        e.over_ = e.stopped_by_time_ = false;
        e.owed_ = std::min(steps, kOwedToAll / sharers_);
        return e;
    }
    void settle(Effort const& owed) {
        steps_ = owed.steps_;
        since_look_ = owed.since_look_;
        stopped_by_time_ = stopped_by_time_ || owed.stopped_by_time_;
        over_ = over_ || stopped_by_time_ || steps_ < 0;
    }

private:
    static constexpr std::int64_t kLookEvery = 200'000, kOwedToAll = 40'000'000;
    std::int64_t start_, steps_, since_look_ = 0, owed_ = 0, sharers_ = 1;
    std::size_t bytes_;
    std::optional<Clock::time_point> stop_;
    bool over_ = false, stopped_by_time_ = false;
};

} // namespace legwork
