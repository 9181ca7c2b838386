// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/list.h"
#include "rules/directory/printed.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c, Printed const& printed) {
    Inspection seen;
    for (auto const& [mark, whole] : printed.names) {
        Circuit const* circuit = circuit_named(c.building, mark);
        if (!circuit) continue;
        seen.looked();
        if (whole) continue;
        auto f = finding(c, dir_name_too_long, Gravity::usual, about(*circuit, "name"));
        f.message =
            fmt::format("the name is too long for its line of the directory ({}) even in the smallest print: the "
                        "line is shortened, the whole name stands below",
                        printed.form);
        f.fix = "say place and thing in fewer words; the room has a key of its own";
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
    .judge_printed = judge,
};

} // namespace legwork
