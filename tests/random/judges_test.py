#!/usr/bin/env python3
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""The judges of the random jobs, held against a job reckoned by hand and against faults planted in what they judge."""

import copy
import pathlib
import random
import sys
import tempfile
import unittest

sys.dont_write_bytecode = True  # leaves no folder among the sources

import amounts
import toml_writing
import typed
from called import Fault, Program, decoded, parsed
from edits import only_values_differ, values_changed
from plans import faults_of_choice, faults_of_plan

JOB = """
job = { code = "NEC 2023" }
supply = [{ name = "Grid", kind = "120/240" }, { name = "Inlet", kind = "120 on both legs", off = ["WH"] }]
panel = [
  { name = "Main", spaces = 14, supplies = ["Grid", "Inlet"], tandem = [9, 11], blocked = [12], dead = [10] },
  { name = "Shed", spaces = 4, feeder = "Main/SP" },
]
circuit = [
  { panel = "Main", mark = "WH", poles = 2, load = "3001 VA", space = 1, fixed = true },
  { panel = "Main", mark = "K1", load = "1.5 kVA", multiwire = "K", tie = "handle tie" },
  { panel = "Main", mark = "K2", load = "900 VA", multiwire = "K" },
  { panel = "Main", mark = "L1", use = "lighting", load = "240 VA", reach = "right" },
  { panel = "Main", mark = "M1", load = "9 kW", measured = "5 A", space = 9 },
  { panel = "Main", mark = "HA", load = "100 VA", space = "11a" },
  { panel = "Main", mark = "HB", load = "200 VA", space = "11b" },
  { panel = "Main", mark = "SP", poles = 2, load = "9 kW" },
  { panel = "Shed", mark = "S1", load = "700 VA" },
  { panel = "Shed", mark = "S2", poles = 2, load = "1 kW" },
]
situation = [{ name = "Evening", other = 0.5, share = { K1 = 1, lighting = 0.25 } }]
"""


def placed(circuit, spaces, leg=None, origin=()):
    return {"circuit": circuit, "spaces": spaces.split(), "leg": leg, "from": list(origin)}


def on_legs(name, a, b, neutral):
    return {"name": name, "leg_a_va": a, "leg_b_va": b, "imbalance_va": abs(a - b), "neutral_a": neutral}


def panel(name, moves, va, situations, placements):
    return {"panel": name, "proven": True, "imbalance_va": va, "least_imbalance_va": va, "lower_bound_va": va,
            "situations": situations, "moves": moves, "tradeoff": [{"moves": moves, "imbalance_va": va}],
            "placements": placements}


# By hand. Connected, leg A: 1501 (WH) + 1500 (K1) + 240 (L1) + 700 + 500 (shed) = 4441; B: 1501 + 900 + 600 (5 A x
# 120 V) + 100 + 200 + 500 = 3801. The neutral carries most on the inlet, whose legs are in phase: A 1500 + 240 + 700,
# B 900 + 600 + 300, together 4240 VA / 120 V. Evening: 3001 x 0.5 = 1500.5, so 1501 VA and 751 a leg; and so on.
PLAN = {"panels": [
    panel("Main", 1, 1010,
          [on_legs("connected", 4441, 3801, 4240 / 120), on_legs("Evening", 2911, 1901, 2810 / 120)],
          [placed("WH", "1 3", None, ["1", "3"]), placed("K1", "5", "A"), placed("K2", "7", "B"),
           placed("L1", "2", "A"), placed("M1", "4", "B", ["9"]), placed("HA", "11a", "B", ["11a"]),
           placed("HB", "11b", "B", ["11b"]), placed("SP", "6 8")]),
    panel("Shed", 0, 350,
          [on_legs("connected", 1200, 500, 700 / 120), on_legs("Evening", 600, 250, 350 / 120)],
          [placed("S1", "1", "A"), placed("S2", "2 4")])]}


def faults(plan):
    return list(faults_of_plan(typed.job_of(JOB.encode()), plan, {}))


class Plans(unittest.TestCase):
    def test_the_plan_reckoned_by_hand_is_sound(self):
        self.assertEqual(faults(PLAN), [])
        self.assertEqual(list(faults_of_choice(PLAN)), [])

    def planted(self, change, says):
        plan = copy.deepcopy(PLAN)
        change(plan["panels"][0], {p["circuit"]: p for panel in plan["panels"] for p in panel["placements"]})
        self.assertTrue(any(says in fault for fault in faults(plan)), f"{says}: {faults(plan)}")

    def test_each_planted_fault_is_found(self):
        def put(mark, spaces, leg=None):
            return lambda main, by: by[mark].update(spaces=spaces.split(), leg=leg)

        def say(**what):
            return lambda main, by: main.update(what)

        def situation(n, **what):
            return lambda main, by: main["situations"][n].update(what)

        for change, says in [
                (put("L1", "4", "B"), "both stand on space 4"),
                (put("L1", "11", "B"), "both stand on space 11"),
                (put("L1", "99", "A"), "no place for a breaker"),
                (put("L1", "12", "B"), "must stay empty"),
                (put("L1", "10", "A"), "is dead"),
                (put("L1", "13", "A"), "do not reach space 13"),
                (put("M1", "9a", "A"), "put anew on the half 9a"),
                (put("WH", "13 14"), "no place for a breaker"),
                (put("SP", "6"), "2 poles on"),
                (put("WH", "9 11"), "fixed, and it moves"),
                (put("HA", "14", "A"), "half-size breaker"),
                (put("K2", "13", "A"), "both on leg A"),
                (put("K2", "14", "A"), "both on leg A"),
                (put("K1", "13", "A"), "no neighbours"),
                (put("L1", "2", "B"), "on leg A, and the plan says B"),
                (lambda main, by: by["M1"].update({"from": ["13"]}), "said to come from"),
                (lambda main, by: main["placements"].pop(), "the circuits are"),
                (lambda main, by: main["placements"].reverse(), "the circuits are"),
                (say(placements=[]), "nothing says why"),
                (say(why="too little room"), "says why not"),
                (say(moves=0), "1 circuits move"),
                (say(imbalance_va=1009), "1010 VA apart"),
                (say(imbalance_va=None), "the plan says None"),
                (say(lower_bound_va=1011), "bound 1011"),
                (say(least_imbalance_va=1011), "least 1011"),
                (say(lower_bound_va=0), "proven True of bound 0"),
                (say(proven=False), "called the least"),
                (say(proven=False, least_imbalance_va=None, best_found_va=1011), "least 1011"),
                (say(proven=False, least_imbalance_va=None, best_found_va=1010), "proven False of bound 1010"),
                (say(tradeoff=[{"moves": 0, "imbalance_va": 900}, {"moves": 1, "imbalance_va": 1010}]), "does not drop"),
                (say(tradeoff=[{"moves": 1, "imbalance_va": 1011}]), "ends at"),
                (say(tradeoff=[{"moves": 2, "imbalance_va": 1010}]), "no step of"),
                (situation(0, leg_a_va=4440), "the legs carry 4441"),
                (situation(1, imbalance_va=1011), "the legs carry 2911"),
                (situation(1, neutral_a=23.4), "A in the neutral"),
                (situation(1, name="Morning"), "the situations are"),
                (lambda main, by: by["S1"].update(spaces=["3"], leg="B"), "the legs carry"),
        ]:
            with self.subTest(says):
                self.planted(change, says)

    def test_the_wrong_step_of_the_trade_off_is_found(self):
        plan = copy.deepcopy(PLAN)
        plan["panels"][0].update(moves=9, tradeoff=[{"moves": 1, "imbalance_va": 1020}, {"moves": 9, "imbalance_va": 1010}])
        self.assertTrue(list(faults_of_choice(plan)))
        self.assertTrue(list(faults_of_choice(plan, moves=8)))
        plan["panels"][0].update(imbalance_va=1020)
        self.assertTrue(list(faults_of_choice(plan, best=True)))
        plan["panels"][0].update(imbalance_va=9000)
        self.assertTrue(list(faults_of_choice(plan)))


class Files(unittest.TestCase):
    OLD = b'a = "space = 1"\n[[circuit]]\nmark = "A"\nspace = 7 # b\n[[circuit]]\n  mark = "B"\n'
    NEW = b'a = "space = 1"\n[[circuit]]\nmark = "A"\nspace = "12b" # b\n[[circuit]]\n  mark = "B"\n  space = 12\n'

    def test_changed_and_inserted_values_are_told_from_other_bytes(self):
        self.assertTrue(only_values_differ(self.OLD, self.NEW, ["space"], 2))
        self.assertTrue(only_values_differ(b"{a=1}", b"{a=1, space=2}", ["space"], 1))
        self.assertFalse(only_values_differ(self.OLD, self.NEW, ["space"], 1))
        self.assertFalse(only_values_differ(self.OLD, self.NEW, ["breaker"], 2))
        value = self.NEW.index(b'12b"')
        for n in {*range(len(self.NEW))} - {*range(value, value + 4)}:
            if self.NEW[n:n + 1].isalpha():  # one letter anywhere, in a key, a value or a remark
                self.assertFalse(only_values_differ(self.OLD, self.NEW[:n] + b"!" + self.NEW[n + 1:], ["space"], 2), n)
            if n < self.NEW.index(b"  space"):
                self.assertFalse(only_values_differ(self.OLD, self.NEW[:n] + b"! " + self.NEW[n:], ["space"], 2), n)

    def test_changed_values_are_named(self):
        old, new = typed.job_of(self.OLD), typed.job_of(self.NEW)
        self.assertEqual(values_changed(old, new), {("A", "space"): (7, "12b"), ("B", "space"): (None, 12)})
        self.assertIsNone(values_changed(old, {**new, "a": 1}))

    def test_every_spelling_of_an_amount_reads_as_the_same(self):
        rng = random.Random(1)
        for _ in range(3000):
            made = amounts.load(rng)
            text = made.spelled(rng)
            self.assertEqual(typed.load({"load": text}), made.grains, text)
            made = amounts.amps(rng, [20])
            self.assertEqual(typed.load({"load": made.spelled(rng)}, 208), made.grains * 208)
            self.assertEqual(typed.measured({"measured": made.spelled(rng)}), made.grains)

    def test_every_writing_of_a_document_reads_as_the_same(self):
        rng = random.Random(1)
        text = 'é " \' \\ # = [x] \u200b'
        document = {"job": {"a b": 1, "c": text, "d": {"e": {"f": 0.25}, "'": True}},
                    "panel": [{"x": [1, 22, 333], "y": []}, {"z": [{"k": "a"}, {"k": text}]}, {}]}
        for _ in range(2000):
            data = toml_writing.written(document, rng, rng.choice([0, 0, 5000]))
            self.assertEqual(typed.job_of(data), document, data.decode())


class Calls(unittest.TestCase):
    def script(self, text):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)
        path = pathlib.Path(self.folder.name) / "program"
        path.write_text("#!/bin/sh\n" + text)
        path.chmod(0o755)
        return Program(str(path), 0.5)

    def test_a_call_that_ends_badly_is_a_fault(self):
        for text in ("exit 2", "exit 3", "kill -SEGV $$", "exec sleep 5", "echo oh >&2", "printf '\\033[1m'",
                     "printf '\\377'"):
            with self.subTest(text), self.assertRaises(Fault):
                self.script(text).call()
        self.assertEqual(self.script("echo é; exit 1").call().status, 1)

    def test_a_refusal_says_why(self):
        with self.assertRaises(Fault):
            self.script("exit 2").call(may_refuse=True)
        self.assertEqual(self.script("echo why >&2; exit 2").call(may_refuse=True).status, 2)

    def test_json_is_json(self):
        for text in ("NaN", "[Infinity]", '{"a":1,"a":1}', "{'a':1}", "{} x", ""):
            with self.subTest(text), self.assertRaises(ValueError):
                parsed(text)
        with self.assertRaises(Fault):
            decoded("\u2028".encode(), "text")


if __name__ == "__main__":
    unittest.main()
