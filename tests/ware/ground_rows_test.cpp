#include "ware/ground_rows.h"

#include "study/scheme.h"
#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using price::Part;

std::vector<Draft> rows_of(const HandMade& made) {
    return drafts_of(support::catalogue(), made.job, made.part());
}

TEST(GroundRows, DuctBringsACordThatThePriceHasNothingFor) {
    HandMade made;
    made.run().legs[0].method = site::LegMethod::buried_in_duct;
    made.line(Part::ground, "duct", 30, 3.6, 1);
    const auto rows = rows_of(made);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].row.size, "50 mm, bore 38 mm");
    EXPECT_EQ(rows[1].row.what, "draw cord");
    EXPECT_FALSE(rows[1].row.amount);
    EXPECT_EQ(rows[1].row.lines, 0);
}

TEST(GroundRows, CleatsAreSpacedByTheCable) {
    HandMade made;
    made.line(Part::ground, "clips", 4, 1.1, 1);
    const auto row = rows_of(made)[0];
    EXPECT_EQ(row.row.what, "cable cleats with fixings");
    EXPECT_EQ(row.row.size, "for 19.5 mm");
    EXPECT_EQ(row.count, 11);  // every 400 mm
}

TEST(GroundRows, ACableThatStaysKeepsItsCleatsAndOnlyTheConductorBesideItIsHeld) {
    HandMade made;
    made.stretch().laid = study::laid_word(study::Laid::kept);
    made.stretch().separate_mm2 = 16;
    made.line(Part::ground, "clips", 4, 1.1, 1).line(Part::ground, "sand and tape", 20, 4.2, 1);
    const auto rows = rows_of(made);
    EXPECT_EQ(rows[0].row.what, "cable clips with fixings");
    EXPECT_EQ(rows[0].row.size, "16 mm² single core");
    // A single core of 16 mm2 is 8 mm thick.
    const double by_hand =
        (0.3 * (0.075 + 0.008 + 0.1) - 3.14159265 / 4 * 0.008 * 0.008) * 20 * 1.6 * 1.1;
    EXPECT_NEAR(rows[1].tonnes, by_hand, 1e-6);
}

TEST(GroundRows, SandFillsTheTrenchAroundTheCable) {
    HandMade made;
    made.line(Part::ground, "sand and tape", 20, 4.2, 1);
    // By hand: 0.3 m wide, 75 mm below, 100 mm above a cable of 19.5 mm, less the cable itself; 1.6
    // t a cubic metre and a tenth more. An estimator's sheet has 1.4 t for 150 mm in all without
    // waste.
    const double by_hand =
        (0.3 * (0.075 + 0.0195 + 0.1) - 3.14159265 / 4 * 0.0195 * 0.0195) * 20 * 1.6 * 1.1;
    EXPECT_NEAR(rows_of(made)[0].tonnes, by_hand, 1e-6);
    made.run().legs.clear();
    EXPECT_NEAR(rows_of(made)[0].tonnes, by_hand, 1e-6);
    made.scheme.run.stretches.clear();  // what lies there is not known
    EXPECT_EQ(rows_of(made)[0].tonnes, 0);
}

}  // namespace
}  // namespace toft::ware
