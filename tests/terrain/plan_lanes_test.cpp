#include "terrain/plan_lanes.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

/// How far right the first line of the bridge of that name reaches.
double end_of(const drawing::Items& items, const std::string& name) {
    for (const drawing::Item& item : items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (!group || group->kind != "bridge" || group->title != name) continue;
        for (const drawing::Item& inner : group->items) {
            if (const auto* line = std::get_if<drawing::Line>(&inner.shape)) return line->to.x;
        }
    }
    return -1;
}

TEST(PlanLanes, AThingEndsShortOfTheOutbuildingByItsDistanceToScale) {
    const answer::SeparationAnswer s = looked_at_separation();
    const Drawn drawn = separation_plan({s, "Potter's studio", 2.5}, {10, 784, 100});
    const double unknown = end_of(drawn.items, "screen of the data cable");
    const double tap = end_of(drawn.items, "outside tap of the house");
    const double fence = end_of(drawn.items, "chain-link fence");
    EXPECT_NEAR((unknown - tap) / (unknown - fence), 8.0 / 1.6, 1e-6);
    EXPECT_GT(end_of(drawn.items, "water pipe, copper"), unknown) << "it runs on into the building";
}

TEST(PlanLanes, EverythingStaysOnTheSheet) {
    answer::SeparationAnswer s = looked_at_separation();
    for (const double needed : {0.5, 8.0, 60.0, 5000.0}) {
        s.needed_m = needed;
        const Drawn drawn = separation_plan({s, "Potter's studio", 2.5}, {10, 784, 100});
        const drawing::Box box = drawing::box_of(drawn.items);
        EXPECT_TRUE(drawing::contains({4, 96, 790, drawn.foot + 4}, box)) << needed;
    }
}

TEST(PlanLanes, AsManyLanesAsThereIsRoomFor) {
    answer::SeparationAnswer s;
    EXPECT_EQ(lanes_drawn(s, true), 0u);
    s.bridges.resize(30);
    EXPECT_LT(lanes_drawn(s, true), lanes_drawn(s, false));
    EXPECT_LT(lanes_drawn(s, false), 30u);
}

TEST(PlanLanes, SignsOfTheListDiffer) {
    const auto& bridges = looked_at_separation().bridges;
    EXPECT_NE(drawing::to_svg({50, 20, "", "", {}, bridge_sign(bridges[0], 0)}),
              drawing::to_svg({50, 20, "", "", {}, bridge_sign(bridges[1], 0)}));
    EXPECT_NE(drawing::to_svg({50, 20, "", "", {}, bridge_sign(bridges[1], 0)}),
              drawing::to_svg({50, 20, "", "", {}, bridge_sign(bridges[2], 0)}));
}

}  // namespace
}  // namespace toft::terrain
