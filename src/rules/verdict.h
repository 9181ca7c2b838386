// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a rule found out. Silence is not enough: that every drop is within its limit, and that no length is known, both
// find nothing, and only the first is good news.
#pragma once

#include "rules/finding.h"

#include <optional>
#include <string>
#include <string_view>

namespace legwork {

class Verdict {
public:
    enum class Kind {
        fired,   // there are findings
        passed,  // it looked at something, and found no fault
        nothing, // the job has nothing that it judges, or not the figures to judge by
        unread,  // nobody has read what this edition asks: a note may say so
    };
    Kind kind() const { return kind_; }
    int looked_at() const { return looked_at_; } // how many of what it judges, those at fault too
    // Of a rule that passed the closest thing to a fault, "drop 2.8 % of 3 % on K1"; empty where it compares no
    // figures.
    std::string const& nearest() const { return nearest_; }
    Findings const& findings() const& { return findings_; }
    Findings findings() && { return std::move(findings_); }

private:
    friend class Inspection; // the only one who makes verdicts: none passes that looked at nothing
    Verdict() = default;
    Kind kind_ = Kind::nothing;
    int looked_at_ = 0;
    std::string nearest_;
    Findings findings_;
};
std::string_view name(Verdict::Kind kind); // "fired", "passed", "nothing", "unread"

// A rule at work: what it looks at, what it finds, and the verdict that comes of it.
//
//     Inspection seen;
//     for (Pair const& p : c.building.pairs) {
//         if (!p.first->breaker || !p.second->breaker) continue; // not known, so not looked at
//         seen.looked();
//         if (*p.first->breaker != *p.second->breaker) seen.found(...);
//     }
//     return seen.verdict();
class Inspection {
public:
    void looked(int more = 1) { looked_at_ += more; }
    void found(Finding f) { findings_.push_back(std::move(f)); }
    void found(Findings some);
    void found(std::optional<Finding> f); // when there is one
    // Of what it looked at, the share of its limit that is in use (1: just within), and the words for it, asked for
    // only where it is the nearest so far: "drop 2.8 % of 3 % on K1".
    template <class Words>
    void margin(double share, Words words) {
        if (!(share > share_)) return;
        share_ = share;
        nearest_ = words();
    }
    // What this edition asks, or a part of it, was not read: `note` says so. What the rest finds stands beside it.
    void unread(Finding note) { unread_ = std::move(note); }
    bool silent() const { return findings_.empty(); }

    Verdict verdict() const;

private:
    int looked_at_ = 0;
    double share_ = -1;
    std::string nearest_;
    std::optional<Finding> unread_;
    Findings findings_;
};

} // namespace legwork
