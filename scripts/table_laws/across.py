"""Laws that tie tables to physics and to each other."""
import math

from table_laws.shape import Fault
from table_laws.words import EARTHINGS


def near(row, value, wanted, share):
    if abs(value - wanted) > share * wanted:
        yield Fault("physics", row.file, row.line, f"{value:g} does not fit {wanted:.4g}",
                    f"within {share:.1%}")


def indexed(rows, *columns):
    return {tuple(row.cells[n] for n in columns): row.cells for row in rows}


def physics_faults(tables):
    material = indexed(tables["cable/material.csv"], "material")
    copper = indexed(tables["cable/conductor_resistance.csv"], "material", "section_mm2")
    reactance = indexed(tables["cable/conductor_reactance.csv"], "section_mm2")
    area = indexed(tables["cable/armour_area.csv"], "family", "cores", "section_mm2")
    for row in tables["cable/fault_k.csv"]:
        c, m = row.cells, material.get((row.cells["material"],))
        if m:
            ratio = (m["beta_c"] + c["final_c"]) / (m["beta_c"] + c["initial_c"])
            yield from near(row, c["k"], m["big_k"] * math.sqrt(math.log(ratio)), 0.015)
    for row in tables["cable/voltage_drop.csv"]:
        c, core = row.cells, copper.get(("copper", row.cells["section_mm2"]))
        if core and ("copper",) in material:
            hot = 1 + material["copper",]["alpha20_per_k"] * (90 - 20)
            yield from near(row, c["r_mv_per_a_m"], 2 * core["r20_mohm_per_m"] * hot, 0.03)
        own = reactance.get((c["section_mm2"],))
        if own and (c["x_mv_per_a_m"] > 0 or c["section_mm2"] > 16):
            yield from near(row, c["x_mv_per_a_m"], 2 * own["x_mohm_per_m"], 0.03)
    for row in tables["cable/armour_resistance.csv"]:
        c = row.cells
        steel = area.get((c["family"], c["cores"], c["section_mm2"]))
        if steel and not 145 <= c["r20_mohm_per_m"] * steel["area_mm2"] <= 175:
            yield Fault("physics", row.file, row.line, "resistance x area is "
                        f"{c['r20_mohm_per_m'] * steel['area_mm2']:g}", "145 to 175 mohm.mm2/m")


def pair_faults(tables):
    """Laws between two rows of one table that are no order along a column."""
    rating = indexed(tables["cable/rating.csv"], "family", "section_mm2", "method")
    for row in tables["cable/rating.csv"]:
        c = row.cells
        on_wall = rating.get((c["family"], c["section_mm2"], "C"))
        if c["method"] == "E" and on_wall and c["current_a"] < on_wall["current_a"]:
            yield Fault("pair", row.file, row.line, "method E below method C",
                        f"at least {on_wall['current_a']:g} A")
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
