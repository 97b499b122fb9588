#include "tables/device_words.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

const Device* by(std::string_view words) {
    return device_by_words(support::catalogue().devices, words);
}

TEST(DeviceWords, NameAFuseByItsStandardAndABreakerByItsType) {
    EXPECT_EQ(device_words(support::fuse(80)), "BS 88-3 80 A");
    EXPECT_EQ(device_words(support::breaker("C", 16)), "C 16 A breaker");
    EXPECT_EQ(device_words(support::device("BS EN 61009", "B", 32)), "B 32 A RCBO");
    EXPECT_EQ(device_words(support::device("BS EN 60947-2", "TM", 63)),
              "63 A moulded-case breaker");
}

TEST(DeviceWords, FindTheFirstDeviceOfEachThatTheTablesHold) {
    for (const Device& device : support::catalogue().devices) {
        const Device* found = by(device_words(device));
        ASSERT_NE(found, nullptr) << device_words(device);
        EXPECT_EQ(device_words(*found), device_words(device));
    }
}

TEST(DeviceWords, AreReadInAnyOrderAndCase) {
    EXPECT_EQ(by("80 A BS 88-3 fuse"), &support::fuse(80));
    EXPECT_EQ(by("bs88-3 80A"), &support::fuse(80));
    EXPECT_EQ(by("b32 rcbo"), by("B 32 A RCBO"));
    EXPECT_EQ(by("32 A type B RCBO"), by("B 32 A RCBO"));
    EXPECT_EQ(by("C16"), by("C 16 A breaker"));
    EXPECT_EQ(by("BS EN 61009 B 32 A"), by("B 32 A RCBO"));
    EXPECT_EQ(by("BS EN 60898 B 32 A"), by("B 32 A breaker"));
}

TEST(DeviceWords, NameNothingThatIsNotThere) {
    for (const char* none : {"", "fuse", "BS 88-3", "BS 88-3 81 A", "E 32 A RCBO", "32 A RCBO"}) {
        EXPECT_EQ(by(none), nullptr) << none;
    }
}

}  // namespace
}  // namespace toft::tables
