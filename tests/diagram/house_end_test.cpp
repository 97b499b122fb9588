#include "diagram/house_end.h"

#include "diagram/sheet.h"
#include "diagram/wording.h"

#include <gtest/gtest.h>

#include <map>

namespace toft::diagram {
namespace {

drawing::Items house_end(const Example& one, const answer::SchemeAnswer& scheme) {
    return drawn(
        [&](Ladder& ladder) { draw_house_end(picture::set_stage(one.job, &scheme), ladder); });
}

TEST(HouseEnd, EveryDeviceIsDrawnAndNamed) {
    std::map<std::string, int> kinds;
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const drawing::Items items = house_end(one, scheme);
        const answer::DeviceAnswer& d = scheme.run.device;
        const bool both = d.kind == "RCBO";
        EXPECT_EQ(count_kind(items, "rcbo"), both ? 1 : 0);
        EXPECT_EQ(count_kind(items, "fuse"), d.curve.empty() ? 1 : 0);
        EXPECT_EQ(count_kind(items, "circuit-breaker"), d.curve.empty() ? 0 : 1);
        EXPECT_TRUE(says(items, rating_words(d.standard, d.curve, d.rating_a)));
        EXPECT_TRUE(says(items, significant(d.breaking_capacity_ka, 4) + " kA"));
        EXPECT_EQ(count_kind(items, "rcd"), scheme.run.rcd && !both ? 1 : 0);
        if (scheme.run.rcd) {
            EXPECT_TRUE(says(items, residual_words(*scheme.run.rcd)));
            kinds["residual"] += 1;
        }
        kinds[d.kind] += 1;
        // Something isolates the run in every case.
        EXPECT_GE(count_kind(items, "switch-disconnector"), d.curve.empty() ? 1 : 0);
    });
    for (const char* kind : {"RCBO", "fuse", "breaker", "residual"})
        EXPECT_GT(kinds[kind], 0) << kind;
}

TEST(HouseEnd, KindsOfDeviceAreCalledByTheirNames) {
    Example one = example("demo");
    answer::SchemeAnswer scheme = one.answer.schemes[0];
    scheme.run.fed_from = "spare way";
    scheme.run.device = {"BS 3036", "", "rewirable fuse", 30, 1};
    EXPECT_TRUE(says(house_end(one, scheme), "rewirable fuse, new, in a spare way"));
    scheme.run.device = {"BS EN 60947-2", "TM", "moulded-case breaker", 63, 16};
    EXPECT_TRUE(says(house_end(one, scheme), "moulded-case circuit breaker, new"));
    scheme.run.fed_from = "tails";
    EXPECT_TRUE(says(house_end(one, scheme), "of its own"));
    EXPECT_EQ(count_kind(house_end(one, scheme), "switch-fuse"), 0);
    scheme.run.phases = 3;
    EXPECT_TRUE(says(house_end(one, scheme), "63 A BS EN 60947-2, three-pole"));
}

TEST(HouseEnd, TailsAreDividedOnlyForAUnitOfItsOwn) {
    int divided = 0;
    int ways = 0;
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const drawing::Items items = house_end(one, scheme);
        const bool way = scheme.run.fed_from == "spare way";
        EXPECT_EQ(count_kind(items, "connector-block"), way ? 0 : 1);
        EXPECT_EQ(says(items, "the house's other ways"), way);
        const bool fused = scheme.run.device.curve.empty();
        EXPECT_EQ(count_kind(items, "switch-fuse"),
                  scheme.run.fed_from == "tails" && fused ? 1 : 0);
        (way ? ways : divided) += 1;
    });
    EXPECT_GT(divided, 0);
    EXPECT_GT(ways, 0);
}

TEST(HouseEnd, AnRcdInFrontOfTheWaysIsDrawnAndADoubtTold) {
    Example one = example("demo");
    const answer::SchemeAnswer& scheme = one.answer.schemes[0];
    ASSERT_EQ(scheme.run.fed_from, "spare way");
    EXPECT_EQ(count_kind(house_end(one, scheme), "rcd"), 0);
    auto& behind = one.job.intake.board.behind_rcd;
    behind.low = behind.high = amperes(0.03);
    EXPECT_EQ(count_kind(house_end(one, scheme), "rcd"), 1);
    EXPECT_TRUE(says(house_end(one, scheme), "30 mA"));
    behind.known = false;
    EXPECT_TRUE(says(house_end(one, scheme), "whether an RCD follows it: not known"));
}

TEST(HouseEnd, WithoutASchemeTheBoardAlone) {
    const drawing::Items items = drawn([](Ladder& ladder) {
        draw_house_board_alone(picture::set_stage(example("demo").job, nullptr), ladder);
    });
    EXPECT_EQ(count_kind(items, "switch-disconnector"), 1);
    EXPECT_EQ(count_kind(items, "circuit-breaker"), 0);
    EXPECT_FALSE(says(items, "new"));
}

}  // namespace
}  // namespace toft::diagram
