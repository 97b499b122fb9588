#include "site/words.h"

#include "site/fact.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::site {
namespace {

/// The list has a word for each value up to `last`, and no word twice.
template <class E>
void expect_whole(E last) {
    const auto& list = words<E>();
    EXPECT_EQ(list.size(), static_cast<std::size_t>(last) + 1);
    EXPECT_EQ(std::set<std::string>(list.begin(), list.end()).size(), list.size());
    EXPECT_EQ(word(last), list.back());
}

TEST(Words, HaveOneForEachValue) {
    expect_whole(Earthing::tt);
    expect_whole(Use::other);
    expect_whole(Construction::canvas);
    expect_whole(Metal::other);
    expect_whole(ComesFrom::other_building);
    expect_whole(LegMethod::overhead);
    expect_whole(Surface::road);
    expect_whole(CircuitKind::storage_heater);
    expect_whole(Prefer::dependability);
    expect_whole(FedFrom::new_board);
    expect_whole(Standing::assumed);
}

TEST(Words, StandBesideTheirValues) {
    EXPECT_EQ(word(Earthing::tn_c_s), "TN-C-S");
    EXPECT_EQ(word(Use::hot_tub), "hot tub");
    EXPECT_EQ(word(Construction::steel_frame), "steel frame");
    EXPECT_EQ(word(Metal::structural_steel), "structural steel");
    EXPECT_EQ(word(LegMethod::in_insulation), "in insulation");
    EXPECT_EQ(word(LegMethod::buried_in_duct), "buried in duct");
    EXPECT_EQ(word(Surface::patio), "patio");
    EXPECT_EQ(word(CircuitKind::vehicle_charging), "vehicle charging");
    EXPECT_EQ(word(FedFrom::tails), "tails");
    EXPECT_STREQ(standing_word(Standing::declared), "declared");
}

TEST(Words, MetalBuildingsConductAndOthersDoNot) {
    for (std::size_t i = 0; i < words<Construction>().size(); ++i) {
        const auto construction = static_cast<Construction>(i);
        const bool by_name = word(construction).find("steel") != std::string::npos ||
                             word(construction).find("aluminium") != std::string::npos;
        EXPECT_EQ(metallic(construction), by_name) << word(construction);
    }
}

TEST(Words, WhatIsBuriedSaysSo) {
    for (std::size_t i = 0; i < words<LegMethod>().size(); ++i) {
        const auto method = static_cast<LegMethod>(i);
        EXPECT_EQ(buried(method), word(method).rfind("buried", 0) == 0) << word(method);
    }
}

}  // namespace
}  // namespace toft::site
