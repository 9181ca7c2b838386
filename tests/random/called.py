# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Calls the built program and judges what every call has to keep, whatever it was asked."""

import json
import subprocess
import time
import unicodedata


class Fault(Exception):
    """A promise that a job broke."""


def require(holds, what):
    if not holds:
        raise Fault(what)


def first_of(faults):
    for fault in faults:
        raise Fault(fault)


def _no_such_number(word):
    raise ValueError(f"{word} is no JSON")


def _each_key_once(pairs):
    if len({k for k, _ in pairs}) != len(pairs):
        raise ValueError("a key stands twice")
    return dict(pairs)


def parsed(text):
    return json.loads(text, parse_constant=_no_such_number, object_pairs_hook=_each_key_once)


def decoded(data, what):
    try:
        text = data.decode("utf-8")
    except UnicodeDecodeError as error:
        raise Fault(f"{what} is not UTF-8: {error}") from None
    odd = {f"U+{ord(c):04X}" for c in text if c != "\n" and unicodedata.category(c) in ("Cc", "Zl", "Zp", "Cs")}
    if odd:
        raise Fault(f"{what} holds control characters: {sorted(odd)}")
    return text


class Called:
    def __init__(self, words, status, out, err, seconds):
        self.words, self.status, self.seconds = words, status, seconds
        self.out, self.err = decoded(out, "standard output"), decoded(err, "standard error")

    def json(self):
        try:
            value = parsed(self.out)
        except ValueError as error:
            raise Fault(f"the JSON does not parse: {error}") from None
        if next(iter(value), None) != "legwork" or value["legwork"].get("format") != 1:
            raise Fault("the JSON does not begin with the program and its format")
        return value


class Program:
    """`limit` seconds are far more than any call may take: only what hangs is stopped."""

    # What stands on standard error of a call in which nothing went wrong: what a sheet has no room for.
    MAY_TELL = ("nothing in this job stands on the sheet", " has room for no more than ", "have room for the mark alone")

    def __init__(self, path, limit):
        self.path, self.limit, self.calls = path, limit, 0
        self.last = ""
        self.slowest = (0.0, [])

    def call(self, *words, stdin=b"", cwd=None, may_refuse=False, may_fail=None):
        """A finished call with status 0 or 1; anything else is a Fault, but 2 where the call may be refused and 3 where
        it may fail with these words."""
        self.calls += 1
        self.last = " ".join(words)
        started = time.monotonic()
        try:
            ran = subprocess.run([self.path, *words], input=stdin, cwd=cwd, capture_output=True, timeout=self.limit)
        except subprocess.TimeoutExpired:
            raise Fault(f"not done after {self.limit} s") from None
        took = time.monotonic() - started
        self.slowest = max(self.slowest, (took, list(words)))
        made = Called(words, ran.returncode, ran.stdout, ran.stderr, took)
        if made.status == 2 and may_refuse:
            self._refused_well(made)
        elif made.status == 3 and may_fail and may_fail in made.out + made.err:
            pass
        elif made.status not in (0, 1):
            raise Fault(f"exit {made.status}: {made.err or made.out}")
        elif any(not any(told in line for told in self.MAY_TELL) for line in made.err.splitlines()):
            raise Fault(f"exit {made.status}, and on standard error: {made.err}")
        return made

    @staticmethod
    def _refused_well(made):
        if "--json" in made.words:
            told = made.json()
            if told["job"] is not None or not all(p["message"] and p["fix"] for p in told["problems"]):
                raise Fault(f"refused without a way out: {told}")
        elif not made.err.strip() or made.out:
            raise Fault("refused without a word")

