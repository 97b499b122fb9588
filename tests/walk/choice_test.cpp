#include "walk/choice.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace toft::walk {
namespace {

TEST(Choice, EveryChoiceBearingAndStandingHasAWordOfItsOwn) {
    std::set<std::string> choices;
    std::set<std::string> bearings;
    std::set<std::string> standings;
    for (std::size_t i = 0; i < choice_count; ++i) {
        choices.insert(choice_word(static_cast<Choice>(i)));
    }
    for (int i = 0; i < 5; ++i) {
        bearings.insert(bearing_word(static_cast<Bearing>(i)));
        standings.insert(standing_word(static_cast<Standing>(i)));
    }
    EXPECT_EQ(choices.size(), choice_count);
    EXPECT_EQ(bearings.size(), 5u);
    EXPECT_EQ(standings.size(), 5u);
    EXPECT_EQ(choices.count("") + bearings.count("") + standings.count(""), 0u);
    EXPECT_STREQ(known_word(Known::unknown), "unknown");
    EXPECT_STREQ(known_word(Known::measured), "measured");
}

TEST(Choice, AnEarthOfTheSupplyIsThereOnlyWhereTheOperatorGivesOne) {
    for (const auto system : {site::Earthing::tn_s, site::Earthing::tn_c_s}) {
        EXPECT_TRUE(offered(Choice::supply_earth, system));
        EXPECT_TRUE(offered(Choice::added_electrode, system));
        EXPECT_FALSE(offered(Choice::shared_electrode, system));
    }
    EXPECT_FALSE(offered(Choice::supply_earth, site::Earthing::tt));
    EXPECT_FALSE(offered(Choice::added_electrode, site::Earthing::tt));
    EXPECT_TRUE(offered(Choice::shared_electrode, site::Earthing::tt));
    for (const auto system : {site::Earthing::tn_s, site::Earthing::tn_c_s, site::Earthing::tt}) {
        EXPECT_TRUE(offered(Choice::own_electrode, system));
    }
}

}  // namespace
}  // namespace toft::walk
