# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Whether the circuits of a plan may stand where it puts them."""

from itertools import combinations

from panel import has_both_legs_live, is_live


def spots(texts):
    return [(int(t.rstrip("ab")), t[-1] if t[-1] in "ab" else "") for t in texts]


def spaces_of(placed):
    return [space for space, _ in placed]


class Seating:
    """One panel of a plan that has a layout. `circuits` are the tables of the job, in its order."""

    def __init__(self, panel, sources, circuits, planned):
        self.panel, self.sources, self.circuits, self.planned = panel, sources, circuits, planned
        self.two_legs = any(s.kind in ("120/240", "120/208") for s in sources)
        self.direct = sources[0].kind.endswith("DC")
        self.home = {c["mark"]: panel.filled(c["space"], c.get("poles", 1)) if "space" in c else []
                     for c in circuits}
        self.now = {p["circuit"]: spots(p["spaces"]) for p in planned["placements"]}

    def faults(self):
        said = [p["circuit"] for p in self.planned["placements"]]
        if said != [c["mark"] for c in self.circuits]:
            yield f"the circuits are {said}"
            return
        for c, placed in zip(self.circuits, self.planned["placements"]):
            yield from (f"{c['mark']}: {fault}" for fault in self._of_one(c, placed))
        yield from self._taken_twice()
        if self.two_legs:
            yield from self._pairs()
        moves = sum(1 for m, home in self.home.items() if home and spaces_of(home) != spaces_of(self.now[m]))
        if moves != self.planned["moves"]:
            yield f"{moves} circuits move, and the plan says {self.planned['moves']}"

    def _of_one(self, c, placed):
        poles, home, now = c.get("poles", 1), self.home[c["mark"]], self.now[c["mark"]]
        if len(now) != poles:
            yield f"{poles} poles on {placed['spaces']}"
            return
        if spots(placed["from"]) != home:
            yield f"said to come from {placed['from']}, and the file has it on {home}"
        if self.panel.filled(placed["spaces"][0], poles) != now:
            yield f"{placed['spaces']} are no place for a breaker of this panel"
            return
        yield from self._of_spaces(c, home, now)
        legs = [self.panel.leg(space) for space, _ in now]
        if poles == 2 and self.two_legs and legs[0] == legs[1]:
            yield f"both poles on leg {legs[0]}"
        leg = legs[0] if poles == 1 and not self.direct else None
        if placed["leg"] != leg:
            yield f"on leg {leg}, and the plan says {placed['leg']}"

    def _of_spaces(self, c, home, now):
        reached = self.panel.reached(c.get("reach", [])) | set(spaces_of(home))
        for space, half in now:
            if space in self.panel.blocked:
                yield f"on space {space}, which must stay empty"
            if not is_live(self.panel, self.sources, space):
                yield f"on space {space}, which is dead"
            if space not in reached:
                yield f"its wires do not reach space {space}"
            if half and (space, half) not in home:
                yield f"put anew on the half {space}{half}"
            if half and space not in self.panel.tandem and not c.get("fixed"):
                yield f"on a half of space {space}, which takes none"
        if c.get("fixed") and spaces_of(now) != spaces_of(home):
            yield "fixed, and it moves"
        at_home_on_halves = len(home) == 1 and home[0][1] and home[0][0] in self.panel.tandem
        if at_home_on_halves and "multiwire" not in c and now != home and self._may_stay(home):
            yield f"its half-size breaker on {home} was taken away"

    def _may_stay(self, home):
        return all(s not in self.panel.blocked and is_live(self.panel, self.sources, s) for s in spaces_of(home))

    def _taken_twice(self):
        by_space = {}
        for mark, now in self.now.items():
            for space, half in now:
                by_space.setdefault(space, []).append((half, mark))
        for space, there in by_space.items():
            for (half, mark), (other_half, other) in combinations(there, 2):
                if not half or not other_half or half == other_half:
                    yield f"{mark} and {other} both stand on space {space}"

    def _pairs(self):
        if not has_both_legs_live(self.panel, self.sources):
            return
        groups = {}
        for c in self.circuits:
            if "multiwire" in c:
                groups.setdefault(c["multiwire"], []).append(c)
        for members in groups.values():
            if len(members) == 2:
                yield from self._pair(*members)

    def _pair(self, c, d):
        s, t = self.now[c["mark"]][0][0], self.now[d["mark"]][0][0]
        both = f"{c['mark']} and {d['mark']} share a neutral and stand on {s} and {t}"
        if self.panel.leg(s) == self.panel.leg(t):
            yield f"{both}, both on leg {self.panel.leg(s)}"
        by_column = self.panel.bus == "by column"
        beside = self.panel.facing(s, t) if by_column else self.panel.neighbours(s, t)
        tied = any(m.get("tie", "none") != "none" for m in (c, d))
        today = {space for m in (c, d) for space, _ in self.home[m["mark"]]}
        if not beside and (tied or {s, t} != today):
            yield f"{both}, which are no neighbours"
