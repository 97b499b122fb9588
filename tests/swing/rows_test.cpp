#include "swing/rows.h"

#include "drawing/measure.h"
#include "looking.h"

#include <gtest/gtest.h>

namespace toft::swing {
namespace {

TEST(Rows, StayBetweenTheEdgesOfTheirSpace) {
    for (const std::size_t figures : {0u, 1u, 5u, 40u}) {
        for (const double right : {310.0, 600.0, 1000.0}) {
            const terrain::Space room{10, right, 20, right < 400, false};
            const terrain::Drawn drawn = rows(made_up(figures).found, room);
            const drawing::Box box = drawing::box_of(drawn.items);
            EXPECT_GE(box.left, 4) << figures;
            EXPECT_LE(box.right, right + 6) << figures;
            EXPECT_LE(box.bottom, drawn.foot) << figures;
        }
    }
}

TEST(Rows, OnlyTheWidestSwingsAreShown) {
    EXPECT_EQ(shown_swings(made_up(5).found).size(), 5u);
    EXPECT_EQ(shown_swings(made_up(40).found).size(), most_rows);
    outlook::ToleranceAnswer still = made_up(1);
    auto& swing = still.found.tornado.swings[0];
    swing.high.use = swing.low.use;
    EXPECT_TRUE(shown_swings(still.found).empty());
}

TEST(Rows, RulesThatHoldAtTheirWorstAreLeftOut) {
    outlook::ToleranceAnswer sure = made_up(1);
    EXPECT_EQ(shown_rules(sure.found).size(), 1u);
    sure.found.rules[0].holds_at_worst = true;
    EXPECT_TRUE(shown_rules(sure.found).empty());
}

TEST(Rows, EndsAreToldApartWithoutColour) {
    // The low end is hatched, the high end full: one has lines inside its box, the other none.
    EXPECT_GT(low_bar({0, 0, 60, 13}).size(), 5u);
    EXPECT_EQ(high_bar({0, 0, 60, 13}).size(), 1u);
}

}  // namespace
}  // namespace toft::swing
