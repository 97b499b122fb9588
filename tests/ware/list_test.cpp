// The list against the bill: nothing added, nothing lost.

#include "ware/list.h"

#include "price/bill.h"
#include "ware/bills.h"
#include "ware/pence.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::ware {
namespace {

using price::Part;

struct Sum {
    long long pence = 0;
    int lines = 0;
};

Sum of_bill(const price::Bill& bill) {
    Sum sum;
    for (const price::BillLine& line : bill) {
        if (line.sort != price::Sort::material) continue;
        sum.pence += pence(line.amount);
        ++sum.lines;
    }
    return sum;
}

Sum of_list(const List& list) {
    Sum sum;
    for (const Row& row : list.rows) {
        if (row.amount) sum.pence += pence(*row.amount);
        sum.lines += row.lines;
    }
    return sum;
}

void expect_whole(const List& list, const price::Bill& bill) {
    EXPECT_EQ(of_list(list).pence, of_bill(bill).pence);
    EXPECT_EQ(of_list(list).lines, of_bill(bill).lines);
    EXPECT_EQ(pence(list.amount), of_bill(bill).pence);
}

HandMade usual(const std::string& name) {
    HandMade made(name);
    made.line(Part::house_end, "fuse 32", 1, 3.9)
        .line(Part::house_end, "switch-fuse", 1, 58)
        .line(Part::run, "cable 3x10", 34.32, 7.1)
        .line(Part::run, "gland pair medium", 1, 13.5)
        .line(Part::ground, "sand and tape", 30, 4.2, 1)
        .line(Part::far_end, "outbuilding board", 1, 74)
        .line(Part::far_end, "30 mA RCBO", 2, 27);
    return made;
}

TEST(List, HoldsEveryMaterialLineOfABillAndNoLabour) {
    HandMade made = usual("Garage");
    made.line(Part::run, "labour hour", 2, 46);
    made.bill.back().sort = price::Sort::labour;
    const List list = made.list();
    expect_whole(list, made.bill);
    EXPECT_EQ(row_of(list, "labour").lines, 0);
}

TEST(List, TwoRunsOfTheSameAreOneOrder) {
    const HandMade garage = usual("Garage");
    const HandMade gym = usual("Gym");
    const List both = list_of(support::catalogue(), garage.job, {garage.part(), gym.part()});
    const Row cable = row_of(both, "armoured cable");
    EXPECT_NEAR(cable.quantity, 68.64, 1e-9);
    EXPECT_EQ(cable.order, "cut 35 m (Garage), 35 m (Gym); or 1 drum of 100 m, 30 m left over");
    EXPECT_EQ(both.rows.size(), garage.list().rows.size());
    EXPECT_EQ(both.handling.size(), 2u);
    EXPECT_EQ(of_list(both).pence, 2 * of_bill(garage.bill).pence);
}

TEST(List, OneSparePairOfGlandsIsOrderedAndNotPriced) {
    const List list = usual("Garage").list();
    Row spare;
    for (const Row& row : list.rows) {
        if (row.what.find("spare") != std::string::npos) spare = row;
    }
    EXPECT_EQ(spare.size, "size 20");
    EXPECT_EQ(spare.quantity, 1);
    EXPECT_FALSE(spare.amount);
}

TEST(List, IsSortedByGroup) {
    const List list = usual("Garage").list();
    for (std::size_t i = 1; i < list.rows.size(); ++i) {
        EXPECT_LE(list.rows[i - 1].group, list.rows[i].group);
    }
    EXPECT_STREQ(group_word(Group::put_right), "put right first");
}

RC_GTEST_PROP(List, WhateverStandsInABillStandsInTheList, ()) {
    static const std::vector<std::string> items{"cable 3x10",
                                                "cable 2x4",
                                                "cable rope",
                                                "separate 16",
                                                "gland pair large",
                                                "duct",
                                                "clips",
                                                "tray",
                                                "sand and tape",
                                                "30 mA RCBO",
                                                "fuse 32",
                                                "breaker B 6 kA",
                                                "breaker over 40 A extra",
                                                "three-phase board extra",
                                                "four-pole RCD extra",
                                                "delayed RCD",
                                                "new board",
                                                "rod",
                                                "",
                                                "outbuilding board",
                                                "something else"};
    HandMade made("Garage");
    made.scheme.run.phases = *rc::gen::element(1, 3);
    const auto count = *rc::gen::inRange(0, 40);
    for (int i = 0; i < count; ++i) {
        const auto part = static_cast<Part>(*rc::gen::inRange(0, price::parts));
        made.line(part, *rc::gen::elementOf(items), *rc::gen::inRange(1, 5000) / 100.0,
                  *rc::gen::inRange(1, 30000) / 100.0, *rc::gen::inRange(0, 4));
    }
    const List list = made.list();
    RC_ASSERT(of_list(list).pence == of_bill(made.bill).pence);
    RC_ASSERT(of_list(list).lines == of_bill(made.bill).lines);
    RC_ASSERT(pence(list.amount) == of_bill(made.bill).pence);
}

}  // namespace
}  // namespace toft::ware
