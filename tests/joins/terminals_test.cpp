#include "joins/terminals.h"

#include "joins/looking.h"

#include <gtest/gtest.h>

namespace toft::joins {
namespace {

std::string listed(const std::vector<std::string>& lines) {
    std::string all;
    for (const std::string& line : lines) all += line + "\n";
    return all;
}

TEST(Terminals, TheNeutralGoesThroughTheRunsOwnResidualDevice) {
    Example one = example("demo");
    answer::RunAnswer& run = one.answer.schemes[0].run;
    const auto near = [&] {
        return end_of(picture::set_stage(one.job, &one.answer.schemes[0]), 0, Side::near);
    };
    run.rcd.reset();
    EXPECT_EQ(near().around, Around::lines);
    EXPECT_EQ(near().neutral, "neutral bar of that way");
    run.rcd = answer::RcdAnswer{100, "A", true, {}};
    EXPECT_EQ(near().around, Around::lines_and_neutral);
    EXPECT_EQ(near().neutral, "the RCD's N");
    EXPECT_EQ(near().lines.rfind("RCD behind ", 0), 0U);
    run.device.kind = "RCBO";
    EXPECT_EQ(near().neutral, "the RCBO's N");
}

TEST(Terminals, ARunFromAnotherBuildingDoesNotNameTheHouse) {
    const OneRun gym = one_run("garage-gym-stable", "gym-feed");
    const picture::Stage stage = picture::set_stage(gym.job, &gym.answer.schemes.at(0));
    EXPECT_EQ(near_name(stage), "the board of Garage");
    const std::string words = listed(head_words(stage));
    EXPECT_NE(words.find("board of Garage"), std::string::npos);
    EXPECT_EQ(words.find("house"), std::string::npos);
    EXPECT_EQ(end_of(stage, 0, Side::near).earth, "earth bar");
}

TEST(Terminals, WhereTheCableChangesStandsAJointBox) {
    const Example& room = example("flat-cable-room");
    const picture::Stage stage = picture::set_stage(room.job, &room.answer.schemes.at(0));
    ASSERT_EQ(stage.scheme->run.stretches.size(), 3U);
    EXPECT_EQ(end_of(stage, 0, Side::far).name, end_of(stage, 1, Side::near).name);
    EXPECT_EQ(end_of(stage, 1, Side::far).name, end_of(stage, 2, Side::near).name);
    EXPECT_NE(end_of(stage, 0, Side::far).name, end_of(stage, 1, Side::far).name);
    EXPECT_EQ(end_of(stage, 2, Side::far).lines, "main switch");
}

TEST(Terminals, IsolatedIsSaidInPlaceOfATerminal) {
    Conductor armour{Kind::armour, "armour"};
    armour.far = Ending::isolated;
    End far;
    far.side = Side::far;
    far.earth = "earth bar";
    EXPECT_EQ(terminal_words(far, armour), "isolated: joined to nothing");
    End near = far;
    near.side = Side::near;
    EXPECT_NE(terminal_words(near, armour).find("earth bar"), std::string::npos);
}

TEST(Terminals, AnRcdOfTheHousesBoardIsToldOrSaidNotToBeKnown) {
    Example one = example("demo");
    const auto words = [&] {
        return listed(head_words(picture::set_stage(one.job, &one.answer.schemes[0])));
    };
    one.job.intake.board.behind_rcd = {};
    EXPECT_NE(words().find("not known"), std::string::npos);
    one.job.intake.board.behind_rcd = {true, amperes(0.03), amperes(0.03)};
    EXPECT_NE(words().find("A 30 mA RCD of that board"), std::string::npos);
    one.job.intake.board.behind_rcd = {true, amperes(0), amperes(0)};
    EXPECT_EQ(words().find("RCD of that board"), std::string::npos);
}

TEST(Terminals, TheFarBoardNamesItsSwitchAndEveryResidualDevice) {
    for_each_run([&](const std::string& name, const site::Job& job, const answer::SchemeAnswer& s) {
        const auto words = far_board_words(picture::set_stage(job, &s));
        EXPECT_EQ(words.size(), 1 + s.building.rcds.size()) << name;
        EXPECT_NE(words.front().find(s.building.main_switch), std::string::npos) << name;
    });
}

}  // namespace
}  // namespace toft::joins
