# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Where the circuits of a job stand today, legally or not, and where their wires reach."""

from panel import Panel


def _fits(panel, spots, taken):
    if not spots:
        return False
    for space, half in spots:
        here = taken.get(space, set())
        if space in panel.blocked or "" in here or half in here or (half == "" and here):
            return False
    return True


class Seats:
    def __init__(self, rng, table, circuits, shape):
        self.rng, self.panel, self.shape = rng, Panel(table), shape
        self.taken = {}
        placed = shape.placed if rng.random() < 0.8 else rng.random()
        for n, c in enumerate(circuits):
            if rng.random() < placed:
                self._seat(c, circuits[n - 1] if n else None)
        for c in circuits:
            self._reach(c)

    def _half(self, space):
        likely = 0.6 if self.shape.halves else 0.04
        if space not in self.panel.tandem:
            likely *= 0.15  # the file may say so all the same
        return self.rng.choice("ab") if self.rng.random() < likely else ""

    def _tries(self, c, last):
        """Beside the other half of its pair first, then anywhere."""
        if last and last.get("multiwire") and last.get("multiwire") == c.get("multiwire") and "space" in last:
            home = int(str(last["space"]).rstrip("ab"))
            beside = [s for s in range(1, self.panel.spaces + 1)
                      if self.panel.neighbours(home, s) or self.panel.facing(home, s)]
            if beside and self.rng.random() < 0.7:
                yield self.rng.choice(beside)
        for _ in range(12):
            yield self.rng.randrange(1, self.panel.spaces + 1)

    def _seat(self, c, last):
        for space in self._tries(c, last):
            half = self._half(space)
            spots = self.panel.filled(f"{space}{half}", c.get("poles", 1))
            if not _fits(self.panel, spots, self.taken):
                continue
            for s, h in spots:
                self.taken.setdefault(s, set()).add(h)
            c["space"] = f"{space}{half}" if half or self.rng.random() < 0.1 else space
            if self.rng.random() < 0.12:
                c["fixed"] = self.rng.random() < 0.85
            return

    def _reach(self, c):
        if self.rng.random() >= self.shape.reach:
            return
        draw = self.rng.random()
        if draw < 0.4:
            c["reach"] = self.rng.choice(["left", "right"])
        elif draw < 0.95:
            share = self.rng.choice([0.1, 0.3, 0.6])
            c["reach"] = [s for s in range(1, self.panel.spaces + 1) if self.rng.random() < share]
        else:
            c["reach"] = []
