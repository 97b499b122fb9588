"""Laws that tie rows of rules, rods and devices to each other."""
from table_laws.shape import Fault
from table_laws.words import EARTHINGS, RCD_TYPES


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
    for row in tables["earth/rod_lambda.csv"]:
        # Rods that feel each other fully are as good as one: lambda never reaches their number.
        joined = row.cells["rods"] if row.cells["arrangement"] == "line" else 4 * row.cells["rods"] - 4
        if row.cells["lambda"] >= joined:
            yield Fault("pair", row.file, row.line, "more rods worse than one",
                        f"less than {joined:g}")
    for row in tables["guard/type.csv"]:
        plain, *driven = (RCD_TYPES.index(row.cells[n])
                          for n in ("plain", "drive_one", "drive_three"))
        if not plain <= driven[0] <= driven[1]:
            yield Fault("pair", row.file, row.line, "a drive asks for less than none",
                        "plain, drive_one and drive_three in the order A, F, B")
    limits = indexed(tables["rules/limit.csv"], "key")
    names = ("u0", "body.current", "body.resistance", "extraneous")
    if all((name,) in limits for name in names):
        volts, milliamperes, body, limit = (limits[(name,)]["value"] for name in names)
        if milliamperes and abs(volts / milliamperes - body - limit) > 1e-9:
            line = next(row.line for row in tables["rules/limit.csv"]
                        if row.cells["key"] == "extraneous")
            yield Fault("pair", "rules/limit.csv", line, f"extraneous {limit:g} kohm is not what "
                        "u0 over body.current leaves", f"{volts / milliamperes - body:g}")
