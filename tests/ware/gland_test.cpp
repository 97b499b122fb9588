// Which gland takes a cable. Sizes of two-core cable: data sheet of BS 5467 cable with glands,
// https://www.scribd.com/document/451392436/SWA, 4 to 25 mm2.

#include "ware/gland.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::ware {
namespace {

using support::catalogue;
using tables::GlandPlace;

std::string size_for(int cores, double section) {
    const auto choice =
        gland_for(catalogue(), support::cable(cores, section), GlandPlace::outdoors);
    return choice.row ? choice.row->size : "none";
}

TEST(Gland, SizesOfTwoCoreCableAreThoseOfItsDataSheet) {
    EXPECT_EQ(size_for(2, 4), "20S");
    EXPECT_EQ(size_for(2, 6), "20");
    EXPECT_EQ(size_for(2, 10), "20");
    EXPECT_EQ(size_for(2, 16), "25");
    EXPECT_EQ(size_for(2, 25), "25");
}

TEST(Gland, EveryArmouredCableHasOneThatTakesItThoughMakersDiffer) {
    const tables::Ware& ware = catalogue().ware;
    for (const tables::Cable& cable : catalogue().cables) {
        if (!cable.armour_r20.citation) continue;
        const auto choice = gland_for(catalogue(), cable, GlandPlace::outdoors);
        ASSERT_TRUE(choice.row) << tables::family_word(cable.family) << cable.cores << "x"
                                << cable.section.number();
        const double spread = ware.diameter_spread.value;
        for (const double of : {1 - spread, 1.0, 1 + spread}) {
            const Metres made = cable.overall.value * of;
            EXPECT_LE(choice.row->over_from.number(), made.number() + 1e-12);
            EXPECT_LE(made.number(), choice.row->over_to.number() + 1e-12);
        }
    }
}

TEST(Gland, SaysWhyInPlainWords) {
    const auto choice = gland_for(catalogue(), support::cable(3, 10), GlandPlace::outdoors);
    EXPECT_EQ(choice.why,
              "19.5 mm over the sheath: a 20 gland takes 12.5 to 20.9 mm; 13.1 mm under the "
              "armour, it takes up to 14 mm");
}

TEST(Gland, TheTypeGoesByThePlace) {
    const auto type = [](GlandPlace place) {
        return gland_for(catalogue(), support::cable(3, 10), place).type->type;
    };
    EXPECT_EQ(type(GlandPlace::dry), "BW");
    EXPECT_EQ(type(GlandPlace::outdoors), "CW");
    EXPECT_EQ(type(GlandPlace::wet), "E1W");
}

TEST(Gland, WithoutADiameterNoneIsChosen) {
    const auto& flat = support::cable(tables::Family::flat_twin_and_earth, 2, 2.5);
    const auto choice = gland_for(catalogue(), flat, GlandPlace::dry);
    EXPECT_EQ(choice.row, nullptr);
    EXPECT_NE(choice.why.find("cable in hand"), std::string::npos);
}

}  // namespace
}  // namespace toft::ware
