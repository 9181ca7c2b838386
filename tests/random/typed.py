# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Reads a job file with the TOML reader of Python's library, and its quantities by arithmetic of its own."""

import re
import tomllib
from decimal import Decimal
from fractions import Fraction

MILLION = 1_000_000
LOADS = {"va": 1, "kva": 1000, "w": 1, "kw": 1000, "watt": 1, "watts": 1}
CURRENTS = {"a": 1, "ma": Fraction(1, 1000), "ka": 1000, "amp": 1, "amps": 1, "ampere": 1, "amperes": 1}


def job_of(data):
    return tomllib.loads(data.decode("utf-8-sig"), parse_float=Decimal)


def nearest(number):
    """To the nearest whole, halves up; nothing here is below zero."""
    return (2 * number.numerator + number.denominator) // (2 * number.denominator)


def _number(text):
    whole = re.fullmatch(r"(?:(\d+)\s+)?(\d+)/(\d+)", text)
    if whole:
        return Fraction(int(whole[1] or 0)) + Fraction(int(whole[2]), int(whole[3]))
    return Fraction(text)


def _in_thousandths(text, units):
    found = re.fullmatch(r"\s*([\d./ ]*?[\d.])\s*([A-Za-z]+)\s*", text)
    return nearest(_number(found[1]) * units[found[2].lower()] * 1000)


def load(table, volts=120):
    """Of a circuit in thousandths of a VA; None when not said or "?". `volts`: its own, for a load in amperes."""
    said = table.get("load", "?")
    if said == "?":
        return None
    in_amperes = said.rstrip().lower().endswith(tuple(CURRENTS)) and not said.rstrip().lower().endswith(tuple(LOADS))
    return _in_thousandths(said, CURRENTS) * volts if in_amperes else _in_thousandths(said, LOADS)


def measured(table):
    """In milliamperes; None when not said or "?"."""
    said = table.get("measured", "?")
    return None if said == "?" else _in_thousandths(said, CURRENTS)


def nameplate(table):
    """The least circuit ampacity in milliamperes; None when not said or "?"."""
    said = table.get("mca", "?")
    return None if said == "?" else _in_thousandths(said, CURRENTS)


def share(number):
    """In millionths."""
    return nearest(Fraction(number) * MILLION)


def share_of(circuit, use, situation):
    """The share of this circuit's load in a situation; None is "connected"."""
    if situation is None:
        return MILLION
    shares = situation.get("share", {})
    if circuit["mark"] in shares:
        return share(shares[circuit["mark"]])
    if use in shares:
        return share(shares[use])
    return share(situation.get("other", 1))


def pole_va(circuit, use, situation, volts, two_poles, between=240):
    """Whole VA of one pole. The figure read comes before the load, that before the least circuit ampacity; a two-pole
    load is halved upwards. `between`: the volts between its hots."""
    if circuit.get("off"):
        return 0
    part = Fraction(share_of(circuit, use, situation), MILLION)
    reading = measured(circuit)
    if reading is not None:
        return nearest(Fraction(reading * volts, 1000) * part)
    said = load(circuit, between if two_poles else volts)
    if said is None and nameplate(circuit) is not None:
        return nearest(Fraction(nameplate(circuit) * volts, 1000) * part)
    va = nearest(Fraction(said or 0, 1000) * part)
    return -(-va // 2) if two_poles else va


def guesses(findings):
    """{mark: use} that check says it took from names."""
    found = {}
    for f in findings:
        if f["rule"] == "job-assumed" and f["message"].startswith("Taken from the names: "):
            for group in f["message"].removeprefix("Taken from the names: ").rstrip(".").split("; "):
                marks, use = group.rsplit(" as ", 1)
                found.update({mark: use for mark in re.split(r", | and ", marks)})
    return found
