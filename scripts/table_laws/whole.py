"""Rows that must be there, and what a price book must hold."""
import itertools
import re

from table_laws.shape import TABLES, Fault, kind_of
from table_laws.words import EARTHINGS, FUSE, FUSES, PATHS, PRICED


def wanted_rows(tables):
    """For each file that must be whole: the key columns and the keys it must hold."""
    sections = {row.cells["section_mm2"] for file in TABLES for row in tables[file]
                if "section_mm2" in row.cells}
    by_core = (("cores", "section_mm2"), set(itertools.product((2, 3), sections)))
    by_size = (("section_mm2",), {(s,) for s in sections})
    three = ("armour_area", "armour_resistance", "overall_diameter")
    one = ("conductor_resistance", "conductor_reactance", "voltage_drop")
    wanted = {f"cable/{name}.csv": by_core for name in three}
    wanted.update({f"cable/{name}.csv": by_size for name in one})
    wanted["cable/rating.csv"] = (("method", "section_mm2"),
                                  set(itertools.product("CED", sections)))
    groupings = kind_of("cable/factor_grouping.csv", "arrangement").words
    wanted["cable/factor_grouping.csv"] = (("arrangement", "circuits"),
                                           set(itertools.product(groupings, (1, 2, 3, 4, 5, 6))))
    wanted["device/rcd.csv"] = (("kind", "multiple"),
                                set(itertools.product(("general", "delayed"), (1, 2, 5))))
    for name in ("kind", "overload"):
        wanted[f"device/{name}.csv"] = (
            ("standard",), {(row.cells["standard"],) for row in tables["device/device.csv"]})
    wanted["rules/dependability.csv"] = (("earthing", "protective"),
                                         set(itertools.product(EARTHINGS, PATHS)))
    for file, column in (("rules/limit.csv", "key"), ("rules/unknown.csv", "fact"),
                         ("rules/depth_advice.csv", "surface"), ("earth/soil.csv", "soil"),
                         ("cable/fault_k.csv", "use"), ("cable/material.csv", "material"),
                         ("cable/armour_ac.csv", "key")):
        wanted[file] = ((column,), {(word,) for word in kind_of(file, column).words})
    fuses = {" ".join(("fuse", *(() if c["standard"] == FUSE else (c["standard"],)),
                       f"{c['rating_a']:g}"))
             for c in (row.cells for row in tables["device/device.csv"])
             if c["standard"] in FUSES}
    cables = {f"cable {n}x{s:g}" for n in (2, 3) for s in sections}
    wanted["price/demo.csv"] = (("item",), {(i,) for i in (*PRICED, *fuses, *cables)})
    wanted["cable/factor_ambient.csv"] = (("place", "factor"), {("air", 1), ("ground", 1)})
    for name in ("soil", "depth"):
        wanted[f"cable/factor_{name}.csv"] = (("laying", "factor"), {("direct", 1), ("duct", 1)})
    wanted["earth/rod_parallel.csv"] = (("rods",), {(1,), (2,), (3,), (4,)})
    wanted["cable/factor_insulation.csv"] = (("length_mm",), {(500,)})
    return wanted


def whole_faults(tables):
    for file, (columns, keys) in wanted_rows(tables).items():
        held = {tuple(row.cells[n] for n in columns) for row in tables[file]}
        for key in sorted(keys - held, key=str):
            name = ", ".join(f"{n} {v:g}" if isinstance(v, float) else f"{n} {v}"
                             for n, v in zip(columns, key))
            yield Fault("whole", file, len(tables[file]) + 2, f"no row for {name}", "one row")


def price_faults(tables):
    price = {row.cells["item"]: row for row in tables["price/demo.csv"]}
    cables = sorted((float(m[2]), int(m[1]), row) for item, row in price.items()
                    if (m := re.fullmatch(r"cable ([23])x([\d.]+)", item)))
    dearest = {2: 0, 3: 0}
    for _, cores, row in cables:
        net, least = row.cells["net_gbp"], max(dearest[n] for n in range(2, cores + 1))
        if net <= least:
            yield Fault("price", row.file, row.line, f"{net:g} for a larger cable",
                        f"more than {least:g}")
        dearest[cores] = net
