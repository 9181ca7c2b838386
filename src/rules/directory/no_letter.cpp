// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/list.h"
#include "rules/directory/printed.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c, Printed const& printed) {
    Inspection seen;
    for (auto const& [of, missing] : printed.letters) {
        seen.looked();
        if (missing.empty()) continue;
        auto f = finding(c, dir_no_letter, Gravity::usual, of);
        f.message = fmt::format("no typeface has these letters, so the sheets show a box for each: {}", missing);
        f.fix = "write it in other letters, or install a typeface that has them and print again";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const dir_no_letter{
    .id = "dir-no-letter",
    .asks = "Every letter on the sheets is in the bundled typeface or in one of this machine's.",
    .why = "A letter that no typeface has prints as a box with a number in it, which nobody at the panel can read.",
    .remedy = "Write it in letters that print, or install a typeface that has them and print again.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .stops_cables = false,
    .judge_printed = judge,
};

} // namespace legwork
