# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Panels, what feeds them, and how they hang on each other."""

import amounts
from panel import DIRECT, TWO_LEGS

ALTERNATING = ["120/240", "120/208", "120 on both legs", "120 on one leg"]
MOST_PANELS, MOST_SPACES = 20, 84


def _supply_kind(rng, direct, sensible=False):
    if sensible:
        return "120/240"
    if direct:
        return rng.choice(list(DIRECT))
    return rng.choices(ALTERNATING, [6, 2, 1.3, 1])[0]


def _with_leg(rng, table, kind):
    if kind == "120 on one leg" and rng.random() < 0.7:
        table["leg"] = rng.choice("AB")


def _bus(rng, rows):
    draw = rng.random()
    if draw < 0.6:
        return "by row" if draw < 0.1 else None
    if draw < 0.75:
        return "by column"
    if draw < 0.85:
        return ["AB"[row // 2 % 2] for row in range(rows)]  # two rows a leg
    return [rng.choice("AB") for _ in range(rows)]


def _some(rng, spaces, share):
    return sorted(s for s in range(1, spaces + 1) if rng.random() < share)


def geometry(rng, spaces, shape):
    table = {"spaces": spaces}
    bus = None if shape.is_sensible else _bus(rng, -(-spaces // 2))
    if bus is not None:
        table["legs"] = bus
    if rng.random() < (0.9 if shape.halves else 0.25):
        table["tandem"] = _some(rng, spaces, rng.choice([0.2, 0.5, 1]))
    if rng.random() < 0.25:
        table["blocked"] = _some(rng, spaces, 0.1)
    if rng.random() < (0 if shape.is_sensible else 0.2):
        table["dead"] = _some(rng, spaces, 0.1)
    for key, choices in {"numbering": ["across", "down"], "main_at": ["top", "bottom"],
                         "first": ["top left", "top right", "bottom left", "bottom right"],
                         "hang": ["upright", "upside down", "turned left", "turned right"]}.items():
        if rng.random() < 0.4:
            table[key] = rng.choice(choices)
    return table


def _particulars(rng, table, sensible):
    if sensible:
        table.update(main=amounts.Amount("amps", 200_000), bus=amounts.Amount("amps", 225_000), fed_from="Meter pole")
        return
    question = lambda made: "?" if rng.random() < 0.08 else made
    if rng.random() < 0.6:
        table["main"] = question(amounts.amps(rng, [30, 60, 100, 125, 200]))
    if rng.random() < 0.5:
        table["bus"] = question(amounts.amps(rng, [60, 125, 200, 225]))
    if rng.random() < 0.1:
        table["output"] = question(amounts.amps(rng, [20, 30, 50]))
    if rng.random() < 0.15:
        table["circuits_max"] = question(rng.choice([1, 24, 4 * MOST_SPACES]))
    if rng.random() < 0.15:
        table["neutral_terminals"] = question(rng.choice([1, 24, 4 * MOST_SPACES]))
    if rng.random() < 0.2:
        table["building"] = rng.choice(["Shed", "Boathouse", "House"])
    if rng.random() < 0.2:
        table["existing"] = rng.random() < 0.7
    if rng.random() < 0.3:
        table["fed_from"] = rng.choice(["Meter, north wall", "Meter pole", "Main, space 3", "?"])


class Tree:
    """Panels as tables, with what the circuits need to know of each: its kinds of source and its feeders to be."""

    def __init__(self, rng, names, shape):
        self.rng, self.names, self.shape = rng, names, shape
        self.supplies, self.panels, self.kinds = [], [], []
        self.feeders = []  # (panel below, panel above): its mark is set when the circuits are made
        for n in range(shape.panels):
            if n > 0 and rng.random() < 0.75:
                self._add_below(self._parent())
            else:
                self._add_top()

    def _parent(self):
        return len(self.panels) - 1 if self.rng.random() < 0.5 else self.rng.randrange(len(self.panels))

    def _spaces(self):
        if self.shape.spaces:
            return self.shape.spaces
        if self.shape.is_sensible:
            return self.rng.choice([12, 16, 20, 24, 30, 40, 42, 60])
        usual = self.rng.random() < 0.6
        return self.rng.choice([2, 4, 6, 8, 12, 16, 20, 24, 30, 42]) if usual else self.rng.randrange(1, MOST_SPACES + 1)

    def _new(self):
        table = {"name": self.names.new("Panel"), **geometry(self.rng, self._spaces(), self.shape)}
        _particulars(self.rng, table, self.shape.is_sensible)
        return table

    def _add_top(self):
        rng, table = self.rng, self._new()
        sensible = self.shape.is_sensible
        direct = rng.random() < (0 if sensible else 0.12)
        if rng.random() < (0.8 if self.shape.sources else 0.25):
            table["supplies"] = self._sources(direct)
            kinds = [s["kind"] for s in self.supplies if s["name"] in table["supplies"]]
        else:
            table["supply"] = _supply_kind(rng, direct, sensible)
            _with_leg(rng, table, table["supply"])
            kinds = [table["supply"]]
        self.panels.append(table)
        self.kinds.append(kinds)

    def _sources(self, direct):
        rng = self.rng
        shared = [s["name"] for s in self.supplies if s["kind"] not in DIRECT]
        if shared and not direct and rng.random() < 0.3:
            return rng.sample(shared, rng.randrange(1, len(shared) + 1))
        named, one_kind = [], _supply_kind(rng, True)
        for _ in range(rng.randrange(1, 5)):
            if len(self.supplies) == MOST_PANELS:
                break
            kind = one_kind if direct else _supply_kind(rng, False, self.shape.is_sensible)
            supply = {"name": self.names.new("Source"), "kind": kind}
            _with_leg(rng, supply, kind)
            if rng.random() < 0.6:
                supply["amps"] = "?" if rng.random() < 0.08 else amounts.amps(rng, [20, 30, 50, 60, 100, 200])
            self.supplies.append(supply)
            named.append(supply["name"])
        return named or [self.supplies[0]["name"]]

    def _add_below(self, above):
        rng, table = self.rng, self._new()
        kinds = self.kinds[above]
        if rng.random() < (0 if self.shape.is_sensible else 0.4):
            direct = kinds[0] in DIRECT
            may = [kinds[0]] if direct else [k for k in ALTERNATING if k not in TWO_LEGS or k in kinds]
            table["supply"] = rng.choice(may)
            _with_leg(rng, table, table["supply"])
            kinds = [table["supply"]]
        self.feeders.append((len(self.panels), above))
        self.panels.append(table)
        self.kinds.append(kinds)

    def is_direct(self, n):
        return self.kinds[n][0] in DIRECT
