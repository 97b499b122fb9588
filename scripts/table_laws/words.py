"""Words the tables may use, and the items a price book must hold."""

FUSE = "BS 88-3"
FUSES = ("BS 88-3", "BS 88-2", "BS 1361", "BS 3036")
BREAKERS = ("BS EN 60898", "BS EN 61009", "BS EN 60947-2")
KINDS = ("fuse", "rewirable", "breaker", "rcbo", "moulded")
SURFACES = ("lawn", "bed", "path", "drive", "patio", "field", "shared path", "road")
EARTHINGS = ("supply earth", "shared electrode", "own electrode")
PATHS = ("armour", "core", "core and armour", "separate conductor",
         "armour and separate conductor")
SOILS = ("clay", "loam", "sand", "gravel", "chalk", "rock", "made ground", "peat")
AUTHORITIES = ("law", "standard", "operator's condition", "guidance", "habit")
EARTHING_STEPS = (
    "supply", "stays-separate", "movable", "pool", "animals", "wet-ground", "charging", "metalwork",
    "brings-in", "metal-building", "bonds", "house-bonds", "reach", "ground", "house-electrode",
    "added-electrode", "later")
CIRCUIT_KINDS = (
    "socket ring", "socket radial", "lighting", "fixed load", "motor", "welder", "vehicle charging",
    "hot tub", "sauna", "kiln", "heat pump", "pump", "freezer", "solar", "battery", "sub-board",
    "cooker", "shower", "water heater", "storage heater")
RCD_NEEDS = (
    "sockets", "outdoors", "luminaires", "hidden-cable", "pool", "sauna", "vehicle", "farm-sockets",
    "farm-large-sockets", "farm-rest", "caravan", "boat", "fire", "electrode", "choice")
GUARD_BASES = (
    "type-plain", "type-drive", "type-vehicle", "type-source", "upstream-type", "smooth-dc",
    "leakage", "pair", "apart", "tt-origin", "tt-incomer", "surge", "surge-second", "surge-leads",
    "arc", "vehicle", "livestock", "hot-tub", "sauna", "caravan", "boat", "container", "direction",
    "two-way", "bands", "apart-earths", "island-earth", "island-switch", "island-faults",
    "island-load")
RCD_TYPES = ("A", "F", "B")
BASES = ("published", "derived", "common practice", "memory")
SKINS = ("dry", "water-wet", "salt-wet")
BODY_PATHS = ("hand to hand", "hand to both feet", "both hands to both feet")
HEART_PATHS = ("left hand to feet", "both hands to feet", "right hand to feet", "hand to hand",
               "back to left hand", "back to right hand", "chest to left hand",
               "chest to right hand", "foot to foot")
FOOTWEAR = ("none", "old wet shoes", "shoes")
CONDITIONS = ("shod on dry ground", "barefoot on wet grass", "wet skin on wet ground")
ZONE_LINES = ("a", "b", "c1", "c2", "c3")
PREMISES = ("household", "small shop or office", "hotel")
LOADS = ("lighting", "heating and power", "cooking", "motors", "instantaneous water heating",
         "stored water heating", "floor warming", "storage heating", "final circuits",
         "other sockets and equipment", "vehicle charging")
LOADS_OUTSIDE = ("in full", "generation", "storage battery")
CIRCUITS = tuple(kind for kind in CIRCUIT_KINDS if kind != "sub-board")
USES = ("shed", "garage", "store", "office", "studio", "workshop", "gym", "greenhouse", "stable",
        "animal house", "pool house", "hot tub", "caravan pitch", "boat mooring", "other")
SITUATIONS = ("always", "own electrode", "shared electrode", "combined earth", "separate earth",
              "bonded", "residual", "buried", "sources", "high voltage", "fuse", "breaker")
LABEL_PLACES = ("outbuilding board", "near board", "house board", "origin", "bond", "rod", "route",
                "insulated gland", "old cores")
CLIENT_TERMS = ("offer.days", "choice.dearer", "test.months", "big.letters", "small.letters",
                "voltage.notice")
CITED = ("source", "locator", "basis", "note")

PRICED = (
    "gland pair small", "gland pair medium", "gland pair large", "insulated gland kit",
    "switch-fuse", "breaker B 6 kA", "breaker C 6 kA", "breaker B 10 kA", "breaker C 10 kA",
    "breaker D 6 kA", "breaker D 10 kA", "breaker over 40 A extra",
    *(f"RCBO {c} {k} kA" for c in "BCD" for k in (6, 10)),
    "moulded breaker 16 kA", "moulded breaker 25 kA", "new board", "connector blocks and tails", "delayed RCD",
    "outbuilding board", "30 mA RCBO", "rod", "rod connection and pit", "bond per connection",
    "house bonding upgrade", "earthing conductor upgrade", "sand and tape", "duct", "clips",
    "tray", "labour hour", "hours gland pair small", "hours gland pair medium",
    "hours gland pair large", "hours per m clipped", "hours per m pulled", "hours board",
    "hours house end", "hours rod", "hours bond", "test and paper", "VAT percent",
    "allowance percent", "tail m",
    "isolator", "switch-fuse three-pole", "three-phase board extra", "four-pole RCD extra",
    "three-pole device over one pole", "joint box", "hours joint box", "conduit", "trunking",
    "catenary wire", "plastic section in a pipe", "moving a tap", "soft starter",
    "load management unit", "test of an existing cable",
    "hours taking an old cable off", "parting two earths", "parting neutral and earth",
    "tracing a borrowed neutral", *(f"separate {s}" for s in (4, 6, 10, 16, 25, 35)), *(f"trench {s}" for s in SURFACES))
