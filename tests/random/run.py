#!/usr/bin/env python3
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Random valid jobs through every command of the built program.

    python3 tests/random/run.py --program build/legwork --jobs 2000
    python3 tests/random/run.py --program build/legwork --seed 1 --job 17     one job again
    python3 tests/random/run.py --program build/legwork FILE...               jobs of your own

Exit status 0 when every job kept every promise. What failed is kept in a folder with the words to run it again.
"""

import argparse
import os
import pathlib
import random
import sys
import tempfile
import time

sys.dont_write_bytecode = True  # leaves no folder among the sources

from called import Fault, Program, parsed
from made_job import made_job
from through import Journey
from toml_writing import written
from words import Words


def options():
    said = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    said.add_argument("--program", required=True)
    said.add_argument("--jobs", type=int, default=int(os.environ.get("LEGWORK_RANDOM_JOBS", "66")))
    said.add_argument("--part", default="1/1", help="of the jobs, as 2/3: every third from the second on")
    said.add_argument("--seed", default="1")
    said.add_argument("--job", type=int, help="this one only")
    said.add_argument("--limit", type=float, default=300, help="seconds after which a call is taken to hang")
    said.add_argument("--keep", default="random-faults", help="folder for the jobs that failed")
    said.add_argument("files", nargs="*")
    return said.parse_args()


def words_of_program(program):
    table = lambda name: [row["cells"] for part in
                          parsed(program.call("explain", "--table", name, "--json").out)["parts"]
                          for row in part["rows"]]
    rules = [r["rule"] for r in parsed(program.call("explain", "--json").out)["rules"]]
    return Words(table, rules)


class Run:
    def __init__(self, asked):
        self.asked = asked
        self.program = Program(str(pathlib.Path(asked.program).resolve()), asked.limit)
        self.words = words_of_program(self.program)
        self.forms = parsed(self.program.call("forms", "--json").out)["forms"]
        self.faults = 0

    def explained(self):
        """What does not hang on a job: every rule and every table as text and as JSON."""
        for rule in self.words.rules:
            assert self.program.call("explain", rule).out.startswith(rule)
            assert self.program.call("explain", rule, "--json").json()["rule"] == rule
        for table in self.program.call("explain", "--table", "--json").json()["tables"]:
            self.program.call("explain", "--table", table["table"])
            assert self.program.call("explain", "--table", table["table"], "--json").json()["parts"]

    def job(self, number):
        document, shape = made_job(self.asked.seed, number, self.words)
        rng = random.Random(f"{self.asked.seed}/{number}/written")
        data = written(document, rng, shape.bytes)
        in_order = rng.random() < 0.5
        for kind in () if in_order else ("cable", "accept", "situation"):
            rng.shuffle(document.get(kind, []))
        other = written(document, rng)
        self.go(data, rng, f"--seed {self.asked.seed} --job {number}", other, in_order)

    def go(self, data, rng, again, other=None, in_order=True):
        with tempfile.TemporaryDirectory(prefix="legwork-random-") as folder:
            try:
                journey = Journey(self.program, self.words, self.forms, rng, pathlib.Path(folder), data)
                journey.go()
                if other:
                    journey.same_in_other_words(other, in_order)
            except Fault as fault:
                self._tell(data, other, again, f"{fault}\nlast call: {self.program.last}")

    def _tell(self, data, other, again, what):
        self.faults += 1
        kept = pathlib.Path(self.asked.keep) / again.replace("--", "").replace(" ", "-").strip("-").replace("/", "_")
        kept.mkdir(parents=True, exist_ok=True)
        (kept / "job.toml").write_bytes(data)
        if other:
            (kept / "other.toml").write_bytes(other)
        words = f"python3 {sys.argv[0]} --program {self.asked.program} {again}"
        (kept / "fault.txt").write_text(f"{what}\n\n{words}\n")
        print(f"{again}: {what}\n  kept in {kept}; again: {words}", flush=True)


def main():
    asked = options()
    run = Run(asked)
    started = time.monotonic()
    if asked.files:
        for name in asked.files:
            run.go(pathlib.Path(name).read_bytes(), random.Random(asked.seed), name)
    elif asked.job is not None:
        run.job(asked.job)
    else:
        part, parts = map(int, asked.part.split("/"))
        if part == 1:
            run.explained()
        for n, number in enumerate(range(part - 1, asked.jobs, parts), 1):
            run.job(number)
            if n % 100 == 0:
                print(f"{n} jobs, {run.program.calls} calls", flush=True)
    took, words = run.program.slowest
    print(f"{run.program.calls} calls in {time.monotonic() - started:.0f} s, {run.faults} jobs with a fault; "
          f"the longest call {took:.1f} s: {' '.join(words)}")
    return 1 if run.faults else 0


if __name__ == "__main__":
    sys.exit(main())
