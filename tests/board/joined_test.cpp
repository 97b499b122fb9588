#include "board/joined.h"

#include "board/boards.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

/// Whether a line that says so is joined; none when no line does.
std::optional<bool> joined_of(const std::vector<Joined>& list, const std::string& words) {
    for (const Joined& one : list) {
        if (one.words.find(words) != std::string::npos) return one.joined;
    }
    return std::nullopt;
}

TEST(JoinedTo, ATerminalWithItsOwnElectrodeHasNothingOfTheHouse) {
    int seen = 0;
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        for (std::size_t i = 0; i < one.answer.schemes.size(); ++i) {
            const answer::SchemeAnswer& scheme = one.answer.schemes[i];
            if (scheme.building.earthing != "own electrode") continue;
            const picture::Stage stage = picture::set_stage(one.job, &scheme);
            const auto list = far_joined(stage, ways_in(one, i));
            EXPECT_EQ(joined_of(list, "own earth electrode"), true);
            EXPECT_NE(joined_of(list, "armour"), true) << name << " " << scheme.key;
            EXPECT_NE(joined_of(list, "earth core"), true) << name << " " << scheme.key;
            EXPECT_NE(earth_source_words(stage).find("Nothing on the earth of the house"),
                      std::string::npos);
            ++seen;
        }
    }
    EXPECT_GT(seen, 3);
}

TEST(JoinedTo, ACarriedEarthComesByWhatTheAnswerNames) {
    int seen = 0;
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        for (std::size_t i = 0; i < one.answer.schemes.size(); ++i) {
            const answer::SchemeAnswer& scheme = one.answer.schemes[i];
            if (scheme.building.earthing == "own electrode") continue;
            const picture::Stage stage = picture::set_stage(one.job, &scheme);
            const auto list = far_joined(stage, ways_in(one, i));
            const answer::StretchAnswer& last = scheme.run.stretches.back();
            SCOPED_TRACE(name + " " + scheme.key);
            if (last.armoured) {
                EXPECT_EQ(joined_of(list, "armour"), last.armour_far);
            }
            if (last.protective_conductor.find("core") != std::string::npos) {
                EXPECT_EQ(joined_of(list, "earth core"), true);
            }
            for (const answer::BondAnswer& bond : scheme.building.bonding) {
                EXPECT_EQ(joined_of(list, "bond to the " + bond.part.substr(0, 5)), true);
            }
            ++seen;
        }
    }
    EXPECT_GT(seen, 10);
}

TEST(JoinedTo, TheHousesTerminalSaysWhoseEarthItIs) {
    const auto list = [](const char* name) {
        const Example& one = example(name);
        return house_joined(picture::set_stage(one.job, &one.answer.schemes.at(0)));
    };
    EXPECT_EQ(joined_of(list("demo"), "TN-C-S"), true);
    EXPECT_EQ(joined_of(list("tn-s-workshop"), "TN-S"), true);
    EXPECT_EQ(joined_of(list("tt-shed"), "earth electrode (TT)"), true);
}

TEST(JoinedTo, WhatIsNotJoinedStopsShortOfTheBar) {
    const std::vector<Joined> list{{"the run's earth core", true}, {"the run's armour", false}};
    parts::WordColumn column(0, 300, 0);
    set_joined(list, column);
    const drawing::Items items = column.take();
    EXPECT_EQ(picture::count_kind(items, "not-joined"), 1);
    EXPECT_TRUE(picture::says(items, "not joined: the run's armour"));
    const drawing::Group* stub = picture::find_kind(items, "not-joined");
    EXPECT_GT(drawing::box_of(stub->items).left, 10 + 2) << "a gap after the bar";
    EXPECT_EQ(earth_screws(list, 5), 5);
}

}  // namespace
}  // namespace toft::board
