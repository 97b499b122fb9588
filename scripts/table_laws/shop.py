"""The cables the tables must hold, by family: what they are made of, their sizes, their layings."""
import collections
import itertools

INSULATIONS = ("thermosetting 90", "thermoplastic 70")
LAYINGS = ("clipped", "tray", "free air", "conduit", "trunking", "insulated", "above ceiling",
           "direct", "duct", "overhead")
METHODS = ("A", "B", "C", "E", "D", "100", "101", "102", "103")

# metal, insulation, sections by number of cores, layings and methods that must be tabulated.
Made = collections.namedtuple("Made", "metal insulation sections layings methods")

_TO_50 = (1.5, 2.5, 4, 6, 10, 16, 25, 35, 50)
_TO_95 = (*_TO_50, 70, 95)
_INDOORS = (1, 1.5, 2.5, 4, 6, 10, 16, 25, 35)
_ALUMINIUM = (16, 25, 35, 50, 70, 95)
_ARMOURED_WAYS = ("clipped", "tray", "free air", "overhead", "insulated", "direct", "duct")
_ROUND_WAYS = ("clipped", "tray", "free air", "conduit", "trunking", "insulated")
_FLAT_WAYS = (*_ROUND_WAYS, "above ceiling")

SHOP = {
    "armoured XLPE copper": Made(
        "copper", "thermosetting 90", {2: _TO_95, 3: _TO_95, 4: _TO_95, 5: _TO_50},
        _ARMOURED_WAYS, "CED"),
    "armoured PVC copper": Made(
        "copper", "thermoplastic 70", {2: _TO_95, 3: _TO_95, 4: _TO_95}, _ARMOURED_WAYS, "CED"),
    "armoured XLPE aluminium": Made(
        "aluminium", "thermosetting 90", {2: _ALUMINIUM, 4: _ALUMINIUM}, _ARMOURED_WAYS, "CED"),
    "flat twin and earth": Made(
        "copper", "thermoplastic 70", {2: (1, 1.5, 2.5, 4, 6, 10, 16)}, _FLAT_WAYS,
        ("A", "B", "C", "100", "101", "102", "103")),
    "unarmoured XLPE copper": Made(
        "copper", "thermosetting 90", {3: _INDOORS, 5: _INDOORS}, _ROUND_WAYS, "ABCE"),
    "unarmoured PVC copper": Made(
        "copper", "thermoplastic 70", {3: _INDOORS, 5: _INDOORS}, _ROUND_WAYS, "ABCE")}
ARMOURED = tuple(family for family in SHOP if family.startswith("armoured"))
FLAT = "flat twin and earth"


def sizes(families=tuple(SHOP)):
    """(family, cores, section) of every cable of these families."""
    return {(family, cores, section) for family in families
            for cores, sections in SHOP[family].sections.items() for section in sections}


def duties():
    """(family, loaded cores, section) of every cable: two, or three where it has three cores."""
    return {(family, loaded, section) for family, cores, section in sizes()
            for loaded in (2, 3) if loaded <= cores}


def rated():
    """(family, loaded cores, section, method) of every rating."""
    return {(*duty, method) for duty in duties() for method in SHOP[duty[0]].methods}


def price_item(family, cores, section):
    name = "" if family == "armoured XLPE copper" else f"{family} "
    return f"cable {name}{cores}x{section:g}"


def metal_sections():
    """(metal, section) of every core, and of every smaller protective core of flat cable."""
    return {(SHOP[family].metal, section) for family, _, section in sizes()}


def hot_conductors():
    """(use, metal, insulation) of every conductor a fault may heat."""
    cores = {(use, made.metal, made.insulation) for made in SHOP.values()
             for use in ("live", "core")}
    steel = {("armour", "steel", SHOP[family].insulation) for family in ARMOURED}
    return cores | steel | {("separate", "copper", "thermoplastic 70")}


def layings():
    return set(itertools.chain.from_iterable(
        ((family, laying) for laying in made.layings) for family, made in SHOP.items()))
