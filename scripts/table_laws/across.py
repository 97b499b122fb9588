"""Laws that tie rows of rules, rods and devices to each other."""
from table_laws.shape import Fault
from table_laws.words import EARTHINGS, LOADS_OUTSIDE, RCD_TYPES


def indexed(rows, *columns):
    return {tuple(row.cells[n] for n in columns): row.cells for row in rows}


def demand_faults(tables):
    """An allowance goes by amount or by rank; a load of a circuit stands in the published table;
    what gives current, or counts whole, has no usual rating to be guessed by."""
    loads = {row.cells["load"] for row in tables["demand/allowance.csv"]}
    for row in tables["demand/allowance.csv"]:
        shares = {row.cells[n] for n in ("largest", "second", "rest")}
        if row.cells["first_a"] and len(shares) > 1:
            yield Fault("pair", row.file, row.line, "goes by amount and by rank at once",
                        "three equal shares beside first_a")
    kinds = indexed(tables["demand/kind.csv"], "kind")
    for row in tables["demand/kind.csv"]:
        if row.cells["load"] not in (*loads, *LOADS_OUTSIDE):
            yield Fault("pair", row.file, row.line, f"{row.cells['load']} is not in the table",
                        "a load of allowance.csv")
    for row in tables["demand/usual.csv"]:
        kind = kinds.get((row.cells["kind"],))
        if kind and kind["load"] in ("generation", "storage battery"):
            yield Fault("pair", row.file, row.line, "a usual rating of what gives current",
                        "kinds that draw current")


def ware_faults(tables):
    """What has a word at the counter is in the price book; armour lies over what is under it."""
    priced = {row.cells["item"] for row in tables["price/demo.csv"]}
    for row in tables["ware/item.csv"]:
        if row.cells["item"] not in priced:
            yield Fault("pair", row.file, row.line, f"no price for {row.cells['item']}",
                        "an item of the price book")
    sized = ("family", "cores", "section_mm2")
    over = indexed(tables["cable/overall_diameter.csv"], *sized)
    for row in tables["ware/build.csv"]:
        whole = over.get(tuple(row.cells[n] for n in sized))
        if not whole or row.cells["under_armour_mm"] >= whole["overall_mm"]:
            yield Fault("pair", row.file, row.line, "no thinner than the cable",
                        "less than its overall diameter")


def pair_faults(tables):
    """Laws between two rows of one table that are no order along a column."""
    yield from ware_faults(tables)
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
    yield from demand_faults(tables)
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
