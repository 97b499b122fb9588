#include "tables/device.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace toft::tables {
namespace {

constexpr Kind all_kinds[] = {Kind::fuse, Kind::rewirable, Kind::breaker, Kind::rcbo,
                              Kind::moulded};

Device of(Kind kind) {
    Device device;
    device.kind = kind;
    return device;
}

TEST(Device, EveryKindHasAWordOfItsOwn) {
    std::set<std::string> words;
    for (const Kind kind : all_kinds) {
        EXPECT_FALSE(std::string(kind_word(kind)).empty());
        EXPECT_TRUE(words.insert(kind_word(kind)).second) << kind_word(kind);
    }
}

TEST(Device, AWireInTheOpenIsAFuseThatLimitsNothing) {
    EXPECT_TRUE(of(Kind::rewirable).fuse());
    EXPECT_FALSE(of(Kind::rewirable).limiting());
    EXPECT_TRUE(of(Kind::fuse).fuse());
    EXPECT_TRUE(of(Kind::fuse).limiting());
    for (const Kind kind : {Kind::breaker, Kind::rcbo, Kind::moulded}) {
        EXPECT_FALSE(of(kind).fuse()) << kind_word(kind);
        EXPECT_FALSE(of(kind).limiting()) << kind_word(kind);
    }
}

TEST(Device, NothingIsSaidToLimitBeforeItsKindIsRead) { EXPECT_FALSE(Device().limiting()); }

}  // namespace
}  // namespace toft::tables
