#include "ware/cable_of.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using support::catalogue;
using tables::Family;

TEST(CableOf, ItemsOfThePriceBookNameTheirCable) {
    EXPECT_EQ(cable_of_item(catalogue(), "cable 3x10"), &support::cable(3, 10));
    EXPECT_EQ(cable_of_item(catalogue(), "cable flat twin and earth 2x2.5"),
              &support::cable(Family::flat_twin_and_earth, 2, 2.5));
    EXPECT_EQ(cable_of_item(catalogue(), "cable armoured XLPE aluminium 4x50"),
              &support::cable(Family::armoured_xlpe_aluminium, 4, 50));
    for (const char* none : {"duct", "cable", "cable 3x11", "cable rope 3x10", "cable 3"}) {
        EXPECT_EQ(cable_of_item(catalogue(), none), nullptr) << none;
    }
}

TEST(CableOf, EveryCableHasWordsOfItsOwn) {
    std::vector<std::string> all;
    for (const tables::Cable& cable : catalogue().cables) {
        all.push_back(cable_words(catalogue(), cable) + size_words(cable));
    }
    std::sort(all.begin(), all.end());
    EXPECT_EQ(std::adjacent_find(all.begin(), all.end()), all.end());
    EXPECT_EQ(cable_words(catalogue(), support::cable(3, 10)),
              "armoured cable BS 5467, copper, XLPE");
    EXPECT_EQ(size_words(support::cable(3, 10)), "3-core 10 mm²");
    EXPECT_EQ(size_words(support::cable(Family::flat_twin_and_earth, 2, 2.5)),
              "2-core and earth 2.5 mm²");
}

TEST(CableOf, WhatIsUnderTheArmourIsKnownOfXlpeAndNotOfPvc) {
    const auto* build = build_of(catalogue(), support::cable(3, 10));
    ASSERT_TRUE(build);
    EXPECT_EQ(mm_words(build->under_armour), "13.1 mm");
    EXPECT_EQ(build_of(catalogue(), support::cable(Family::armoured_pvc_copper, 3, 10)), nullptr);
}

}  // namespace
}  // namespace toft::ware
