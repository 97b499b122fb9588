#include "parts/device_words.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

TEST(DeviceWords, EachKindByItsName) {
    EXPECT_EQ(device_words({"BS 88-3", "", "fuse", 32, 16}), "32 A BS 88-3 fuse");
    EXPECT_EQ(device_words({"BS 3036", "", "rewirable fuse", 30, 1}),
              "30 A BS 3036 rewirable fuse");
    EXPECT_EQ(device_words({"BS EN 60898", "B", "breaker", 25, 6}), "25 A type B breaker, 6 kA");
    EXPECT_EQ(device_words({"BS EN 61009", "C", "RCBO", 16, 6}), "16 A type C RCBO, 6 kA");
    EXPECT_EQ(device_words({"BS EN 60947-2", "TM", "moulded-case breaker", 125, 16}),
              "125 A moulded-case breaker, 16 kA");
}

TEST(DeviceWords, OnThreePhasesItHasThreePolesOrThereAreThreeFuses) {
    EXPECT_EQ(device_words({"BS 88-2", "", "fuse", 160, 50}, 3), "three 160 A BS 88-2 fuses");
    EXPECT_EQ(device_words({"BS EN 60898", "B", "breaker", 40, 6}, 3),
              "40 A three-pole type B breaker, 6 kA");
}

TEST(DeviceWords, OnlyAnRcboOpensOnResidualCurrent) {
    EXPECT_TRUE(opens_on_residual({"BS EN 61009", "B", "RCBO", 16, 6}));
    EXPECT_FALSE(opens_on_residual({"BS EN 60898", "B", "breaker", 16, 6}));
    EXPECT_EQ(rcd_words({100, "A", true, {}}), "100 mA RCD type A, delayed");
    EXPECT_EQ(rcd_words({30, "A", false, {}}), "30 mA RCD type A");
    EXPECT_EQ(own_residual_words({30, "A", false, {}}), "opens on 30 mA to earth too, type A");
}

}  // namespace
}  // namespace toft::parts
