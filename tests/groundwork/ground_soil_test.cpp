#include "groundwork/grounding.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::answer {
namespace {

using support::between;
using support::measured;

SoilAnswer soil_of(const site::Job& job) { return ground_of(job).soil; }

/// Wenner readings that come to these apparent resistivities.
site::Job read_as(const std::vector<std::pair<double, double>>& spacing_and_rho) {
    site::Job job = support::plain_job();
    std::vector<std::pair<double, double>> readings;
    for (const auto& [a, rho] : spacing_and_rho) readings.emplace_back(a, rho / (2 * M_PI * a));
    read_pins(job, readings);
    return job;
}

TEST(SoilAnswers, AStatedResistivityIsOneLayer) {
    const SoilAnswer soil = soil_of(support::plain_job());  // 50 ohm metres, read in the dry
    EXPECT_EQ(soil.known_by, "stated resistivity");
    ASSERT_EQ(soil.strata.size(), 1u);
    EXPECT_NEAR(soil.strata[0].low_ohm_m, 50, 1e-12);
    EXPECT_NEAR(soil.strata[0].best_ohm_m, 50, 1e-9);
    EXPECT_NEAR(soil.strata[0].high_ohm_m, 50, 1e-12);
    EXPECT_FALSE(soil.strata[0].best_m) << "the deepest has no end";
    EXPECT_NE(soil.says.find("dry season"), std::string::npos);
    EXPECT_TRUE(soil.verdict.empty());
    EXPECT_TRUE(soil.readings.empty());
}

TEST(SoilAnswers, AWetReadingIsSaidToDry) {
    site::Job job = support::plain_job();
    job.ground.read_when = site::Season::wet;
    EXPECT_NE(soil_of(job).says.find("it will dry"), std::string::npos);
    job.ground.read_when.reset();
    EXPECT_NE(soil_of(job).says.find("it will dry"), std::string::npos) << "not known is wet";
}

TEST(SoilAnswers, ByItsKindOrByNothingItIsSaidToWantMeasuring) {
    site::Job job = support::plain_job();
    job.ground.resistivity = {};
    const SoilAnswer clay = soil_of(job);
    EXPECT_EQ(clay.known_by, "kind of soil");
    EXPECT_NE(clay.says.find("measure"), std::string::npos);
    job.ground.soil = "";
    const SoilAnswer open = soil_of(job);
    EXPECT_EQ(open.known_by, "nothing");
    EXPECT_LE(open.strata[0].low_ohm_m, clay.strata[0].low_ohm_m);
    EXPECT_GE(open.strata[0].high_ohm_m, clay.strata[0].high_ohm_m);
    for (const tables::Soil& row : support::catalogue().soils) {
        EXPECT_LE(open.strata[0].low_ohm_m, row.low.value.number());
        EXPECT_GE(open.strata[0].high_ohm_m, row.high.value.number());
    }
}

TEST(SoilAnswers, StatedLayersStandFromTheSurfaceDown) {
    site::Job job = support::plain_job();
    job.ground.resistivity = {};
    job.ground.layers = {{between(ohm_metres(80), ohm_metres(320)), metres(1.5)},
                         {measured(ohm_metres(30)), std::nullopt}};
    const SoilAnswer soil = soil_of(job);
    EXPECT_EQ(soil.known_by, "stated layers");
    ASSERT_EQ(soil.strata.size(), 2u);
    EXPECT_NEAR(soil.strata[0].low_ohm_m, 80, 1e-12);
    EXPECT_NEAR(soil.strata[0].best_ohm_m, 160, 1e-9) << "halfway by ratio";
    EXPECT_NEAR(soil.strata[0].high_ohm_m, 320, 1e-12);
    EXPECT_NEAR(soil.strata[0].best_m.value_or(0), 1.5, 1e-12);
    EXPECT_NEAR(soil.strata[1].high_ohm_m, 30, 1e-12);
}

TEST(SoilAnswers, ReadingsCarryTheirVerdictAndWhatEachIsOffBy) {
    // Nearly uniform, 60 ohm metres give or take 2 per cent.
    const SoilAnswer soil =
        soil_of(read_as({{0.5, 60.6}, {1, 59.4}, {2, 61.1}, {4, 58.9}, {8, 60.2}}));
    EXPECT_EQ(soil.known_by, "readings");
    EXPECT_EQ(soil.verdict, "uniform");
    EXPECT_FALSE(soil.says.empty());
    EXPECT_GT(soil.misfit_percent, 0.2);
    EXPECT_LT(soil.misfit_percent, 3);
    ASSERT_EQ(soil.readings.size(), 5u);
    double squares = 0;
    for (const SoilReadingAnswer& r : soil.readings) {
        EXPECT_EQ(r.array, "Wenner");
        EXPECT_NEAR(r.fitted_ohm_m, 60, 0.6);
        EXPECT_NEAR(r.apparent_ohm_m / r.fitted_ohm_m, 1 + r.off_percent / 100, 1e-9);
        EXPECT_FALSE(r.odd);
        squares += r.off_percent * r.off_percent;
    }
    EXPECT_NEAR(soil.readings[2].apparent_ohm_m, 61.1, 1e-9);
    EXPECT_NEAR(std::sqrt(squares / 5), soil.misfit_percent, 0.02 * soil.misfit_percent);
}

TEST(SoilAnswers, TwoLayersAreFoundWithTheirRanges) {
    // 150 ohm metres, 1.5 m thick, over 40 (own forward solution of two layers).
    const double k = (40.0 - 150) / (40 + 150);
    const auto apparent = [&](double a) {
        double sum = 1;
        for (int n = 1; n < 400; ++n) {
            const double x = 2 * n * 1.5 / a;
            sum += 4 * std::pow(k, n) * (1 / std::sqrt(1 + x * x) - 1 / std::sqrt(4 + x * x));
        }
        return 150 * sum;
    };
    std::vector<std::pair<double, double>> readings;
    for (const double a : {0.5, 1.0, 2.0, 3.0, 4.0, 8.0, 12.0})
        readings.emplace_back(a, apparent(a));
    const SoilAnswer soil = soil_of(read_as(readings));
    EXPECT_EQ(soil.verdict, "two layers");
    ASSERT_EQ(soil.strata.size(), 2u);
    const StratumAnswer& top = soil.strata[0];
    EXPECT_NEAR(top.best_ohm_m, 150, 1);
    EXPECT_NEAR(soil.strata[1].best_ohm_m, 40, 0.5);
    EXPECT_NEAR(top.best_m.value_or(0), 1.5, 0.02);
    EXPECT_LE(top.low_ohm_m, top.best_ohm_m);
    EXPECT_GE(top.high_ohm_m, top.best_ohm_m);
    EXPECT_LE(top.low_m.value_or(9), *top.best_m);
    EXPECT_GE(top.high_m.value_or(0), *top.best_m);
}

TEST(SoilAnswers, WhatReadingsDoNotBoundHasNoBound) {
    // Rising to the last spacing: how much the deep ground resists, nobody read.
    const SoilAnswer soil = soil_of(read_as({{0.5, 60}, {1, 62}, {2, 80}, {4, 130}}));
    EXPECT_EQ(soil.verdict, "two layers");
    ASSERT_EQ(soil.strata.size(), 2u);
    EXPECT_TRUE(std::isinf(soil.strata[1].high_ohm_m));
    EXPECT_GT(soil.strata[1].low_ohm_m, 100);
    EXPECT_TRUE(std::isfinite(soil.strata[1].best_ohm_m));
}

TEST(SoilAnswers, TooFewReadingsTellNoLayersAndAreSaidNotTo) {
    const SoilAnswer soil = soil_of(read_as({{1, 400}, {2, 300}}));
    EXPECT_EQ(soil.verdict, "not identifiable");
    ASSERT_EQ(soil.strata.size(), 1u);
    EXPECT_LT(soil.strata[0].low_ohm_m, 300);
    EXPECT_GT(soil.strata[0].high_ohm_m, 400);
}

TEST(SoilAnswers, ASchlumbergerReadingIsListedByHalfItsSpread) {
    site::Job job = support::plain_job();
    job.ground.resistivity = {};
    for (const double current : {2.0, 4.0, 10.0}) {
        site::PinReading pin;
        pin.array = site::PinArray::schlumberger;
        pin.spacing = metres(current);
        pin.potential = metres(0.4);
        const double half = current / 2;
        pin.resistance = ohms(75 * 0.4 / (M_PI * (half * half - 0.04)));
        job.ground.pins.push_back(pin);
    }
    const SoilAnswer soil = soil_of(job);
    ASSERT_EQ(soil.readings.size(), 3u);
    EXPECT_EQ(soil.readings[0].array, "Schlumberger");
    EXPECT_NEAR(soil.readings[2].spacing_m, 5, 1e-12);
    for (const auto& r : soil.readings) EXPECT_NEAR(r.apparent_ohm_m, 75, 1e-6);
}

TEST(SoilAnswers, ADrivenRodIsHeardAndSaid) {
    site::Job job = support::plain_job();
    job.ground.resistivity = {};
    const SoilAnswer before = soil_of(job);
    job.ground.rods = {{metres(1.2), millimetres(14.2), ohms(40)}};
    const SoilAnswer soil = soil_of(job);
    EXPECT_EQ(soil.known_by, "driven rods");
    EXPECT_GT(soil.says.size(), before.says.size());
    EXPECT_GE(soil.strata[0].low_ohm_m, before.strata[0].low_ohm_m);
    EXPECT_LE(soil.strata[0].high_ohm_m, before.strata[0].high_ohm_m);
    // Dwight: 40 ohms of a rod of 1.2 m are 54 ohm metres.
    const double rho = 40 * 2 * M_PI * 1.2 / (std::log(4 * 1.2 / 0.0071) - 1);
    EXPECT_LE(soil.strata[0].low_ohm_m, rho * 1.01);
    EXPECT_GE(soil.strata[0].high_ohm_m, rho * 0.99);
}

RC_GTEST_PROP(SoilAnswersLaw, BestStandsBetweenLowAndHigh, ()) {
    std::vector<std::pair<double, double>> readings;
    double a = 0.5;
    for (int i = *rc::gen::inRange(2, 6); i > 0; --i, a *= 1.6) {
        readings.emplace_back(a, *rc::gen::inRange(20, 2000));
    }
    const site::Job job = read_as(readings);
    const Prepared p(job);
    for (const StratumAnswer& s : soil_answer(job.ground, p.soil(), p.memo()).strata) {
        RC_ASSERT(s.low_ohm_m <= s.best_ohm_m);
        RC_ASSERT(s.best_ohm_m <= s.high_ohm_m);
        if (!s.best_m) continue;
        RC_ASSERT(*s.low_m <= *s.best_m);
        RC_ASSERT(*s.best_m <= *s.high_m);
    }
}

}  // namespace
}  // namespace toft::answer
