#include "walk/facts.h"

#include "walk/walking.h"

#include <gtest/gtest.h>

namespace toft::walk {
namespace {

using site::Answer;
using support::measured;

TEST(Facts, AreThoseOfTheSetting) {
    const site::Job job = shed_on(site::Earthing::tn_c_s);
    const auto setting = support::prepared(job);
    const Facts f = all_facts_of(setting);
    EXPECT_EQ(f.building, &job.buildings[1]);
    EXPECT_EQ(f.system, site::Earthing::tn_c_s);
    EXPECT_FALSE(f.extraneous);
    EXPECT_EQ(f.reach_least, metres(20));
    EXPECT_EQ(f.ib, amperes(20));
    EXPECT_EQ(f.bond_asked, square_millimetres(10));
    EXPECT_EQ(f.bonding_least, square_millimetres(10));
    EXPECT_EQ(f.ra_most, setting.building.ra_most);
    EXPECT_EQ(facts_of(setting).bond_asked, square_millimetres(0));
}

TEST(Facts, AnAnswerNobodyGaveIsUnknownUnlessTheUseSaysIt) {
    site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    const Facts f = facts_of(setting);
    EXPECT_EQ(known_of(false, f, {Answer::no}), Known::stated);
    EXPECT_EQ(known_of(false, f, {Answer::no, Answer::unknown}), Known::unknown);
    EXPECT_EQ(known_of(true, f, {Answer::unknown}), Known::stated);
    EXPECT_EQ(known_of(false, f, {Answer::yes, Answer::unknown}), Known::stated);
    job.buildings[1].use.reset();
    EXPECT_EQ(known_of(false, f, {Answer::no}), Known::unknown);
}

TEST(Facts, TheCurrentThatSeeksEarthIsNeverTakenSmallForWantOfAReading) {
    site::Job job = support::plain_job();
    job.intake.demand = measured(amperes(40));
    EXPECT_EQ(current_seeking_earth(facts_of(support::prepared(job))), amperes(60));
    job.intake.demand = {};
    EXPECT_EQ(current_seeking_earth(facts_of(support::prepared(job))), amperes(100));
    job.intake.service_fuse.reset();
    EXPECT_EQ(current_seeking_earth(facts_of(support::prepared(job))), amperes(100));
}

/// Annex A722 of BS 7671 as remembered, and by the circuit it stands for: 32 A seek earth from
/// 253 V through 230/32 ohms; 70 V are left across 2.75 ohms.
TEST(Facts, AnElectrodeThatHoldsSeventyVoltsForThirtyTwoAmperesIsBelowThreeOhms) {
    site::Job job = support::plain_job();
    job.intake.demand = measured(amperes(12));
    const auto setting = support::prepared(job);
    const Facts f = facts_of(setting);
    const Ohms needed = electrode_holding(f, volts(70));
    EXPECT_NEAR(needed.number(), 70.0 * 230 / (32 * (1.1 * 230 - 70)), 1e-12);
    EXPECT_NEAR(needed.number(), 2.75, 0.005);
    EXPECT_NEAR(volts_without_neutral(f, needed).number(), 70, 1e-9);
    EXPECT_NEAR(volts_without_neutral(f, ohms(1e9)).number(), 253, 1e-4);
    EXPECT_GT(volts_without_neutral(f, f.ra_most).number(), 150);
}

TEST(Facts, FindsACircuitByKind) {
    site::Job job = support::plain_job();
    EXPECT_FALSE(has_circuit(facts_of(support::prepared(job)), site::CircuitKind::hot_tub));
    site::Circuit tub;
    tub.kind = site::CircuitKind::hot_tub;
    tub.load_w = measured(3000.0);
    job.buildings[1].circuits = {tub};
    EXPECT_TRUE(has_circuit(facts_of(support::prepared(job)), site::CircuitKind::hot_tub));
}

TEST(Facts, AFactIsKnownAsItWasTaken) {
    EXPECT_EQ(known_of(site::Fact<Metres>{}), Known::unknown);
    EXPECT_EQ(known_of(measured(metres(1))), Known::measured);
    EXPECT_EQ(known_of(support::between(metres(1), metres(2))), Known::assumed);
    EXPECT_EQ(known_of(site::Fact<Metres>{true, metres(1), metres(1), site::Standing::declared}),
              Known::stated);
}

}  // namespace
}  // namespace toft::walk
