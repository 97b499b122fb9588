#include "circuit/conductors.h"

#include "circuit/circuits.h"
#include "support/working.h"

#include <gtest/gtest.h>

namespace toft::circuit {
namespace {

Conductors<Silent> laid(double section, double length_m, double current) {
    static const cable::LegFactors<Silent> factors = [] {
        cable::LegFactors<Silent> f;
        f.method = tables::ReferenceMethod::a;
        f.ca = f.cg = f.ci = f.cs = f.cd = f.cc = f.heat = f.total = 1;
        return f;
    }();
    Silent silent;
    const auto& cable = support::cable(tables::Family::flat_twin_and_earth, 2, section);
    return conductors(silent, Laid<Silent>{support::catalogue(),
                                           cable,
                                           factors,
                                           celsius(30),
                                           metres(length_m),
                                           amperes(current),
                                           1,
                                           1,
                                           {}});
}

// IEC 60228: 7.41 and 12.1 mΩ/m at 20 °C.
TEST(Conductors, ATestOfTwoAndAHalfWithOneAndAHalfReadsNineteenAndAHalfMilliohmsAMetre) {
    EXPECT_NEAR(laid(2.5, 20, 10).r1_r2_cold.number(), 20 * 19.51e-3, 1e-6);
}

// On-Site Guide, Table 7.1 (recalled): a ring of 2.5 mm² behind 32 A may be 106 m round for 5 % of
// 230 V. It reckons with 26 A at the far point and each half carrying half of it in cable rated 20
// A.
TEST(Conductors, ARingOfAHundredAndSixMetresLosesElevenAndAHalfVolts) {
    const auto c = laid(2.5, 106.0 / 4, 13);
    EXPECT_NEAR(26 * c.load.r.number(), 11.5, 0.1);
}

TEST(Conductors, HotterConductorsResistMore) {
    const auto c = laid(2.5, 20, 10);
    for (std::size_t h = 1; h < heats; ++h) {
        EXPECT_GT(c.line[h].r, c.line[h - 1].r);
        EXPECT_GT(c.back[h].r, c.back[h - 1].r);
    }
    EXPECT_NEAR(c.line[0].r.number(), 20 * 7.41e-3 * 1.2, 20 * 7.41e-3 * 0.01);
}

// 115 A√s/mm² for copper in thermoplastic insulation (Table 43.1).
TEST(Conductors, WhatIsWithstoodIsKSquaredSSquared) {
    EXPECT_NEAR(laid(2.5, 20, 10).live_stands.number(), 115 * 115 * 2.5 * 2.5, 1);
    EXPECT_NEAR(laid(2.5, 20, 10).back_stands.number(), 115 * 115 * 1.5 * 1.5, 1);
}

CircuitSetting<Silent> pressed(double harmonic) {
    Silent silent;
    static site::Job job;  // outlives the setting
    job = job_with({three_phase(9000, 20, harmonic)});
    return prepare(silent, support::catalogue(), job, job.buildings[1], 3).judged.at(0);
}

// Table E.52.1 of IEC 60364-5-52 (recalled): 0.86 by the lines' current from 15 to 33 %, by the
// neutral's, which is 1.2 times it at 40 %, beyond.
TEST(Conductors, ThirdHarmonicsLeaveTheLinesLessOfTheRating) {
    const Amperes none = pressed(0).conductors.front().iz;
    EXPECT_NEAR(pressed(10).conductors.front().iz / none, 1, 1e-12);
    EXPECT_NEAR(pressed(20).conductors.front().iz / none, 0.86, 1e-12);
    EXPECT_NEAR(pressed(40).conductors.front().iz / none, 0.86 / 1.2, 1e-12);
}

// 40 % come back on the neutral as 1.2 times the line current, in warmer conductors.
TEST(Conductors, ThirdHarmonicsLoseVoltageOnTheNeutral) {
    const Ohms none = pressed(0).conductors.front().load.r;
    EXPECT_GT(pressed(40).conductors.front().load.r, none * 2.2);
    EXPECT_LT(pressed(40).conductors.front().load.r, none * 2.2 * 1.2);
}

TEST(Conductors, EveryPrintedFormulaGivesItsPrintedResult) {
    Recording ledger;
    const site::Job job = job_with({heater(3000, 12)});
    const auto s = prepare(ledger, support::catalogue(), job, job.buildings[1], 1).judged.at(0);
    conductors(ledger, laid_for(ledger, support::catalogue(), s, *s.options.front().cable));
    EXPECT_GT(ledger.lines().size(), 40u);
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

TEST(Conductors, SoDoThoseWithThirdHarmonics) {
    Recording ledger;
    const site::Job job = job_with({three_phase(9000, 20, 40)});
    const auto s = prepare(ledger, support::catalogue(), job, job.buildings[1], 3).judged.at(0);
    conductors(ledger, laid_for(ledger, support::catalogue(), s, *s.options.front().cable));
    for (const std::string& wrong : support::wrong_lines(ledger.lines())) ADD_FAILURE() << wrong;
}

}  // namespace
}  // namespace toft::circuit
