# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""A random job as a document of tables: valid, whatever it asks for. Seed and number say which, for ever."""

import datetime
import random

import amounts
import words as names_of_things
from made_circuits import PLACES, Circuits
from made_panels import MOST_PANELS, MOST_SPACES, Tree
from seats import Seats


class Shape:
    """How large a job is and what it is full of. Every eighth job goes to one of the limits."""

    MOST_CIRCUITS, MOST_SITUATIONS, MOST_BYTES = 400, 16, 1 << 20
    LIMITS = ["circuits", "panels", "spaces", "situations", "names", "bytes", "cables", "least"]

    def __init__(self, rng, number):
        self.limit = self.LIMITS[number // 8 % len(self.LIMITS)] if number % 8 == 7 else None
        size = rng.random()
        self.circuits = rng.randrange(1, 13) if size < 0.5 else rng.randrange(8, 45) if size < 0.9 else rng.randrange(40, 130)
        self.panels = 1 if rng.random() < 0.5 else rng.randrange(2, 5) if rng.random() < 0.85 else rng.randrange(5, 12)
        if self.panels > 1:
            self.circuits *= rng.choice([1, 1, 2])
        self.is_sensible = rng.random() < 0.35  # what an electrician might plan; errors are few
        self.spaces = 0  # as it comes
        self.situations = rng.choice([0, 0, 1, 2, 3, rng.randrange(0, self.MOST_SITUATIONS + 1)])
        self.cables, self.accepts = rng.choice([0, 0, 2, 8]), rng.choice([0, 0, 1, 6])
        self.halves = rng.random() < 0.25
        self.reach = rng.choice([0, 0, 0, 0.05, 0.2, 0.2 if self.is_sensible else 0.7])
        self.placed = rng.choice([0, 0.5, 0.9, 1, 1])
        self.sources = rng.random() < 0.25
        self.long_names = self.limit == "names" or rng.random() < 0.02
        # Filled to the last byte, or with room left for what --write puts in.
        self.bytes = self.MOST_BYTES - rng.choice([0, 1 << 16]) if self.limit == "bytes" else 0
        self._go_to_the_limit()

    def _go_to_the_limit(self):
        if self.limit == "circuits":
            self.circuits, self.panels, self.spaces = self.MOST_CIRCUITS, MOST_PANELS, MOST_SPACES
        elif self.limit == "panels":
            self.circuits, self.panels = 200, MOST_PANELS
        elif self.limit == "spaces":
            self.circuits, self.panels, self.spaces = 84, 1, MOST_SPACES
        elif self.limit == "situations":
            self.situations = self.MOST_SITUATIONS
        elif self.limit == "cables":
            self.cables = self.accepts = self.MOST_CIRCUITS
        elif self.limit == "least":
            self.circuits, self.panels, self.spaces, self.situations = 1, 1, 1, 0


def _head(rng, shape):
    made = {"code": rng.choice(names_of_things.EDITIONS)}
    if rng.random() < 0.9:
        made["name"] = names_of_things.name(rng, shape.long_names)
    if rng.random() < 0.5:
        made["revision"] = rng.choice(["A", "B", "12", "2026-a"])
    if rng.random() < 0.5:
        date = datetime.date(rng.choice([1, 1999, 2023, 2026, 9999]), rng.randrange(1, 13), rng.randrange(1, 29))
        made["date"] = date if rng.random() < 0.7 else date.isoformat()
    if rng.random() < 0.6:
        made["language"] = "+".join(rng.sample(names_of_things.LANGUAGES, rng.randrange(1, 3)))
    if rng.random() < 0.6:
        made["units"] = rng.choice(["metric", "inch"])
    for key in ("tails", "loop"):
        if rng.random() < 0.4:
            made[key] = "?" if rng.random() < 0.1 else amounts.length(rng)
    return made


def _dwelling(rng, words, marks):
    made = {}
    for key in ("area", "basement"):
        if rng.random() < 0.7:
            made[key] = "?" if rng.random() < 0.1 else amounts.area(rng)
    for key in ("small_appliance_circuits", "laundry_circuits", "thermostats"):
        if rng.random() < 0.2:
            made[key] = "?" if rng.random() < 0.1 else rng.choice([0, 1, 2, 5, 40])
    if rng.random() < 0.2:
        loads = sorted(set(words.uses + marks))
        made["together"] = [rng.sample(loads, rng.randrange(2, 4)) for _ in range(rng.randrange(1, 4))]
    if rng.random() < 0.25:
        made["peak"] = {"amps": "?" if rng.random() < 0.1 else amounts.amps(rng, [40, 62, 90]),
                        "days": rng.choice([1, 29, 30, 365, 3660])}
    if marks and rng.random() < 0.2:
        made["energy_management"] = {"limit": amounts.amps(rng, [20, 40]),
                                     "circuits": rng.sample(marks, rng.randrange(1, min(4, len(marks) + 1)))}
    return made


def _share(rng):
    return rng.choice([0, 1, 0.0, 1.0, 0.25, 0.5, rng.randrange(0, 1_000_001) / 1_000_000, 0.000001])


def _situation(rng, words, circuits, names):
    made = {"name": names.new("Situation")}
    marks = [c["mark"] for c in circuits]
    uses = sorted({c["use"] for c in circuits if "use" in c} - set(marks))  # what is both is refused
    marks = [m for m in marks if m not in words.uses]
    chosen = [w for w in uses + marks if rng.random() < rng.choice([0.1, 0.5])]
    if chosen:
        made["share"] = {word: _share(rng) for word in chosen}
    if not chosen or rng.random() < 0.5:
        made["other"] = _share(rng)
    return made


def _cable(rng, words, marks, shape):
    made = {"mark": marks.new()}
    for key in ("name", "from", "to"):
        if rng.random() < 0.7:
            made[key] = names_of_things.name(rng, shape.long_names)
    if rng.random() < 0.9:
        made["kind"] = "?" if rng.random() < 0.05 else rng.choice(words.cables)
    if rng.random() < 0.2:
        made["where"] = rng.choice(PLACES)
    if rng.random() < 0.8:
        made["length"] = "?" if rng.random() < 0.05 else amounts.length(rng)
    return made


def _accept(rng, words, circuits, panels):
    made = {"rule": rng.choice(words.rules)}
    if circuits and rng.random() < 0.7:
        made["circuit"] = rng.choice(circuits)["mark"]
    if "circuit" not in made or rng.random() < 0.2:
        made["panel"] = rng.choice(panels)["name"]
    if rng.random() < 0.8:
        made["why"] = names_of_things.note(rng)
    if rng.random() < 0.8:
        made["by"] = rng.choice(["M. Okoye", "Éva", "the owner"])
    return made


MOST_VALUES = 12_000  # README: keys and entries of lists of one file, a dotted key by its parts


def values(content, depth=0):
    """How many keys, parts of keys and entries of lists there are at most, in whatever way it is written."""
    if isinstance(content, dict):
        return sum((2 if depth > 2 else 1) + values(v, depth + 1) for v in content.values())
    return sum(1 + values(v, depth + 1) for v in content) if isinstance(content, list) else 0


def _keep_within(document):
    """Takes lists of spaces away while the file holds more than a file may."""
    for c in document.get("circuit", []):
        if values(document) < MOST_VALUES:
            return
        if isinstance(c.get("reach"), list):
            del c["reach"]


def made_job(seed, number, words):
    """A document: {"job": {...}, "panel": [{...}], ...}; and its shape."""
    rng = random.Random(f"{seed}/{number}")
    shape = Shape(rng, number)
    names, marks = names_of_things.Names(rng, shape.long_names), names_of_things.Marks(rng)
    tree = Tree(rng, names, shape)
    made = Circuits(rng, words, tree, marks, shape)
    circuits, panels = made.tables, tree.panels
    for table, here in zip(panels, made.by_panel):
        Seats(rng, table, here, shape)
    all_marks = [c["mark"] for c in circuits]
    for supply in tree.supplies:
        if rng.random() < 0.4:
            supply["off"] = [rng.choice(all_marks) for _ in range(rng.randrange(0, 6))] if all_marks else []
    document = {"job": _head(rng, shape), "panel": panels}
    if rng.random() < 0.5:
        document["dwelling"] = _dwelling(rng, words, all_marks)
    lists = {"supply": tree.supplies, "circuit": circuits,
             "situation": [_situation(rng, words, circuits, names) for _ in range(shape.situations)],
             "cable": [_cable(rng, words, marks, shape) for _ in range(shape.cables)],
             "accept": [_accept(rng, words, circuits, panels) for _ in range(shape.accepts)]}
    document.update({kind: tables for kind, tables in lists.items() if tables})
    _keep_within(document)
    return document, shape
