"""Units and believable values of limits and of ranges for unknown facts."""

# key: (unit, least, greatest believable value)
LIMITS = {
    "u0": ("V", 216, 253), "c.min": ("ratio", 0.9, 1), "c.max": ("ratio", 1, 1.1),
    "disconnection.tn.run": ("s", 0.1, 5), "disconnection.tt.run": ("s", 0.07, 1),
    "drop.run": ("%", 0.5, 5), "drop.lighting": ("%", 1, 3), "drop.other": ("%", 1, 5),
    "touch.voltage": ("V", 12, 50), "electrode.stable": ("ohm", 20, 200),
    "residual.socket": ("mA", 6, 30), "residual.ratio": ("ratio", 2, 5),
    "socket.most": ("A", 20, 63), "residual.leakage": ("ratio", 0.1, 0.5), "surge.reach": ("m", 5, 30),
    "charging.low": ("V", 200, 220), "charging.high": ("V", 240, 260),
    "overload.i2": ("ratio", 1, 1.45), "buried.cc": ("ratio", 0.8, 1),
    "test.factor": ("ratio", 0.7, 0.85), "loss.share": ("ratio", 0.1, 0.4), "reach": ("m", 2.5, 5),
    "extraneous": ("kohm", 22, 50), "declared.ze.tn-c-s": ("ohm", 0.35, 0.5),
    "declared.ze.tn-s": ("ohm", 0.8, 1), "declared.tt.source": ("ohm", 20, 25),
    "declared.pscc": ("kA", 16, 25), "assembly.conditional": ("kA", 6, 16),
    "assembly.fuse": ("A", 60, 100), "bond.half": ("ratio", 0.5, 1),
    "bond.min": ("mm2", 6, 10), "bond.max": ("mm2", 25, 35),
    "separate.min.protected": ("mm2", 2.5, 4), "separate.min": ("mm2", 4, 6),
    "separate.buried": ("mm2", 16, 25), "fault.longest": ("s", 1, 5),
    "parallel.least": ("mm2", 16, 70), "insulation.least": ("Mohm", 0.5, 1),
    "ring.equal": ("ohm", 0.01, 0.1), "insulation.look": ("Mohm", 1, 5), "reading.most": ("ratio", 1.05, 2),
    "unequal.most": ("ratio", 0.02, 0.2), "line.share": ("ratio", 0.3, 0.6), "tails.longest": ("m", 1, 5), "bond.run": ("m", 1, 20), "bond.least": ("mm2", 6, 25),
    "body.current": ("mA", 0.5, 30),
    "body.resistance": ("kohm", 0.5, 2), "insert.length": ("m", 0.3, 2),
    "rod.length": ("m", 0.6, 6), "rod.diameter": ("mm", 8, 25),
    "rod.section": ("m", 0.6, 3), "rod.deepest": ("m", 2.4, 30), "rod.most": ("rods", 1, 10),
    "ring.cable": ("A", 20, 30), "ring.section": ("mm2", 1.5, 4), "ring.point": ("A", 10, 32),
    "disconnection.final": ("s", 0.1, 0.8), "disconnection.final.sockets": ("A", 32, 63),
    "disconnection.final.others": ("A", 20, 32), "start.dip": ("%", 5, 30),
    "start.moment": ("s", 0.05, 1),
    "source.rise": ("%", 0.5, 3),
    "notice.demand": ("A", 40, 100), "notice.generation": ("A", 10, 32),
    "notice.days": ("days", 7, 60)}

# key: (unit, least, greatest believable value)
SHOCK = {
    "feet.contact": ("1/m", 1, 2), "electrode.short": ("A.(ohm.s)^0.5/m^1.5", 7000, 12000),
    "electrode.short.longest": ("s", 1, 10), "electrode.long": ("A/m2", 10, 100),
    "electrode.rise": ("K", 20, 80), "soil.conductivity.low": ("W/(m.K)", 0.3, 2),
    "soil.conductivity.high": ("W/(m.K)", 0.3, 2.5)}

# key: (unit, least and greatest believable value), of glands, ducts and laying
WARE = {
    "diameter.spread": ("%", 1, 15), "duct.fill": ("%", 20, 45), "duct.ratio": ("ratio", 1.2, 2),
    "duct.bends": ("degrees", 90, 360), "eye.copper": ("N/mm2", 30, 80),
    "eye.aluminium": ("N/mm2", 15, 50), "stocking": ("N/mm2", 1, 12),
    "friction.dry": ("ratio", 0.3, 0.8), "friction.wet": ("ratio", 0.1, 0.5),
    "spare.pairs": ("pair", 1, 5)}

# fact: (unit, least believable low, greatest believable high)
UNKNOWNS = {
    "ze.tn-c-s": ("ohm", 0.005, 1), "ze.tn-s": ("ohm", 0.005, 2), "ln_loop.tt": ("ohm", 0.005, 2),
    "electrode.house": ("ohm", 0.5, 2000), "supply_neutral": ("mm2", 6, 95),
    "earthing_conductor": ("mm2", 2.5, 35), "main_bonding": ("mm2", 0, 35),
    "service_fuse": ("A", 30, 100), "pscc": ("kA", 0.1, 25), "pscc.three": ("kA", 0.1, 50),
    "board.max_device": ("A", 16, 125), "board.behind_rcd": ("mA", 0, 500),
    "height": ("m", 2, 10),
    "thermal_resistivity": ("K.m/W", 0.5, 3), "ground_temperature": ("C", 0, 30),
    "air_temperature": ("C", 0, 50), "depth": ("m", 0.1, 2), "grouped": ("circuits", 0, 10),
    "grouped.buried": ("circuits", 0, 10),
    "earth.without.neutral": ("ohm", 0.05, 1000), "house.demand": ("A", 1, 200),
    "house.load.now": ("W", 50, 25000),
    "reach": ("m", 0, 50), "existing.insulation": ("Mohm", 0, 10000),
    "existing.r1_r2": ("ohm", 0, 100)}
