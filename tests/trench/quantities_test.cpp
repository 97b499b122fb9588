// Arithmetic of the trade: a trench 300 mm wide and 600 mm deep gives 0.18 m³ of soil a metre,
// allow 25 % for bulking; sand 150 mm thick in it is 0.045 m³ a metre, about 0.07 t, so 20 m take
// about 1.4 t, "two bulk bags". Source: habit of estimators (trade-practice), own arithmetic
// 0.3 x 0.6 x 1 and 0.3 x 0.15 x 1 at 1.6 t/m³; no page of print was seen.
#include "trench/quantities.h"

#include "base/pi.h"
#include "trench/digging_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::trench {
namespace {

const tables::TrenchSizes& sizes() { return shop().trench.sizes; }

/// 300 mm by 600 mm with 150 mm of sand and nothing in it.
Section book_section() {
    Section s;
    s.width = metres(0.3);
    s.depth = metres(0.6);
    s.sand = metres(0.15);
    return s;
}

TEST(Quantities, SoilOfAUsualTrenchAsEstimatorsReckonIt) {
    const Quantities q = quantities_of(sizes(), book_section(), {}, metres(1));
    EXPECT_NEAR(q.dug.number(), 0.18, 1e-12);
    EXPECT_NEAR(q.spoil.number(), 0.225, 1e-12);
    EXPECT_NEAR(q.surface.number(), 0.3, 1e-12);
}

TEST(Quantities, SandOfAUsualTrenchAsEstimatorsReckonIt) {
    const Quantities q = quantities_of(sizes(), book_section(), {}, metres(20));
    EXPECT_NEAR(q.sand.number() / 20, 0.045, 1e-12);
    EXPECT_NEAR(q.sand.number() / 20 * sizes().sand_kg_m3.value, 72, 1e-9);  // kg: "about 0.07 t"
    EXPECT_NEAR(q.sand.number() * sizes().sand_kg_m3.value / 1000, 1.4, 0.05);
    EXPECT_NEAR(q.sand_kg, 1.1 * 1440, 1e-9);
    EXPECT_EQ(bags(q.sand_kg, sizes().bulk_bag_kg.value), 2);
}

TEST(Quantities, WhatLiesInTheSandTakesItsPlaceAndLeavesSoilOver) {
    const std::vector<Lying> lying{{Kind::duct, "A1", "duct", millimetres(50)}};
    const Section s = section_of(shop().trench, lying, metres(0.6), metres(0));
    const Quantities q = quantities_of(sizes(), s, lying, metres(10));
    const double duct = pi / 4 * 0.05 * 0.05 * 10;
    EXPECT_NEAR(q.sand.number(), 0.3 * 0.225 * 10 - duct, 1e-12);
    EXPECT_NEAR(q.left_over.number(), 1.25 * 0.3 * 0.225 * 10, 1e-12);
    ASSERT_EQ(q.ducts.size(), 1u);
    EXPECT_NEAR(q.ducts[0].length.number(), 10, 1e-12);
    EXPECT_NEAR(q.ducts[0].to_buy.number(), 10.5, 1e-12);
}

TEST(Quantities, ADuctThatIsThereIsNotBought) {
    std::vector<Lying> lying{{Kind::duct, "A1", "duct", millimetres(50)}};
    lying[0].there = true;
    const Section s = section_of(shop().trench, lying, metres(0.6), metres(0));
    EXPECT_TRUE(quantities_of(sizes(), s, lying, metres(10)).ducts.empty());
}

TEST(Quantities, BagsHoldAllAndNoneIsBoughtForNothing) {
    EXPECT_EQ(bags(0, 25), 0);
    EXPECT_EQ(bags(25, 25), 1);
    EXPECT_EQ(bags(25.1, 25), 2);
}

RC_GTEST_PROP(Quantities, TwoPartsOfATrenchComeToTheWhole, ()) {
    const std::vector<Lying> lying{{Kind::duct, "A1", "duct", millimetres(63)}, cable_of(22)};
    const Section s =
        section_of(shop().trench, lying, metres(*rc::gen::inRange(3, 12) / 10.0), metres(0.05));
    const double a = *rc::gen::inRange(1, 800) / 10.0;
    const double b = *rc::gen::inRange(1, 800) / 10.0;
    const Quantities parts = sum(quantities_of(sizes(), s, lying, metres(a)),
                                 quantities_of(sizes(), s, lying, metres(b)));
    const Quantities whole = quantities_of(sizes(), s, lying, metres(a + b));
    RC_ASSERT(std::fabs((parts.spoil - whole.spoil).number()) < 1e-9);
    RC_ASSERT(std::fabs((parts.sand - whole.sand).number()) < 1e-9);
    RC_ASSERT(std::fabs(parts.sand_kg - whole.sand_kg) < 1e-6);
    RC_ASSERT(std::fabs((parts.tape_to_buy - whole.tape_to_buy).number()) < 1e-9);
    RC_ASSERT(std::fabs((parts.left_over - whole.left_over).number()) < 1e-9);
    RC_ASSERT(std::fabs((parts.surface - whole.surface).number()) < 1e-9);
    RC_ASSERT(parts.ducts.size() == 1 && whole.ducts.size() == 1);
    RC_ASSERT(whole.left_over < whole.spoil);
}

}  // namespace
}  // namespace toft::trench
