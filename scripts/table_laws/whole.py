"""Rows that must be there, and what a price book must hold."""
import itertools

from table_laws import shop
from table_laws.shape import TABLES, Fault, kind_of
from table_laws.words import (
    EARTHINGS, FUSE, FUSES, LOADS, PATHS, PREMISES, PRICED)


def wanted_cables():
    """For each table about cables: the key columns and the keys it must hold."""
    sized, armoured = ("family", "cores", "section_mm2"), shop.sizes(shop.ARMOURED)
    places = {(place, insulation, 1) for place in ("air", "ground")
              for insulation in shop.INSULATIONS}
    insulated = {(shop.SHOP[family].insulation, section) for family, _, section in shop.sizes()}
    return {
        "cable/family.csv": (("family",), {(family,) for family in shop.SHOP}),
        "cable/method.csv": (("family", "laying"), shop.layings()),
        "cable/size.csv": (sized, shop.sizes()),
        "cable/armour_area.csv": (sized, armoured),
        "cable/armour_resistance.csv": (sized, armoured),
        "cable/overall_diameter.csv": (sized, armoured),
        "cable/conductor_resistance.csv": (("material", "section_mm2"), shop.metal_sections()),
        "cable/conductor_reactance.csv": (("insulation", "section_mm2"), insulated),
        "cable/voltage_drop.csv": (("family", "loaded", "section_mm2"), shop.duties()),
        "cable/rating.csv": (("family", "loaded", "section_mm2", "method"), shop.rated()),
        "cable/fault_k.csv": (("use", "material", "insulation"), shop.hot_conductors()),
        "cable/factor_ambient.csv": (("place", "insulation", "factor"), places)}


def wanted_rows(tables):
    """For each file that must be whole: the key columns and the keys it must hold."""
    wanted = wanted_cables()
    groupings = kind_of("cable/factor_grouping.csv", "arrangement").words
    wanted["cable/factor_grouping.csv"] = (("arrangement", "circuits"),
                                           set(itertools.product(groupings, (1, 2, 3, 4, 5, 6))))
    wanted["device/rcd.csv"] = (("kind", "multiple"),
                                set(itertools.product(("general", "delayed"), (1, 2, 5))))
    wanted["cable/separate.csv"] = (("section_mm2",), {(10,)})
    for name in ("kind", "overload"):
        wanted[f"device/{name}.csv"] = (
            ("standard",), {(row.cells["standard"],) for row in tables["device/device.csv"]})
    wanted["rules/dependability.csv"] = (("earthing", "protective"),
                                         set(itertools.product(EARTHINGS, PATHS)))
    wanted["demand/allowance.csv"] = (
        ("load", "premises"),
        set(itertools.product(LOADS, PREMISES)) - {("motors", "household")})
    wanted["demand/usual.csv"] = (("kind",), {("socket ring",), ("socket radial",), ("lighting",),
                                              ("vehicle charging",), ("sauna",), ("shower",)})
    wanted["demand/tails.csv"] = (("section_mm2",), {(16,), (25,)})
    for file, column in (("rules/limit.csv", "key"), ("demand/kind.csv", "kind"),
                         ("demand/premises.csv", "use"), ("demand/yearly.csv", "use"), ("rules/unknown.csv", "fact"),
                         ("rules/earthing_basis.csv", "key"),
                         ("rules/depth_advice.csv", "surface"), ("rules/circuit_kind.csv", "kind"),
                         ("guard/need.csv", "key"), ("guard/basis.csv", "key"),
                         ("guard/type.csv", "kind"), ("lever/worth.csv", "key"), ("client/term.csv", "key"), ("guard/leakage.csv", "kind"),
                         ("rules/depth_advice.csv", "surface"),
                         ("rules/overhead_height.csv", "surface"), ("earth/soil.csv", "soil"),
                         ("cable/material.csv", "material"), ("cable/armour_ac.csv", "key"),
                         ("shock/body_path.csv", "path"), ("shock/heart_factor.csv", "path"),
                         ("shock/footwear.csv", "footwear"), ("shock/threshold.csv", "key"),
                         ("shock/constant.csv", "key"), ("ware/constant.csv", "key"), ("ware/gland_type.csv", "place"), ("shock/condition.csv", "condition")):
        wanted[file] = ((column,), {(word,) for word in kind_of(file, column).words})
    fuses = {" ".join(("fuse", *(() if c["standard"] == FUSE else (c["standard"],)),
                       f"{c['rating_a']:g}"))
             for c in (row.cells for row in tables["device/device.csv"])
             if c["standard"] in FUSES}
    cables = {shop.price_item(*size) for size in shop.sizes()}
    wanted["price/demo.csv"] = (("item",), {(i,) for i in (*PRICED, *fuses, *cables)})
    for name in ("soil", "depth"):
        wanted[f"cable/factor_{name}.csv"] = (("laying", "factor"), {("direct", 1), ("duct", 1)})
    wanted["earth/rod_parallel.csv"] = (("rods",), {(1,), (2,), (3,), (4,)})
    wanted["earth/rod_lambda.csv"] = (("arrangement", "rods"),
                                      {(a, n) for a in ("line", "square") for n in range(2, 11)})
    wanted["earth/wire_star.csv"] = (("arms",), {(2,), (3,), (4,), (6,), (8,)})
    wanted["earth/concrete.csv"] = (("state",), {("moist",)})
    wanted["earth/season.csv"] = (("season",), {("dry crust",), ("frozen crust",)})
    wanted["shock/body_impedance.csv"] = (("skin", "touch_v"), set(itertools.product(
        kind_of("shock/body_impedance.csv", "skin").words, (25, 50, 75, 100, 225, 400, 1000))))
    wanted["shock/touch_curve.csv"] = (("curve", "touch_v"),
                                       {("dry", 75), ("dry", 220), ("dry", 500), ("wet", 50),
                                        ("wet", 280)})
    wanted["shock/current_zone.csv"] = (("line", "time_s"), {
        (line, t) for line in kind_of("shock/current_zone.csv", "line").words
        for t in (0.05, 0.1, 1, 10) if line != "a" or t == 10})
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
    """In each family a larger section, or a core more of the same, costs more."""
    price = {row.cells["item"]: row for row in tables["price/demo.csv"]}
    for family in shop.SHOP:
        dearest = dict.fromkeys(range(2, 6), 0)
        for _, cores, section in sorted(shop.sizes((family,)), key=lambda size: (size[2], size[1])):
            row = price.get(shop.price_item(family, cores, section))
            if row is None:
                continue
            net, least = row.cells["net_gbp"], max(dearest[n] for n in range(2, cores + 1))
            if net <= least:
                yield Fault("price", row.file, row.line, f"{net:g} for a larger cable",
                            f"more than {least:g}")
            dearest[cores] = net
    yield from range_faults(price.values())


def range_faults(rows):
    """A price lies between its low and its high end, where it has them."""
    for row in rows:
        ends = [row.cells[name] for name in ("low_gbp", "high_gbp")]
        if ends == ["", ""]:
            continue
        try:
            low, high = (float(end) for end in ends)
        except ValueError:
            low, high = 1, 0
        if not low <= row.cells["net_gbp"] <= high:
            yield Fault("price", row.file, row.line, "the price is outside its range",
                        "low_gbp to high_gbp")
