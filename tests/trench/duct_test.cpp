// Ducts by how much of the bore is filled. The percentages are an estimator's sheet: 19.5 mm in
// 38 mm 26 %, 21.6 mm in 38 mm 32 %, 26.7 mm in 51 mm 27 %, in 38 mm 49 %; own arithmetic there,
// so these are checks of the arithmetic, and of the habit to take 63 mm from 16 mm2 with bends.

#include "trench/duct.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::trench {
namespace {

using support::catalogue;

double per_cent(double bore, double cable) {
    return 100 * duct_fill(millimetres(bore), {millimetres(cable)});
}

double outside_for(std::vector<double> cables) {
    std::vector<Metres> all;
    for (const double mm : cables) all.push_back(millimetres(mm));
    const auto choice = duct_for(catalogue(), all);
    return choice.row ? choice.row->outside.number() * 1000 : 0;
}

TEST(Duct, FillIsAreaOverArea) {
    EXPECT_NEAR(per_cent(38, 19.5), 26, 0.5);
    EXPECT_NEAR(per_cent(38, 21.6), 32, 0.5);
    EXPECT_NEAR(per_cent(51, 26.7), 27, 0.5);
    EXPECT_NEAR(per_cent(38, 26.7), 49, 0.5);
    EXPECT_NEAR(per_cent(26, 19.5), 56, 0.5);
}

TEST(Duct, TenTakesFiftyAndThickerCableSixtyThree) {
    EXPECT_NEAR(outside_for({19.5}), 50, 1e-9);
    EXPECT_NEAR(outside_for({21.6}), 63, 1e-9);  // bends are not known to be absent
    EXPECT_NEAR(outside_for({26.7}), 63, 1e-9);
}

TEST(Duct, AConductorBesideTheCableCounts) {
    EXPECT_NEAR(outside_for({19.5, 8.0}), 50, 1e-9);
    EXPECT_NEAR(outside_for({20.4, 11.0}), 63, 1e-9);
}

TEST(Duct, WhatIsNotKnownHasNoDuct) {
    EXPECT_EQ(outside_for({}), 0);
    EXPECT_EQ(outside_for({19.5, 0}), 0);
    EXPECT_EQ(outside_for({100}), 0);
    EXPECT_NE(duct_for(catalogue(), {metres(0)}).why.find("cable in hand"), std::string::npos);
}

TEST(Duct, SaysWhyInPlainWords) {
    EXPECT_EQ(duct_for(catalogue(), {millimetres(19.5)}).why,
              "19.5 mm in a bore of 38 mm: 26 % full, 29 % where a maker's cable is thicker, at "
              "most 35 %");
}

RC_GTEST_PROP(Duct, AThickerCableNeverTakesANarrowerDuct, ()) {
    const double thin = *rc::gen::inRange(80, 600) / 10.0;
    const double thick = thin + *rc::gen::inRange(0, 100) / 10.0;
    const double a = outside_for({thin});
    const double b = outside_for({thick});
    RC_ASSERT(b == 0 || a <= b);
}

}  // namespace
}  // namespace toft::trench
