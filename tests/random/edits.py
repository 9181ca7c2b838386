# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Whether a rewritten job file differs from the old one in the values it was to change, and in no other byte."""

import re

FARTHEST = 400  # bytes that an inserted key may share with what stands around it, before it is seen to differ


TEXTS = rb'"{3}(?:[^"\\]|\\.)*"{3}|\'{3}[^\']*\'{3}|"(?:[^"\\\n]|\\.)*"|\'[^\'\n]*\''


def _value(keys):
    names = b"|".join(k.encode() for k in keys)
    return re.compile(rb"(?:%b)[\"']?[ \t]*=[ \t]*(?:%b|[0-9A-Fa-fxob_+]+)" % (names, TEXTS), re.DOTALL)


def _common(a, i, b, j):
    """How many bytes are the same from here on."""
    size = min(len(a) - i, len(b) - j)
    step, n = 4096, 0
    while n < size and a[i + n:i + n + step] == b[j + n:j + n + step]:
        n += step
    n = min(n, size)
    while n < size and a[i + n] == b[j + n]:
        n += 1
    return n


def _ways_on(old, i, new, j, start, value):
    """Where both texts go on behind one changed or inserted value that holds or touches this difference."""
    for back in range(0, min(FARTHEST, i - start[0], j - start[1]) + 1):
        p, q = i - back, j - back
        now = value.match(new, q)
        if now:
            then = value.match(old, p)
            if then and now.end() >= j:
                yield then.end(), now.end()
        inserted = re.match(rb"[\s,]*(?=[^\s,])", new[q:q + 64])
        key = value.match(new, q + inserted.end()) if inserted else None
        if key and key.end() >= j:
            after = re.match(rb"[\s,]*", new[key.end():key.end() + 64])
            for more in range(after.end() + 1):
                yield p, key.end() + more


def only_values_differ(old, new, keys, changes):
    """True when `new` is `old` with at most so many values of these keys changed or put in."""
    value = _value(keys)
    stack, seen = [(0, 0, changes)], set()
    while stack:
        i, j, left = stack.pop()
        n = _common(old, i, new, j)
        if i + n == len(old) and j + n == len(new):
            return True
        if left == 0:
            continue
        for p, q in _ways_on(old, i + n, new, j + n, (i, j), value):
            if (p, q) not in seen:
                seen.add((p, q))
                stack.append((p, q, left - 1))
    return False


def values_changed(old, new):
    """{(mark, key): (old, new)} between two jobs as tomllib reads them, or None where anything but circuits changed."""
    if {k: v for k, v in old.items() if k != "circuit"} != {k: v for k, v in new.items() if k != "circuit"}:
        return None
    before, after = old.get("circuit", []), new.get("circuit", [])
    if [c["mark"] for c in before] != [c["mark"] for c in after]:
        return None
    found = {}
    for c, d in zip(before, after):
        for key in {*c, *d}:
            if c.get(key) != d.get(key):
                found[c["mark"], key] = (c.get(key), d.get(key))
    return found
