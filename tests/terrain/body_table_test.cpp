#include "terrain/body_table.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

drawing::Items table(const answer::LostNeutralAnswer& fault, double width) {
    parts::WordColumn column(0, width, 0);
    body_table(fault, column);
    return column.take();
}

TEST(BodyTable, HasARowForEachCondition) {
    const drawing::Items items = table(looked_at_fault(), 760);
    EXPECT_EQ(picture::count_kind(items, "body"), 2);
    EXPECT_TRUE(picture::says(items, "wet hand to bare feet"));
    EXPECT_TRUE(picture::says(items, "22 to 103 mA"));
}

TEST(BodyTable, AWayWithoutAFigureIsNotKnownRatherThanNothing) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.ways[2].body.clear();
    EXPECT_TRUE(picture::says(table(fault, 760), "not known"));
    for (answer::LostNeutralWayAnswer& way : fault.ways) way.body.clear();
    EXPECT_TRUE(table(fault, 760).empty());
}

TEST(BodyTable, WordsKeepApartAtAnyWidth) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.ways[1].body[0].condition = picture::hostile_name();
    for (const double width : {300.0, 340.0, 447.0, 600.0, 774.0}) {
        EXPECT_EQ(picture::clashes(table(fault, width), {0, 0, width, 900}), "") << width;
    }
}

}  // namespace
}  // namespace toft::terrain
