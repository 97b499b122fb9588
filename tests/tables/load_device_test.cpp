#include "tables/sheet.h"

#include "support/catalogue.h"
#include "support/spoilt_tables.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

using support::SpoiltTables;

TEST(LoadDevice, AFuseReadsAsPrinted) {
    const Device& fuse = support::fuse(63);
    EXPECT_TRUE(fuse.fuse());
    EXPECT_EQ(fuse.breaking.value, kiloamperes(16));
    EXPECT_FALSE(fuse.let_through);
    ASSERT_GE(fuse.points.size(), 5u);
    EXPECT_EQ(fuse.points.front().time, seconds(5));
    EXPECT_EQ(fuse.points.front().current.value, amperes(320));
}

TEST(LoadDevice, ABreakersClassGoesWithItsBreakingCapacity) {
    EXPECT_EQ(support::breaker("B", 32, 6).let_through->value, ampere_square_seconds(45000));
    EXPECT_EQ(support::breaker("B", 32, 10).let_through->value, ampere_square_seconds(90000));
    EXPECT_EQ(support::breaker("C", 16, 6).let_through->value, ampere_square_seconds(42000));
    EXPECT_FALSE(support::breaker("B", 63, 6).let_through);
}

TEST(LoadDevice, EveryCurveFallsInTimeAndRisesInCurrent) {
    for (const Device& device : support::catalogue().devices) {
        ASSERT_GE(device.points.size(), device.fuse() ? 1u : 2u);
        EXPECT_GT(device.points.front().current.value, device.rating);
        for (std::size_t i = 1; i < device.points.size(); ++i) {
            EXPECT_GT(device.points[i - 1].time, device.points[i].time) << device.rating.number();
            EXPECT_LE(device.points[i - 1].current.value, device.points[i].current.value)
                << device.rating.number();
        }
    }
}

TEST(LoadDevice, BreakersOperateAtFiveAndTenTimesTheirRating) {
    for (const Device& device : support::catalogue().devices) {
        if (device.curve != "B" && device.curve != "C") continue;
        const double times = device.curve == "B" ? 5 : 10;
        EXPECT_EQ(device.points.front().current.value, device.rating * times);
    }
}

TEST(LoadDevice, TypeDGoesByTwentyTimesItsRatingAndUpTo32AByTenForFiveSeconds) {
    for (const Device& device : support::catalogue().devices) {
        if (device.curve != "D") continue;
        EXPECT_EQ(device.points.back().current.value, device.rating * 20.0);
        EXPECT_EQ(device.points.front().current.value,
                  device.rating * (device.rating > amperes(32) ? 20.0 : 10.0));
    }
}

TEST(LoadDevice, EveryStandardHasItsKind) {
    EXPECT_EQ(support::device("BS 88-2", "", 200).kind, Kind::fuse);
    EXPECT_EQ(support::device("BS 1361", "", 100).kind, Kind::fuse);
    EXPECT_EQ(support::device("BS 3036", "", 30).kind, Kind::rewirable);
    EXPECT_TRUE(support::device("BS 3036", "", 30).fuse());
    EXPECT_FALSE(support::device("BS 3036", "", 30).limiting());
    EXPECT_EQ(support::device("BS EN 60898", "D", 125).kind, Kind::breaker);
    EXPECT_EQ(support::device("BS EN 61009", "B", 32).kind, Kind::rcbo);
    EXPECT_EQ(support::device("BS EN 60947-2", "TM", 125).kind, Kind::moulded);
    for (const Device& device : support::catalogue().devices) {
        EXPECT_EQ(device.fuse(), device.curve.empty()) << device.standard;
    }
}

TEST(LoadDevice, OnlyARewirableFuseTakesTwiceItsRatingToMelt) {
    for (const Device& device : support::catalogue().devices) {
        EXPECT_EQ(device.i2.value, device.kind == Kind::rewirable ? 2 : 1.45) << device.standard;
    }
}

TEST(LoadDevice, AnRcboIsAGeneralRcdOfThirtyMilliamperes) {
    for (const Device& device : support::catalogue().devices) {
        ASSERT_EQ(device.residual.has_value(), device.kind == Kind::rcbo) << device.standard;
        if (!device.residual) continue;
        EXPECT_EQ(device.residual->sensitivity.value, milliamperes(30));
        EXPECT_EQ(device.residual->times.longest_1.value, seconds(0.3));
        EXPECT_EQ(device.residual->times.longest_5.value, seconds(0.04));
        EXPECT_EQ(device.residual->times.shortest_1, seconds(0));
    }
}

TEST(LoadDevice, TheHeadOfARunIsOfferedDelayedRcdsOfTheTables) {
    const auto& offered = support::catalogue().run_rcds;
    ASSERT_EQ(offered.size(), 2u);
    EXPECT_EQ(offered[0].sensitivity, milliamperes(100));
    EXPECT_EQ(offered[1].sensitivity, milliamperes(300));
    for (const RunRcd& rcd : offered) EXPECT_TRUE(rcd.delayed);
}

TEST(LoadDevice, HoldsRiseInCurrentAsTheirTimeFallsAndLieBelowTheCurve) {
    for (const Device& device : support::catalogue().devices) {
        ASSERT_FALSE(device.holds.empty()) << device.standard << device.rating.number();
        for (std::size_t i = 1; i < device.holds.size(); ++i) {
            EXPECT_GT(device.holds[i - 1].time, device.holds[i].time) << device.standard;
            EXPECT_LT(device.holds[i - 1].current.value, device.holds[i].current.value)
                << device.standard << device.rating.number();
        }
        EXPECT_LT(device.holds.front().current.value, device.points.front().current.value);
    }
    EXPECT_EQ(support::device("BS EN 60898", "B", 32).holds.front().current.value,
              amperes(1.13 * 32));
}

TEST(LoadDevice, TheWholeShopIsThere) {
    const auto count = [](const char* standard, const char* curve) {
        int n = 0;
        for (const Device& d : support::catalogue().devices) {
            n += d.standard == standard && d.curve == curve;
        }
        return n;
    };
    EXPECT_EQ(count("BS 88-2", ""), 14);
    EXPECT_EQ(count("BS 88-3", ""), 8);
    EXPECT_EQ(count("BS 1361", ""), 8);
    EXPECT_EQ(count("BS 3036", ""), 7);
    // Nine ratings to 63 A of 6 and 10 kA; 80, 100 and 125 A of 10 kA.
    for (const char* curve : {"B", "C", "D"}) EXPECT_EQ(count("BS EN 60898", curve), 21);
    for (const char* curve : {"B", "C", "D"}) EXPECT_EQ(count("BS EN 61009", curve), 18);
    EXPECT_EQ(count("BS EN 60947-2", "TM"), 20);
}

TEST(LoadDevice, ADelayedRcdTakesLongerThanAGeneralOne) {
    const Catalogue& c = support::catalogue();
    EXPECT_EQ(c.rcd_general.longest_1.value, seconds(0.3));
    EXPECT_GT(c.rcd_delayed.longest_1.value, c.rcd_general.longest_1.value);
    EXPECT_LT(c.rcd_general.longest_5.value, c.rcd_general.longest_1.value);
    for (const RunRcd& rcd : c.run_rcds)
        EXPECT_EQ(rcd.longest.value, c.rcd_delayed.longest_1.value);
}

TEST(LoadDevice, RefusesADeviceWithoutACurve) {
    EXPECT_TRUE(SpoiltTables()
                    .change("device/device.csv", "BS 88-3,-,16,16,", "BS 88-3,-,17,16,")
                    .refused("device/curve.csv", "17 A has no point"));
}

TEST(LoadDevice, RefusesADeviceWithoutAKindOrWithAWrongOne) {
    EXPECT_TRUE(SpoiltTables()
                    .change("device/kind.csv", "BS 3036,rewirable", "BS 3037,rewirable")
                    .refused("device/kind.csv", "has no kind"));
    EXPECT_TRUE(SpoiltTables()
                    .change("device/kind.csv", "BS 3036,rewirable", "BS 3036,candle")
                    .refused("device/kind.csv", "candle is no kind"));
    EXPECT_TRUE(SpoiltTables()
                    .change("device/kind.csv", "BS 3036,rewirable", "BS 3036,breaker")
                    .refused("device/kind.csv", "curve of another kind"));
    EXPECT_TRUE(SpoiltTables()
                    .change("device/overload.csv", "BS 3036,2,", "BS 3037,2,")
                    .refused("device/overload.csv", "BS 3036"));
}

TEST(LoadDevice, RefusesABreakerOfWhichNobodySaysWhetherItsEnergyIsLimited) {
    EXPECT_TRUE(SpoiltTables()
                    .change("device/unlimited.csv", "BS EN 60898,C,41,", "BS EN 60898,C,60,")
                    .refused("device/let_through.csv", "BS EN 60898 C 50 A has 0 rows"));
    EXPECT_TRUE(SpoiltTables()
                    .change("device/unlimited.csv", "BS EN 60898,C,41,", "BS EN 60898,C,40,")
                    .refused("device/let_through.csv", "BS EN 60898 C 40 A has 2 rows"));
}

TEST(LoadDevice, RefusesAnRcboWithoutASensitivity) {
    EXPECT_TRUE(SpoiltTables()
                    .change("device/residual.csv", "BS EN 61009,30,", "BS EN 60898,30,")
                    .refused("device/residual.csv", "BS EN 61009 B 6 A"));
}

TEST(LoadDevice, RefusesNumbersThatAreNoneAndMissingColumns) {
    EXPECT_TRUE(SpoiltTables()
                    .change("device/curve.csv", "BS 88-3,-,16,0.1,150,", "BS 88-3,-,16,0.1,nan,")
                    .refused("device/curve.csv", "not a number"));
    EXPECT_TRUE(SpoiltTables()
                    .change("device/let_through.csv", "i2t_a2s", "energy")
                    .refused("device/let_through.csv", "no column i2t_a2s"));
    EXPECT_TRUE(SpoiltTables()
                    .change("device/rcd.csv", "longest_ms", "longest")
                    .refused("device/rcd.csv", "no column longest_ms"));
}

}  // namespace
}  // namespace toft::tables
