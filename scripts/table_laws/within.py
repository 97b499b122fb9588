"""Laws of sources, orders, intervals and believable values."""
import collections
import itertools

from table_laws.bounds import LIMITS, SHOCK, UNKNOWNS, WARE
from table_laws.shape import INTERVALS, ORDERS, UNCITED, Fault


def citation_faults(tables):
    sources = {row.cells["key"]: row for row in tables["sources.csv"]}
    used = set()
    for row in itertools.chain.from_iterable(tables.values()):
        if row.file in UNCITED:
            continue
        basis, source = row.cells["basis"], row.cells["source"]
        used.add(source)
        if source not in sources:
            yield Fault("source", row.file, row.line, f"source '{source}'", "a key of sources.csv")
            continue
        seen = sources[source].cells["seen"]
        if basis == "published" and seen == "not seen":
            yield Fault("seen", row.file, row.line, f"published, but '{source}' was not seen",
                        "memory, or a source that was seen")
        if basis == "memory" and seen != "not seen":
            yield Fault("seen", row.file, row.line, f"memory, but '{source}' was seen",
                        "published, or the book it should stand in")
        if basis == "derived" and not row.cells["note"]:
            yield Fault("note", row.file, row.line, "derived without a note", "a note: from what")
    for key, row in sources.items():
        if key not in used:
            yield Fault("unused", row.file, row.line, f"no row cites '{key}'", "cited sources only")


def order_faults(tables):
    for file, same, grows, value, never in ORDERS:
        groups = collections.defaultdict(list)
        for row in tables[file]:
            groups[tuple(row.cells[n] for n in same.split())].append(row)
        for rows in groups.values():
            rows.sort(key=lambda row: row.cells[grows])
            for a, b in zip(rows, rows[1:]):
                before, after = a.cells[value], b.cells[value]
                if after < before if never == "fall" else after > before:
                    bound = "at least" if never == "fall" else "at most"
                    yield Fault("order", file, b.line, f"{value} {after:g} against {before:g} at "
                                f"{grows} {a.cells[grows]:g}", f"{bound} {before:g}")


def interval_faults(tables):
    for file, low, high in INTERVALS:
        for row in tables[file]:
            if row.cells[low] > row.cells[high]:
                yield Fault("interval", file, row.line,
                            f"{low} {row.cells[low]:g} above {high} {row.cells[high]:g}",
                            f"{low} no more than {high}")
    ends = sorted(tables["rules/main_bonding.csv"], key=lambda row: row.cells["neutral_over_mm2"])
    reached = 0
    for row in ends:
        if row.cells["neutral_over_mm2"] != reached:
            yield Fault("interval", row.file, row.line, "leaves a gap or overlaps",
                        f"neutral_over_mm2 {reached:g}")
        reached = row.cells["neutral_to_mm2"]


def stated_faults(tables):
    """Limits, and ranges for unknown facts, against their unit and what is believable."""
    for row in tables["rules/limit.csv"]:
        yield from bounded(row, LIMITS[row.cells["key"]], ("value", "value"))
    for row in tables["rules/unknown.csv"]:
        yield from bounded(row, UNKNOWNS[row.cells["fact"]], ("low", "high"))
    for row in tables["shock/constant.csv"]:
        yield from bounded(row, SHOCK[row.cells["key"]], ("value", "value"))
    for row in tables["ware/constant.csv"]:
        yield from bounded(row, WARE[row.cells["key"]], ("value", "value"))
    for row in tables["cable/armour_ac.csv"]:
        wanted = {"ac_factor": ("ratio", 1, 1.5), "reactance": ("mohm/m", 0.1, 0.6)}
        yield from bounded(row, wanted[row.cells["key"]], ("value", "value"))


def bounded(row, wanted, columns):
    unit, least, greatest = wanted
    if row.cells["unit"] != unit:
        yield Fault("unit", row.file, row.line, f"unit is '{row.cells['unit']}'", unit)
    if row.cells[columns[0]] < least or row.cells[columns[1]] > greatest:
        yield Fault("range", row.file, row.line, "beyond what is believable",
                    f"{least} to {greatest} {unit}")
