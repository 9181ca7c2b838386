# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Circuits with all keys that a circuit may have: valid for the reader, sensible or not."""

import amounts
import words as names_of_things
from panel import TWO_LEGS

PLACES = ["dry", "damp", "wet", "outdoors", "buried"]

# What an electrician might plan: use, poles, breaker, cable, least and most load.
PLANNED = [("lighting", 1, 15, "14/2", 100, 900), ("receptacles", 1, 20, "12/2", 180, 1500),
           ("kitchen counter", 1, 20, "12/2", 1000, 1500), ("bathroom", 1, 20, "12/2", 500, 1500),
           ("refrigerator", 1, 20, "12/2", 300, 700), ("dishwasher", 1, 20, "12/2", 900, 1200),
           ("laundry", 1, 20, "12/2", 800, 1500), ("outdoor", 1, 20, "12/2", 180, 1000),
           ("freezer", 1, 15, "14/2", 200, 600), ("network", 1, 15, "14/2", 50, 150), ("water heater", 2, 30, "10/2", 3000, 4500),
           ("baseboard", 2, 20, "12/2", 1000, 3000), ("dryer", 2, 30, "10/3", 5000, 5000),
           ("range", 2, 50, "6/3", 8000, 12000), ("air conditioner", 2, 30, "10/2", 1500, 3000),
           ("vehicle charger", 2, 40, "8/3", 5000, 7600), ("well pump", 2, 20, "12/2", 1000, 1800)]
FLAGS = ["existing", "continuous", "motor", "fastened", "split", "switch_loop", "single", "interlocked"]


class Circuits:
    def __init__(self, rng, words, tree, marks, shape):
        self.rng, self.words, self.tree, self.marks, self.shape = rng, words, tree, marks, shape
        self.tables = []
        self.by_panel = [[] for _ in tree.panels]
        for below, above in tree.feeders:
            self._add_feeder(below, above)
        self._fill()
        self._add_what_runs_with_what()

    def _add_feeder(self, below, above):
        rng, parent = self.rng, self.tree.panels[above]
        poles = 2 if set(self.tree.kinds[above]) & set(TWO_LEGS) and rng.random() < 0.85 else 1
        circuit = self._circuit(above, poles)
        circuit.update(use="feeder")
        if self.shape.is_sensible:
            circuit.pop("segments", None)
            circuit.update(breaker=amounts.Amount("amps", 60_000), cable="6/3", name=f"Panel below {below}")
        self._keep(above, circuit)
        self.tree.panels[below]["feeder"] = f"{parent['name']}/{circuit['mark']}"

    def _keep(self, panel, *circuits):
        self.tables += circuits
        self.by_panel[panel] += circuits

    def _fill(self):
        rng = self.rng
        room = [t["spaces"] - 2 * len(self.by_panel[n]) for n, t in enumerate(self.tree.panels)]
        fill = rng.choice([0.3, 0.6, 0.9, 1.0]) if rng.random() < 0.9 else 1.3
        if self.shape.circuits == self.shape.MOST_CIRCUITS:
            fill = 9
        room = [max(0, int(r * fill)) for r in room]
        while len(self.tables) < self.shape.circuits and max(room) > 0:
            panel = rng.choice([n for n, r in enumerate(room) if r > 0])
            both = set(self.tree.kinds[panel]) & set(TWO_LEGS)
            left = self.shape.circuits - len(self.tables)
            draw = rng.random()
            if draw < 0.15 and left >= 2 and not self.tree.is_direct(panel):
                self._add_pair(panel)
                room[panel] -= 2
            elif draw < (0.4 if both else 0.18):
                self._keep(panel, self._circuit(panel, 2))
                room[panel] -= 2
            else:
                self._keep(panel, self._circuit(panel, 1))
                room[panel] -= 1

    def _question(self, made, share=0.03):
        return "?" if self.rng.random() < share else made

    def _circuit(self, panel, poles, home_run=True):
        rng, direct = self.rng, self.tree.is_direct(panel)
        c = {"mark": self.marks.new()}
        if len(self.tree.panels) > 1 or rng.random() < 0.5:
            c["panel"] = self.tree.panels[panel]["name"]
        if poles == 2 or rng.random() < 0.1:
            c["poles"] = poles
        if self.shape.is_sensible and rng.random() < 0.97:
            self._plan(c, poles)
            return c
        self._name(c)
        self._use(c, poles)
        if rng.random() < 0.85:
            key = "fuse" if direct and rng.random() < 0.8 else "breaker"
            c[key] = self._question(amounts.amps(rng, [5, 10, 15, 20, 25, 30, 40, 50, 60]))
        if rng.random() < 0.88:
            load = amounts.load(rng) if rng.random() < 0.85 else amounts.amps(rng, [1, 3, 8, 12])
            c["load"] = self._question(load)
        for key, share, usual in (("measured", 0.08, [1, 3, 6, 12]), ("mca", 0.05, [12, 18, 24]), ("mop", 0.05, [20, 35])):
            if rng.random() < share:
                c[key] = self._question(amounts.amps(rng, usual), 0.1)
        self._flags(c)
        if poles == 2 and rng.random() < 0.2:
            c["tie"] = rng.choice(["none", "handle tie", "two-pole breaker"])
        if home_run:
            self._home_run(c, direct)
            self._wires(c)
        return c

    def _plan(self, c, poles):
        rng = self.rng
        use, _, breaker, cable, least, most = rng.choice([p for p in PLANNED if p[1] == poles])
        c.update(use=use, name=f"{use.capitalize()} {len(self.tables) + 1}", breaker=amounts.Amount("amps", 1000 * breaker),
                 load=amounts.Amount("load", 1000 * rng.randrange(least, most + 1)), cable=cable, gfci="breaker",
                 length=amounts.Amount("length", 500_000 * rng.randrange(4, 30)),
                 room=rng.choice(names_of_things.ROOMS[:10]))
        if poles == 1:
            c["afci"] = "breaker"

    def _name(self, c):
        rng, long = self.rng, self.shape.long_names
        if rng.random() < 0.92:
            c["name"] = names_of_things.name(rng, long)
        for key, share in (("room", 0.5), ("name_fr", 0.06), ("name_es", 0.06), ("box", 0.1), ("building", 0.06)):
            if rng.random() < share:
                c[key] = rng.choice(names_of_things.ROOMS) if rng.random() < 0.7 else names_of_things.name(rng, long)
        if rng.random() < 0.08 or long:
            c["note"] = names_of_things.note(rng, long)

    def _use(self, c, poles):
        rng = self.rng
        if rng.random() < 0.6:
            fits = [u for u in self.words.uses if str(poles) in self.words.poles[u]]
            c["use"] = rng.choice(fits if rng.random() < 0.85 else self.words.uses)

    def _flags(self, c):
        rng = self.rng
        for key in FLAGS:
            if rng.random() < 0.07:
                c[key] = rng.random() < 0.75
        if rng.random() < 0.04:
            c["off"] = rng.random() < 0.75
        for key in ("gfci", "afci"):
            if rng.random() < 0.15:
                c[key] = rng.choice([True, False, "breaker", "outlet"])
        if rng.random() < 0.12:
            c["outlets"] = [rng.choice(self.words.receptacles) for _ in range(rng.choice([0, 1, 1, 2, 4]))]
        if rng.random() < 0.08:
            c["outlet_count"] = self._question(rng.choice([1, 2, 8, 12, 13, 1000]), 0.1)

    def _kind(self, direct=False):
        rng = self.rng
        if direct or rng.random() < 0.06:
            return rng.choice(self.words.cables)
        return rng.choice(["14/2", "12/2", "12/3", "10/2", "10/3", "6/3", "12/3 UF", "14/2 AC"]) if rng.random() < 0.7 else rng.choice(
            self.words.building_cables)

    def _segments(self, direct):
        rng = self.rng
        pieces = []
        for _ in range(rng.choice([1, 2, 2, 3, 32])):
            piece = {}
            if rng.random() < 0.9:
                piece["kind"] = self._question(self._kind(direct))
            if rng.random() < 0.9 or not piece:
                piece["length"] = self._question(amounts.length(rng))
            if rng.random() < 0.2:
                piece["to"] = rng.choice(["B3", "Counter box 1", "Dock head box"])
            if rng.random() < 0.1:
                piece["where"] = rng.choice(PLACES)
            if pieces and rng.random() < 0.1:
                piece["tap"] = rng.choice([True, False])
            pieces.append(piece)
        return pieces

    def _home_run(self, c, direct):
        rng = self.rng
        if rng.random() < 0.1:
            c["segments"] = self._segments(direct)
            return
        if rng.random() < 0.8:
            c["cable"] = self._question(self._kind(direct))
        if rng.random() < 0.8:
            c["length"] = self._question(amounts.length(rng))

    def _wires(self, c):
        rng = self.rng
        if rng.random() < 0.06:
            c["colors"] = rng.sample(names_of_things.COLORS, rng.randrange(0, 5))
        if rng.random() < 0.05:
            c["hot"] = rng.choice(c.get("colors") or names_of_things.COLORS)
        for key, share, choices in (
                ("third", 0.06, ["switched", "traveller", "interconnect", "spare", "neutral"]),
                ("metal", 0.06, ["copper", "aluminium", "aluminum"]),
                ("terminals", 0.12, ["60 °C", "75 °C", "60 C", "75°C"]),
                ("where", 0.1, PLACES),
                ("wiring", 0.08, ["cable", "conduit"])):
            if rng.random() < share:
                c[key] = rng.choice(choices)

    def _add_pair(self, panel):
        """What both share is said on one of them, or on both the same."""
        rng = self.rng
        mate = panel
        if rng.random() < 0.06:  # a pair with one foot in another panel is a fault of the job, not of the file
            mate = rng.choice([n for n in range(len(self.tree.panels)) if not self.tree.is_direct(n)])
        first, second = self._circuit(panel, 1, False), self._circuit(mate, 1, False)
        group = rng.choice(["K", "pair", "1"]) + first["mark"]
        first["multiwire"] = second["multiwire"] = group
        shared = {"multiwire": group}
        if "cable" in first or "cable" in second:  # both are planned, or one of them
            self._plan_pair(first, second, shared)
        else:
            self._home_run(shared, False)
            self._wires(shared)
        shared.pop("multiwire")
        hot = shared.pop("hot", None)
        if hot:
            rng.choice([first, second])["hot"] = hot
        if "tie" not in shared and rng.random() < 0.7:
            shared["tie"] = rng.choice(["none", "handle tie", "two-pole breaker"])
        if shared.get("tie") == "two-pole breaker" and "breaker" in first:
            second["breaker"] = first["breaker"]
        for key, value in shared.items():
            where = rng.random()
            hot_here = "hot" in first or "hot" in second
            if where < 0.6 or key in ("segments", "third", "terminals") or (key == "colors" and hot_here):
                (first if "hot" in first or where < 0.3 else second)[key] = value
            else:
                first[key] = second[key] = value
        if self._differs(first, second):
            second.pop("cable", None)
            second.pop("length", None)
        self._keep(panel, first)
        self._keep(mate, second)

    def _plan_pair(self, first, second, shared):
        for c in (first, second):
            c.pop("cable", None)
            c.pop("length", None)
            c["breaker"] = amounts.Amount("amps", 20_000)
        shared.update(cable="12/3", length=amounts.Amount("length", 9_000_000), tie="two-pole breaker")

    @staticmethod
    def _differs(first, second):
        return any("segments" in c for c in (first, second)) and any("cable" in c or "length" in c for c in (first, second))

    def _add_what_runs_with_what(self):
        rng, all_marks = self.rng, [c["mark"] for c in self.tables]
        for c in self.tables:
            if rng.random() < 0.05:
                c["runs_with"] = [rng.choice(all_marks) for _ in range(rng.randrange(0, 4))]
