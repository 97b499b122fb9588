#include "soil/fall_of_potential.h"

#include "support/grounds.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::soil {
namespace {

using field::LayeredSoil;
using field::layers;

/// What a meter shows on a rod, from the field of rod and current spike together.
struct Site {
    LayeredSoil soil;
    double length;
    double diameter;
    double spike;

    field::Field field() const {
        return field::field_of(
            soil, {field::rod(0, 0, length, diameter, 0), field::rod(spike, 0, 0.3, 0.01, 1)});
    }
};

double truth(const Site& site) { return site.field().resistance(0, 0).number(); }

FallTest test_at(const Site& site, const std::vector<double>& shares, bool known_rod = true) {
    const field::Field field = site.field();
    const field::Currents currents{amperes(1), amperes(-1)};
    const Volts rise = field.rises(currents)[0];
    FallTest test;
    test.current_spike = metres(site.spike);
    if (known_rod) {
        test.length = metres(site.length);
        test.diameter = metres(site.diameter);
    }
    for (double share : shares) {
        const Volts there = field.potential(field::spot(share * site.spike, 0, 0), currents);
        test.readings.push_back({metres(share * site.spike), (rise - there) / amperes(1)});
    }
    return test;
}

FallResult result_of(const FallTest& test) {
    const auto result = electrode_resistance(test);
    if (!result) throw std::runtime_error(result.error().front().says);
    return *result;
}

const std::vector<double> usual{0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8};

TEST(FallOfPotential, HalfBallsShowTheirResistanceAtTheGoldenPlace) {
    // MIL-HDBK-419A vol. 1, http://navalfacilities.tpub.com/hdbk419a_vol1/hdbk419a_vol10066.htm
    FallTest test;
    test.current_spike = metres(20);
    EXPECT_NEAR(overlap_error(test, metres(0.618034 * 20)), 0, 1e-5);
    EXPECT_NEAR(overlap_error(test, metres(0.5 * 20)), -0.1, 1e-9);  // D/r = 10: -10 %
    EXPECT_NEAR(overlap_error(test, metres(0.65 * 20)), 0.032, 5e-4);
    EXPECT_NEAR(overlap_error(test, metres(0.7 * 20)), 0.091, 6e-4);
}

TEST(FallOfPotential, PublishedSpikeDistancesKeepTheErrorOfOneReadingUnderAPerCent) {
    // https://www.easymanua.ls/aemc/4500/manual?p=30: depth of a 1 in rod, Z and Y, all in feet.
    const double rows[][3] = {
        {6, 72, 45}, {10, 88, 55}, {12, 96, 60}, {20, 120, 74}, {30, 140, 86}};
    for (const auto& [depth, z, y] : rows) {
        const Site site{field::plain_soil(), 0.3048 * depth, 0.0254, 0.3048 * z};
        const FallTest test = test_at(site, {y / z});
        EXPECT_NEAR(test.readings[0].resistance.number() / truth(site), 1, 0.01) << depth;
        EXPECT_NEAR(overlap_error(test, test.readings[0].distance), 0, 0.01) << depth;
        const FallResult curve = result_of(test_at(site, {0.52, 0.62, 0.72}));
        EXPECT_EQ(curve.plateau, Plateau::flat) << depth;
        EXPECT_NEAR(curve.resistance.number() / truth(site), 1, 0.01) << depth;
    }
}

TEST(FallOfPotential, RealRodsErrAsTheTableSays) {
    // 1.2 m rod at 0.5 D and at 0.618 D (own computation elsewhere).
    for (const auto& [d, half, golden] :
         {std::tuple{3.6, -0.053, 0.005}, std::tuple{6.0, -0.035, 0.0012}}) {
        const Site site{field::plain_soil(), 1.2, 0.016, d};
        const FallTest test = test_at(site, {0.5, 0.618});
        EXPECT_NEAR(test.readings[0].resistance.number() / truth(site) - 1, half, 0.003);
        EXPECT_NEAR(test.readings[1].resistance.number() / truth(site) - 1, golden, 0.003);
        EXPECT_NEAR(overlap_error(test, metres(0.5 * d)), half, 0.003);
    }
}

TEST(FallOfPotential, TheErrorGivenHoldsTheTruthInLayeredSoil) {
    for (const LayeredSoil& soil : {field::plain_soil(), layers(300, 60, 1), layers(60, 300, 1),
                                    layers(100, 500, 3), layers(500, 100, 3)}) {
        for (double spike : {8.0, 15.0, 30.0}) {
            for (bool known : {true, false}) {
                const Site site{soil, 2.4, 0.016, spike};
                const FallResult result = result_of(test_at(site, usual, known));
                const double r = truth(site);
                EXPECT_LE(result.low.number(), r)
                    << soil.upper.number() << " " << soil.lower.number() << " " << spike << known;
                EXPECT_GE(result.high.number(), r)
                    << soil.upper.number() << " " << soil.lower.number() << " " << spike << known;
            }
        }
    }
}

TEST(FallOfPotential, ASpikeTooNearShowsNoPlateau) {
    Plateau before = Plateau::none;
    double width = 1e9;
    for (const auto& [spike, plateau] :
         {std::pair{2.5, Plateau::none}, std::pair{6.0, Plateau::sloping},
          std::pair{30.0, Plateau::flat}}) {
        const FallResult result =
            result_of(test_at({field::plain_soil(), 2.4, 0.016, spike}, usual));
        EXPECT_EQ(result.plateau, plateau) << spike << " " << result.change;
        EXPECT_LT((result.high - result.low) / result.resistance, width);
        width = (result.high - result.low) / result.resistance;
        before = result.plateau;
        if (plateau == Plateau::flat) continue;
        const FallResult farther = result_of(
            test_at({field::plain_soil(), 2.4, 0.016, 1.1 * result.far_enough.number()}, usual));
        EXPECT_EQ(farther.plateau, Plateau::flat);
    }
    EXPECT_EQ(before, Plateau::flat);
    EXPECT_NE(
        result_of(test_at({field::plain_soil(), 2.4, 0.016, 2.5}, usual)).says.find("too near"),
        std::string::npos);
}

TEST(FallOfPotential, FewReadingsProveNoPlateau) {
    const Site site{field::plain_soil(), 1.2, 0.016, 10};
    for (const std::vector<double>& shares : {std::vector{0.6}, std::vector{0.5, 0.7}}) {
        for (bool known : {true, false}) {
            const FallResult result = result_of(test_at(site, shares, known));
            EXPECT_EQ(result.plateau, Plateau::unproven);
            EXPECT_LT(result.low.number(), truth(site));
            EXPECT_GT(result.high.number(), truth(site));
            EXPECT_EQ(result.change, 0);
        }
    }
}

TEST(FallOfPotential, ReadingsThatFollowNoCurveAreIrregular) {
    FallTest test = test_at({field::plain_soil(), 1.2, 0.016, 20}, usual);
    test.readings[3].resistance = 1.6 * test.readings[3].resistance;
    EXPECT_EQ(result_of(test).plateau, Plateau::irregular);
    FallTest falling = test_at({field::plain_soil(), 1.2, 0.016, 20}, usual);
    for (std::size_t i = 0; i < usual.size(); ++i) {
        falling.readings[i].resistance = ohms(100 - 8.0 * static_cast<double>(i));
    }
    EXPECT_EQ(result_of(falling).plateau, Plateau::irregular);
}

TEST(FallOfPotential, ReadsBetweenReadingsAtTheGoldenPlace) {
    FallTest test;
    test.current_spike = metres(10);
    test.readings = {{metres(6), ohms(20)}, {metres(6.5), ohms(21)}};
    ASSERT_TRUE(result_of(test).at_618);
    EXPECT_NEAR(result_of(test).at_618->number(), 20 + 0.180340 / 0.5, 1e-5);
    test.readings = {{metres(2), ohms(20)}, {metres(9), ohms(21)}};
    EXPECT_FALSE(result_of(test).at_618);
    test.readings = {{metres(7), ohms(20)}, {metres(9), ohms(21)}};
    EXPECT_FALSE(result_of(test).at_618);
}

TEST(FallOfPotential, SaysAllThatIsWrong) {
    FallTest test;
    test.readings = {
        {metres(5), ohms(10)}, {metres(4), ohms(-1)}, {metres(0), ohms(3)}, {metres(12), ohms(3)}};
    test.length = metres(1);
    const auto result = electrode_resistance(test);
    ASSERT_FALSE(result);
    std::vector<std::string> all;
    for (const Fault& fault : result.error()) all.push_back(fault.code + fault.pointer);
    EXPECT_NE(std::find(all.begin(), all.end(), "out-of-range/current_spike_m"), all.end());
    EXPECT_NE(std::find(all.begin(), all.end(), "out-of-range/length_m"), all.end());
    test.current_spike = metres(10);
    test.diameter = metres(0.016);
    const auto rest = electrode_resistance(test);
    ASSERT_FALSE(rest);
    all.clear();
    for (const Fault& fault : rest.error()) all.push_back(fault.code + fault.pointer);
    EXPECT_EQ(all,
              (std::vector<std::string>{
                  "out-of-range/readings/1/resistance_ohm", "out-of-order/readings/1/distance_m",
                  "out-of-range/readings/2/distance_m", "out-of-range/readings/3/distance_m"}));
    test.readings.clear();
    EXPECT_FALSE(electrode_resistance(test));
}

RC_GTEST_PROP(FallOfPotentialLaws, AHalfBallIsFoundExactlyWhateverItsSize, ()) {
    const double d = *rc::gen::inRange(10, 1000) / 10.0;
    const double radius = d / *rc::gen::inRange(5, 200);
    const double r = *rc::gen::inRange(1, 20000) / 10.0;
    FallTest test;
    test.current_spike = metres(d);
    for (double share : {0.4, 0.5, 0.6, 0.7}) {
        const double x = share * d;
        const double shown = r * (1 - radius * (1 / x + 1 / d - 1 / (d - x)));
        test.readings.push_back({metres(x), ohms(shown)});
    }
    const FallResult result = result_of(test);
    RC_ASSERT(std::fabs(result.resistance.number() / r - 1) < 1e-9);
    RC_ASSERT(result.low < result.resistance && result.resistance < result.high);
}

}  // namespace
}  // namespace toft::soil
