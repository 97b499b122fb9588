#include "board/board.h"

#include "board/boards.h"
#include "drawing/night.h"
#include "parts/word_column.h"

#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

using drawing::Scene;

std::string beyond_or_over(const Scene& scene) {
    return picture::clashes(scene.items, {0, 0, scene.width, scene.height});
}

std::vector<std::string> drawn_examples() {
    std::vector<std::string> names = support::example_names();
    for (const std::string& name : picture::drawn_job_names()) names.push_back(name);
    return names;
}

TEST(Board, NoWordsCoverOthersOnAnyExample) {
    for (const std::string& name : drawn_examples()) {
        const Example& one = example(name);
        for (std::size_t i = 0; i <= one.answer.schemes.size(); ++i) {
            for (const double width : {320.0, 360.0, paper_wide, 1100.0}) {
                const Scene scene = board_picture(one.job, one.answer, i, width);
                EXPECT_EQ(beyond_or_over(scene), "") << name << " " << i << " " << width;
                EXPECT_DOUBLE_EQ(scene.width, width);
            }
        }
    }
}

TEST(Board, FortyWaysWithLongNamesAreAllThere) {
    for (const char* name : {"demo", "three-phase-barn"}) {
        const Example one = many_ways(name, 40);
        for (const double width : {320.0, 360.0, paper_wide}) {
            const Scene scene = board_picture(one.job, one.answer, 0, width);
            EXPECT_EQ(beyond_or_over(scene), "") << name << " " << width;
            EXPECT_EQ(picture::count_kind(scene.items, "face-way"), 40);
            EXPECT_EQ(picture::count_kind(scene.items, "way"), 40);
            for (int i = 1; i <= 40; ++i) {
                EXPECT_TRUE(picture::says(scene.items, std::to_string(100 + i))) << i;
            }
        }
    }
}

TEST(Board, OfABuildingFedFromAnotherNamesThatOneAndNoHouse) {
    const site::Job job = support::example_job("garage-gym-stable", support::catalogue());
    const answer::Answer answer = answer::design(support::question_of(job));
    const drawing::Scene scene =
        board_picture(answer::seen_from(job, "gym-feed"), answer::for_run(answer, "gym-feed"), 0);
    for (const char* words :
         {"Garage: a way of", "earth terminal of Garage", "the earth that Garage has"}) {
        EXPECT_TRUE(picture::says(scene.items, words)) << words;
    }
    for (const char* words : {"House:", "house's board", "house's electrode", "supply TN"}) {
        EXPECT_FALSE(picture::says(scene.items, words)) << words;
    }
    EXPECT_EQ(picture::clashes(scene.items, {0, 0, scene.width, scene.height}), "");
}

TEST(Board, SpareWaysAreThoseTheSurveyAsksFor) {
    Example one = many_ways("demo", 4);
    site::Fact<double>& spare = one.job.buildings[1].spare_ways;
    spare = {};
    EXPECT_TRUE(picture::says(board_picture(one.job, one.answer, 0).items, "not stated"));
    spare = site::Fact<double>{true, 3, 3};
    const Scene scene = board_picture(one.job, one.answer, 0);
    EXPECT_EQ(picture::count_kind(scene.items, "face-spare"), 3);
    EXPECT_TRUE(picture::says(scene.items, "3 spare ways asked for"));
}

TEST(Board, TheOwnElectrodeIsNamedWhereThereIsOne) {
    for (const std::string& name : drawn_examples()) {
        const Example& one = example(name);
        for (std::size_t i = 0; i < one.answer.schemes.size(); ++i) {
            const Scene scene = board_picture(one.job, one.answer, i, 360);
            EXPECT_EQ(picture::says(scene.items, "from its own earth electrode"),
                      picture::has_electrode(one.answer.schemes[i]));
        }
    }
}

TEST(Board, WithoutASchemeItSaysWhy) {
    const Example& one = example("caravan-no-scheme");
    const Scene scene = board_picture(one.job, one.answer, 0, 360);
    EXPECT_TRUE(picture::says(scene.items, "no sound scheme: what fell, and why"));
    EXPECT_EQ(picture::count_kind(scene.items, "enclosure"), 0);
}

TEST(Board, AtNightConductorsKeepTheirColoursAndInkDoesNot) {
    const Example& one = example("demo");
    const std::string night =
        drawing::to_svg(drawing::at_night(board_picture(one.job, one.answer, 0)));
    EXPECT_EQ(night.find("#fbf8f1"), std::string::npos) << "paper is left at night";
    EXPECT_EQ(night.find("#1f1c19"), std::string::npos) << "ink is left at night";
    for (const char* kept : {"#6b3f16", "#1e6fc8", "#1f8a3b"}) {
        EXPECT_NE(night.find(kept), std::string::npos) << kept;
    }
}

TEST(Board, HostileNamesAreHarmlessAndKeepToTheirRoom) {
    Example one = many_ways("demo", 12);
    one.job.title = one.answer.job = picture::hostile_name();
    for (site::Building& building : one.job.buildings) building.name = picture::hostile_name();
    for (site::Circuit& circuit : one.job.buildings[1].circuits) {
        circuit.name = picture::hostile_name();
    }
    one.answer.schemes[0].building.rcds[0].covers.assign(30, picture::hostile_name());
    for (const double width : {360.0, paper_wide}) {
        const Scene scene = board_picture(one.job, one.answer, 0, width);
        EXPECT_EQ(beyond_or_over(scene), "");
        const std::string svg = drawing::to_svg(scene);
        EXPECT_EQ(svg.find("<script"), std::string::npos);
        EXPECT_EQ(svg.find("Part of this drawing is missing"), std::string::npos);
    }
}

TEST(Board, SameInputSameBytesAndNoSheetTooNarrow) {
    const Example& one = example("tt-shed");
    EXPECT_EQ(drawing::to_svg(board_picture(one.job, one.answer, 0)),
              drawing::to_svg(board_picture(one.job, one.answer, 0)));
    EXPECT_DOUBLE_EQ(board_picture(one.job, one.answer, 0, 10).width, parts::narrowest_sheet);
}

}  // namespace
}  // namespace toft::board
