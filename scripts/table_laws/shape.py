"""Columns of every table, the kind of each cell, and the orders rows must keep."""
import collections

from table_laws.bounds import LIMITS, SHOCK, UNKNOWNS, WARE
from table_laws.shop import INSULATIONS, LAYINGS, METHODS, SHOP
from table_laws.words import (
    AUTHORITIES, BASES, BODY_PATHS, BREAKERS, CIRCUIT_KINDS, CIRCUITS, CITED, CONDITIONS,
    CLIENT_TERMS, EARTHING_STEPS, EARTHINGS, FOOTWEAR, FUSES, GUARD_BASES, HEART_PATHS, KINDS,
    LABEL_PLACES, LOADS, LOADS_OUTSIDE, PATHS, PREMISES, RCD_NEEDS, RCD_TYPES, SITUATIONS, SKINS,
    SOILS, SURFACES, USES, ZONE_LINES)

# Every law a fault may name.
LAW_NAMES = frozenset((
    "file", "version", "encoding", "quote", "header", "width", "blank", "number", "range", "word",
    "unique", "source", "seen", "note", "unused", "order", "interval", "unit", "physics", "pair",
    "device", "whole", "price"))

Number = collections.namedtuple("Number", "low high")
Words = collections.namedtuple("Words", "words")
TEXT, OPTIONAL = "text", "optional text"
Fault = collections.namedtuple("Fault", "law file line what allowed")
Row = collections.namedtuple("Row", "file line cells")

SIZE, RATING = Number(1, 300), Number(1, 200)
FACTOR, CURVE, CORES = Number(0.1, 2), Words(("-", "B", "C", "D", "TM")), Number(2, 5)
LAYING, FAMILIES, LOADED = Words(("direct", "duct")), Words(tuple(SHOP)), Number(2, 3)
CORE_METAL, INSULATION = Words(("copper", "aluminium")), Words(INSULATIONS)
BODY, DIAMETER = Number(100, 10000), Number(5, 100)
YES_NO = Words(("yes", "no"))
STANDARD, KEY, UNIT = Words((*FUSES, *BREAKERS)), TEXT, TEXT

# file: (number of leading columns that make a row unique, its value columns)
TABLES = {
    "sources.csv": (1, dict(key=TEXT, title=TEXT, edition=TEXT, where=TEXT, note=OPTIONAL,
                            seen=Words(("in print", "in reprint", "not seen")))),
    "cable/conductor_resistance.csv": (2, dict(
        material=CORE_METAL, section_mm2=SIZE, r20_mohm_per_m=Number(0.05, 20))),
    "cable/conductor_reactance.csv": (2, dict(
        insulation=INSULATION, section_mm2=SIZE, x_mohm_per_m=Number(0.06, 0.12))),
    "cable/family.csv": (1, dict(
        family=FAMILIES, standard=TEXT, metal=CORE_METAL, insulation=INSULATION, armoured=YES_NO,
        insulation_factor=YES_NO)),
    "cable/method.csv": (2, dict(family=FAMILIES, laying=Words(LAYINGS), method=Words(METHODS))),
    "cable/size.csv": (3, dict(
        family=FAMILIES, cores=CORES, section_mm2=SIZE, cpc_mm2=Number(0, 300))),
    "cable/armour_area.csv": (3, dict(
        family=FAMILIES, cores=CORES, section_mm2=SIZE, area_mm2=Number(10, 300))),
    "cable/armour_resistance.csv": (3, dict(
        family=FAMILIES, cores=CORES, section_mm2=SIZE, r20_mohm_per_m=Number(0.5, 15))),
    "cable/overall_diameter.csv": (3, dict(
        family=FAMILIES, cores=CORES, section_mm2=SIZE, overall_mm=Number(8, 80))),
    "cable/separate.csv": (1, dict(section_mm2=SIZE)),
    "cable/rating.csv": (4, dict(family=FAMILIES, loaded=LOADED, section_mm2=SIZE,
                                 method=Words(METHODS), current_a=Number(5, 600))),
    "cable/voltage_drop.csv": (3, dict(
        family=FAMILIES, loaded=LOADED, section_mm2=SIZE, r_mv_per_a_m=Number(0.1, 50),
        x_mv_per_a_m=Number(0, 0.3))),
    "cable/factor_ambient.csv": (3, dict(
        place=Words(("air", "ground")), insulation=INSULATION, temperature_c=Number(5, 85),
        factor=FACTOR)),
    "cable/factor_soil.csv": (2, dict(
        laying=LAYING, resistivity_k_m_per_w=Number(0.3, 4), factor=FACTOR)),
    "cable/factor_depth.csv": (2, dict(laying=LAYING, depth_m=Number(0.3, 4), factor=FACTOR)),
    "cable/factor_grouping.csv": (2, dict(
        arrangement=Words(("bunched", "clipped", "tray", "buried direct", "buried in duct")),
        circuits=Number(1, 20), factor=Number(0.1, 1))),
    "cable/factor_insulation.csv": (1, dict(length_mm=Number(10, 1000), factor=Number(0.1, 1))),
    "cable/factor_harmonic.csv": (1, dict(
        third_to_percent=Number(5, 100), by=Words(("line", "neutral")), factor=Number(0.1, 1))),
    "cable/fault_k.csv": (3, dict(
        use=Words(("live", "core", "armour", "separate")),
        material=Words(("copper", "aluminium", "steel")), insulation=INSULATION,
        initial_c=Number(20, 100), final_c=Number(130, 500), k=Number(20, 200))),
    "cable/material.csv": (1, dict(
        material=Words(("copper", "aluminium", "steel")), alpha20_per_k=Number(0.003, 0.006),
        beta_c=Number(150, 300), big_k=Number(30, 300))),
    "cable/armour_ac.csv": (1, dict(
        key=Words(("ac_factor", "reactance")), value=Number(0.1, 2),
        unit=Words(("ratio", "mohm/m")))),
    "device/device.csv": (4, dict(
        standard=STANDARD, curve=CURVE, rating_a=RATING, breaking_ka=Number(1, 50))),
    "device/curve.csv": (4, dict(standard=STANDARD, curve=CURVE, rating_a=RATING,
                                 time_s=Number(0.1, 5), current_a=Number(5, 4000))),
    "device/hold.csv": (5, dict(
        standard=STANDARD, curve=CURVE, rating_from_a=RATING, rating_to_a=RATING,
        time_s=Number(0.01, 10800), current=Number(1, 6000), unit=Words(("A", "In")))),
    "device/trip.csv": (5, dict(
        standard=STANDARD, curve=CURVE, rating_from_a=RATING, rating_to_a=RATING,
        time_s=Number(10, 10800), current_in=Number(1.1, 3))),
    "device/pre_arcing.csv": (2, dict(standard=STANDARD, rating_a=RATING,
                                      i2t_a2s=Number(10, 1000000))),
    "device/fuse_ratio.csv": (1, dict(standard=STANDARD, rating_from_a=RATING,
                                      ratio=Number(1.25, 4))),
    "device/kind.csv": (1, dict(standard=STANDARD, kind=Words(KINDS))),
    "device/overload.csv": (1, dict(standard=STANDARD, i2_ratio=Number(1.2, 2))),
    "device/residual.csv": (2, dict(
        place=Words(("head", "BS EN 61009")), sensitivity_ma=Number(10, 500),
        kind=Words(("general", "delayed")))),
    "device/unlimited.csv": (4, dict(
        standard=Words(BREAKERS), curve=Words(("B", "C", "D", "TM")), rating_from_a=RATING,
        rating_to_a=RATING)),
    "device/let_through.csv": (6, dict(
        standard=Words(BREAKERS[:2]), curve=Words(("B", "C")), rating_from_a=RATING,
        rating_to_a=RATING, breaking_ka=Number(1, 25), energy_class=Number(3, 3),
        i2t_a2s=Number(1000, 500000))),
    "device/let_through_at.csv": (5, dict(
        standard=Words(BREAKERS[:2]), curve=Words(("B", "C")), rating_from_a=RATING,
        rating_to_a=RATING, fault_ka=Number(1, 6), i2t_a2s=Number(1000, 500000))),
    "device/rcd.csv": (2, dict(
        kind=Words(("general", "delayed")), multiple=Number(1, 5), longest_ms=Number(10, 500),
        shortest_ms=Number(0, 500))),
    "guard/need.csv": (1, dict(
        key=Words(RCD_NEEDS), sensitivity_ma=Number(10, 500), kind=Words(AUTHORITIES),
        clause=TEXT)),
    "guard/basis.csv": (1, dict(key=Words(GUARD_BASES), kind=Words(AUTHORITIES), clause=TEXT)),
    "guard/type.csv": (1, dict(
        kind=Words(CIRCUIT_KINDS), plain=Words(RCD_TYPES), drive_one=Words(RCD_TYPES),
        drive_three=Words(RCD_TYPES), unsaid=Words(("plain", "drive")))),
    "guard/leakage.csv": (1, dict(
        kind=Words(CIRCUIT_KINDS), low_ma=Number(0, 30), high_ma=Number(0.1, 30))),
    "ask/find_out.csv": (1, dict(
        fact=TEXT, question=TEXT, how=TEXT, minutes=Number(1, 300),
        by=Words(("anyone", "electrician", "operator")), values=TEXT)),
    "found/found.csv": (4, dict(
        found=TEXT, at=Words(("building", "house", "run")),
        earthing=Words(("any", "own electrode", "house's earth")),
        cable=Words(("any", "kept", "anew")),
        weight=Words(("danger now", "danger", "wrong", "record")),
        verdict=Words(("meets", "caution", "fails")), wrong=TEXT, danger=TEXT, first=TEXT,
        item=TEXT, tell=TEXT, clause=TEXT)),
    "lever/lever.csv": (1, dict(key=TEXT, says=TEXT, many=TEXT, cost=TEXT, value=TEXT)),
    "lever/worth.csv": (1, dict(
        key=Words(("least.saving", "more.headroom", "small.cost")), value=Number(0.01, 100),
        unit=Words(("GBP", "ratio", "%")))),
    "tolerance/usual.csv": (2, dict(
        fact=Words(("length", "ze", "neutral loop", "fault current", "electrode")),
        known=Words(("measured", "declared", "assumed")), per_cent=Number(0.1, 60),
        spread=Words(("even", "bell")))),
    "later/addition.csv": (1, dict(
        key=TEXT, says=TEXT, form=Words((*CIRCUIT_KINDS, "building")), load_w=Number(100, 50000),
        length_m=Number(1, 200))),
    "test/step.csv": (1, dict(key=TEXT, state=Words(("dead", "live")), what=TEXT, how=TEXT, clause=TEXT)),
    "trench/dimension.csv": (1, dict(
        key=TEXT, value=Number(0.1, 5000), unit=Words(("mm", "m", "%", "kg", "kg/m3", "ratio")))),
    "trench/made_good.csv": (1, dict(surface=Words(SURFACES), layer_mm=Number(0, 400), says=TEXT)),
    "trench/photo.csv": (1, dict(
        key=TEXT, says=TEXT, when=Words((
            "always", "services", "several", "duct", "joint", "armour", "electrode", "fixed")))),
    "ware/gland.csv": (1, dict(size=TEXT, under_most_mm=DIAMETER, over_from_mm=DIAMETER,
                               over_to_mm=DIAMETER)),
    "ware/gland_type.csv": (1, dict(
        place=Words(("dry", "outdoors", "wet")), type=TEXT, seals=TEXT)),
    "ware/duct.csv": (1, dict(outside_mm=Number(20, 200), bore_mm=Number(15, 190))),
    "ware/support.csv": (2, dict(
        armoured=YES_NO, over_mm=Number(0, 100), to_mm=DIAMETER, level_mm=Number(150, 1000),
        upright_mm=Number(150, 1000))),
    "ware/bend.csv": (2, dict(
        armoured=YES_NO, over_mm2=Number(0, 1000), to_mm2=Number(1, 1000), times=Number(3, 12))),
    "ware/build.csv": (3, dict(
        family=FAMILIES, cores=CORES, section_mm2=SIZE, under_armour_mm=DIAMETER,
        mass_kg_per_km=Number(100, 10000))),
    "ware/single.csv": (1, dict(section_mm2=SIZE, overall_mm=Number(3, 20))),
    "ware/sold.csv": (2, dict(what=Words(("cable", "duct", "tape")), length_m=Number(3, 1000))),
    "ware/constant.csv": (1, dict(
        key=Words(tuple(WARE)), value=Number(0.01, 1000), unit=UNIT)),
    "ware/item.csv": (1, dict(item=TEXT, what=TEXT)),
    "label/label.csv": (1, dict(
        key=TEXT, when=Words(SITUATIONS), at=Words(LABEL_PLACES),
        style=Words(("warning", "plain", "chart")), width_mm=Number(30, 176), big=TEXT, small=TEXT,
        fields=TEXT, clause=TEXT)),
    "client/notice.csv": (3, dict(
        list=Words(("excluded", "earth", "tripped", "ask", "button")), when=Words(SITUATIONS),
        says=TEXT)),
    "client/word.csv": (1, dict(word=TEXT, means=TEXT)),
    "client/term.csv": (1, dict(
        key=Words(CLIENT_TERMS), value=Number(0.5, 1000),
        unit=Words(("day", "%", "month", "mm", "V")))),
    "rules/limit.csv": (1, dict(
        key=Words(tuple(LIMITS)), value=Number(0.01, 1000), unit=UNIT)),
    "rules/main_bonding.csv": (1, dict(neutral_over_mm2=Number(0, 1000),
                                       neutral_to_mm2=Number(1, 1000), bond_mm2=Number(6, 100))),
    "rules/circuit_kind.csv": (1, dict(
        kind=Words(CIRCUITS), least_a=Number(5, 63), least_mm2=Number(1, 6), start=Number(1, 15))),
    "rules/depth_advice.csv": (1, dict(surface=Words(SURFACES), depth_m=Number(0.4, 2))),
    "rules/overhead_height.csv": (1, dict(surface=Words(SURFACES), height_m=Number(3, 8))),
    "rules/dependability.csv": (2, dict(
        earthing=Words(EARTHINGS), protective=Words(PATHS), ordinal=Number(1, 5))),
    "rules/earthing_basis.csv": (1, dict(
        key=Words(EARTHING_STEPS), kind=Words(AUTHORITIES), clause=TEXT)),
    "rules/unknown.csv": (1, dict(fact=Words(tuple(UNKNOWNS)), low=Number(0, 10000),
                                  high=Number(0, 10000), unit=UNIT)),
    "demand/allowance.csv": (2, dict(
        load=Words(LOADS), premises=Words(PREMISES), first_a=Number(0, 20), largest=Number(0.2, 1),
        second=Number(0.2, 1), rest=Number(0.2, 1), extra_a=Number(0, 13))),
    "demand/kind.csv": (1, dict(
        kind=Words(CIRCUIT_KINDS), load=Words((*LOADS, *LOADS_OUTSIDE)), alone=YES_NO)),
    "demand/usual.csv": (1, dict(kind=Words(CIRCUIT_KINDS), usual_a=Number(6, 63))),
    "demand/premises.csv": (1, dict(use=Words(USES), premises=Words(PREMISES))),
    "demand/yearly.csv": (1, dict(use=Words(USES), hours=Number(20, 8760))),
    "demand/tails.csv": (1, dict(section_mm2=Number(6, 95), carries_a=Number(30, 200))),
    "earth/soil.csv": (1, dict(soil=Words(SOILS), low_ohm_m=Number(1, 20000),
                               high_ohm_m=Number(1, 20000))),
    "earth/rod_parallel.csv": (1, dict(rods=Number(1, 24), factor=Number(1, 3))),
    "earth/rod_lambda.csv": (2, {
        "arrangement": Words(("line", "square")), "rods": Number(2, 24),
        "lambda": Number(1, 10)}),
    "earth/wire_star.csv": (1, dict(arms=Number(2, 8), c0=Number(-1, 20), c1=Number(-10, 1),
                                    c2=Number(0, 10), c4=Number(-2, 0))),
    "earth/concrete.csv": (1, dict(state=Words(("moist",)), low_ohm_m=Number(10, 1000),
                                   high_ohm_m=Number(10, 1000))),
    "earth/season.csv": (1, dict(season=Words(("dry crust", "frozen crust")),
                                 depth_m=Number(0.1, 3), factor=Number(1, 50))),
    "shock/body_impedance.csv": (2, dict(skin=Words(SKINS), touch_v=Number(10, 1000), p5_ohm=BODY,
                                         p50_ohm=BODY, p95_ohm=BODY)),
    "shock/body_path.csv": (1, dict(path=Words(BODY_PATHS), share=Number(0.4, 1))),
    "shock/heart_factor.csv": (1, dict(path=Words(HEART_PATHS), factor=Number(0.01, 2))),
    "shock/footwear.csv": (1, dict(footwear=Words(FOOTWEAR), both_ohm=Number(0, 10000))),
    "shock/touch_curve.csv": (2, dict(curve=Words(("dry", "wet")), touch_v=Number(30, 1000),
                                      longest_s=Number(0.01, 5))),
    "shock/current_zone.csv": (2, dict(line=Words(ZONE_LINES), time_s=Number(0.01, 10),
                                       current_ma=Number(0.5, 2000))),
    "shock/threshold.csv": (1, dict(key=Words(("wet", "dry", "charging point")),
                                    value_v=Number(12, 120), belongs_to=TEXT)),
    "shock/constant.csv": (1, dict(key=Words(tuple(SHOCK)), value=Number(0.01, 100000),
                                   unit=UNIT)),
    "shock/condition.csv": (1, dict(
        condition=Words(CONDITIONS), skin=Words(SKINS), path=Words(BODY_PATHS),
        percentile=Words(("5", "50", "95")), footwear=Words(FOOTWEAR),
        ground_ohm_m=Number(1, 10000))),
    "price/demo.csv": (1, dict(item=TEXT, unit=TEXT, net_gbp=Number(0, 5000), low_gbp=OPTIONAL,
                                 high_gbp=OPTIONAL, note=TEXT))}
UNCITED = ("sources.csv", "price/demo.csv")
ORDER_OF = {"sources.csv": ("key", "title", "edition", "where", "seen", "note")}

# (file, columns that stay equal, column that grows, value, what the value must never do)
ORDERS = (
    ("cable/conductor_resistance.csv", "material", "section_mm2", "r20_mohm_per_m", "rise"),
    ("cable/armour_area.csv", "family cores", "section_mm2", "area_mm2", "fall"),
    ("cable/armour_area.csv", "family section_mm2", "cores", "area_mm2", "fall"),
    ("cable/armour_resistance.csv", "family cores", "section_mm2", "r20_mohm_per_m", "rise"),
    ("cable/armour_resistance.csv", "family section_mm2", "cores", "r20_mohm_per_m", "rise"),
    ("cable/overall_diameter.csv", "family cores", "section_mm2", "overall_mm", "fall"),
    ("cable/overall_diameter.csv", "family section_mm2", "cores", "overall_mm", "fall"),
    ("cable/size.csv", "family cores", "section_mm2", "cpc_mm2", "fall"),
    ("cable/rating.csv", "family loaded method", "section_mm2", "current_a", "fall"),
    ("cable/rating.csv", "family section_mm2 method", "loaded", "current_a", "rise"),
    ("cable/voltage_drop.csv", "family loaded", "section_mm2", "r_mv_per_a_m", "rise"),
    ("cable/voltage_drop.csv", "family section_mm2", "loaded", "r_mv_per_a_m", "rise"),
    ("cable/voltage_drop.csv", "family section_mm2", "loaded", "x_mv_per_a_m", "rise"),
    ("cable/factor_ambient.csv", "place insulation", "temperature_c", "factor", "rise"),
    ("cable/factor_soil.csv", "laying", "resistivity_k_m_per_w", "factor", "rise"),
    ("cable/factor_depth.csv", "laying", "depth_m", "factor", "rise"),
    ("cable/factor_grouping.csv", "arrangement", "circuits", "factor", "rise"),
    ("cable/factor_insulation.csv", "", "length_mm", "factor", "rise"),
    ("device/curve.csv", "standard curve rating_a", "time_s", "current_a", "rise"),
    ("device/curve.csv", "standard curve time_s", "rating_a", "current_a", "fall"),
    ("device/let_through.csv", "standard curve breaking_ka", "rating_to_a", "i2t_a2s", "fall"),
    ("device/let_through.csv", "standard curve rating_to_a", "breaking_ka", "i2t_a2s", "fall"),
    ("device/let_through_at.csv", "standard curve fault_ka", "rating_to_a", "i2t_a2s", "fall"),
    ("device/let_through_at.csv", "standard curve rating_to_a", "fault_ka", "i2t_a2s", "fall"),
    ("device/pre_arcing.csv", "standard", "rating_a", "i2t_a2s", "fall"),
    ("device/rcd.csv", "kind", "multiple", "longest_ms", "rise"),
    ("device/rcd.csv", "kind", "multiple", "shortest_ms", "rise"),
    ("rules/main_bonding.csv", "", "neutral_to_mm2", "bond_mm2", "fall"),
    ("earth/rod_parallel.csv", "", "rods", "factor", "fall"),
    ("earth/rod_lambda.csv", "arrangement", "rods", "lambda", "fall"),
    ("earth/wire_star.csv", "", "arms", "c0", "fall"),
    ("earth/wire_star.csv", "", "arms", "c1", "rise"),
    ("demand/tails.csv", "", "section_mm2", "carries_a", "fall"),
    ("shock/body_impedance.csv", "skin", "touch_v", "p5_ohm", "rise"),
    ("shock/body_impedance.csv", "skin", "touch_v", "p50_ohm", "rise"),
    ("shock/body_impedance.csv", "skin", "touch_v", "p95_ohm", "rise"),
    ("shock/touch_curve.csv", "curve", "touch_v", "longest_s", "rise"),
    ("shock/current_zone.csv", "line", "time_s", "current_ma", "rise"),
    ("ware/gland.csv", "", "over_to_mm", "under_most_mm", "fall"),
    ("ware/gland.csv", "", "over_to_mm", "over_from_mm", "fall"),
    ("ware/duct.csv", "", "outside_mm", "bore_mm", "fall"),
    ("ware/support.csv", "armoured", "over_mm", "level_mm", "fall"),
    ("ware/support.csv", "armoured", "over_mm", "upright_mm", "fall"),
    ("ware/bend.csv", "armoured", "over_mm2", "times", "fall"),
    ("ware/build.csv", "family cores", "section_mm2", "under_armour_mm", "fall"),
    ("ware/build.csv", "family section_mm2", "cores", "under_armour_mm", "fall"),
    ("ware/build.csv", "family cores", "section_mm2", "mass_kg_per_km", "fall"),
    ("ware/build.csv", "family section_mm2", "cores", "mass_kg_per_km", "fall"),
    ("ware/single.csv", "", "section_mm2", "overall_mm", "fall"))

# (file, lower column, upper column)
INTERVALS = (
    ("device/let_through.csv", "rating_from_a", "rating_to_a"),
    ("device/let_through_at.csv", "rating_from_a", "rating_to_a"),
    ("device/unlimited.csv", "rating_from_a", "rating_to_a"),
    ("device/hold.csv", "rating_from_a", "rating_to_a"),
    ("device/trip.csv", "rating_from_a", "rating_to_a"),
    ("device/rcd.csv", "shortest_ms", "longest_ms"),
    ("rules/main_bonding.csv", "neutral_over_mm2", "neutral_to_mm2"),
    ("guard/leakage.csv", "low_ma", "high_ma"), ("rules/unknown.csv", "low", "high"), ("earth/soil.csv", "low_ohm_m", "high_ohm_m"),
    ("earth/concrete.csv", "low_ohm_m", "high_ohm_m"),
    ("demand/allowance.csv", "second", "largest"), ("demand/allowance.csv", "rest", "second"),
    ("shock/body_impedance.csv", "p5_ohm", "p50_ohm"),
    ("shock/body_impedance.csv", "p50_ohm", "p95_ohm"),
    ("ware/gland.csv", "over_from_mm", "over_to_mm"), ("ware/gland.csv", "under_most_mm", "over_to_mm"),
    ("ware/duct.csv", "bore_mm", "outside_mm"), ("ware/support.csv", "over_mm", "to_mm"),
    ("ware/support.csv", "level_mm", "upright_mm"), ("ware/bend.csv", "over_mm2", "to_mm2"))


def header(file):
    names = ORDER_OF.get(file, tuple(TABLES[file][1]))
    return names if file in UNCITED else names + CITED


def kind_of(file, column):
    kinds = {"source": TEXT, "locator": TEXT, "basis": Words(BASES), "note": OPTIONAL}
    return TABLES[file][1].get(column) or kinds[column]
