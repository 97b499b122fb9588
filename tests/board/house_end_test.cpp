#include "board/house_end.h"

#include "board/boards.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

std::string joined_lines(const std::vector<std::string>& lines) {
    std::string all;
    for (const std::string& line : lines) all += line + "\n";
    return all;
}

TEST(HouseEndOfBoard, SaysWhereItIsFedFromAndByWhat) {
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            const picture::Stage stage = picture::set_stage(one.job, &scheme);
            const std::string words = joined_lines(house_end_words(stage));
            const bool tails = scheme.run.fed_from != "spare way";
            EXPECT_EQ(words.find("on the tails") != std::string::npos, tails);
            EXPECT_NE(words.find(significant(scheme.run.device.rating_a, 4) + " A"),
                      std::string::npos);
            EXPECT_NE(words.find(site::word(one.job.intake.earthing)), std::string::npos);
        }
    }
}

TEST(HouseEndOfBoard, AnRcdOfTheHousesBoardIsToldAndSoIsNotKnowing) {
    Example one = example("demo");
    one.answer.schemes[0].run.fed_from = "spare way";
    site::HouseBoard& board = one.job.intake.board;
    const auto words = [&] {
        return joined_lines(house_end_words(picture::set_stage(one.job, &one.answer.schemes[0])));
    };
    board.behind_rcd = site::Fact<Amperes>{true, amperes(0.03), amperes(0.03)};
    EXPECT_NE(words().find("30 mA RCD of the house's board in front"), std::string::npos);
    board.behind_rcd = {};
    EXPECT_NE(words().find("not known"), std::string::npos);
}

TEST(HouseEndOfBoard, EveryCableOfTheRunIsNamed) {
    const Example& one = example("flat-cable-room");
    const answer::RunAnswer& run = one.answer.schemes.at(0).run;
    EXPECT_EQ(incoming_words(run).size(), run.stretches.size() + 1);
}

TEST(HouseEndOfBoard, WordsStandBesideTheBoxOrBelowIt) {
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        if (one.answer.schemes.empty()) continue;
        const picture::Stage stage = picture::set_stage(one.job, &one.answer.schemes[0]);
        for (const bool below : {false, true}) {
            const HouseEnd end = house_end(stage, 10, below ? 190 : 350, 20, below);
            EXPECT_EQ(picture::clashes(end.items, {10, 20, 350, end.foot}), "") << name;
            EXPECT_EQ(picture::count_kind(end.items, "house-end"), 1);
            EXPECT_LT(end.exit.y, end.foot);
        }
    }
}

}  // namespace
}  // namespace toft::board
