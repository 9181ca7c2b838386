# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""One job through every command, and what the answers have to keep alone and among each other."""

import re
import shutil

import typed
from called import first_of, require
from plans import faults_between, faults_of_choice, faults_of_plan
from panel import Panel, is_direct, sources
from rewriting import write_sizes, write_spaces
from sheets import contents, judge_files, marks_missing

METHODS = ["standard", "optional", "existing", "measured"]
ADDED = ["vehicle charger, 40 A, 2 poles, continuous", "hot tub, 50 A, 2 poles", "kiln, 4800 W, 240 V",
         "refrigerator, 20 A", "lighting, 1 pole, 600 VA, not continuous", "heat pump, mca 24 A, 2 poles, motor"]


class Journey:
    """`folder` is empty and the job's alone; `job` is what tomllib reads in `data`."""

    def __init__(self, program, words, forms, rng, folder, data):
        self.program, self.words, self.forms, self.rng, self.folder = program, words, forms, rng, folder
        self.data, self.job = data, typed.job_of(data)
        self.file = folder / "job.toml"
        self.file.write_bytes(data)
        self.marks = [c["mark"] for c in self.job.get("circuit", [])]
        self.panels = [p["name"] for p in self.job["panel"]]
        # A file that is as large as it may be takes no further value.
        self.is_full = "1048576 at most" if len(data) == 1 << 20 else None
        self.is_large = len(self.marks) > 150 or len(data) > 500_000

    def call(self, command, *words, file=None, **more):
        return self.program.call(command, str(file or self.file), *words, **more)

    def go(self):
        self.check()
        self.check_in_other_words()
        self.measure_and_propose()
        self.balance()
        self.load()
        self.print()
        write_spaces(self)
        write_sizes(self)
        require(self.file.read_bytes() == self.data, "a call without --write changed the job file")
        strays = [p.name for p in self.folder.iterdir() if p != self.file]
        require(not strays, f"left beside the job: {strays}")

    # check

    def check(self):
        called = self.call("check", "--json")
        self.verdict = called.json()
        self.status = called.status
        self.all_findings = self.verdict["findings"] + self.verdict["accepted"]
        self.uses = typed.guesses(self.all_findings)
        for severity in ("error", "warning", "note"):
            count = sum(f["severity"] == severity for f in self.verdict["findings"])
            require(self.verdict[f"{severity}s"] == count, f"{self.verdict[f'{severity}s']} {severity}s for {count}")
        require((self.status == 1) == (self.verdict["errors"] > 0), f"exit {self.status}, {self.verdict['errors']} errors")
        lines = self.data.count(b"\n") + 1
        cables = [c["mark"] for c in self.job.get("cable", [])]
        for f in self.all_findings:
            require(f["rule"] in self.words.rules and f["message"] and f["severity"] in ("error", "warning", "note"),
                    f"no finding: {f}")
            require(f["panel"] is None or f["panel"] in self.panels, f"a panel that is not there: {f}")
            require(set(f["circuits"]) <= {*self.marks, *cables}, f"a circuit that is not there: {f}")
            require(f["line"] is None or 1 <= f["line"] <= lines, f"a line that is not there: {f}")
        if not self.is_large:
            require(self.call("check", "--json").out == called.out, "the same job gave another verdict")
            by_input = self.program.call("check", "-", "--json", stdin=self.data)
            require(by_input.out == called.out, "standard input gave another verdict than the file")

    def same_in_other_words(self, other, in_order):
        """The same tables and values, spelled otherwise: the same verdict, word for word where each kind of table keeps
        its order, else the same rules at the same circuits."""
        copy = self.folder / "copy.toml"
        copy.write_bytes(other)
        verdict = self.call("check", "--json", file=copy).json()
        if in_order:
            seen = lambda f: str({k: v for k, v in f.items() if k not in ("line", "column")})
        else:
            seen = lambda f: str((f["rule"], f["severity"], f["panel"], sorted(f["circuits"])))
        for key in ("findings", "accepted"):
            here, there = sorted(map(seen, self.verdict[key])), sorted(map(seen, verdict[key]))
            require(here == there, f"written in another way, other {key}: {set(here) ^ set(there)}")
        told = self.call("compare", str(copy), "--json")
        require(told.status == 0 and told.json()["changes"] == [], f"written in another way, compare: {told.out[-600:]}")
        self.clear()

    def check_in_other_words(self):
        """The same findings as text, and in groups."""
        groups = self.rng.choice([["--by", "circuit"], ["--by", "theme"]])
        for words in ([], groups):
            called = self.call("check", *words)
            require(called.status == self.status, f"exit {called.status} as text {words}, {self.status} as JSON")
            told = re.findall(r"\[([a-z0-9-]+)\]", called.out)
            for rule in {f["rule"] for f in self.all_findings}:
                count = sum(f["rule"] == rule for f in self.all_findings)
                # Without headings what reads the same is told once, and untouched work a line a panel and kind.
                least = count if words else 1
                require(least <= told.count(rule) <= count,
                        f"{count} findings of {rule}, {told.count(rule)} told by {words}")
        some = self.rng.choice([["--min", "error"], ["--min", "warning"], ["--rule", "job-assumed"],
                                ["--rule", self.rng.choice(self.all_findings)["rule"]] if self.all_findings else []])
        part = self.call("check", *some, "--json")
        require(part.status == self.status, f"exit {part.status} for {some}")
        rest = [f for f in part.json()["findings"] if f not in self.verdict["findings"]]
        require(not rest, f"{some} shows a finding that is none: {rest}")

    def measure_and_propose(self):
        for words in (["--measure"], ["--propose"]):
            require(self.call("check", *words).status == self.status, f"another exit with {words}")
            require(self.call("check", *words, "--json").json()["code"] == self.job["job"]["code"], "another code")

    # balance

    def planned(self, *words, file=None, job=None):
        called = self.call("balance", *words, "--json", file=file, may_fail=self.is_full)
        if called.status == 3:
            return called, None
        plan = called.json()
        first_of(faults_of_plan(job or self.job, plan, self.uses))
        if any(p.get("why") for p in plan["panels"]):
            require(called.status == 1, "no room for all, and exit 0")
        return called, plan

    def balance(self):
        called, plan = self.planned()
        first_of(faults_of_choice(plan))
        self.plan = plan
        text = self.call("balance")
        require(text.status == called.status, "another exit as text")
        for p in plan["panels"]:
            for placed in p["placements"]:
                require(f" {placed['circuit']} " in text.out, f"{placed['circuit']} is not in the table of the plan")
        told = sum(int(n) for n in re.findall(r"^(\d+) moves?: with the panel dead,$", text.out, re.MULTILINE))
        require(told == sum(p["moves"] for p in plan["panels"]), f"{told} moves as text")
        for p in plan["panels"]:
            require(p["imbalance_va"] is None or f"{p['imbalance_va']} VA" in text.out, f"{p['panel']}: another imbalance")
        best, plan_best = self.planned("--best")
        first_of(faults_of_choice(plan_best, best=True))
        first_of(faults_between(self.job, plan, plan_best))
        most = max((s["moves"] for p in plan["panels"] for s in p["tradeoff"]), default=0)
        moves = self.rng.choice([0, 1, most, self.rng.randrange(0, most + 2)])
        _, plan_moves = self.planned("--moves", str(moves))
        first_of(faults_of_choice(plan_moves, moves=moves))
        first_of(faults_between(self.job, plan, plan_moves))
        self.planned("--seconds", self.rng.choice(["0.001", "0.1", "0.5"]), *self.rng.choice([[], ["--best"]]))
        if not self.is_large:
            require(self.call("balance", "--json").out == called.out, "the same job gave another plan")

    def clear(self):
        left = {p.name for p in self.folder.iterdir()} - {"job.toml", "copy.toml", "copy.before.toml",
                                                           "copy.before-2.toml"}
        require(not left, f"left beside the job: {sorted(left)}")
        for path in self.folder.glob("copy*"):
            path.unlink()

    # load

    def load(self):
        tops = [sources(self.job, Panel(p)) for p in self.job["panel"] if "feeder" not in p]
        on_direct = all(is_direct(s) for s in tops)
        usual = self.call("load", "--json", may_refuse=on_direct)
        if on_direct:
            require(usual.status == 2, "a load calculation of direct current")
            return
        self._judge_load(usual.json())
        text = self.call("load")
        require(text.status == usual.status == self.status, "another exit of load")
        require(f"{usual.json()['total_va']} VA" in text.out, "another total as text")
        for method in METHODS:
            called = self.call("load", "--method", method, "--json", may_refuse=True)
            if called.status != 2:
                self._judge_load(called.json())
                require(called.json()["method"] == method, f"asked for {method}")
        panel = self.rng.choice(self.panels)
        direct = is_direct(sources(self.job, Panel(next(p for p in self.job["panel"] if p["name"] == panel))))
        self.call("load", f"--panel={panel}", may_refuse=direct)
        for words in (["--json"], []):
            added = self.call("load", f"--add={self.rng.choice(ADDED)}", *words, may_refuse=True)
            if words and added.status != 2:
                for p in added.json()["panels"]:
                    self._judge_load(p["after"])

    @staticmethod
    def _judge_load(told):
        """The right column adds up, and each line of arithmetic ends in its own figure."""
        if told["method"] is None:
            require(told["why"] and told["fix"], f"no load and no reason: {told}")
            return
        for steps, total in (("steps", told["total_va"]), ("neutral_steps", told["neutral_va"])):
            counted = sum(s["va"] for s in told[steps] if s["kind"] == "counted")
            require(total is None or not told[steps] or counted == total, f"{steps} add up to {counted}, not {total} VA")
            for s in told[steps]:
                ends = re.search(r"= (-?\d+) VA(, as measured)?$", s["arithmetic"] or "")
                require(not ends or int(ends[1]) == s["va"], f"{s['arithmetic']} stands beside {s['va']} VA")

    # print

    def print(self):
        out = self.folder / "sheets"
        words = [f"--out={out}"]
        if self.rng.random() < 0.6:
            for sheet in {f["sheet"] for f in self.forms}:
                words.append(f"--form={self.rng.choice([f['name'] for f in self.forms if f['sheet'] == sheet])}")
        if self.is_large:
            words.append("--format=pdf")
        called = self.call("print", *words, "--json")
        require(called.status == self.status, f"print: exit {called.status}, check: {self.status}")
        printed, first = called.json(), contents(out)
        judge_files(out, printed)
        missing = marks_missing(out, printed, self.marks)
        require(not missing, f"on no directory and no label: {missing}")
        if not self.is_large:
            again = self.call("print", *words)
            require(again.status == self.status and contents(out) == first, "the same job gave other sheets")
            if self.rng.random() < 0.3:
                self._picture()
        shutil.rmtree(out)

    def _picture(self):
        out = self.folder / "pictures"
        called = self.call("print", f"--out={out}", "--format=png", "--sheet=directory", "--json")
        if called.json()["files"]:
            judge_files(out, called.json())
            shutil.rmtree(out)
