"""Laws that tie rows of rules, rods and devices to each other."""
from table_laws.shape import Fault
from table_laws.words import BREAKER, EARTHINGS, FUSE


def indexed(rows, *columns):
    return {tuple(row.cells[n] for n in columns): row.cells for row in rows}


def pair_faults(tables):
    """Laws between two rows of one table that are no order along a column."""
    rank = indexed(tables["rules/dependability.csv"], "protective", "earthing")
    for row in tables["rules/dependability.csv"]:
        place = EARTHINGS.index(row.cells["earthing"])
        better = rank.get((row.cells["protective"], EARTHINGS[max(0, place - 1)]))
        if better and row.cells["ordinal"] > better["ordinal"]:
            yield Fault("pair", row.file, row.line, "ranks above a firmer earth",
                        f"at most {better['ordinal']:g}")
    for row in tables["earth/rod_parallel.csv"]:
        if row.cells["factor"] > row.cells["rods"]:
            yield Fault("pair", row.file, row.line, "more rods worse than one", "factor <= rods")


def device_faults(tables):
    names = ("standard", "curve", "rating_a")
    devices, curves = tables["device/device.csv"], tables["device/curve.csv"]
    drawn, known = indexed(curves, *names, "time_s"), indexed(devices, *names)
    for row in devices:
        c = row.cells
        if (c["standard"] == FUSE) != (c["curve"] == "-"):
            yield Fault("device", row.file, row.line, f"curve '{c['curve']}'",
                        "- for a fuse, a letter for a breaker")
        times = (5,) if c["standard"] == FUSE else (0.1, 5)
        if any((*(c[n] for n in names), t) not in drawn for t in times):
            yield Fault("device", row.file, row.line, "has no curve",
                        f"points at {' and '.join(f'{t:g} s' for t in times)} in device/curve.csv")
        bands = [b for b in tables["device/let_through.csv"]
                 if b.cells["curve"] == c["curve"] and b.cells["breaking_ka"] == c["breaking_ka"]
                 and b.cells["rating_from_a"] <= c["rating_a"] <= b.cells["rating_to_a"]]
        if c["standard"] == BREAKER and len(bands) != (1 if c["rating_a"] <= 40 else 0):
            yield Fault("device", row.file, row.line, f"{len(bands)} let-through rows fit",
                        "one up to 40 A, none above")
    for row in curves:
        c = row.cells
        if tuple(c[n] for n in names) not in known:
            yield Fault("device", row.file, row.line, "no such device", "a row of device.csv")
        if c["current_a"] < 2 * c["rating_a"]:
            yield Fault("device", row.file, row.line, f"operates at {c['current_a']:g} A",
                        f"at least twice the rating: {2 * c['rating_a']:g} A")
