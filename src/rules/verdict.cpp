// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/verdict.h"

#include "reckon/say.h"

#include <algorithm>
#include <cassert>
#include <iterator>

namespace legwork {

std::string_view name(Verdict::Kind kind) {
    switch (kind) {
    case Verdict::Kind::fired: return "fired";
    case Verdict::Kind::passed: return "passed";
    case Verdict::Kind::unread: return "unread";
    case Verdict::Kind::nothing: break;
    }
    return "nothing";
}

namespace {
// In whole sentences, and no graver than its deciding number is sure.
Finding finished(Finding f) {
    f.message = as_sentence(std::move(f.message));
    f.fix = as_sentence(std::move(f.fix));
    if (only_warns(f.reference.source) && f.severity == Severity::error) f.severity = Severity::warning;
    return f;
}
} // namespace

void Inspection::found(Findings some) { std::ranges::move(some, std::back_inserter(findings_)); }

void Inspection::found(std::optional<Finding> f) {
    if (f) findings_.push_back(std::move(*f));
}

Verdict Inspection::verdict() const {
    assert((looked_at_ > 0 || findings_.empty()) && "found in nothing");
    Verdict v;
    v.looked_at_ = looked_at_;
    for (Finding const& f : findings_) v.findings_.push_back(finished(f));
    if (!findings_.empty()) {
        v.kind_ = Verdict::Kind::fired;
    } else if (unread_) {
        v.kind_ = Verdict::Kind::unread;
    } else if (looked_at_ > 0) {
        v.kind_ = Verdict::Kind::passed;
        v.nearest_ = nearest_;
    }
    if (unread_) v.findings_.push_back(finished(*unread_));
    return v;
}

} // namespace legwork
