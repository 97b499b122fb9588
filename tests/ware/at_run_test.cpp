#include "ware/at_run.h"

#include "study/scheme.h"
#include "ware/bills.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

TEST(AtRun, LinesFindTheirStretchByNumberAndTheirLegByPlace) {
    HandMade made;
    made.stretch().last_leg = 2;
    answer::StretchAnswer second = made.stretch();
    second.first_leg = second.last_leg = 3;
    second.live_mm2 = 16;
    made.scheme.run.stretches.push_back(second);
    const RunBill part = made.part();
    const AtRun at(support::catalogue(), part);
    EXPECT_EQ(at.stretch(0), &made.stretch());
    EXPECT_EQ(at.stretch(1), &made.stretch());
    EXPECT_EQ(at.stretch(2)->live_mm2, 16);
    EXPECT_EQ(at.stretch(3), nullptr);
    EXPECT_EQ(at.at_leg(2), &made.stretch());
    EXPECT_EQ(at.at_leg(3)->live_mm2, 16);
    EXPECT_EQ(at.at_leg(4), nullptr);
    EXPECT_EQ(at.thickness_words(3), "for 21.6 mm");
    EXPECT_EQ(at.thickness_words(4), "");
    EXPECT_FALSE(at.in_duct(0));
    EXPECT_FALSE(at.in_duct(4));
}

TEST(AtRun, AConductorBesideTheCableIsPulledInWithIt) {
    HandMade made;
    made.stretch().separate_mm2 = 16;
    const RunBill part = made.part();
    const AtRun at(support::catalogue(), part);
    ASSERT_EQ(at.pulled_in(1).size(), 2u);
    EXPECT_NEAR(at.pulled_in(1)[1].number(), 0.008, 1e-12);
    EXPECT_TRUE(at.pulled_in(7).empty());
    made.stretch().separate_mm2 = 3;  // not sold
    EXPECT_EQ(at.pulled_in(1)[1], metres(0));
}

TEST(AtRun, ACableThatStaysIsNotBoughtAndItsSecondIs) {
    HandMade made;
    made.stretch().parallel = 2;
    EXPECT_EQ(bought_of(made.stretch()), 2);
    made.stretch().laid = study::laid_word(study::Laid::doubled);
    EXPECT_EQ(bought_of(made.stretch()), 1);
    made.stretch().parallel = 1;
    made.stretch().laid = study::laid_word(study::Laid::kept);
    EXPECT_EQ(bought_of(made.stretch()), 0);
}

}  // namespace
}  // namespace toft::ware
