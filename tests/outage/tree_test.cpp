#include "outage/tree.h"

#include "outage/looking.h"

#include <gtest/gtest.h>

namespace toft::outage {
namespace {

const Space room{44, 900, 20, false, true};

int count_of(const Items& items, bool rings) {
    int count = 0;
    for (const Item& item : items) {
        count += rings ? std::holds_alternative<Circle>(item.shape)
                       : std::holds_alternative<Rect>(item.shape);
    }
    return count;
}

TEST(Tree, ASquareOpensOnOvercurrentARingOnResidualCurrent) {
    EXPECT_EQ(count_of(device_sign({0, 0}, Opens::overcurrent), true), 0);
    EXPECT_EQ(count_of(device_sign({0, 0}, Opens::overcurrent), false), 1);
    EXPECT_EQ(count_of(device_sign({0, 0}, Opens::residual), true), 1);
    EXPECT_EQ(count_of(device_sign({0, 0}, Opens::residual), false), 0);
    EXPECT_EQ(device_sign({0, 0}, Opens::both).size(), 2u);
}

TEST(Tree, EveryDeviceHasItsSignAndItsName) {
    const guard::Darkness dark = made_up(3);
    const Drawn drawn = tree(dark, columns_of(dark, room), room, false);
    EXPECT_EQ(count_of(drawn.items, false), 2 + 3);  // service, head, three breakers
    EXPECT_EQ(count_of(drawn.items, true), 2 + 3);   // house's RCD, head's RCD, three breakers
    for (const char* words : {"the service fuse", "the RCD of the house's board",
                              "the RCD at the head of the run", "a breaker for each circuit"}) {
        EXPECT_TRUE(picture::says(drawn.items, words)) << words;
    }
    const Drawn rcbo = tree(dark, columns_of(dark, room), room, true);
    EXPECT_EQ(count_of(rcbo.items, true), 3 + 3);
}

TEST(Tree, NothingReachesBelowItsFootOrBesideItsColumns) {
    for (const std::size_t circuits : {1u, 4u, 30u, 100u}) {
        const guard::Darkness dark = made_up(circuits);
        const Columns columns = columns_of(dark, room);
        const Drawn drawn = tree(dark, columns, room, true);
        EXPECT_LE(drawing::box_of(drawn.items).bottom, drawn.foot + 4);
        EXPECT_LE(drawing::box_of(drawn.items).right, room.right + 8);  // a number of three figures
    }
}

TEST(Tree, PartsAreCountedFromOne) {
    EXPECT_EQ(part_sign(0), "1");
    EXPECT_EQ(part_sign(41), "42");
}

}  // namespace
}  // namespace toft::outage
