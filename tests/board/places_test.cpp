#include "board/places.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <set>

namespace toft::board {
namespace {

std::vector<parts::Way> ways(std::size_t count) {
    std::vector<parts::Way> all(count);
    for (std::size_t i = 0; i < count; ++i) all[i].number = static_cast<int>(i) + 1;
    return all;
}

TEST(Places, TheMainSwitchStandsFirstWithAPoleForEachLineAndTheNeutral) {
    for (const int phases : {1, 3}) {
        const auto rails = rails_of(ways(3), {phases, 0, 12});
        EXPECT_EQ(rails[0].modules[0].holds, Holds::main_switch);
        EXPECT_EQ(rails[0].modules[0].places, phases + 1);
    }
}

TEST(Places, OnOneLineTheWaysFollowTheListAndSpareOnesStandLast) {
    const auto rails = rails_of(ways(3), {1, 2, 12});
    ASSERT_EQ(rails.size(), 1u);
    ASSERT_EQ(rails[0].modules.size(), 6u);
    EXPECT_EQ(rails[0].modules[2].way, 1u);
    EXPECT_EQ(rails[0].modules[5].holds, Holds::spare);
    EXPECT_EQ(places_of(rails), 7);
}

TEST(Places, AFuseHasItsResidualDeviceBesideItOnTheSameRail) {
    auto all = ways(9);
    answer::RcdAnswer rcd;
    for (parts::Way& way : all) {
        way.device = answer::DeviceAnswer{"BS 88-3", "", "fuse", 16, 80};
        way.rcd = &rcd;
    }
    const auto rails = rails_of(all, {1, 0, 7});
    for (const Rail& rail : rails) {
        EXPECT_LE(rail.places(), 7);
        EXPECT_NE(rail.modules.front().holds, Holds::residual);
        EXPECT_NE(rail.modules.back().holds, Holds::way) << "parted from what guards it";
    }
}

TEST(Places, OnThreeLinesAShortLineIsFilledWithSpareWaysOrLeftFree) {
    auto all = ways(4);
    all[0].line = all[1].line = 0;
    all[2].line = 1;
    all[3].line = 2;
    const auto rails = rails_of(all, {3, 1, 12});
    ASSERT_EQ(rails[0].modules.size(), 7u);
    EXPECT_EQ(rails[0].modules[4].way, 1u);
    EXPECT_EQ(rails[0].modules[5].holds, Holds::spare);
    EXPECT_EQ(rails[0].modules[6].holds, Holds::free);
}

RC_GTEST_PROP(Places, EachWayIsThereOnceAndNoRailIsTooLong, ()) {
    const int phases = *rc::gen::element(1, 3);
    auto all = ways(*rc::gen::inRange<std::size_t>(0, 41));
    for (parts::Way& way : all) {
        way.phases = phases == 3 && *rc::gen::inRange(0, 4) == 0 ? 3 : 1;
        way.line = phases == 1 ? 0 : way.phases == 3 ? parts::every_line : *rc::gen::inRange(0, 3);
    }
    const int spare = *rc::gen::inRange(0, 8);
    const int room = *rc::gen::inRange(7, 20);
    std::multiset<std::size_t> found;
    int spares = 0;
    for (const Rail& rail : rails_of(all, {phases, spare, room})) {
        RC_ASSERT(rail.places() <= room);
        int place = 0;
        for (const Module& module : rail.modules) {
            if (module.holds == Holds::main_switch) continue;
            if (module.holds == Holds::way) found.insert(module.way);
            spares += module.holds == Holds::spare;
            // The lines come in turn along the rail.
            if (phases == 3) RC_ASSERT(module.line == place % 3);
            place += module.places;
        }
    }
    RC_ASSERT(found.size() == all.size());
    for (std::size_t i = 0; i < all.size(); ++i) RC_ASSERT(found.count(i) == 1u);
    RC_ASSERT(spares == spare);
}

}  // namespace
}  // namespace toft::board
