#include "field/electrode_shape.h"
#include "field/field.h"
#include "study/setting_parts.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

using support::between;
using support::measured;

constexpr double half_turn = 3.14159265358979;

class Apart : public ::testing::Test {
protected:
    Apart() {
        job_.ground.resistivity = between(ohm_metres(100), ohm_metres(100));
        job_.intake.demand = measured(amperes(60));
        job_.buildings[1].load = measured(amperes(1e-9));
        job_.intake.earth_without_neutral = {};
        job_.buildings[1].electrode.from_house_earth = measured(metres(10));
    }
    const BuildingSetting<Silent>& of() {
        setting_ = support::prepared(job_);
        return setting_.building;
    }
    static double share(double re, double gap) {
        return 1 / std::hypot(1, gap * re * 2 * half_turn / 100);
    }
    /// Rise of the ground at `gap` from an earth of that resistance, 60 A of load on: by hand.
    static double rise(double re, double gap) {
        return 1.1 * 230 * re / (re + 230.0 / 60) * share(re, gap);
    }

    site::Job job_ = support::plain_job();
    Setting<Silent> setting_;
};

TEST_F(Apart, NoHouseEarthLiftsTheGroundMoreThanSaid) {
    const double said = of().lift_most.number();
    double worst = 0;
    for (double re = 0.05; re < 500; re *= 1.02) worst = std::max(worst, rise(re, 10));
    EXPECT_LE(worst, said * (1 + 1e-9));
    EXPECT_NEAR(worst / said, 1, 1e-3);
}

TEST_F(Apart, AtTheDistanceWantedTheWorstEarthJustKeepsToTheTouchVoltage) {
    const double gap = of().gap_needed.number();
    double worst = 0;
    for (double re = 0.05; re < 500; re *= 1.02) worst = std::max(worst, rise(re, gap));
    EXPECT_NEAR(worst, 50, 0.05);
    job_.buildings[1].electrode.from_house_earth = measured(metres(gap));
    EXPECT_NEAR(of().lift_most.number(), 50, 1e-6);
}

TEST_F(Apart, AKnownHouseEarthWantsNoMore) {
    const double unknown = of().gap_needed.number();
    for (const double re : {0.5, 2.0, 8.0, 60.0}) {
        job_.intake.earth_without_neutral = measured(ohms(re));
        EXPECT_LE(of().gap_needed.number(), unknown * (1 + 1e-9)) << re;
        EXPECT_NEAR(of().lift_most.number(), rise(re, 10), 1e-6) << re;
    }
}

TEST_F(Apart, WetterSoilAndLessLoadNeedLess) {
    const double before = of().gap_needed.number();
    job_.intake.demand = measured(amperes(20));
    EXPECT_NEAR(of().gap_needed.number(), before / 3, 1e-9);
    job_.ground.resistivity = between(ohm_metres(10), ohm_metres(10));
    EXPECT_NEAR(of().gap_needed.number(), before / 30, 1e-9);
}

TEST_F(Apart, OnlyACombinedEarthIsJudged) {
    EXPECT_TRUE(of().gap_judged);
    job_.intake.earthing = site::Earthing::tn_s;
    EXPECT_FALSE(of().gap_judged);
}

TEST_F(Apart, TheShareSaidBoundsRealHouseEarths) {
    // Field solutions of a rod, a ring, a mesh, a long pipe seen from its end and from its side.
    const field::LayeredSoil soil = field::uniform_soil(ohm_metres(100));
    const auto at = [](double east, double depth) {
        return field::Spot{metres(east), metres(0), metres(depth)};
    };
    std::vector<std::vector<field::Wire>> earths{
        {field::rod_wire(at(0, 0), metres(2.4), millimetres(8))},
        field::ring_wires(at(-4, 0.5), metres(8), millimetres(5), 24),
        {{at(-20, 0.6), at(0, 0.6), millimetres(11)}},
        {{{metres(0), metres(-10), metres(0.6)},
          {metres(0), metres(10), metres(0.6)},
          millimetres(11)}},
        field::mesh_wires({at(-6, 0.4), metres(6), metres(5), 3, 3}, millimetres(6))};
    for (std::size_t i = 0; i < earths.size(); ++i) {
        const auto field = field::solve_field(soil, earths[i]);
        ASSERT_TRUE(field);
        const double r = field->joined().number();
        for (const double gap : {2.5, 5.0, 10.0, 20.0}) {
            const double lifted = field->potential(at(gap, 0), {amperes(1)}).number() / r;
            EXPECT_LE(lifted, share(r, gap)) << "earth " << i << " at " << gap;
            EXPECT_GE(lifted, 0.35 * share(r, gap)) << "a bound, not a fright";
        }
    }
}

}  // namespace
}  // namespace toft::study
