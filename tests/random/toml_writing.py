# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""One document, any of the ways that TOML has of writing it: headers or inline tables, dotted keys, every kind of text
and number, comments, line ends. What it says is the same each time."""

import datetime
import re

from amounts import Amount

COMMENTS = ["# 14/2 to the loft", "# space = 3", "# [[circuit]]", "# é 台 \"", "#", "#\tmark = 'X'"]
ESCAPES = {"\"": "\\\"", "\\": "\\\\", "\t": "\\t"}


def key(rng, name):
    if re.fullmatch(r"[A-Za-z0-9_-]+", name) and rng.random() < 0.97:
        return name
    return f"'{name}'" if "'" not in name and rng.random() < 0.3 else basic(rng, name)


def basic(rng, text):
    def one(c):
        if c in ESCAPES:
            return ESCAPES[c]
        if rng.random() < 0.01 or (ord(c) > 127 and rng.random() < 0.1):
            return f"\\u{ord(c):04X}" if ord(c) < 0x10000 else f"\\U{ord(c):08X}"
        return c
    return '"' + "".join(map(one, text)) + '"'


def string(rng, text):
    draw = rng.random()
    if draw < 0.12 and "'" not in text:
        return f"'{text}'"
    if draw < 0.15 and "'" not in text:
        return f"'''{text}'''"
    if draw < 0.18:
        return '""' + basic(rng, text) + '""'
    if draw < 0.2:
        return '"""\\\n   ' + basic(rng, text)[1:] + '""' if text[:1].strip() else basic(rng, text)
    return basic(rng, text)


def integer(rng, number):
    if rng.random() < 0.9:
        return str(number)
    return rng.choice([f"+{number}", hex(number), oct(number), bin(number), f"{number:_}", f"0x{number:04X}"])


def decimal(rng, number):
    ways = [repr(number)]
    if float(f"{number:.9e}") == number:
        ways.append(f"{number:.9e}")
    return rng.choice(ways)


class Writing:
    def __init__(self, rng):
        self.rng = rng
        self.block_inline = {}  # of a kind of table: all as one inline array?
        self.inner = rng.choice(["inline", "inline", "header", "dotted"])
        self.comments = rng.choice([0, 0, 0.1])
        self.equals = rng.choice([" = ", " = ", "=", "  =  ", "\t=\t"])
        self.indent = rng.choice(["", "", "  ", "\t"])
        self.aligned = rng.random() < 0.3 and self.equals == " = "
        self.one_line = rng.random() < 0.2

    def value(self, v, whole_lines=False):
        rng = self.rng
        if isinstance(v, Amount):
            return string(rng, v.spelled(rng))
        if isinstance(v, bool):
            return "true" if v else "false"
        if isinstance(v, int):
            return integer(rng, v)
        if isinstance(v, float):
            return decimal(rng, v)
        if isinstance(v, datetime.date):
            return v.isoformat()
        if isinstance(v, str):
            return string(rng, v)
        if isinstance(v, dict):
            pairs = [self._pair(k, w) for k, w in self._shuffled(v)]
            return "{ " + ", ".join(pairs) + " }" if pairs else "{}"
        items = [self.value(w) for w in v]
        if items and (whole_lines or rng.random() < 0.05) and not self.one_line:
            return "[\n" + "".join(f"  {i},{self._comment()}\n" for i in items) + "]"
        return "[" + ", ".join(items) + (", " if items and rng.random() < 0.1 else "") + "]"

    def _pair(self, k, v):
        return key(self.rng, k) + self.rng.choice([" = ", "=", self.equals.replace("\t", " ")]) + self.value(v)

    def _shuffled(self, table):
        pairs = list(table.items())
        if self.rng.random() < 0.6:
            self.rng.shuffle(pairs)
        return pairs

    def _comment(self):
        return " " + self.rng.choice(COMMENTS) if self.rng.random() < self.comments else ""

    def lines(self, table, path):
        """The keys of a table under its header, and the tables with headers of their own that follow it."""
        own, after = [], []
        pairs = self._shuffled(table)
        width = max((len(k) for k, _ in pairs), default=0) if self.aligned else 0
        for k, v in pairs:
            inner = isinstance(v, dict) and v
            pieces = isinstance(v, list) and v and all(isinstance(w, dict) for w in v)
            if self.inner == "header" and inner:
                after += [f"[{path}.{k}]"] + self.lines(v, f"{path}.{k}")
            elif self.inner == "header" and pieces:
                for one in v:
                    after += [f"[[{path}.{k}]]"] + self.lines(one, f"{path}.{k}")
            elif self.inner == "dotted" and inner:
                own += [self._line(f"{k}.{key(self.rng, l)}", w, 0) for l, w in self._shuffled(v)]
            else:
                own.append(self._line(key(self.rng, k), v, width))
        return own + after

    def _line(self, named, v, width):
        return self.indent + named.ljust(width) + self.equals + self.value(v) + self._comment()

    def chunks(self, kind, tables):
        for table in tables:
            yield [f"[[{kind}]]{self._comment()}"] + self.lines(table, kind) + [""] * self.rng.randrange(2)


def _interleaved(rng, lists):
    """Tables of several kinds in any order that keeps each kind's own."""
    queues = [list(chunks) for chunks in lists if chunks]
    together = rng.random() < 0.6
    if together:
        rng.shuffle(queues)
    while queues:
        queue = queues[0] if together else rng.choice(queues)
        yield from queue.pop(0)
        if not queue:
            queues.remove(queue)


def _padding(rng, text, size):
    """Comments until the file has exactly this many bytes."""
    missing = size - len(text.encode())
    if missing < 4:
        return text
    if rng.random() < 0.3:
        return "#" + "x" * (missing - 2) + "\n" + text
    line = "# " + "nothing to see here " * 5 + "\n"
    full, rest = divmod(missing - 4, len(line))
    return line * full + "#" + "-" * (rest + 2) + "\n" + text


def written(document, rng, size=0):
    w = Writing(rng)
    top, blocks = [], []
    for kind, content in document.items():
        inline = rng.random() < 0.25
        if isinstance(content, dict):
            if inline:
                top.append(f"{kind} = {w.value(content)}")
            else:
                blocks.append([[f"[{kind}]"] + w.lines(content, kind)])
        elif inline:
            top.append(f"{kind} = {w.value(content, True)}")
        else:
            blocks.append(list(w.chunks(kind, content)))
    rng.shuffle(top)
    text = "\n".join(top + list(_interleaved(rng, blocks)))
    text += "\n" if rng.random() < 0.9 else ""
    if size:
        text = _padding(rng, text, size)
    elif rng.random() < 0.15:
        text = text.replace("\n", "\r\n")
    mark = "\ufeff" if rng.random() < 0.04 and not size else ""
    return (mark + text).encode()
