// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A rule is one record beside its function, in a file of its own: what is said of it there is said nowhere else, and
// its findings take their gravity from it.
//
//     namespace {
//     Verdict judge(Case const& c) { ... seen.found(finding(c, mw_unequal, Gravity::usual, about(p, "breaker"))); ... }
//     } // namespace
//
//     constinit Rule const mw_unequal{.id = "mw-unequal", .asks = "...", .why = "...", .remedy = "...",
//                                     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}}, .judge = judge};
//
// The theme that it belongs to has one line for it (list.h of its folder). Its sections stand in codebook/cite.h, under
// its id, or under "id/aspect" where it needs more than one.
#pragma once

#include "reckon/case.h"
#include "reckon/say.h"
#include "rules/gravity.h"
#include "rules/verdict.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Whether a person may accept findings of a rule; what to know about it in a sentence, empty for most.
struct Acceptance {
    enum class Of { all, some, none } of = Of::all;
    std::string_view why = {};
};
// Why nobody may.
constexpr std::string_view kAtOnce = "It burns, shocks or destroys as soon as the breaker closes.";
constexpr std::string_view kUnseen = "No breaker sees it, so it heats a wire in the wall until somebody smells it.";
constexpr std::string_view kDead = "What hangs on it does not work, or works on a voltage it is not made for.";

struct Printed;

struct Rule {
    std::string_view id;
    std::string_view asks;   // one sentence: what it asks
    std::string_view why;    // why it matters
    std::string_view remedy; // its usual remedy
    Gravity gravity = {};
    Acceptance accept = {};
    // An error of it stands on the notes of its cables: stop, do not connect. False of what is about names, and of what
    // the rows of the notes show themselves.
    bool stops_cables = true;
    // One of these is set, by what it judges; none: legwork explains it and does not judge it yet.
    Verdict (*judge)(Case const&) = nullptr;
    Verdict (*judge_printed)(Case const&, Printed const&) = nullptr;       // how the job's words stand on the sheets
    Verdict (*judge_findings)(Case const&, Findings const& all) = nullptr; // what all the others found

    bool is_checked() const { return judge || judge_printed || judge_findings; }
};

// A finding of this rule with what the code book cites for `topic`, one of the rule's own (its id when empty). What is
// new work is told by what `where` names: work is existing where all of it is; `existing` says otherwise.
Finding finding(Case const& c, Rule const& rule, Gravity::Of of, Where where, std::string_view topic = {},
                std::optional<bool> existing = {});

Where about(Circuit const& c, std::string key = {});
// Of circuits, at least one. Names a panel only when all of them are in it.
Where about(std::vector<Circuit const*> const& some, std::string key = {});
Where about(Pair const& p, std::string key = {});

// The name of its panel; empty where it has none, which no reader lets pass.
std::string panel_name(Circuit const& c);

} // namespace legwork
