// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "walk.h"

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <string_view>

namespace faults {

namespace {

// From the manual page of each call (section 2, ERRORS): those that a sound program meets on a sick or full disk, on a
// network's disk, or without the right to.
struct Refusals {
    Kind kind;
    std::vector<int> errors;
};
std::vector<Refusals> const kRefusals{
    {Kind::open, {EMFILE, EACCES, EIO, ENOSPC}},
    {Kind::nameless, {ENOSPC, EIO}},
    {Kind::read, {EIO}},
    {Kind::write, {ENOSPC, EIO, EDQUOT}},
    {Kind::flush, {EIO, ENOSPC}},
    {Kind::rename, {EIO, EACCES, ENOSPC}},
    {Kind::claim, {EIO, ENOSPC}},
    {Kind::exchange, {EIO, EACCES}},
    {Kind::link, {EIO, EMLINK}},
    {Kind::unlink, {EIO, EACCES}},
    {Kind::close, {EIO, ENOSPC}},
    {Kind::map, {ENOMEM}},
    {Kind::cut, {EIO}},
    {Kind::mode, {EPERM, EIO}},
    {Kind::owner, {EPERM, EIO}},
    {Kind::attribute, {EIO, ENOSPC}},
    {Kind::lock, {ENOLCK}},
    {Kind::look, {EIO, EACCES}},
    {Kind::folder, {EIO, EACCES}},
    {Kind::resolve, {EIO, EACCES}},
};

// All faults that differ in the number of the call, upward until there is no such call: with each of the errors, or, in
// the short walk, with one after the other.
void upward(Walk& walk, Fault fault, std::span<int const> errors) {
    fault.everywhere = fault.everywhere || is_long_walk();
    for (bool reached = true; reached; ++fault.nth)
        for (std::size_t n = 0; n < (is_long_walk() ? errors.size() : 1); ++n) {
            fault.error = errors[(fault.nth - 1 + n) % errors.size()];
            reached = walk.step(fault);
        }
}

constexpr std::array kNoError{0};

} // namespace

bool is_long_walk() {
    char const* const asked = std::getenv("LEGWORK_FAULTS");
    return asked && std::string_view(asked) == "all";
}

bool Walk::step(Fault fault) {
    fault.lacks = lacks_;
    lay_out(folder_.path(), scene_.before);
    auto const ran = run(folder_.path(), scene_.words, fault);
    ++runs_;
    if (ran.reached) ++(ran.status < 0 ? kills_ : failures_);
    auto const now = standing_in(folder_.path());
    auto found = judged(scene_, fault, ran, now);
    if (fault.act == Act::shorten && ran.status != 0) found.push_back("cannot go on after a part: " + ran.err);
    if (fault.error == EINTR && ran.status != 0) found.push_back("cannot go on when interrupted: " + ran.err);
    if (now != scene_.before && std::ranges::find(judged_, now) == judged_.end()) {
        std::ranges::move(judged_next(scene_, folder_.path()), std::back_inserter(found));
        judged_.push_back(now);
    }
    for (auto const& complaint : found) complaints_.push_back(scene_.name + ", " + told(fault, ran) + ": " + complaint);
    return ran.reached;
}

std::string Walk::report() const {
    return scene_.name + ": " + std::to_string(runs_) + " runs, " + std::to_string(failures_) + " failures, " +
           std::to_string(kills_) + " kills, " + std::to_string(complaints_.size()) + " complaints\n" +
           listed(complaints_);
}

void walk_refusals(Walk& walk) {
    for (auto const& [kind, errors] : kRefusals) upward(walk, {.act = Act::fail, .kind = kind}, errors);
    // A disk that fills up and stays full, or dies.
    constexpr std::array full{ENOSPC}, dead{EIO};
    upward(walk, {.act = Act::fail_on, .kind = Kind::write}, full);
    upward(walk, {.act = Act::fail_on, .kind = Kind::any}, dead);
}

void walk_short(Walk& walk) {
    constexpr std::array interrupted{EINTR};
    for (auto const kind : {Kind::read, Kind::write}) {
        upward(walk, {.act = Act::shorten, .kind = kind}, kNoError);
        upward(walk, {.act = Act::fail, .kind = kind}, interrupted);
    }
    upward(walk, {.act = Act::fail, .kind = Kind::lock}, interrupted);
}

void walk_reading(Walk& walk) {
    for (auto const& [kind, errors] : kRefusals)
        if (kind == Kind::open || kind == Kind::map || kind == Kind::folder)
            upward(walk, {.act = Act::fail, .kind = kind, .everywhere = true}, errors);
}

void walk_kills(Walk& walk) {
    upward(walk, {.act = Act::kill_after}, kNoError);
    // After one call and before the next much is reckoned, but nothing stands otherwise.
    if (is_long_walk()) upward(walk, {.act = Act::kill_before}, kNoError);
}

} // namespace faults
