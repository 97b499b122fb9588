// Workings of every run of a scheme.

#include "paper/workings.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

const answer::Working* working_in(const RunWorkings& run, const std::string& name) {
    for (const answer::Working& one : run.all) {
        if (one.name == name) return &one;
    }
    return nullptr;
}

TEST(Workings, OfATreeAreThoseOfEachRunAsTheAnswerHasIt) {
    const Made& tree = made("garage-gym-stable");
    const answer::SchemeAnswer& way = tree.answer.schemes.front();
    const auto all = workings_of(support::question_of(tree.job), way);
    const Subject subject = tree.subject();
    const auto runs = runs_of(subject);
    ASSERT_EQ(all.size(), runs.size());
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_EQ(all[i].run, runs[i]->run.id);
        const answer::Working* drop = working_in(all[i], "voltage_drop_percent");
        const answer::Working* loop = working_in(all[i], "loop_impedance_far_ohm");
        ASSERT_TRUE(drop && loop);
        EXPECT_NEAR(drop->value, runs[i]->run.figures.voltage_drop_percent, 1e-9);
        EXPECT_NEAR(loop->value, runs[i]->run.figures.loop_impedance_far_ohm, 1e-9);
        EXPECT_GT(all[i].lines, 100u);
    }
}

TEST(Workings, ALineKnowsItsPlaceAndReadsOnlyLinesBeforeIt) {
    const Made& demo = made("demo");
    const auto all = workings_of(support::question_of(demo.job), demo.answer.schemes.front());
    for (const answer::Working& working : all.front().all) {
        int before = -1;
        for (const Line& line : working.lines) {
            EXPECT_GT(line.place, before);
            before = line.place;
            for (const int input : line.inputs) EXPECT_LT(input, line.place);
        }
    }
}

}  // namespace
}  // namespace toft::paper
