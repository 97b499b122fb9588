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
        ASSERT_GE(device.points.size(), 2u);
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
        if (device.fuse()) continue;
        const double times = device.curve == "B" ? 5 : 10;
        EXPECT_EQ(device.points.front().current.value, device.rating * times);
    }
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
                    .refused("device/curve.csv", "fewer than two points"));
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
