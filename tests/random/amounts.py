# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Quantities as a person types them: one amount, many spellings of exactly the same."""

from fractions import Fraction

# Grains as the job file's contract has them: milliamperes, thousandths of a VA, micrometres.
UNITS = {
    "amps": {"A": 1000, "mA": 1, "kA": 1_000_000, "amps": 1000, "ampere": 1000},
    "load": {"VA": 1000, "kVA": 1_000_000, "W": 1000, "kW": 1_000_000, "watts": 1000},
    "length": {"m": 1_000_000, "mm": 1000, "cm": 10_000, "ft": 304_800, "feet": 304_800, "'": 304_800, "in": 25_400,
               "\"": 25_400, "inches": 25_400},
}
MOST = {"amps": 10_000_000, "load": 10_000_000_000, "length": 10_000_000_000}
LEAST = {"amps": 1, "load": 0, "length": 0}
LARGEST_NUMBER = 10**9  # a typed number stays below it


class Amount:
    """A quantity before it is spelled. `text` is set where only one spelling will do (areas are rounded)."""

    def __init__(self, kind, grains, text=None):
        self.kind, self.grains, self.text = kind, grains, text

    def __eq__(self, other):
        return isinstance(other, Amount) and (self.kind, self.grains, self.text) == (
            other.kind, other.grains, other.text)

    def __hash__(self):
        return hash((self.kind, self.grains, self.text))

    def spelled(self, rng):
        if self.text is not None:
            return self.text
        ways = [way for unit, factor in UNITS[self.kind].items()
                for way in _ways(Fraction(self.grains, factor), unit)]
        if self.kind == "length":
            ways += _feet_and_inches(self.grains)
        return rng.choice(ways)


def _ways(number, unit):
    if number >= LARGEST_NUMBER:
        return []
    ways = []
    decimals = number * 10**6
    if decimals.denominator == 1:
        text = f"{decimals.numerator // 10**6}.{decimals.numerator % 10**6:06d}".rstrip("0").rstrip(".")
        ways += [f"{text} {unit}", f"{text}{unit}", f" {text}  {unit} "]
        if "." not in text:
            ways += [f"{text}.0 {unit}", f"0{text} {unit}"]
    if 1 < number.denominator <= 64:
        whole, rest = divmod(number.numerator, number.denominator)
        if number.numerator < LARGEST_NUMBER:
            ways.append(f"{number.numerator}/{number.denominator} {unit}")
        if whole:
            ways.append(f"{whole} {rest}/{number.denominator} {unit}")
    return ways


def _feet_and_inches(grains):
    quarters, rest = divmod(grains * 4, 25_400)
    if rest or grains < 304_800:
        return []
    feet, quarter = divmod(quarters, 48)
    inches = f"{quarter // 4}" if quarter % 4 == 0 else f"{quarter / 4:.2f}".rstrip("0")
    return [f"{feet} ft {inches} in", f"{feet}' {inches}\"", f"{feet}'-{inches}\"", f"{feet}\u2032 {inches}\u2033"]


def amps(rng, usual):
    """`usual`: amperes that are likely; now and then the least, the largest or an odd one."""
    draw = rng.random()
    if draw < 0.9:
        return Amount("amps", rng.choice(usual) * 1000)
    if draw < 0.95:
        return Amount("amps", rng.randrange(1, 200_000))
    return Amount("amps", rng.choice([LEAST["amps"], MOST["amps"], 1001, 999]))


def load(rng):
    draw = rng.random()
    if draw < 0.6:
        return Amount("load", rng.randrange(1, 120) * 50_000)
    if draw < 0.9:
        return Amount("load", rng.randrange(0, 12_000) * 1000 + rng.choice([0, 0, 1, 499, 500, 501, 999]))
    if draw < 0.97:
        return Amount("load", rng.randrange(0, 40_000_000))
    return Amount("load", rng.choice([LEAST["load"], MOST["load"], 1, 499, 500]))


def length(rng):
    draw = rng.random()
    if draw < 0.5:
        return Amount("length", rng.randrange(1, 400) * 100_000)
    if draw < 0.9:
        return Amount("length", rng.randrange(1, 4 * 12 * 60) * 6_350)
    return Amount("length", rng.choice([LEAST["length"], MOST["length"], 1, 254, 10_000_000]))


def area(rng):
    draw = rng.random()
    number = rng.randrange(8, 500) if draw < 0.9 else rng.choice([1, 90_000])
    unit = rng.choice(["m²", "m2", "sq m", "ft²", "sq ft", "sqft", "square feet"])
    return Amount("area", 0, f"{number * (10 if 'f' in unit and number < 10_000 else 1)} {unit}")
