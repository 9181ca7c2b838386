// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// balance --write: the plan adds up, and the file as written is that plan.
#include "fuzz/dice.h"
#include "fuzz/opened.h"
#include "fuzz/promises.h"
#include "fuzz/rewrite.h"

#include "balance/balance.h"
#include "cli/json/json.h"
#include "cli/text/text.h"
#include "job/job.h"

#include <algorithm>

using namespace legwork;

namespace {

BalanceOptions options_of(std::string_view bytes) {
    fuzz::Dice dice(fuzz::number_of(bytes));
    BalanceOptions options;
    if (dice.once_in(3)) options.best = true;
    if (!options.best && dice.once_in(2)) options.max_moves = static_cast<int>(dice.below(6));
    return options;
}

void show(Session const& s, Plan const& plan) {
    fuzz::promise_json(fuzz::shown_by([&](Streams& to) { write_plan_json(s.building, plan, {}, to); }));
    for (PanelPlan const& p : plan.panels) fuzz::shown_by([&](Streams& to) { print_panel_plan(s.building, p, to); });
}

typed::Job with_spaces(typed::Job job, Plan const& plan) {
    for (typed::Circuit& c : job.circuits)
        if (auto const* p = placement_of(plan, c.mark); p && !p->slots.empty()) c.space = p->slots.front();
    return job;
}

// A person who writes and asks again must not be told to move on.
void promise_settled(Session const& written, BalanceOptions const& options) {
    auto const again = balance(written.building, options);
    require_sound(written.building, again, false);
    fuzz::promise(spaces_to_save(written.building, again).empty(), "a second write changes nothing", written.bytes);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(std::uint8_t const* data, std::size_t size) {
    auto const s = fuzz::opened(fuzz::text_of(data, size));
    if (!s) return 0;
    auto const options = options_of(s->bytes);
    auto const plan = balance(s->building, options);
    require_sound(s->building, plan, false);
    show(*s, plan);
    if (std::ranges::any_of(plan.panels, [](PanelPlan const& p) { return !p.why.empty(); })) return 0;
    auto const written = fuzz::rewritten(*s, spaces_to_save(s->building, plan), with_spaces(*s->building.said, plan));
    fuzz::promise(spaces_to_save(written.building, plan).empty(), "what was written is in the file");
    promise_settled(written, options);
    return 0;
}
