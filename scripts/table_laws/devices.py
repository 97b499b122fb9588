"""Laws that tie the tables of fuses and breakers together."""
from table_laws.shape import Fault
from table_laws.words import BREAKERS, FUSES, KINDS

NAMES = ("standard", "curve", "rating_a")
FUSE_KINDS, CLASS_ENDS = KINDS[:2], 40


def name(row):
    return tuple(row.cells[n] for n in NAMES)


def in_band(band, device):
    """Whether a row with rating_from_a and rating_to_a speaks of the device (a row's cells)."""
    b = band.cells
    return (b["standard"] == device["standard"] and b["curve"] == device["curve"]
            and b["rating_from_a"] <= device["rating_a"] <= b["rating_to_a"])


def fault(row, what, allowed):
    return Fault("device", row.file, row.line, what, allowed)


def kind_faults(tables):
    """Every standard has one kind, one I2 and, an RCBO alone, one residual sensitivity."""
    kinds = {row.cells["standard"]: row.cells["kind"] for row in tables["device/kind.csv"]}
    for row in tables["device/kind.csv"]:
        c = row.cells
        if (c["kind"] in FUSE_KINDS) != (c["standard"] in FUSES):
            yield fault(row, f"{c['standard']} is no {c['kind']}", "the kind its title names")
        places = [r for r in tables["device/residual.csv"] if r.cells["place"] == c["standard"]]
        if len(places) != (c["kind"] == "rcbo"):
            yield fault(row, f"{len(places)} residual rows", "one for an RCBO, none else")
    for row in tables["device/overload.csv"]:
        bare = kinds.get(row.cells["standard"]) == "rewirable"
        if bare != (row.cells["i2_ratio"] > 1.45):
            yield fault(row, f"i2_ratio {row.cells['i2_ratio']:g}",
                        "2 for a rewirable fuse, at most 1.45 for all else")
    if not any(row.cells["place"] == "head" for row in tables["device/residual.csv"]):
        yield Fault("device", "device/residual.csv", 1, "nothing for the head of a run", "head")
    for row in tables["device/residual.csv"]:
        c = row.cells
        if (c["place"] == "head") != (c["kind"] == "delayed"):
            yield fault(row, f"{c['kind']} at {c['place']}", "delayed at the head, general else")


def limit_faults(tables):
    """A breaker has one class limit, or one row that says why it has none; a fuse has neither."""
    for row in tables["device/device.csv"]:
        c = row.cells
        classes = [b for b in tables["device/let_through.csv"] if in_band(b, c)
                   and b.cells["breaking_ka"] == c["breaking_ka"]]
        none = [b for b in tables["device/unlimited.csv"] if in_band(b, c)]
        if len(classes) + len(none) != (c["standard"] in BREAKERS):
            yield fault(row, f"{len(classes)} let-through rows fit and {len(none)} that deny one",
                        "one of either for a breaker")
    for row in tables["device/let_through_at.csv"]:
        above = [b for b in tables["device/let_through.csv"]
                 if all(b.cells[k] == row.cells[k] for k in ("standard", "curve", "rating_to_a"))]
        if not above or any(b.cells["i2t_a2s"] <= row.cells["i2t_a2s"] for b in above):
            yield fault(row, "no less than at the breaking capacity",
                        "a row of device/let_through.csv that lets through more")
    for row in tables["device/let_through.csv"]:
        if row.cells["rating_to_a"] > CLASS_ENDS:
            yield fault(row, "let-through above the end of the classes", f"{CLASS_ENDS} A")


def curve_faults(tables):
    """Each device has a curve, each curve a device; a breaker's reaches from 5 s to its end."""
    drawn = {}
    for row in tables["device/curve.csv"]:
        drawn.setdefault(name(row), []).append(row)
    known = {name(row): row for row in tables["device/device.csv"]}
    for key, row in known.items():
        times = {p.cells["time_s"] for p in drawn.get(key, ())}
        wanted = {5} if key[0] in FUSES else {0.2 if key[1] == "TM" else 0.1, 5}
        if not wanted <= times:
            yield fault(row, "has no curve", "points at " + ", ".join(
                f"{t:g} s" for t in sorted(wanted)) + " in device/curve.csv")
        if (key[0] in FUSES) != (key[1] == "-"):
            yield fault(row, f"curve '{key[1]}'", "- for a fuse, letters for a breaker")
    for key, rows in drawn.items():
        for row in rows:
            if key not in known:
                yield fault(row, "no such device", "a row of device.csv")
            if row.cells["current_a"] < 2 * row.cells["rating_a"]:
                yield fault(row, f"operates at {row.cells['current_a']:g} A",
                            f"at least twice the rating: {2 * row.cells['rating_a']:g} A")


def held_current(row, rating):
    return row.cells["current"] * (rating if row.cells["unit"] == "In" else 1)


def hold_faults(tables):
    """A device holds its rating for an hour, and its band never crosses itself."""
    devices = tables["device/device.csv"]
    for row in tables["device/hold.csv"]:
        if not any(in_band(row, d.cells) for d in devices):
            yield fault(row, "no such device", "a row of device.csv")
    for device in {name(row): row for row in devices}.values():
        c = device.cells
        held = sorted((row for row in tables["device/hold.csv"] if in_band(row, c)),
                      key=lambda row: row.cells["time_s"])
        if not held or held[-1].cells["time_s"] < 3600:
            yield fault(device, "holds nothing for an hour", "a row of device/hold.csv")
        for quick, slow in zip(held, held[1:]):
            a, b = (held_current(row, c["rating_a"]) for row in (quick, slow))
            if a <= b or quick.cells["time_s"] == slow.cells["time_s"]:
                yield fault(slow, f"holds {b:g} A at {c['rating_a']:g} A", f"below {a:g} A")
        points = [row for row in tables["device/curve.csv"] if name(row) == name(device)]
        for row in held:
            amps = held_current(row, c["rating_a"])
            if amps < c["rating_a"]:
                yield fault(row, f"holds only {amps:g} A", f"at least {c['rating_a']:g} A")
            for p in points:
                if amps >= p.cells["current_a"] and row.cells["time_s"] >= p.cells["time_s"]:
                    yield fault(row, f"holds {amps:g} A that operates it",
                                f"below {p.cells['current_a']:g} A")


def energy_faults(tables):
    """The heat of a fuse's curve falls with the current: what bounds larger currents rests on it."""
    kinds = {row.cells["standard"]: row.cells["kind"] for row in tables["device/kind.csv"]}
    curves = {}
    for row in tables["device/curve.csv"]:
        if kinds.get(row.cells["standard"]) == "fuse":
            curves.setdefault(name(row), []).append(row)
    for rows in curves.values():
        rows.sort(key=lambda row: row.cells["time_s"])
        for quick, slow in zip(rows, rows[1:]):
            a, b = (r.cells["current_a"] ** 2 * r.cells["time_s"] for r in (quick, slow))
            if a > b:
                yield fault(quick, f"lets through {a:g} A2s", f"at most {b:g} A2s")


def trip_faults(tables):
    """What a device does not bear for long lies between what it holds and its curve."""
    devices = {name(row): row.cells for row in tables["device/device.csv"]}
    for row in tables["device/trip.csv"]:
        c, fit = row.cells, [d for d in devices.values() if in_band(row, d)]
        if not fit:
            yield fault(row, "no such device", "a row of device.csv")
        for d in fit:
            amps = c["current_in"] * d["rating_a"]
            held = [held_current(h, d["rating_a"]) for h in tables["device/hold.csv"]
                    if in_band(h, d) and h.cells["time_s"] >= c["time_s"]]
            if held and amps <= max(held):
                yield fault(row, f"operates at {amps:g} A that it holds", f"above {max(held):g} A")
            sooner = [p.cells["current_a"] for p in tables["device/curve.csv"]
                      if all(p.cells[n] == d[n] for n in NAMES)]
            if sooner and amps >= min(sooner):
                yield fault(row, f"{amps:g} A within the curve", f"below {min(sooner):g} A")


def melting_faults(tables):
    """What melts a fuse is no more than its hold at 0.01 s and less than its curve lets through."""
    fuses = {name(row): row.cells for row in tables["device/device.csv"]
             if row.cells["standard"] in FUSES}
    for row in tables["device/pre_arcing.csv"]:
        c = row.cells
        key = (c["standard"], "-", c["rating_a"])
        if key not in fuses:
            yield fault(row, "no such fuse", "a row of device.csv")
            continue
        for h in tables["device/hold.csv"]:
            if in_band(h, fuses[key]) and h.cells["time_s"] == 0.01:
                most = 1.01 * held_current(h, c["rating_a"]) ** 2 * 0.01
                if c["i2t_a2s"] > most:
                    yield fault(row, f"{c['i2t_a2s']:g} A2s", f"at most {most:g}, its hold at 0.01 s")
    for row in tables["device/fuse_ratio.csv"]:
        if row.cells["standard"] not in FUSES[:2]:
            yield fault(row, f"{row.cells['standard']} is no gG fuse", " or ".join(FUSES[:2]))


def device_faults(tables):
    for law in (kind_faults, limit_faults, curve_faults, hold_faults, energy_faults, trip_faults,
                melting_faults):
        yield from law(tables)
