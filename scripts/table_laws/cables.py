"""Laws that tie the tables about cables to physics and to each other."""
import math

from table_laws.across import indexed
from table_laws.shape import Fault
from table_laws.shop import FLAT, SHOP

HOTTEST = {"thermosetting 90": 90, "thermoplastic 70": 70}
CLEANER = (("armoured PVC copper", "armoured XLPE copper"),
           ("unarmoured PVC copper", "unarmoured XLPE copper"))
ALUMINIUM, ITS_COPPER = "armoured XLPE aluminium", "armoured XLPE copper"

# (method, method that cools no worse)
COOLER = (("A", "B"), ("B", "C"), ("C", "E"), ("D", "C"), ("101", "100"), ("100", "C"),
          ("103", "101"), ("103", "102"), ("102", "C"))
# (family, loaded, section, method): the tables print these above the method that cools better.
PRINTED_SO = (("armoured PVC copper", 2, 1.5, "D"), ("armoured PVC copper", 2, 2.5, "D"))


def near(row, value, wanted, share):
    if abs(value - wanted) > share * wanted:
        yield Fault("physics", row.file, row.line, f"{value:g} does not fit {wanted:.4g}",
                    f"within {share:.1%}")


def heat_faults(tables):
    """k by its formula, Ca by the square root law."""
    material = indexed(tables["cable/material.csv"], "material")
    for row in tables["cable/fault_k.csv"]:
        c, m = row.cells, material.get((row.cells["material"],))
        if m:
            ratio = (m["beta_c"] + c["final_c"]) / (m["beta_c"] + c["initial_c"])
            yield from near(row, c["k"], m["big_k"] * math.sqrt(math.log(ratio)), 0.015)
    for row in tables["cable/factor_ambient.csv"]:
        c, hottest = row.cells, HOTTEST[row.cells["insulation"]]
        if c["temperature_c"] < hottest:
            base = 30 if c["place"] == "air" else 20
            law = math.sqrt((hottest - c["temperature_c"]) / (hottest - base))
            yield from near(row, c["factor"], law, 0.03)


def drop_faults(tables):
    """Tabulated drop: twice, or root three of, a core's resistance hot and its reactance."""
    material = indexed(tables["cable/material.csv"], "material")
    core = indexed(tables["cable/conductor_resistance.csv"], "material", "section_mm2")
    reactance = indexed(tables["cable/conductor_reactance.csv"], "insulation", "section_mm2")
    for row in tables["cable/voltage_drop.csv"]:
        c, made = row.cells, SHOP[row.cells["family"]]
        cores = 2 if c["loaded"] == 2 else math.sqrt(3)
        own, metal = core.get((made.metal, c["section_mm2"])), material.get((made.metal,))
        if own and metal:
            hot = 1 + metal["alpha20_per_k"] * (HOTTEST[made.insulation] - 20)
            yield from near(row, c["r_mv_per_a_m"], cores * own["r20_mohm_per_m"] * hot, 0.03)
        x = reactance.get((made.insulation, c["section_mm2"]))
        if x and (c["x_mv_per_a_m"] > 0 or c["section_mm2"] > 16):
            yield from near(row, c["x_mv_per_a_m"], cores * x["x_mohm_per_m"], 0.03)


def armour_faults(tables):
    area = indexed(tables["cable/armour_area.csv"], "family", "cores", "section_mm2")
    for row in tables["cable/armour_resistance.csv"]:
        c = row.cells
        steel = area.get((c["family"], c["cores"], c["section_mm2"]))
        if steel and not 145 <= c["r20_mohm_per_m"] * steel["area_mm2"] <= 175:
            yield Fault("physics", row.file, row.line, "resistance x area is "
                        f"{c['r20_mohm_per_m'] * steel['area_mm2']:g}", "145 to 175 mohm.mm2/m")


def rating_faults(tables):
    """Ratings of one cable by method and loaded cores, and of one size by family."""
    names = ("family", "loaded", "section_mm2", "method")
    rating = indexed(tables["cable/rating.csv"], *names)
    for row in tables["cable/rating.csv"]:
        c, key = row.cells, tuple(row.cells[n] for n in names)
        for worse, better in COOLER:
            other = rating.get((*key[:3], better))
            if c["method"] == worse and other and key not in PRINTED_SO \
                    and c["current_a"] > other["current_a"]:
                yield Fault("pair", row.file, row.line, f"method {worse} above method {better}",
                            f"at most {other['current_a']:g} A")
        two = rating.get((c["family"], 2, *key[2:]))
        if c["loaded"] == 3 and two and c["current_a"] >= two["current_a"]:
            yield Fault("pair", row.file, row.line, "three loaded not below two loaded",
                        f"less than {two['current_a']:g} A")
        wall = rating.get((*key[:3], "C"))
        if c["family"] == FLAT and c["method"] == "103" and wall \
                and c["current_a"] > wall["current_a"] / 2:
            yield Fault("pair", row.file, row.line, "method 103 above half of method C",
                        f"at most {wall['current_a'] / 2:g} A")
        yield from family_faults(row, key, rating)


def family_faults(row, key, rating):
    family, current = key[0], row.cells["current_a"]
    for cool, hot in CLEANER:
        other = rating.get((hot, *key[1:]))
        if family == cool and other and current >= other["current_a"]:
            yield Fault("pair", row.file, row.line, f"not below {hot}",
                        f"less than {other['current_a']:g} A")
    copper = rating.get((ITS_COPPER, *key[1:]))
    if family == ALUMINIUM and copper and not 0.70 <= current / copper["current_a"] <= 0.80:
        yield Fault("pair", row.file, row.line, f"is {current / copper['current_a']:.2f} of copper",
                    "0.70 to 0.80 of copper")


def made_faults(tables):
    """Construction: what the families are made of, which core may protect, what a laying needs."""
    for row in tables["cable/family.csv"]:
        c, made = row.cells, SHOP[row.cells["family"]]
        steel = "yes" if "D" in made.methods else "no"
        if (c["metal"], c["insulation"], c["armoured"]) != (made.metal, made.insulation, steel):
            yield Fault("pair", row.file, row.line, "is not what its name says",
                        f"{made.metal}, {made.insulation}, armoured {steel}")
    known = indexed(tables["cable/conductor_resistance.csv"], "material", "section_mm2")
    for row in tables["cable/size.csv"]:
        c = row.cells
        own = c["section_mm2"] if c["cores"] in (3, 5) else 0
        if c["family"] == FLAT:
            fits = ("copper", c["cpc_mm2"]) in known and c["cpc_mm2"] <= c["section_mm2"]
        else:
            fits = c["cpc_mm2"] == own
        if not fits:
            yield Fault("pair", row.file, row.line, f"cpc of {c['cpc_mm2']:g} mm2",
                        "a section that is made" if c["family"] == FLAT else f"{own:g} mm2")
    for row in tables["cable/method.csv"]:
        if row.cells["method"] not in SHOP[row.cells["family"]].methods:
            yield Fault("pair", row.file, row.line,
                        f"method {row.cells['method']} is not tabulated for it",
                        ", ".join(SHOP[row.cells["family"]].methods))


def stray_faults(tables):
    """Rows about a cable that is not made."""
    made = {}
    for row in tables["cable/size.csv"]:
        c = row.cells
        made.setdefault((c["family"], c["section_mm2"]), set()).add(c["cores"])
    for name in ("armour_area", "armour_resistance", "overall_diameter", "rating", "voltage_drop"):
        for row in tables[f"cable/{name}.csv"]:
            c = row.cells
            cores = made.get((c["family"], c["section_mm2"]), set())
            fits = c["cores"] in cores if "cores" in c else any(n >= c["loaded"] for n in cores)
            if not fits:
                yield Fault("pair", row.file, row.line, "is about a cable that is not made",
                            "a size of cable/size.csv")


LAWS = (heat_faults, drop_faults, armour_faults, rating_faults, made_faults, stray_faults)
