#!/usr/bin/env python3
"""slim_tables.py FROM TO: copies the tables that a first answer is worked out with, without their
notes and the places in their sources, which only a working shows. The notes of prices stay, which
say what is invented, and the places where RCDs and the choice of an earth are asked for."""
import csv
import pathlib
import shutil
import sys

LATER = {"ask", "client", "label", "later", "lever", "test", "tolerance", "trench", "ware"}
UNTOLD = {"note", "locator"}
TOLD = {"price": {"note"}, "guard": {"locator"}, "rules": {"locator"}}


def slim(text, untold):
    rows = csv.reader(text.splitlines())
    header = next(rows)
    yield header
    for row in rows:
        yield ["" if name in untold else cell for name, cell in zip(header, row, strict=True)]


def main(source, target):
    shutil.rmtree(target, ignore_errors=True)
    for path in sorted(source.rglob("*.csv")):
        inside = path.relative_to(source)
        if inside.parts[0] in LATER or inside.name == "sources.csv":
            continue
        untold = UNTOLD - TOLD.get(inside.parts[0], set())
        copy = target / inside
        copy.parent.mkdir(parents=True, exist_ok=True)
        with path.open(newline="") as table, copy.open("w", newline="") as out:
            csv.writer(out, lineterminator="\n").writerows(slim(table.read(), untold))
    shutil.copy(source / "VERSION", target / "VERSION")


main(pathlib.Path(sys.argv[1]), pathlib.Path(sys.argv[2]))
