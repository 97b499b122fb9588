#include "ware/device_rows.h"

#include "ware/bills.h"
#include "ware/pence.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using price::Part;

answer::CircuitAnswer circuit(double rating, double rcd_ma = 30) {
    answer::CircuitAnswer c;
    c.device = {"BS EN 61009", "B", "RCBO", rating, 6};
    c.rcd_ma = rcd_ma;
    c.rcd_type = "A";
    return c;
}

TEST(DeviceRows, ADeviceIsNamedAsItStandsOnTheShelf) {
    EXPECT_EQ(device_words({"BS 88-3", "", "fuse", 32, 16}), "cartridge fuse BS 88-3");
    EXPECT_EQ(device_words({"BS EN 60898", "B", "breaker", 40, 6}),
              "circuit-breaker BS EN 60898, type B, 6 kA");
    EXPECT_TRUE(is_device("fuse BS 88-2 32"));
    EXPECT_FALSE(is_device("outbuilding board"));
}

TEST(DeviceRows, ThreePhasesTakeThreeFusesOrOneBreaker) {
    HandMade made;
    made.scheme.run.phases = 3;
    made.line(Part::house_end, "fuse 32", 3, 3.9);
    Row row = head_row(made.part(), made.bill[0]).row;
    EXPECT_EQ(row.quantity, 3);
    EXPECT_EQ(*row.each, pounds(3.90));
    made.scheme.run.device = {"BS EN 60898", "C", "breaker", 32, 10};
    row = head_row(made.part(), made.bill[0]).row;
    EXPECT_EQ(row.quantity, 1);
    EXPECT_EQ(pence(*row.each), 1170);
    EXPECT_NE(row.what.find("three-pole"), std::string::npos);
    EXPECT_EQ(pence(*row.amount), 1170);
}

TEST(DeviceRows, TheHeadIsToldByWhereItStandsAndWhatItSenses) {
    HandMade made("Gym");
    made.scheme.run.device = {"BS EN 61009", "B", "RCBO", 40, 6};
    made.scheme.run.rcd = answer::RcdAnswer{100, "A", true, {}, ""};
    made.scheme.run.feeder = "Garage";
    made.line(Part::house_end, "RCBO B 6 kA", 1, 27);
    const Row row = head_row(made.part(), made.bill[0]).row;
    EXPECT_EQ(row.what, "RCBO BS EN 61009, type B, 6 kA, 100 mA type A");
    EXPECT_EQ(row.note, "at the head of the run to Gym, in Garage");
}

TEST(DeviceRows, EachCircuitHasItsRating) {
    HandMade made;
    made.scheme.building.circuits = {circuit(6), circuit(32)};
    made.line(Part::far_end, "30 mA RCBO", 2, 27);
    const auto rows = circuit_rows(made.part(), made.bill[0]);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[0].row.size, "6 A");
    EXPECT_EQ(rows[1].row.what, "RCBO BS EN 61009, type B, 6 kA, 30 mA type A");
    EXPECT_EQ(rows[0].row.lines + rows[1].row.lines, 1);
}

TEST(DeviceRows, WhatSolarFeedsThroughIsMadeForBothDirections) {
    HandMade made;
    answer::CircuitAnswer panels = circuit(16);
    panels.kind = site::word(site::CircuitKind::solar);
    panels.name = "Panels";
    made.scheme.building.circuits = {circuit(16), panels};
    made.line(Part::far_end, "30 mA RCBO", 3, 27).line(Part::house_end, "breaker B 6 kA", 1, 7);
    RunBill part = made.part();
    part.behind.gives = true;
    const auto rows = circuit_rows(part, made.bill[0]);
    EXPECT_EQ(rows[0].row.what.find("both directions"), std::string::npos);
    EXPECT_NE(rows[1].row.what.find("for current in both directions"), std::string::npos);
    EXPECT_EQ(rows[1].row.note, "for Panels, which feeds back");
    EXPECT_NE(rows[2].row.note.find("both directions"), std::string::npos);
    made.scheme.run.device = {"BS EN 60898", "B", "breaker", 32, 6};
    EXPECT_NE(head_row(part, made.bill[1]).row.note.find(back_fed_words), std::string::npos);
    made.scheme.run.device = {"BS 88-3", "", "fuse", 32, 16};  // a fuse knows no direction
    EXPECT_EQ(head_row(part, made.bill[1]).row.note.find(back_fed_words), std::string::npos);
    part.behind.gives = false;
    made.scheme.run.device = {"BS EN 60898", "B", "breaker", 32, 6};
    EXPECT_EQ(head_row(part, made.bill[1]).row.note.find(back_fed_words), std::string::npos);
}

TEST(DeviceRows, WhatNoCircuitIsKnownForIsBoughtWithoutARating) {
    HandMade made;
    made.scheme.building.circuits = {circuit(6)};
    made.line(Part::far_end, "30 mA RCBO", 2, 27);
    const auto rows = circuit_rows(made.part(), made.bill[0]);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_EQ(rows[1].row.size, "rating not settled");
}

TEST(DeviceRows, ThePennyThatRoundingLeavesIsKept) {
    HandMade made;
    made.line(Part::far_end, "30 mA RCBO", 3, 27.333);  // 82.00
    long long sum = 0;
    for (const Draft& draft : circuit_rows(made.part(), made.bill[0])) {
        sum += pence(*draft.row.amount);
    }
    EXPECT_EQ(sum, 8200);
}

}  // namespace
}  // namespace toft::ware
