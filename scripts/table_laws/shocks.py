"""Laws that tie the tables about the body and its currents to each other."""
from table_laws.across import indexed
from table_laws.shape import Fault
from table_laws.words import SKINS, ZONE_LINES


def skin_faults(tables):
    """Wetter skin never has more impedance."""
    held = indexed(tables["shock/body_impedance.csv"], "skin", "touch_v")
    for row in tables["shock/body_impedance.csv"]:
        c = row.cells
        drier = held.get((SKINS[max(0, SKINS.index(c["skin"]) - 1)], c["touch_v"]))
        for share in ("p5_ohm", "p50_ohm", "p95_ohm"):
            if drier and c[share] > drier[share]:
                yield Fault("pair", row.file, row.line, f"{share} above drier skin",
                            f"at most {drier[share]:g}")


def curve_faults(tables):
    """Where skin is wet no voltage may last longer."""
    held = indexed(tables["shock/touch_curve.csv"], "curve", "touch_v")
    for row in tables["shock/touch_curve.csv"]:
        c = row.cells
        dry = held.get(("dry", c["touch_v"]))
        if c["curve"] == "wet" and dry and c["longest_s"] > dry["longest_s"]:
            yield Fault("pair", row.file, row.line, "wet may last longer than dry",
                        f"at most {dry['longest_s']:g} s")


def zone_faults(tables):
    """The lines of the zones do not cross."""
    held = indexed(tables["shock/current_zone.csv"], "line", "time_s")
    for row in tables["shock/current_zone.csv"]:
        c = row.cells
        for lower in ZONE_LINES[:ZONE_LINES.index(c["line"])]:
            other = held.get((lower, c["time_s"]))
            if other and c["current_ma"] <= other["current_ma"]:
                yield Fault("pair", row.file, row.line, f"not above line {lower}",
                            f"more than {other['current_ma']:g} mA")


LAWS = (skin_faults, curve_faults, zone_faults)
