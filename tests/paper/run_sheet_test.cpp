#include "paper/run_sheet.h"

#include "paper/sheets.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(RunSheet, LooksAtTheJobFromItsOwnRun) {
    for_each_sheet([](const std::string& name, const RunSheet& sheet) {
        EXPECT_EQ(sheet.stage.run->id, sheet.run().id) << name;
        EXPECT_EQ(sheet.stage.far->id, sheet.building().id) << name;
    });
}

TEST(RunSheet, StaysWholeWhenMoved) {
    const Example& one = example("garage-gym-stable");
    const Subject subject = sheet_subject(one);
    RunSheet sheet = run_sheet(subject, *runs_of(subject).back());
    const RunSheet moved = std::move(sheet);
    EXPECT_EQ(moved.stage.job, moved.job.get());
    EXPECT_EQ(near_words(moved), "the board of Gym");
    EXPECT_EQ(far_words(moved), "Stable");
}

TEST(RunSheet, AFactIsToldInTheWordsOfTheQuestionForIt) {
    answer::Answer answer;
    answer::UnknownAnswer unknown;
    unknown.fact = "/intake/ze_ohm";
    unknown.says = "external loop";
    unknown.question = "What does Ze read?";
    answer.unknowns.push_back(unknown);
    EXPECT_EQ(fact_words(answer, "/intake/ze_ohm"), "external loop: What does Ze read?");
    EXPECT_EQ(fact_words(answer, "/other"), "other");
    EXPECT_EQ(fact_words(answer, "/ground/resistivity_ohm_m"), "resistivity (ground)");
}

}  // namespace
}  // namespace toft::paper
