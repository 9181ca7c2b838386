# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Judges what `balance --json` says, alone and beside what other calls said of the same job."""

from recount import Recount, wrong_sums
from seating import Seating

NEAR_VA, NEAR_PERCENT = 120, 2  # README: within 120 VA, or 2 % of the heavier leg, of the least imbalance


def faults_of_plan(job, plan, uses):
    """Everything that is wrong with a plan, one sentence a fault."""
    names = [p["name"] for p in job["panel"]]
    if [p["panel"] for p in plan["panels"]] != names:
        yield f"the plan has the panels {[p['panel'] for p in plan['panels']]}, the job {names}"
        return
    recount = Recount(job, plan, uses)
    for planned in plan["panels"]:
        name = planned["panel"]
        if recount.circuits[name] and not planned["placements"]:
            yield from _of_no_layout(planned)
            continue
        if planned.get("why"):
            yield f"{name}: all have a space, and it says why not: {planned['why']}"
        seating = Seating(recount.panels[name], recount.sources[name], recount.circuits[name], planned)
        seated_wrong = [f"{name}: {fault}" for fault in seating.faults()]
        yield from seated_wrong
        if not seated_wrong:  # sums of spaces off the panel mean nothing
            yield from wrong_sums(recount, planned)
        yield from _of_bounds(planned)
        yield from _of_tradeoff(planned)


def _of_no_layout(planned):
    if not planned.get("why"):
        yield f"{planned['panel']}: no layout, and nothing says why"
    if planned["imbalance_va"] is not None or planned["moves"]:
        yield f"{planned['panel']}: no layout, and {planned['imbalance_va']} VA, {planned['moves']} moves are claimed"


def best_of(p):
    """The least imbalance there is, where that is proven, else the least that was found."""
    return p["least_imbalance_va"] if p["proven"] else p.get("best_found_va")


def _of_bounds(p):
    least, bound = best_of(p), p["lower_bound_va"]
    if p["imbalance_va"] is None:
        if least is not None or bound is not None or p["tradeoff"]:
            yield f"{p['panel']}: nothing to balance, and {least}, {bound}, {p['tradeoff']} are claimed"
        return
    if not p["proven"] and p["least_imbalance_va"] is not None:
        yield f"{p['panel']}: proven False, and {p['least_imbalance_va']} VA are called the least"
    elif least is None or bound is None or not bound <= least <= p["imbalance_va"]:
        yield f"{p['panel']}: bound {bound}, least {least}, this plan {p['imbalance_va']} VA"
    elif p["proven"] != (bound == least):
        yield f"{p['panel']}: proven {p['proven']} of bound {bound} and least {least}"


def _of_tradeoff(p):
    steps = [(s["moves"], s["imbalance_va"]) for s in p["tradeoff"]]
    for (moves, va), (more, less) in zip(steps, steps[1:]):
        if more <= moves or less >= va:
            yield f"{p['panel']}: the trade-off does not drop from {moves} to {more} moves: {va}, {less} VA"
    if steps and steps[-1][1] != best_of(p):
        yield f"{p['panel']}: the trade-off ends at {steps[-1]}, the least is {best_of(p)} VA"
    if steps and p["placements"] and (p["moves"], p["imbalance_va"]) not in steps:
        yield f"{p['panel']}: {p['moves']} moves and {p['imbalance_va']} VA are no step of {steps}"


def faults_of_choice(plan, best=False, moves=None):
    """The step of the trade-off that was asked for is the one that was taken. `plan` has been judged otherwise."""
    for p in plan["panels"]:
        if p["imbalance_va"] is None:
            continue
        if best and p["imbalance_va"] != best_of(p):
            yield f"{p['panel']}: --best gave {p['imbalance_va']} of {best_of(p)} VA"
        elif moves is not None:
            within = [s["imbalance_va"] for s in p["tradeoff"] if s["moves"] <= moves]
            if p["moves"] > moves or not within or p["imbalance_va"] != min(within):
                yield f"{p['panel']}: --moves {moves} gave {p['moves']} moves, {p['imbalance_va']} VA; {p['tradeoff']}"
        elif not best:
            yield from _not_the_fewest(p)


def _not_the_fewest(p):
    heavier = max(max(s["leg_a_va"], s["leg_b_va"]) for s in p["situations"])
    most = best_of(p) + max(NEAR_VA, heavier * NEAR_PERCENT // 100 + 1)
    if p["imbalance_va"] > most:
        yield f"{p['panel']}: {p['imbalance_va']} VA is not near the least, {best_of(p)} VA"
    fewer = [s for s in p["tradeoff"] if s["moves"] < p["moves"]]
    if fewer and fewer[-1]["imbalance_va"] <= best_of(p) + NEAR_VA:
        yield f"{p['panel']}: {p['moves']} moves where {fewer[-1]['moves']} come within {NEAR_VA} VA of the least"


def faults_between(job, plan, other):
    """Two calls that search the same panel find the same; only the step that they take of it differs. A panel that
    feeds others is another one in each call, since those may be laid out in other ways."""
    feeding = {p["feeder"].rsplit("/", 1)[0] for p in job["panel"] if "feeder" in p}
    for p, q in zip(plan["panels"], other["panels"]):
        if p["panel"] in feeding or not (p["placements"] and q["placements"]):
            continue
        one_panel = len(job["panel"]) == 1  # several share the effort, so one that is cut short may be cut elsewhere
        if one_panel or p["proven"] and q["proven"]:
            if best_of(p) != best_of(q):
                yield f"{p['panel']}: the least is {best_of(p)} VA once, {best_of(q)} VA then"
        if one_panel and p["tradeoff"] != q["tradeoff"]:
            yield f"{p['panel']}: the trade-off is {p['tradeoff']} once and {q['tradeoff']} then"
