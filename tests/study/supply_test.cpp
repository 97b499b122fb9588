#include "study/setting_parts.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::study {
namespace {

using support::between;
using support::measured;
using support::prepared;

class Supply : public ::testing::Test {
protected:
    SupplySetting<Silent> of(End end = End::worse) {
        setting_ = prepared(job_, {end, {}, {}});
        return setting_.supply;
    }
    bool is_open(const std::string& pointer) const {
        return std::any_of(setting_.open.begin(), setting_.open.end(),
                           [&](const OpenFact& fact) { return fact.pointer == pointer; });
    }
    double range_low(const char* fact) const {
        return tables::find_open_range(support::catalogue(), fact)->low.value;
    }
    double range_high(const char* fact) const {
        return tables::find_open_range(support::catalogue(), fact)->high.value;
    }

    site::Job job_ = support::plain_job();
    Setting<Silent> setting_;
};

TEST_F(Supply, AMeasuredLoopIsUsedAsItIs) {
    const auto supply = of();
    EXPECT_EQ(supply.ze_most, ohms(0.2));
    EXPECT_EQ(supply.ze_least, ohms(0.2));
    EXPECT_FALSE(is_open("/intake/ze_ohm"));
}

TEST_F(Supply, AnUnknownLoopIsLargeForDisconnectionAndSmallForFaultLevel) {
    job_.intake.ze = {};
    const auto supply = of();
    EXPECT_EQ(supply.ze_most, ohms(range_high("ze.tn-c-s")));
    EXPECT_EQ(supply.ze_least, ohms(range_low("ze.tn-c-s")));
    EXPECT_TRUE(is_open("/intake/ze_ohm"));
}

TEST_F(Supply, ADeclaredLoopIsALargestNotTheLoopItself) {
    job_.intake.ze = {true, ohms(0.35), ohms(0.35), site::Standing::declared};
    const auto supply = of();
    EXPECT_EQ(supply.ze_most, ohms(0.35));
    EXPECT_EQ(supply.ze_least, ohms(range_low("ze.tn-c-s")));
}

TEST_F(Supply, ADeclaredFaultCurrentNeverShortensTheLongLoop) {
    job_.intake.earthing = site::Earthing::tn_s;
    job_.intake.line_neutral_loop = {};
    job_.intake.pscc = {};
    const auto without = of();
    job_.intake.pscc = {true, kiloamperes(16), kiloamperes(16), site::Standing::declared};
    const auto with = of();
    EXPECT_EQ(with.zn_most, without.zn_most);
    EXPECT_LE(with.zn_least, without.zn_least);
    EXPECT_LE(with.zn_least, volts(230) / kiloamperes(16));
}

TEST_F(Supply, OneEndForAllTakesTheSameLoopForBoth) {
    job_.intake.ze = between(ohms(0.1), ohms(0.3));
    EXPECT_EQ(of(End::low).ze_most, ohms(0.1));
    EXPECT_EQ(of(End::low).ze_least, ohms(0.1));
    EXPECT_EQ(of(End::high).ze_least, ohms(0.3));
    EXPECT_EQ(of(End::better).ze_most, ohms(0.1));
    EXPECT_EQ(of(End::better).ze_least, ohms(0.3));
}

TEST_F(Supply, ADeclaredMaximumSaysNothingOfTheSmallestLoop) {
    job_.intake.ze = {};
    job_.intake.ze_declared = measured(ohms(0.35));
    const auto supply = of();
    EXPECT_EQ(supply.ze_most, ohms(0.35));
    EXPECT_EQ(supply.ze_least, ohms(range_low("ze.tn-c-s")));
}

TEST_F(Supply, ADeclaredMaximumAboveTheMeasuredLoopGoverns) {
    job_.intake.ze_declared = measured(ohms(0.35));
    EXPECT_EQ(of().ze_most, ohms(0.35));
    EXPECT_EQ(of().ze_least, ohms(0.2));
}

TEST_F(Supply, OnTncsTheNeutralLoopIsTheEarthLoop) {
    job_.intake.line_neutral_loop = {};
    const auto supply = of();
    EXPECT_EQ(supply.zn_most, supply.ze_most);
    EXPECT_EQ(supply.zn_least, supply.ze_least);
}

TEST_F(Supply, OnTnsAnUnmeasuredNeutralLoopTakesTheRulebooksRange) {
    job_.intake.earthing = site::Earthing::tn_s;
    job_.intake.line_neutral_loop = {};
    EXPECT_EQ(of().zn_most, ohms(range_high("ln_loop.tt")));
    EXPECT_TRUE(is_open("/intake/line_neutral_loop_ohm"));
}

TEST_F(Supply, AMeasuredFaultCurrentGivesTheNeutralLoop) {
    job_.intake.line_neutral_loop = {};
    job_.intake.pscc = measured(kiloamperes(1.15));
    const auto supply = of();
    EXPECT_NEAR(supply.zn_most.number(), 0.2, 1e-12);
    EXPECT_NEAR(supply.zn_least.number(), 0.2, 1e-12);
}

TEST_F(Supply, TheFaultLevelIsThatOfTheStifferLoop) {
    job_.intake.ze = measured(ohms(0.1));
    EXPECT_NEAR(of().pscc.number(), 1.1 * 230 / 0.1, 1e-9);
    job_.intake.ze = measured(ohms(0.4));
    EXPECT_NEAR(of().pscc.number(), 1.1 * 230 / 0.2, 1e-9);
}

TEST_F(Supply, AStatedFaultLevelNeverHidesAStifferLoop) {
    job_.intake.pscc = measured(kiloamperes(1));
    job_.intake.ze = measured(ohms(0.1));
    EXPECT_NEAR(of().pscc.number(), 2530, 1e-9);
    job_.intake.pscc = measured(kiloamperes(4));
    EXPECT_EQ(of().pscc, kiloamperes(4));
}

TEST_F(Supply, ATtLoopIsTheTwoElectrodesInSeries) {
    job_.intake.earthing = site::Earthing::tt;
    job_.intake.ze = {};
    job_.intake.electrode = measured(ohms(60));
    const auto supply = of();
    EXPECT_EQ(supply.ra_most, ohms(60));
    EXPECT_EQ(supply.ze_most, ohms(60) + support::catalogue().limits.declared_tt_source.value);
}

TEST_F(Supply, ATtHouseOfUnknownElectrodeTakesTheWorst) {
    job_.intake.earthing = site::Earthing::tt;
    job_.intake.ze = {};
    EXPECT_EQ(of().ra_most, ohms(range_high("electrode.house")));
    EXPECT_TRUE(is_open("/intake/electrode_ohm"));
}

}  // namespace
}  // namespace toft::study
