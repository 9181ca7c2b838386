# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""One panel of a job as tomllib reads it: where its spaces are and what feeds them. Written from the README alone."""

TWO_LEGS = ("120/240", "120/208")
DIRECT = {"12 V DC": 12, "24 V DC": 24, "48 V DC": 48}
BETWEEN = {"120/240": 240, "120/208": 208}  # volts between the legs
DEGREES = {"120/240": 180, "120/208": 120}  # between the two legs; the others are in phase


class Panel:
    def __init__(self, table):
        self.table = table
        self.name = table["name"]
        self.spaces = table["spaces"]
        self.rows = -(-self.spaces // 2)
        self.down = table.get("numbering") == "down"
        self.bus = table.get("legs", "by row")
        self.tandem = set(table.get("tandem", []))
        self.blocked = set(table.get("blocked", []))
        self.dead = set(table.get("dead", []))
        self.space_at = {(self.column(s), self.row(s)): s for s in range(1, self.spaces + 1)}

    def column(self, space):
        """0 is the column of space 1."""
        if self.down:
            return 0 if space <= self.rows else 1
        return 0 if space % 2 else 1

    def row(self, space):
        if self.down:
            return space if space <= self.rows else space - self.rows
        return -(-space // 2)

    def below(self, space):
        """The next one in its column; None at the end."""
        return self.space_at.get((self.column(space), self.row(space) + 1))

    def leg(self, space):
        if self.bus == "by column":
            return "AB"[self.column(space)]
        if isinstance(self.bus, list):
            return self.bus[self.row(space) - 1]
        return "A" if self.row(space) % 2 else "B"

    def neighbours(self, s, t):
        return self.column(s) == self.column(t) and abs(self.row(s) - self.row(t)) == 1

    def facing(self, s, t):
        return self.row(s) == self.row(t) and s != t

    def filled(self, said, poles):
        """What a circuit whose `space` is `said` fills: [(space, half)], half "" for a full-size breaker."""
        text = str(said)
        half = text[-1] if text[-1] in "ab" else ""
        space = int(text.rstrip("ab"))
        if not 1 <= space <= self.spaces:
            return []
        if poles == 1:
            return [(space, half)]
        below = self.below(space)
        return [(space, half), (below, {"": "", "a": "b", "b": "a"}[half])] if below else []

    def on_the_wall(self, space):
        """Steps to the right of the panel's middle, as it hangs on the wall: below 0 is left of it."""
        first = self.table.get("first", "top left")
        x = (1 if self.column(space) else -1) * (1 if first.endswith("left") else -1)
        y = (2 * self.row(space) - 1 - self.rows) * (1 if first.startswith("top") else -1)
        return {"upright": x, "upside down": -x, "turned left": y, "turned right": -y}[self.table.get("hang", "upright")]

    def reached(self, reach):
        """Spaces that wires of this `reach` are long enough for."""
        every = range(1, self.spaces + 1)
        if isinstance(reach, list):
            return set(reach) if reach else set(every)
        if reach == "left":
            return {s for s in every if self.on_the_wall(s) <= 0}
        if reach == "right":
            return {s for s in every if self.on_the_wall(s) >= 0}
        return set(every)


class Source:
    def __init__(self, table, kind_key):
        self.kind = table[kind_key]
        self.leg = table.get("leg", "A")
        self.off = set(table.get("off", [])) if kind_key == "kind" else set()

    def energizes(self, leg):
        return self.kind != "120 on one leg" or self.leg == leg

    def volts(self):
        return DIRECT.get(self.kind, 120)


def sources(job, panel):
    """What can feed this panel, one source at a time. A sub-panel has those above, narrowed by its own `supply`."""
    table = panel.table
    if "feeder" not in table:
        named = {s["name"]: s for s in job.get("supply", [])}
        found = [Source(named[name], "kind") for name in table.get("supplies", [])]
        return found + ([Source(table, "supply")] if "supply" in table else [])
    above = table["feeder"].rsplit("/", 1)[0]
    found = sources(job, next(Panel(p) for p in job["panel"] if p["name"] == above))
    own = table.get("supply")
    for source in found:
        if own == "120 on one leg":
            source.kind, source.leg = own, table.get("leg", "A")
        elif own == "120 on both legs" and source.kind in TWO_LEGS:
            source.kind = own  # what has one leg above keeps it: a sub-panel may only have less
    return found


def is_direct(found):
    return bool(found) and found[0].kind in DIRECT


def has_two_legs(found):
    return any(source.kind in TWO_LEGS for source in found)


def is_live(panel, found, space):
    return space not in panel.dead and any(source.energizes(panel.leg(space)) for source in found)


def has_both_legs_live(panel, found):
    """A pair means something only where both legs are live."""
    return has_two_legs(found) or all(any(s.energizes(leg) for s in found) for leg in "AB")
