"""Bytes of a table to rows, with the faults it shows taken alone."""
import csv
import functools
import io
import re

from table_laws.shape import OPTIONAL, TABLES, Fault, Number, Row, Words, header, kind_of


def cell_fault(kind, text):
    """Names the law that `text` breaks as a cell of this kind, with what is allowed; or None."""
    if kind == OPTIONAL:
        return None
    if text == "":
        return "blank", "a value"
    if isinstance(kind, Words) and text not in kind.words:
        return "word", ", ".join(kind.words)
    if isinstance(kind, Number):
        sign = "-?" if kind.low < 0 else ""
        if not re.fullmatch(sign + r"\d+(\.\d+)?", text):
            return "number", "a plain decimal number"
        if not kind.low <= float(text) <= kind.high:
            return "range", f"{kind.low} to {kind.high}"
    return None


@functools.lru_cache(maxsize=None)
def line_fault(line):
    """What is wrong with the characters of a line, or None."""
    odd = re.search(r"[\x00-\x1f\x7f-\xa0\u200b-\u200f\u2028-\u202e\ufeff\ufffd]", line)
    if odd:
        return f"holds character {ord(odd.group()):#x}"
    return "ends with a space" if line != line.rstrip() else None


def text_faults(file, blob):
    """Faults of encoding and layout; the decoded text comes second, None when it has none."""
    try:
        text = blob.decode("utf-8")
    except UnicodeDecodeError as wrong:
        line = blob[:wrong.start].count(b"\n") + 1
        return [Fault("encoding", file, line, "is not UTF-8", "UTF-8")], None
    faults = []
    for number, line in enumerate(text.split("\n"), 1):
        what = line_fault(line)
        if what:
            faults.append(Fault("encoding", file, number, what, "printable text"))
    if not text.endswith("\n") or "\n\n" in text:
        faults.append(Fault("encoding", file, text.count("\n") + 1,
                            "blank line, or no end to the last", "lines that end, none blank"))
    return faults, text


@functools.lru_cache(maxsize=None)
def values_of(file, cells):
    """The cells as values by name, None when one is broken; and (law, what, allowed) for each that
    is. Rows that stand alike in many copies of a file are judged once."""
    names, wrongs = header(file), []
    if len(cells) != len(names):
        return None, [("width", f"has {len(cells)} cells", f"{len(names)} cells")]
    for name, text in zip(names, cells):
        wrong = cell_fault(kind_of(file, name), text)
        if not wrong and text != text.strip():
            wrong = ("blank", "no space around a value")
        if wrong:
            wrongs.append((wrong[0], f"{name} is '{text}'", wrong[1]))
    if wrongs:
        return None, wrongs
    return {n: float(t) if isinstance(kind_of(file, n), Number) else t
            for n, t in zip(names, cells)}, []


def row_of(file, line, cells, faults):
    """The row with its cells as values, or None after adding its faults."""
    values, wrongs = values_of(file, tuple(cells))
    faults.extend(Fault(law, file, line, what, allowed) for law, what, allowed in wrongs)
    return None if values is None else Row(file, line, values)


def read_table(file, blob):
    """All sound rows of one file, and its faults taken alone."""
    faults, text = text_faults(file, blob)
    rows, seen = [], {}
    if text is None:
        return rows, faults
    reader = csv.reader(io.StringIO(text), strict=True)
    try:
        for cells in reader:
            if reader.line_num == 1:
                if tuple(cells) != header(file):
                    faults.append(Fault("header", file, 1, "wrong header", ",".join(header(file))))
                    return [], faults
                continue
            row = row_of(file, reader.line_num, cells, faults)
            if row is None:
                continue
            key = tuple(row.cells[n] for n in header(file)[:TABLES[file][0]])
            if key in seen:
                faults.append(Fault("unique", file, row.line, f"repeats line {seen[key]}",
                                    "one row for each key"))
            seen.setdefault(key, row.line)
            rows.append(row)
    except csv.Error as wrong:
        faults.append(Fault("quote", file, reader.line_num, str(wrong), "cells quoted with \""))
    return rows, faults
