#include "board/front.h"

#include "board/boards.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

TEST(Front, EveryWayHasItsDeviceAndItsNumberAndNothingCoversAnything) {
    for (const int phases : {1, 3}) {
        for (const int count : {1, 5, 12, 40}) {
            Example one = many_ways("demo", count);
            one.answer.schemes[0].run.phases = phases;
            const auto ways = ways_in(one);
            for (const double right : {300.0, 340.0, 560.0}) {
                const Front board = front({ways, phases, 3, count + 2}, 10, right, 40);
                SCOPED_TRACE(std::to_string(count) + " ways to " + std::to_string(right));
                EXPECT_EQ(picture::count_kind(board.items, "face-way"), count);
                EXPECT_EQ(picture::count_kind(board.items, "way-number"), count);
                EXPECT_EQ(picture::count_kind(board.items, "face-spare"), 3);
                EXPECT_EQ(picture::count_kind(board.items, "face-switch"), 1);
                const drawing::Box shell{10, 40, board.right, board.foot};
                EXPECT_EQ(picture::clashes(board.items, shell), "");
                EXPECT_LE(board.right, right + 1e-9);
                EXPECT_GT(board.entry.y, shell.top);
                EXPECT_LT(board.entry.y, shell.bottom);
            }
        }
    }
}

TEST(Front, TheEarthComesFromTheRunOrFromTheElectrodeAsItIs) {
    const Example one = many_ways("demo", 3);
    const auto ways = ways_in(one);
    EXPECT_EQ(
        picture::count_kind(front({ways, 1, 0, 4, true, false}, 0, 400, 50).items, "protective"),
        1);
    EXPECT_EQ(
        picture::count_kind(front({ways, 1, 0, 4, false, false}, 0, 400, 50).items, "protective"),
        0);
    const drawing::Items rod = front({ways, 1, 0, 4, false, true}, 0, 400, 50).items;
    const drawing::Group* wire = picture::find_kind(rod, "protective");
    ASSERT_NE(wire, nullptr);
    EXPECT_LT(drawing::box_of(wire->items).top, 50) << "it leaves the enclosure";
}

TEST(Front, SourcesAreMarkedAndOthersAreNot) {
    const Example one = many_ways("demo", 16);
    const auto ways = ways_in(one);
    int sources = 0;
    for (const parts::Way& way : ways) sources += parts::gives(way);
    EXPECT_EQ(sources, 2);
    EXPECT_EQ(picture::count_kind(front({ways}, 0, 400, 50).items, "gives"), sources);
}

TEST(Front, PlacesAreCountedWithTheMainSwitchAndTheSpareOnes) {
    Example one = many_ways("demo", 1);
    const auto ways = ways_in(one);
    EXPECT_EQ(front({ways, 1, 2}, 0, 400, 50).places, 2 + 1 + 2);
}

}  // namespace
}  // namespace toft::board
