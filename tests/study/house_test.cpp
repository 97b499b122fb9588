#include "study/setting_parts.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::study {
namespace {

using support::measured;

class House : public ::testing::Test {
protected:
    HouseSetting<Silent> of(End end = End::worse) {
        setting_ = support::prepared(job_, {end, {}, {}});
        return setting_.house;
    }
    bool is_open(const std::string& pointer) const {
        return std::any_of(setting_.open.begin(), setting_.open.end(),
                           [&](const OpenFact& fact) { return fact.pointer == pointer; });
    }

    site::Job job_ = support::plain_job();
    Setting<Silent> setting_;
};

TEST_F(House, StatedConductorsAreTakenAsTheyAre) {
    EXPECT_EQ(of().neutral_most, square_millimetres(25));
    EXPECT_EQ(of().earthing_most, square_millimetres(16));
    EXPECT_EQ(of().bonding_least, square_millimetres(10));
}

TEST_F(House, AnUnknownNeutralIsTakenLargeSinceItAsksForMoreBonding) {
    job_.intake.supply_neutral = {};
    const auto* range = tables::find_open_range(support::catalogue(), "supply_neutral");
    EXPECT_EQ(of().neutral_most, square_millimetres(range->high.value));
    EXPECT_TRUE(is_open("/intake/supply_neutral_mm2"));
}

TEST_F(House, BondingThatNobodySawIsTakenAsAbsent) {
    job_.intake.main_bonding = {};
    EXPECT_EQ(of().bonding_least, square_millimetres(0));
    EXPECT_TRUE(is_open("/intake/main_bonding_mm2"));
}

TEST_F(House, AnUnknownEarthingConductorIsBothThickAndThin) {
    job_.intake.earthing_conductor = {};
    const auto* range = tables::find_open_range(support::catalogue(), "earthing_conductor");
    EXPECT_EQ(of().earthing_most, square_millimetres(range->high.value));
    EXPECT_EQ(of().earthing_least, square_millimetres(range->low.value));
}

TEST_F(House, ABoardNobodyOpenedHasNoSpareWay) {
    job_.intake.board.spare_ways = {};
    EXPECT_EQ(of().spare_ways, 0);
    EXPECT_EQ(of(End::better).spare_ways, 1);
    EXPECT_TRUE(is_open("/intake/board/spare_ways"));
}

TEST_F(House, AnUnreadFuseIsTakenAtItsSmallest) {
    job_.intake.service_fuse = {};
    const auto* range = tables::find_open_range(support::catalogue(), "service_fuse");
    EXPECT_EQ(of().service_fuse_least, amperes(range->low.value));
    EXPECT_FALSE(of().assembly_backed);
    EXPECT_TRUE(is_open("/intake/service_fuse"));
}

TEST_F(House, OnlyAKnownCartridgeFuseBacksUpTheBoard) {
    EXPECT_TRUE(of().assembly_backed);
    job_.intake.service_fuse->standard = "BS 3036";
    EXPECT_FALSE(of().assembly_backed);
    job_.intake.service_fuse = site::NamedDevice{"BS 88-3", "", amperes(125)};
    EXPECT_FALSE(of().assembly_backed);
}

TEST_F(House, ABoardWhoseLabelNobodyReadTakesTheLeastThatBoardsTake) {
    job_.intake.board.max_device = {};
    const auto* range = tables::find_open_range(support::catalogue(), "board.max_device");
    EXPECT_EQ(of().max_device_least, amperes(range->low.value));
    EXPECT_EQ(of(End::better).max_device_least, amperes(range->high.value));
    EXPECT_TRUE(is_open("/intake/board/max_device_a"));
    EXPECT_TRUE(setting_.assumed.empty());
}

TEST_F(House, AnRcdNobodyLookedForIsTakenToStandInFrontOfTheWays) {
    job_.intake.board.behind_rcd = {};
    EXPECT_EQ(of().behind_rcd, milliamperes(30));
    EXPECT_EQ(of(End::better).behind_rcd, amperes(0));
    EXPECT_TRUE(is_open("/intake/board/behind_rcd_ma"));
    EXPECT_TRUE(setting_.assumed.empty());
}

TEST_F(House, TheBoardKeepsTheStandardItTakesAndTheTailsTheirLongest) {
    EXPECT_EQ(of().takes, "");
    job_.intake.board.takes = "BS 3036";
    job_.intake.tails_length = support::between(metres(1), metres(4));
    EXPECT_EQ(of().takes, "BS 3036");
    EXPECT_EQ(setting_.house.tails_most, metres(4));
    EXPECT_TRUE(setting_.house.tails_known);
    job_.intake.tails_length = {};
    of();
    EXPECT_FALSE(setting_.house.tails_known);
}

}  // namespace
}  // namespace toft::study
