#include "study/electrode.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using site::ElectrodeKind;
using support::measured;

SoilSetting soil_of(double resistivity, bool whole_year = true, bool dry = false) {
    SoilSetting soil;
    soil.worst = soil.best = {even_soil(ohm_metres(resistivity))};
    soil.whole_year = whole_year;
    soil.read_dry = dry;
    return soil;
}

site::Electrode rods(double count, double length, double diameter_mm = 16) {
    site::Electrode e;
    e.rods = measured(count);
    e.length = measured(metres(length));
    e.diameter = measured(millimetres(diameter_mm));
    return e;
}

ThroughTheYear year(const site::Electrode& e, const SoilSetting& soil) {
    return through_the_year(support::catalogue(), soil, built(e, support::catalogue()));
}

double high(const site::Electrode& e, double rho = 100) {
    const ThroughTheYear y = year(e, soil_of(rho));
    EXPECT_TRUE(y.solved);
    return y.high.number();
}

TEST(OwnElectrode, OneRodReadsWhatTheHandbookGives) {
    // rho/(2 pi L)(ln(8 L/d) - 1), BS 7430: 71.6 ohm, about one per cent above the field.
    EXPECT_NEAR(high(rods(1, 1.2)), 71.6, 1.2);
    EXPECT_NEAR(high(rods(1, 2.4), 200), 2 * 40.7, 1.5);
}

TEST(OwnElectrode, WithoutAWordItIsTheUsualRod) {
    const BuiltElectrode b = built({}, support::catalogue());
    EXPECT_TRUE(b.usual);
    EXPECT_EQ(b.length, support::catalogue().limits.rod_length.value);
    EXPECT_EQ(electrode_words(b, {}), "one rod of 2.4 m");
}

TEST(OwnElectrode, RodsStandWhereTheSurveySays) {
    site::Electrode e = rods(3, 1.2);
    EXPECT_EQ(electrode_words(built(e, support::catalogue()), e), "3 rods of 1.2 m, 1.2 m apart");
    e.arrangement = site::Arrangement::triangle;
    const auto& wires = built(e, support::catalogue()).wires;
    ASSERT_EQ(wires.size(), 3u);
    for (std::size_t i = 0; i < 3; ++i) {
        const auto& a = wires[i].from;
        const auto& b = wires[(i + 1) % 3].from;
        EXPECT_NEAR(std::hypot((a.east - b.east).number(), (a.north - b.north).number()), 1.2,
                    1e-9);
    }
}

TEST(OwnElectrode, MoreMetalNeverReadsHigher) {
    EXPECT_LT(high(rods(1, 2.4)), high(rods(1, 1.2)));
    EXPECT_LT(high(rods(2, 1.2)), high(rods(1, 1.2)));
    EXPECT_LT(high(rods(4, 1.2)), high(rods(3, 1.2)));
    site::Electrode apart = rods(2, 1.2);
    apart.spacing = measured(metres(5));
    EXPECT_LT(high(apart), high(rods(2, 1.2)));
}

TEST(OwnElectrode, WiresAndRingsMeetDwight) {
    site::Electrode wire;
    wire.kind = ElectrodeKind::buried_wire;
    wire.length = measured(metres(10));
    wire.diameter = measured(millimetres(8));
    wire.depth = measured(metres(0.6));
    EXPECT_NEAR(high(wire), 15.04, 0.2);  // Dwight 1936, straight wire
    site::Electrode ring = wire;
    ring.kind = ElectrodeKind::ring;
    ring.length = measured(metres(5));
    EXPECT_NEAR(high(ring), 11.5, 0.2);  // Dwight 1936, ring of 5 m at 0.6 m
}

TEST(OwnElectrode, APlateMeetsDwightWithinAFewPerCent) {
    site::Electrode plate;
    plate.kind = ElectrodeKind::plate;
    plate.length = measured(metres(0.6));
    plate.depth = measured(metres(1));
    EXPECT_NEAR(high(plate) / 40.8, 1, 0.035);  // Dwight 1936, disc of that area
}

TEST(OwnElectrode, ConcreteAddsWhatItsOwnResistivityAdds) {
    site::Electrode footing;
    footing.kind = ElectrodeKind::foundation;
    footing.length = measured(metres(6));
    footing.width = measured(metres(0.3));
    footing.diameter = measured(millimetres(12));
    footing.depth = measured(metres(0.6));
    site::Electrode bare = footing;
    bare.kind = ElectrodeKind::buried_wire;
    EXPECT_LT(high(footing, 500), high(bare, 500)) << "concrete is better than poor soil";
    EXPECT_GT(high(footing, 20), 0.9 * high(bare, 20));
}

TEST(OwnElectrode, ADrySummerAboutDoublesAShortRod) {
    const ThroughTheYear y = year(rods(1, 1.2), soil_of(100, false));
    EXPECT_GT(y.worst_season, 1.8);
    EXPECT_LT(y.worst_season, 2.6);
    EXPECT_STREQ(y.high_when, "top of the ground dried out");
    const ThroughTheYear deep = year(rods(1, 3.6), soil_of(100, false));
    EXPECT_LT(deep.worst_season, 1.35) << "a longer rod beats the season";
    EXPECT_GT(deep.worst_season, 1.1);
}

TEST(OwnElectrode, WhatWasReadDryDriesNoMore) {
    const ThroughTheYear y = year(rods(1, 1.2), soil_of(100, false, true));
    EXPECT_EQ(y.high, y.low);
    EXPECT_EQ(y.worst_season, 1);
}

TEST(OwnElectrode, WhatTouchesCannotBeWorkedOut) {
    BuiltElectrode b = rods_in_a_line(2, metres(1.2), millimetres(16), metres(0));
    Media media;
    EXPECT_FALSE(resistance_in(media.in(even_soil(ohm_metres(100))), b, ohm_metres(90)));
}

}  // namespace
}  // namespace toft::study
