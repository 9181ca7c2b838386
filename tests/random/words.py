# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""What things of an invented job are called. The words that only the code book knows are asked of the program."""

MARK_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-"
LONGEST_NAME, LONGEST_NOTE = 200, 1000
EDITIONS = ["NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"]
LANGUAGES = ["en", "fr", "es"]

THINGS = ["Lights", "Outlets", "Counter outlets, left of sink", "Range", "Dryer", "Dishwasher", "Refrigerator",
          "Water heater, under stair", "Baseboard heater", "Well pump", "Smoke alarms", "Kiln", "Table saw",
          "Air conditioner, outdoors", "Vehicle charger", "Sauna heater", "Router shelf", "Fan", "Welder outlet",
          "Sub-panel, shed", "Generator inlet", "Solar, roof", "Boat lift", "Ice maker", "Plugs", "Spare"]
ROOMS = ["Kitchen", "Bath", "Hall", "Garage", "Laundry", "Bedroom, north", "Loft", "Workshop", "Dock", "Attic", "Cellar",
         "Rosa's room", "Kid 1", "Porch"]
# Letters of other faces, combining accents, an emoji, no-break blanks, what TOML and XML must escape.
ODD = ["Küche – Gerät", "Éclairage, entrée", "Iluminación del baño", "Ванна, розетки", "台所の照明", "A\u0301ngel\u00a0fan",
       "Fan \U0001f300 3", "<b>&amp;\"quoted\"'</b>", "back\\slash \\n", "50 % {} {0} %s", "# not a comment", "[circuit]",
       "space = 7", "x" * 60, "W" * 60, "i i i i i i i i", "مصباح", "¹²³ ½ Ω", "=1+1", "-", "a\u200bb", "...", "?!"]
COLORS = ["black", "red", "blue", "white", "white with red stripe", "Grey", "brown", "orange", "bare", "green"]


class Words:
    """`table(name)` gives the rows of one table of the code book, `rules` the ids of all rules."""

    def __init__(self, table, rules):
        self.uses = [row[0] for row in table("uses")]
        self.poles = {row[0]: row[1] for row in table("uses")}
        self.receptacles = [row[0] for row in table("receptacles")]
        self.cables = [row[0] for row in table("cables")]
        self.building_cables = [kind for kind in self.cables if kind.rsplit("/", 1)[-1] in ("2", "3", "4")]
        self.rules = rules


def long_text(rng, letters):
    """Exactly as many letters as a name may have: one word without a blank, or many."""
    word = rng.choice(["W", "l", "Möbel ", "Lights, hall ", "配線", "a-b/", "Ωé "])
    text = (word * letters)[:letters]
    return text if text[-1] != " " else text[:-1] + "x"


def name(rng, long=False):
    draw = rng.random()
    if long and draw < 0.6:
        return long_text(rng, rng.choice([LONGEST_NAME, LONGEST_NAME, rng.randrange(61, LONGEST_NAME)]))
    if draw < 0.08:
        return rng.choice(ODD)
    return rng.choice(THINGS) + (f" {rng.randrange(1, 30)}" if rng.random() < 0.4 else "")


def note(rng, long=False):
    if long and rng.random() < 0.5:
        return long_text(rng, LONGEST_NOTE)
    return rng.choice(ODD + ["Ask before switching off", "Behind the shelf"])


class Names:
    """Gives each thing a name of its own."""

    def __init__(self, rng, long=False):
        self.rng, self.long, self.taken = rng, long, set()

    def new(self, kind):
        while True:
            made = name(self.rng, self.long) if self.rng.random() < 0.3 else f"{kind} {self.rng.randrange(1, 1000)}"
            if made not in self.taken and made != "connected":
                self.taken.add(made)
                return made


class Marks:
    """Marks, each once. Some are as long as they may be, some are words that mean something else elsewhere."""

    TRAPS = ["L1", "N", "G", "T1", "oven", "range", "dryer", "-", "--", "0", "1", "a", "A", "00000000", "MMMMMMMM",
             "nan", "inf", "true", "1e5", "NEW", "other", "x-1-y-2"]

    def __init__(self, rng):
        self.rng, self.taken = rng, set()

    def new(self):
        while True:
            draw = self.rng.random()
            if draw < 0.08:
                mark = self.rng.choice(self.TRAPS)
            elif draw < 0.15:
                mark = "".join(self.rng.choice(MARK_LETTERS) for _ in range(self.rng.randrange(1, 9)))
            else:
                letters = "".join(self.rng.choice("ABCDEFGHKLMPRSTW") for _ in range(self.rng.randrange(1, 3)))
                mark = f"{letters}{self.rng.randrange(1, 400)}"
            if mark not in self.taken:
                self.taken.add(mark)
                return mark
