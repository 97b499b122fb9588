// Spacing of cleats and radius of bends. Bends: a cable maker's guide, 6 diameters up to 16 mm2 and
// 8 above. Cleats: 300 to 400 mm for small armoured cable is heard on the trade's pages.

#include "ware/fixing.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using support::cable;
using support::catalogue;

TEST(Fixing, SmallArmouredCableIsHeldEvery300To400Millimetres) {
    for (const double section : {1.5, 2.5, 4.0, 6.0, 10.0}) {
        const double mm = spacing_of(catalogue(), cable(2, section)).number() * 1000;
        EXPECT_GE(mm, 300) << section;
        EXPECT_LE(mm, 400) << section;
    }
}

TEST(Fixing, WhatHasNoDiameterIsHeldAsCloselyAsTheThinnest) {
    const auto& flat = cable(tables::Family::flat_twin_and_earth, 2, 2.5);
    EXPECT_NEAR(spacing_of(catalogue(), flat).number(), 0.25, 1e-12);
}

TEST(Fixing, OneMoreThanThereAreSpaces) {
    EXPECT_EQ(fixings_on(metres(4), metres(0.4)), 11);
    EXPECT_EQ(fixings_on(metres(4.1), metres(0.4)), 12);
    EXPECT_EQ(fixings_on(metres(0), metres(0.4)), 0);
    EXPECT_EQ(fixings_on(metres(4), metres(0)), 0);
}

TEST(Fixing, ThickerCoresAskForWiderBends) {
    EXPECT_EQ(bend_words(catalogue(), cable(3, 10)), "117 mm (6 × 19.5 mm)");
    EXPECT_EQ(bend_words(catalogue(), cable(3, 16)), "130 mm (6 × 21.6 mm)");
    EXPECT_EQ(bend_times(catalogue(), cable(4, 25)), 8);
    EXPECT_EQ(bend_words(catalogue(), cable(tables::Family::flat_twin_and_earth, 2, 2.5)),
              "6 × its diameter");
}

TEST(Fixing, EveryCableHasARadius) {
    for (const tables::Cable& one : catalogue().cables) EXPECT_GT(bend_times(catalogue(), one), 0);
}

}  // namespace
}  // namespace toft::ware
