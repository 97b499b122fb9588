// What can be added later, against the design of the job with it.

#include "outlook/later.h"

#include "answer/unknowns.h"
#include "support/jobs.h"
#include "support/judging.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::outlook {
namespace {

using namespace answer;

const LaterAnswer& of_demo() {
    static const site::Job job = support::example_job("demo", support::catalogue());
    static const LaterAnswer answer = later(support::question_of(job));
    return answer;
}

TEST(Later, StartsFromTheSchemeThatDesignRecommends) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const Answer designed = design(support::question_of(job));
    EXPECT_EQ(of_demo().scheme_key, designed.schemes.front().key);
    EXPECT_NEAR(of_demo().total, designed.schemes.front().price.total, 1e-6);
    EXPECT_NEAR(of_demo().design_current_a, designed.schemes.front().run.figures.design_current_a,
                1e-9);
}

TEST(Later, TheDeviceEndsWhatCanBeAdded) {
    // Ib <= In, BS 7671 433.1.1: what the device has left above the design current.
    const site::Job job = support::example_job("demo", support::catalogue());
    const Answer designed = design(support::question_of(job));
    const RunAnswer& run = designed.schemes.front().run;
    const double left = run.device.rating_a - run.figures.design_current_a;
    bool told = false;
    for (const CeilingAnswer& c : of_demo().ceilings) {
        if (c.rule != "overload") continue;
        EXPECT_NEAR(c.more_a, left, 1e-4);
        EXPECT_NEAR(c.more_kw, left * 230 / 1000, 1e-4);
        told = true;
    }
    EXPECT_TRUE(told);
    for (std::size_t i = 1; i < of_demo().ceilings.size(); ++i) {
        EXPECT_LE(of_demo().ceilings[i - 1].more_a, of_demo().ceilings[i].more_a);
    }
}

TEST(Later, WhatIsPlannedNowIsWhatDesignMakesOfTheJobWithIt) {
    const site::Job job = support::example_job("demo", support::catalogue());
    ASSERT_EQ(of_demo().additions.size(), support::catalogue().additions.size());
    for (std::size_t i = 0; i < of_demo().additions.size(); ++i) {
        const AdditionAnswer& a = of_demo().additions[i];
        const tables::AdditionRow& row = support::catalogue().additions[i];
        const site::Job with = with_addition(support::catalogue(), job, row);
        const Answer designed = design(support::question_of(with));
        // How deep the cable to a building that is only planned will lie, nobody has said.
        const bool found = designed.sound || (only_conditional(designed) &&
                                              designed.schemes[0].conditional_on ==
                                                  unsaid_of(support::question_of(with)));
        ASSERT_EQ(a.more_now.has_value(), found) << a.key;
        if (!found) continue;
        EXPECT_NEAR(of_demo().total + *a.more_now, designed.schemes.front().price.total, 1e-6)
            << a.key;
    }
}

TEST(Later, WhatFitsFailsNothingAndLeavingItCostsNoLessThanPlanningIt) {
    int fit = 0;
    for (const AdditionAnswer& a : of_demo().additions) {
        EXPECT_EQ(a.keeps == Keeps::all, a.fails.empty()) << a.key;
        fit += a.keeps == Keeps::all ? 1 : 0;
        if (a.more_now && a.more_later) {
            EXPECT_LE(*a.more_now, *a.more_later + 1e-6) << a.key;
        }
    }
    EXPECT_GT(fit, 0);
    EXPECT_LT(fit, static_cast<int>(of_demo().additions.size()));
}

TEST(Later, WhereTheCablesServeOnlyTheHeadIsBoughtAgain) {
    // The fast tub asks more than 32 A of the head, and the cable of the run bears it.
    for (const AdditionAnswer& a : of_demo().additions) {
        if (a.key != "hot-tub-large") continue;
        EXPECT_EQ(a.keeps, Keeps::cables);
        EXPECT_EQ(a.fails, std::vector<std::string>{"overload"});
        EXPECT_LT(*a.more_later, of_demo().total);
        EXPECT_GT(*a.more_later, *a.more_now);
    }
    EXPECT_STREQ(keeps_word(Keeps::all), "fits");
    EXPECT_STREQ(keeps_word(Keeps::nothing), "new run");
}

TEST(Later, AJobWithoutASoundSchemeCanTakeNothing) {
    const site::Job job = support::example_job("caravan-no-scheme", support::catalogue());
    const LaterAnswer a = later(support::question_of(job));
    EXPECT_TRUE(a.scheme.empty());
    EXPECT_TRUE(a.additions.empty());
    EXPECT_TRUE(a.ceilings.empty());
}

}  // namespace
}  // namespace toft::outlook
