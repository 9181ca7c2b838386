# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""What `--write` does to the job file of a journey."""

import typed
from called import require
from edits import only_values_differ, values_changed


def write_spaces(journey):
    """`balance --write`: the spaces of the plan and no other byte, and nothing left to write afterwards."""
    words = journey.rng.choice([[], [], ["--best"]])
    copy = journey.folder / "copy.toml"
    copy.write_bytes(journey.data)
    called, plan = journey.planned("--write", *words, file=copy)
    new = copy.read_bytes()
    if called.status == 3:
        require(new == journey.data, "the spaces cannot be written, and the file was changed")
    elif any(p.get("why") for p in plan["panels"]):
        require(new == journey.data, "no room for all, and the file was changed")
    else:
        expected = {}
        for placed in (q for p in plan["panels"] for q in p["placements"]):
            old = next(c for c in journey.job["circuit"] if c["mark"] == placed["circuit"]).get("space")
            if str(old) != placed["spaces"][0]:
                at = placed["spaces"][0]
                expected[placed["circuit"], "space"] = (old, int(at) if at.isdigit() else at)
        _judge_written(journey, copy, new, expected, ["space"], plan.get("written"))
        again, plan_again = journey.planned("--write", *words, file=copy, job=typed.job_of(new))
        require(copy.read_bytes() == new and "written" not in plan_again,
                f"balance --write {words} a second time wrote again")
        require(journey.call("check", file=copy).status == again.status == called.status, "another exit once written")
    journey.clear()


def _judge_written(journey, copy, new, expected, keys, written):
    if not expected:
        require(new == journey.data and not written, "there was nothing to write, and it wrote")
        return
    changed = values_changed(journey.job, typed.job_of(new))
    require(changed == expected, f"the file says {changed}, the answer {expected}")
    require(only_values_differ(journey.data, new, keys, len(expected)), "other bytes than the values changed")
    require(written and written["path"] == str(copy), f"written: {written}")
    before = journey.folder / "copy.before.toml"
    require(written["before"] == str(before) and before.read_bytes() == journey.data, "the old file is not kept")


def write_sizes(journey):
    """`check --propose --write`: what was proposed for what was missing, no other byte, nothing left to write."""
    copy = journey.folder / "copy.toml"
    copy.write_bytes(journey.data)
    called = journey.call("check", "--propose", "--write", "--json", file=copy, may_fail=journey.is_full)
    answer, new = called.json(), copy.read_bytes()
    if called.status == 3:
        require(new == journey.data, "the sizes cannot be written, and the file was changed")
        return journey.clear()
    changed = values_changed(journey.job, typed.job_of(new))
    require(changed is not None, "more than circuits changed")
    proposed = {p["circuit"]: p for p in answer["proposals"]}
    for (mark, key), (old, value) in changed.items():
        p = proposed.get(mark)
        require(p is not None, f"{mark} was changed, and nothing was proposed for it")
        if key in ("breaker", "fuse", "cable"):
            require(old in (None, "?") and value == p["cable" if key == "cable" else "breaker"],
                    f"{mark}: {key} was {old} and is {value}, {p} was proposed")
        else:
            _judge_segments(mark, key, old, value)
    require(only_values_differ(journey.data, new, ["breaker", "fuse", "cable", "kind"], 40 * len(changed)),
            "other bytes than the values changed")
    require(bool(changed) == ("written" in answer), f"{len(changed)} changes, written: {answer.get('written')}")
    require(journey.call("check", file=copy).status == called.status, "another exit once written")
    again = journey.call("check", "--propose", "--write", "--json", file=copy)
    require(copy.read_bytes() == new and "written" not in again.json(), "--propose --write a second time wrote again")
    journey.clear()


def _judge_segments(mark, key, old, new):
    require(key == "segments" and len(old) == len(new), f"{mark}: {key} was {old} and is {new}")
    for before, after in zip(old, new):
        require({k: v for k, v in before.items() if k != "kind"} == {k: v for k, v in after.items() if k != "kind"}
                and (before.get("kind") in (None, "?") or before["kind"] == after["kind"]),
                f"{mark}: a segment was {before} and is {after}")
