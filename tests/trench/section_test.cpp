#include "trench/section.h"

#include "trench/digging_jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::trench {
namespace {

Section plain(const std::vector<Lying>& lying, double cover = 0.5, double layer = 0.05) {
    return section_of(shop().trench, lying, metres(cover), metres(layer));
}

TEST(Section, OneCableLiesInTheMiddleOnItsBedOfSand) {
    const Section s = plain({cable_of(20)});
    EXPECT_NEAR(s.width.number(), 0.3, 1e-12);
    EXPECT_NEAR(s.depth.number(), 0.5 + 0.02 + 0.075, 1e-12);
    ASSERT_EQ(s.placed.size(), 1u);
    EXPECT_NEAR(s.placed[0].across.number(), 0.15, 1e-12);
    EXPECT_NEAR(s.placed[0].down.number(), 0.51, 1e-12);
    EXPECT_NEAR(s.sand.number(), 0.075 + 0.02 + 0.1, 1e-12);
    EXPECT_NEAR(s.tape.number(), 0.3, 1e-12);
    EXPECT_EQ(s.tapes, 1);
}

TEST(Section, DataLiesApartFromPowerAndAConductorAgainstItsCable) {
    const Lying core{Kind::core, "A1", "conductor", millimetres(8)};
    const Lying data{Kind::data, "A1", "duct", millimetres(50)};
    const Section s = plain({cable_of(20), core, cable_of(20), data});
    const auto gap = [&](std::size_t i, double left_mm, double right_mm) {
        return (s.placed[i + 1].across - s.placed[i].across).number() - (left_mm + right_mm) / 2000;
    };
    EXPECT_NEAR(gap(0, 20, 8), 0, 1e-12);
    EXPECT_NEAR(gap(1, 8, 20), 0.05, 1e-12);
    EXPECT_NEAR(gap(2, 20, 50), 0.15, 1e-12);
    EXPECT_NEAR(s.width.number(), 0.4, 1e-12);  // 298 mm and 50 mm on either side, to 50 mm
}

TEST(Section, ARowOfCablesAsksForASecondTape) {
    EXPECT_EQ(plain(std::vector<Lying>(6, cable_of(30))).tapes, 2);
}

TEST(Section, UnderAThinCoverTheTapeKeepsHalfOfIt) {
    const Section s = plain({cable_of(20)}, 0.3, 0.25);
    EXPECT_NEAR(s.tape.number(), 0.15, 1e-12);
    EXPECT_NEAR(s.sand.number(), 0.075 + 0.02 + 0.05, 1e-12);  // not into the surface's layer
}

RC_GTEST_PROP(Section, ThingsNeverOverlapAndStayClearOfTheSides, ()) {
    std::vector<Lying> lying;
    for (int i = *rc::gen::inRange(1, 7); i > 0; --i) {
        lying.push_back(cable_of(*rc::gen::inRange(8, 60)));
        if (*rc::gen::arbitrary<bool>()) lying.back().kind = Kind::data;
    }
    const Section s = plain(lying, *rc::gen::inRange(1, 15) / 10.0);
    double free_from = shop().trench.sizes.side_clear.value.number();
    for (const Placed& one : s.placed) {
        const double half = lying[one.lying].across.number() / 2;
        RC_ASSERT(one.across.number() - half >= free_from - 1e-9);
        RC_ASSERT(one.down.number() - half >= s.cover.number() - 1e-9);
        RC_ASSERT(one.down.number() + half <= (s.depth - s.below).number() + 1e-9);
        free_from = one.across.number() + half;
    }
    RC_ASSERT(s.width.number() - free_from >= shop().trench.sizes.side_clear.value.number() - 1e-9);
    RC_ASSERT(s.tape > metres(0) && s.tape < s.cover);
}

}  // namespace
}  // namespace toft::trench
