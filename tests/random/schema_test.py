#!/usr/bin/env python3
# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""The schema of the job file against the reader, by a validator that neither of them knows (python3-jsonschema).

What the schema refuses, the reader refuses; what the reader takes, the schema takes. What is wrong with one key alone
(its kind, its range, a word, a key that is not there, one that is missing) both refuse; only what hangs on several keys
or tables the schema cannot say.

    python3 tests/random/schema_test.py --program build/legwork --jobs 500
"""

import argparse
import copy
import datetime
import json
import pathlib
import random
import subprocess
import sys
import tempfile
import tomllib

sys.dont_write_bytecode = True  # leaves no folder among the sources

from jsonschema import Draft202012Validator

from called import Program
from made_job import made_job
from run import words_of_program
from toml_writing import written

ONE = ("job", "dwelling")  # tables that there is one of


def toml(value):
    """A value as TOML writes it on one line."""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (datetime.date, datetime.time)):
        return value.isoformat()
    if isinstance(value, str):
        return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
    if isinstance(value, list):
        return "[" + ", ".join(map(toml, value)) + "]"
    if isinstance(value, dict):
        return "{ " + ", ".join(f"{json.dumps(k)} = {toml(v)}" for k, v in value.items()) + " }"
    return repr(value)


def document(job):
    lines = []
    for key, value in job.items():
        if isinstance(value, list):  # a table a line
            lines.append(f"{key} = [\n" + "".join(f"  {toml(one)},\n" for one in value) + "]")
        else:
            lines.append(f"{key} = {toml(value)}")
    return "\n".join(lines) + "\n"


def for_schema(value):
    """As JSON has it: a date is a text."""
    if isinstance(value, (datetime.date, datetime.time)):
        return value.isoformat()
    if isinstance(value, list):
        return [for_schema(one) for one in value]
    if isinstance(value, dict):
        return {k: for_schema(v) for k, v in value.items()}
    return value


class Case:
    """A job, what the reader says of it, and whether the schema must say the same."""

    def __init__(self, what, job, refused, same):
        self.what, self.job, self.refused, self.same = what, for_schema(job), refused, same


def disagreements(schema, cases):
    validator = Draft202012Validator(schema)
    for case in cases:
        why = next((e for e in validator.iter_errors(case.job)), None)
        if why is not None and not case.refused:
            place = "/".join(map(str, why.path))
            yield f"{case.what}: the reader takes it, the schema does not: {place}: {why.message[:200]}"
        if why is None and case.refused and case.same:
            yield f"{case.what}: the reader refuses it, the schema takes it"


class Reader:
    def __init__(self, program):
        self.program = program
        self.folder = tempfile.TemporaryDirectory(prefix="legwork-schema-")
        self.path = pathlib.Path(self.folder.name) / "job.toml"

    def refuses(self, job, data=None):
        self.path.write_bytes(document(job).encode() if data is None else data)
        called = subprocess.run([self.program, "check", "--rule", "job-unknown", self.path], capture_output=True, timeout=300)
        assert called.returncode in (0, 1, 2), called.stderr
        return called.returncode == 2


def explained(program, *words):
    return json.loads(subprocess.run([program, "explain", *words], capture_output=True, check=True, text=True).stdout)


# ---- one key at a time: every row, right and wrong --------------------------------------------------------------------

def base_job():
    return {
        "job": {"code": "NEC 2023"},
        "panel": [{"name": "Main", "spaces": 8, "supply": "120/240"}],
        "circuit": [{"mark": "K1"}, {"mark": "K2"}],
    }


LEAST = {  # of a table that is not in the base
    "dwelling": {}, "supply": {"name": "Grid", "kind": "120/240"}, "situation": {"name": "Evening", "other": 0.5},
    "cable": {"mark": "S1"}, "box": {"name": "Box 1"}, "accept": {"rule": "dir-vague", "panel": "Main"},
}


def with_table(table):
    """The base with one table of this kind, and that table."""
    job = base_job()
    outer, _, inner = table.partition(".")
    if outer not in job:
        job[outer] = copy.deepcopy(LEAST[outer]) if outer in ONE else [copy.deepcopy(LEAST[outer])]
    if outer == "supply":
        del job["panel"][0]["supply"]
        job["panel"][0]["supplies"] = ["Grid"]
    own = job[outer] if outer in ONE else job[outer][0]
    if inner == "peak":
        own[inner] = {"amps": "62 A", "days": 365}
    elif inner == "energy_management":
        own[inner] = {"limit": "40 A", "circuits": ["K1"]}
    elif inner == "segments":
        own[inner] = [{"kind": "12/3"}]
    return job, (own[inner][0] if inner == "segments" else own[inner]) if inner else own


def value_of(example):
    return tomllib.loads(f"x = {example}")["x"]


QUANTITIES = {("a current", "a load"): "20 A", "a load": "1500 VA", "a length": "9.5 m", "an area": "64 m²", "a volume": "524 mL"}


def wrong_values(key):
    """Values that nothing else in a job can make right."""
    takes = key["takes"]
    if key["table"] is None or takes.startswith("a list"):
        yield {"a": 1}
    is_text = "text" in takes or "MARK" in takes
    yield 7.5 if is_text else datetime.time(7, 32)  # a date is a text to the schema
    if is_text:
        yield "two\nlines"
        yield "x" * 1001
    if "unit" in takes:
        yield from ("20", "x A", "20 furlongs", 20, "")
        yield from (other for kind, other in QUANTITIES.items() if not takes.startswith(kind))
    if "whole number" in takes and "list" not in takes:
        yield from (key["least"] - 1, key["most"] + 1, "2")
    if "list of whole numbers" in takes:
        yield from ([key["least"] - 1], [key["most"] + 1], ["1"])
    if key["words"]:
        yield from ("zzz", key["words"][0] + "x", 7)
    if "share" in takes and key["table"] is None:
        yield from (-0.1, 1.1, "0.5")
    if takes.startswith("true or false"):
        yield from ("true", 1)
    if "a space" in takes:
        yield from (0, 85, "85a", "7c", "07", True)
    if takes.startswith(("a cable kind", "a use", "a rule", "an edition")):
        yield from ("12/9", "zzz")
    if takes.startswith("a mark"):
        yield from ("", "too long a mark", "K 1")
    if takes.startswith("a name"):
        yield from ("", "  ")
    if takes.startswith("a list of"):
        yield from ([{}] if "tables" not in takes else [7], "K1", [[]])
    if takes == "a table":
        yield from (7, "x", [])


def single_keys(program, reader):
    for table in (t["table"] for t in explained(program, "--keys", "--json")["tables"]):
        if table in ("form", "situation.share"):
            continue
        job, own = with_table(table)
        own["frobnicate"] = 1
        yield Case(f"{table}.frobnicate", job, reader.refuses(job), True)
        for key in explained(program, "--keys", table, "--json")["keys"]:
            name = f"{table}.{key['key']}"
            job, own = with_table(table)
            own[key["key"]] = value_of(key["example"])
            yield Case(f"{name} = {key['example']}", job, reader.refuses(job), False)
            for word in key["words"] or []:
                own[key["key"]] = word
                yield Case(f"{name} = {word}", copy.deepcopy(job), reader.refuses(job), False)
            for wrong in wrong_values(key):
                own[key["key"]] = wrong
                refused = reader.refuses(job)
                assert refused, f"{name} = {wrong!r} was thought to be wrong, and the reader takes it"
                yield Case(f"{name} = {wrong!r}", copy.deepcopy(job), refused, True)
            if key["needed"]:
                own.pop(key["key"])
                yield Case(f"{name} missing", copy.deepcopy(job), reader.refuses(job), True)
    for missing in ("job", "panel"):
        job = base_job()
        del job[missing]
        yield Case(f"{missing} missing", job, reader.refuses(job), True)


# ---- random jobs, whole and with something changed --------------------------------------------------------------------

def tables_of(value):
    if isinstance(value, dict):
        yield value
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else []:
        yield from tables_of(inner)


ODD = ["", " ", "?", "x", "20", "20 A", "1500 VA", "9.5 m", "31' 6\"", "64 m²", "1/2 in", "84b", "12/3", "16/4", "none",
       "two\nlines", 0, 1, -1, 7, 85, 0.5, 1.0, 2.5, True, False, [], {}, [1, 2], ["A", "B"], ["K1"], [[]], "é" * 201,
       datetime.date(2026, 5, 2), datetime.time(7, 32)]


def mutated(job, rng):
    job = copy.deepcopy(job)
    tables = [t for t in tables_of(job) if t]
    one, other = rng.choice(tables), rng.choice(tables)
    key, others = rng.choice(list(one)), rng.choice(list(other))
    change = rng.randrange(5)
    if change == 0:
        del one[key]
    elif change == 1:
        one[key] = rng.choice(ODD)
    elif change == 2:
        one[key] = copy.deepcopy(other[others])
    elif change == 3:
        one[others] = copy.deepcopy(other[others])
    else:
        one[key + rng.choice("xs_")] = one.pop(key)
    return job, f"{key} {('dropped', 'odd', 'swapped', f'beside {others}', 'renamed')[change]}"


def random_jobs(program, reader, asked):
    words = words_of_program(Program(program, 300))
    for number in range(asked.jobs):
        if number % 8 == 7:
            continue  # at the limits of size, which is not what this is about
        rng = random.Random(f"{asked.seed}/{number}/schema")
        data = written(made_job(asked.seed, number, words)[0], rng)
        job = tomllib.loads(data.decode("utf-8-sig").replace("\r\n", "\n"))
        again = f"--seed {asked.seed} job {number}"
        refused = reader.refuses(job, data)
        assert not refused, f"{again}: the reader refuses a job that is right"
        yield Case(again, job, refused, True)
        for n in range(asked.changes):
            changed, how = mutated(job, rng)
            yield Case(f"{again}, change {n} ({how})", changed, reader.refuses(changed), False)


# ---- rows planted wrong: each must be seen ----------------------------------------------------------------------------

def planted(schema):
    """Schemas as they would be made of a row that is wrong."""
    def plant(what, change):
        wrong = copy.deepcopy(schema)
        circuit = wrong["properties"]["circuit"]["items"]
        change(circuit, circuit["properties"])
        return what, wrong
    yield plant("a word less", lambda c, p: p["tie"]["anyOf"][0]["enum"].remove("handle tie"))
    yield plant("a word more", lambda c, p: p["wiring"]["anyOf"][0]["enum"].append("zzz"))
    yield plant("a range too small", lambda c, p: p["poles"].update(maximum=1))
    yield plant("a range too large", lambda c, p: p["outlet_count"]["anyOf"][0].update(maximum=1001))
    yield plant("another kind", lambda c, p: p.update(breaker=p["load"]))
    yield plant("a key less", lambda c, p: p.pop("mop"))
    yield plant("a key too much", lambda c, p: p.update(frobnicate={}))
    yield plant("a key that is needed and is not", lambda c, p: c["required"].append("name"))
    yield plant("a key that is not needed and is", lambda c, p: c["required"].remove("mark"))


def main():
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("--program", required=True)
    asked.add_argument("--jobs", type=int, default=24)
    asked.add_argument("--changes", type=int, default=12)
    asked.add_argument("--seed", default="1")
    asked = asked.parse_args()
    program = str(pathlib.Path(asked.program).resolve())
    reader = Reader(program)
    schema = explained(program, "--schema")
    Draft202012Validator.check_schema(schema)

    cases = [*single_keys(program, reader), *random_jobs(program, reader, asked)]
    faults = [f"planted and not seen: {what}" for what, wrong in planted(schema) if not any(disagreements(wrong, cases))]
    faults += disagreements(schema, cases)
    for fault in faults:
        print(fault)
    refused = sum(case.refused for case in cases)
    print(f"{len(cases)} jobs, {refused} of them refused by the reader; {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
