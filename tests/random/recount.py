# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""What stands on the legs of every panel by a plan, added up from the job file and the plan's spaces alone."""

import cmath
import math

from panel import BETWEEN, DEGREES, Panel, has_two_legs, is_direct, sources
from typed import pole_va


class Recount:
    """`plan` is what `balance --json` says; `uses` are the uses taken from names, by mark."""

    def __init__(self, job, plan, uses):
        self.job, self.uses = job, uses
        self.panels = {p["name"]: Panel(p) for p in job["panel"]}
        self.sources = {name: sources(job, p) for name, p in self.panels.items()}
        only = job["panel"][0]["name"]
        self.circuits = {name: [] for name in self.panels}
        for c in job.get("circuit", []):
            self.circuits[c.get("panel", only)].append(c)
        self.spaces = {placed["circuit"]: placed["spaces"] for p in plan["panels"] for placed in p["placements"]}
        self.situations = [None] + job.get("situation", [])
        self.fed = {}  # (panel, mark) of a feeder: the panels with circuits that it feeds
        for p in job["panel"]:
            if "feeder" in p and self.circuits[p["name"]]:
                self.fed.setdefault(tuple(p["feeder"].rsplit("/", 1)), []).append(p["name"])

    def legs(self, panel, situation, source=None, is_below=False):
        """[A, B] in whole VA; with a source only what it drives through the neutral.

        What has no space counts only where the panel is looked at from above: half on each leg."""
        sums = [0, 0]
        direct = is_direct(self.sources[panel])
        for c in self.circuits[panel]:
            spaces = self.spaces.get(c["mark"], [])
            if not spaces and not is_below:
                continue
            of_one_leg = direct or c.get("poles", 1) == 1
            a, b = self._of_circuit(panel, c, situation, source, of_one_leg)
            if not of_one_leg:
                sums[0] += a
                sums[1] += b
            elif not spaces:
                half = -(-(a + b) // 2)
                sums[0] += half
                sums[1] += half
            else:
                leg = 0 if direct else "AB".index(self.panels[panel].leg(int(spaces[0].rstrip("ab"))))
                if source is None or self.sources[panel][source].energizes("AB"[leg]):
                    sums[leg] += a + b
        return sums

    def _of_circuit(self, panel, c, situation, source, of_one_leg):
        off = c.get("off") or (source is not None and c["mark"] in self.sources[panel][source].off)
        below = self.fed.get((panel, c["mark"]), [])
        if off:
            return 0, 0
        if below:
            parts = [self.legs(name, situation, source, True) for name in below]
            return sum(a for a, _ in parts), sum(b for _, b in parts)
        if source is not None and not of_one_leg:
            return 0, 0  # from leg to leg: nothing in the neutral
        use = c.get("use", self.uses.get(c["mark"]))
        between = next((BETWEEN[s.kind] for s in self.sources[panel] if s.kind in BETWEEN), 240)
        va = pole_va(c, use, situation, self.sources[panel][0].volts(), not of_one_leg, between)
        return va, 0 if of_one_leg else va

    def neutral(self, panel, situation):
        """Amperes under the source that makes it largest."""
        worst = 0.0
        for n, source in enumerate(self.sources[panel]):
            a, b = self.legs(panel, situation, n)
            turned = cmath.rect(1, math.radians(DEGREES.get(source.kind, 0)))
            worst = max(worst, abs(a + b * turned) / source.volts())
        return worst

    def has_two_legs(self, panel):
        return has_two_legs(self.sources[panel])


def wrong_sums(recount, panel):
    """Complaints about the figures of one panel of a plan."""
    name, said = panel["panel"], panel["situations"]
    names = ["connected"] + [s["name"] for s in recount.situations[1:]]
    if [s["name"] for s in said] != names:
        yield f"{name}: the situations are {[s['name'] for s in said]}, not {names}"
        return
    worst = 0
    for situation, told in zip(recount.situations, said):
        a, b = recount.legs(name, situation)
        if (told["leg_a_va"], told["leg_b_va"], told["imbalance_va"]) != (a, b, abs(a - b)):
            yield f"{name}, {told['name']}: the legs carry {a} and {b} VA, and the plan says {told}"
        amps = recount.neutral(name, situation)
        if abs(amps - told["neutral_a"]) > 1e-6 * (1 + amps):
            yield f"{name}, {told['name']}: {amps} A in the neutral, and the plan says {told['neutral_a']}"
        if situation is not None or len(said) == 1:
            worst = max(worst, abs(a - b))
    if recount.has_two_legs(name) and panel["imbalance_va"] != worst:
        yield f"{name}: {worst} VA apart in the worst situation, and the plan says {panel['imbalance_va']}"
    if not recount.has_two_legs(name) and panel["imbalance_va"] is not None:
        yield f"{name}: there is nothing to balance, and the plan says {panel['imbalance_va']} VA"
