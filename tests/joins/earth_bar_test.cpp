#include "joins/earth_bar.h"

#include "base/text.h"
#include "joins/looking.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::joins {
namespace {

long count(const std::vector<Tap>& taps, LeadsTo to) {
    return std::count_if(taps.begin(), taps.end(), [&](const Tap& t) { return t.to == to; });
}

bool says(const std::vector<Tap>& taps, LeadsTo to, const std::string& words) {
    return std::any_of(taps.begin(), taps.end(), [&](const Tap& t) {
        return t.to == to && t.words.find(words) != std::string::npos;
    });
}

TEST(EarthBar, EveryBondOfTheAnswerIsOnTheFarTerminalWithItsSize) {
    int seen = 0;
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        const auto taps = far_taps(picture::set_stage(job, &s));
        EXPECT_EQ(count(taps, LeadsTo::metal), static_cast<long>(s.building.bonding.size()));
        for (const answer::BondAnswer& bond : s.building.bonding) {
            EXPECT_TRUE(says(taps, LeadsTo::metal, significant(bond.size_mm2, 6) + " mm²")) << name;
            ++seen;
        }
    });
    EXPECT_GT(seen, 20);
}

TEST(EarthBar, TheElectrodeBearsTheLargestReadingOfTheAnswer) {
    int seen = 0;
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        const auto taps = far_taps(picture::set_stage(job, &s));
        EXPECT_EQ(count(taps, LeadsTo::electrode), s.building.electrode.has_value());
        if (!s.building.electrode) return;
        EXPECT_TRUE(says(taps, LeadsTo::electrode,
                         significant(s.building.electrode->largest_ohm, 3) + " Ω"))
            << name;
        EXPECT_EQ(count(taps, LeadsTo::run), 0) << name;
        EXPECT_GE(count(taps, LeadsTo::nothing), 1) << name;
        ++seen;
    });
    EXPECT_GT(seen, 10);
}

TEST(EarthBar, WhatTheNearEndIsEarthedByIsNamed) {
    const auto near = [](const Example& one) {
        return near_taps(picture::set_stage(one.job, &one.answer.schemes.at(0)));
    };
    EXPECT_TRUE(says(near(example("demo")), LeadsTo::source, "TN-C-S"));
    EXPECT_TRUE(says(near(example("tn-s-workshop")), LeadsTo::source, "TN-S"));
    EXPECT_TRUE(says(near(example("tt-shed")), LeadsTo::electrode, "(TT)"));
    const OneRun gym = one_run("garage-gym-stable", "gym-feed");
    const auto taps = near_taps(picture::set_stage(gym.job, &gym.answer.schemes.at(0)));
    EXPECT_TRUE(says(taps, LeadsTo::source, "board of Garage"));
    EXPECT_FALSE(says(taps, LeadsTo::source, "house"));
}

TEST(EarthBar, TheSourceIsTheNearBoardsNotAlwaysTheHouses) {
    const auto source = [](const site::Job& job, const answer::Answer& answer) {
        return source_words(picture::set_stage(job, &answer.schemes.at(0)));
    };
    const OneRun gym = one_run("garage-gym-stable", "gym-feed");
    EXPECT_EQ(source(gym.job, gym.answer),
              "Earthed by the earth of the board of Garage, which the run's armour brings.");
    EXPECT_EQ(source(example("tt-shed").job, example("tt-shed").answer),
              "Earthed by the house's electrode, which the run's armour brings.");
    const Example own = made_up({armoured("armour", false)}, "own electrode");
    EXPECT_EQ(
        source(own.job, own.answer),
        "Earthed by its own electrode. Nothing on the earth of the house may be joined here.");
}

TEST(EarthBar, MetalWithoutABondSaysWhy) {
    const Example& house = example("own-rod-greenhouse");
    const auto words = unbonded_words(picture::set_stage(house.job, &house.answer.schemes.at(0)));
    ASSERT_EQ(words.size(), 1U);
    EXPECT_NE(words[0].find("insulating section"), std::string::npos);
}

TEST(EarthBar, WhatIsKeptFromItStopsShort) {
    parts::WordColumn column(0, 300, 0);
    set_taps({{LeadsTo::source, "source"}, {LeadsTo::nothing, "the armour"}}, column);
    const drawing::Items items = column.take();
    EXPECT_EQ(picture::count_kind(items, "not-joined"), 1);
    EXPECT_TRUE(picture::says(items, "NOT joined: the armour"));
    EXPECT_GT(drawing::box_of(picture::find_kind(items, "not-joined")->items).left, 10 + 2);
}

}  // namespace
}  // namespace toft::joins
