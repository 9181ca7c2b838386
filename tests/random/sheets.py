# SPDX-FileCopyrightText: legwork contributors
# SPDX-License-Identifier: MIT
"""Printed sheets, judged by qpdf, poppler and libxml2, and each mark looked for in what stands on them."""

import re
import struct
import subprocess
import zlib

from called import Fault

MARK_LETTER = r"[A-Za-z0-9-]"


def _judged(*words):
    ran = subprocess.run(words, capture_output=True, timeout=300)
    if ran.returncode != 0:
        raise Fault(f"{' '.join(map(str, words))}: exit {ran.returncode}: {(ran.stderr or ran.stdout)[:2000]!r}")
    return ran.stdout


def _judge_pdf(path, pages):
    _judged("qpdf", "--check", path)
    count = int(_judged("qpdf", "--show-npages", path))
    if count != pages:
        raise Fault(f"{path.name} has {count} pages, and print says {pages}")


def _judge_png(path):
    """Every chunk whole, and as many bytes of picture as its size asks for."""
    data = path.read_bytes()
    if data[:8] != b"\x89PNG\r\n\x1a\n":
        raise Fault(f"{path.name} is no PNG")
    at, chunks = 8, []
    while at < len(data):
        size, kind = struct.unpack(">I4s", data[at:at + 8])
        body = data[at + 8:at + 8 + size]
        if zlib.crc32(kind + body) != struct.unpack(">I", data[at + 8 + size:at + 12 + size])[0]:
            raise Fault(f"{path.name}: a damaged chunk {kind!r}")
        chunks.append((kind, body))
        at += 12 + size
    width, height, depth, color = struct.unpack(">IIBB", chunks[0][1][:10])
    samples = {0: 1, 2: 3, 3: 1, 4: 2, 6: 4}[color]
    row = 1 + -(-width * samples * depth // 8)
    pixels = zlib.decompress(b"".join(body for kind, body in chunks if kind == b"IDAT"))
    if chunks[-1][0] != b"IEND" or len(pixels) != row * height:
        raise Fault(f"{path.name}: {len(pixels)} bytes of picture for {width} x {height}")


def judge_files(folder, printed):
    """`printed` is the JSON of print: every file of it is there and sound, and nothing else is."""
    files = printed["files"]
    said = sorted(f["path"] for f in files)
    there = sorted(str(p) for p in folder.iterdir())
    if said != there:
        raise Fault(f"print says it wrote {sorted(set(said) - set(there))} and left {sorted(set(there) - set(said))}")
    if len(set(said)) != len(said):
        raise Fault("two sheets in one file")
    svgs = [folder / p for p in said if p.endswith(".svg")]
    for n in range(0, len(svgs), 100):
        _judged("xmllint", "--noout", "--nonet", "--huge", *svgs[n:n + 100])
    for f in files:
        path = folder / f["path"]
        if f["format"] == "pdf":
            _judge_pdf(path, f["pages"])
        elif f["format"] == "png":
            _judge_png(path)
        elif not 1 <= f["page"] <= f["pages"]:
            raise Fault(f"{path.name} is page {f['page']} of {f['pages']}")


def marks_missing(folder, printed, marks):
    """Marks that stand neither on a directory nor on a label."""
    text = b"\n".join(_judged("pdftotext", "-layout", folder / f["path"], "-") for f in printed["files"]
                      if f["format"] == "pdf" and f["sheet"] in ("directory", "labels")).decode()
    words = set(re.findall(MARK_LETTER + "+", text))
    return [m for m in marks if m not in words and not re.search(rf"(?<!{MARK_LETTER}){re.escape(m)}(?!{MARK_LETTER})", text)]


def contents(folder):
    return {p.name: p.read_bytes() for p in folder.iterdir()}
