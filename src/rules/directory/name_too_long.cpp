// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/list.h"
#include "rules/directory/printed.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c, Printed const& printed) {
    Inspection seen;
    for (auto const& sheet : printed.sheets)
        for (auto const& [of, whole, what] : sheet.names) {
            seen.looked();
            if (whole) continue;
            auto f = finding(c, dir_name_too_long, Gravity::usual, of);
            f.message = fmt::format("{} is too long for {} ({}) even in the smallest print: {}", what, sheet.room,
                                    sheet.form, sheet.if_cut);
            f.fix = what == Printed::Name::kName ? "say place and thing in fewer words; the room has a key of its own"
                                                 : "print on a larger form, or say it in fewer words";
            seen.found(std::move(f));
        }
    return seen.verdict();
}
} // namespace

constinit Rule const dir_name_too_long{
    .id = "dir-name-too-long",
    .asks = "Each name fits its line of the form at the smallest size that can be read.",
    .why = "A name that is cut off, or printed too small to read at arm's length, does not say what the breaker feeds.",
    .remedy = "Shorten the name, move the place to `room` or the remark to `note`, or choose a larger form.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge_printed = judge,
};

} // namespace legwork
