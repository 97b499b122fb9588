#include "ware/unpriced.h"

#include "study/scheme.h"
#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using price::Part;

double kits_in(const List& list, bool priced) {
    double count = 0;
    for (const Row& row : list.rows) {
        if (row.what.rfind("insulated gland", 0) != 0 || row.amount.has_value() != priced) continue;
        count += row.quantity;
    }
    return count;
}

TEST(Unpriced, EveryInsulatedEndOfEveryArmouredCableCounts) {
    HandMade made;
    made.stretch().armour_far = true;
    EXPECT_EQ(insulated_ends(made.scheme.run), 0);
    made.stretch().armour_far = false;
    EXPECT_EQ(insulated_ends(made.scheme.run), 1);
    made.stretch().parallel = 2;
    EXPECT_EQ(insulated_ends(made.scheme.run), 2);
    made.stretch().armour_near = false;
    EXPECT_EQ(insulated_ends(made.scheme.run), 4);
    made.stretch().armoured = false;
    EXPECT_EQ(insulated_ends(made.scheme.run), 0);
}

TEST(Unpriced, AKitThatTheBillForgetsIsListedWithoutAPrice) {
    HandMade made;
    EXPECT_EQ(kits_in(made.list(), false), 1);
    const Row row = row_of(made.list(), "insulated gland");
    EXPECT_EQ(row.size, "for 19.5 mm");
    EXPECT_EQ(row.note, "on the run to Garage; not in the price");
    EXPECT_EQ(row.lines, 0);
    made.line(Part::run, "insulated gland kit", 1, 16.5);
    EXPECT_EQ(kits_in(made.list(), false), 0);
    EXPECT_EQ(kits_in(made.list(), true), 1);
    EXPECT_EQ(row_of(made.list(), "insulated gland").size, "for 19.5 mm");
    made.stretch().parallel = 2;
    EXPECT_EQ(kits_in(made.list(), false), 1);
}

TEST(Unpriced, ARodHasItsEarthingConductor) {
    HandMade made;
    const char* const conductor = "single-core copper cable, PVC, green-and-yellow, sheathed";
    EXPECT_EQ(row_of(made.list(), conductor).quantity, 0);
    made.scheme.building.electrode = answer::ElectrodeAnswer{};
    const Row row = row_of(made.list(), conductor);
    // IET Wiring Regulations table 54.1: 16 mm2 of sheathed copper in the ground, no guard.
    EXPECT_EQ(row.size, "16 mm²");
    EXPECT_EQ(row.quantity, 3);
    EXPECT_FALSE(row.amount);
    EXPECT_NE(row.note.find("not in the price"), std::string::npos);
}

TEST(Unpriced, SignalsBesideTheRunHaveADuctWhereItIsDug) {
    HandMade made;
    site::Leg dug;
    dug.method = site::LegMethod::buried_direct;
    dug.length = {true, metres(12), metres(14)};
    site::Leg wall;
    wall.method = site::LegMethod::clipped;
    wall.length = {true, metres(5), metres(5)};
    made.run().legs = {dug, wall, dug};
    made.stretch().last_leg = 3;
    EXPECT_EQ(row_of(made.list(), "duct for").quantity, 0);
    made.run().also_carries = {site::AlsoCarried::data, site::AlsoCarried::telephone};
    const Row duct = row_of(made.list(), "duct for");
    EXPECT_EQ(duct.what, "duct for data and telephone");
    EXPECT_EQ(duct.quantity, 28);
    EXPECT_FALSE(duct.amount);
    EXPECT_EQ(row_of(made.list(), "draw cord").quantity, 28);
    made.stretch().laid = study::laid_word(study::Laid::kept);  // nobody digs
    EXPECT_EQ(row_of(made.list(), "duct for").quantity, 0);
    made.stretch().laid.clear();
    made.run().also_carries = {site::AlsoCarried::switching};  // mains: not in that duct
    EXPECT_EQ(row_of(made.list(), "duct for").quantity, 0);
}

}  // namespace
}  // namespace toft::ware
