#include "answer/design_parts.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

struct Designed {
    site::Job job = support::example_job("demo", support::catalogue());
    Question question = support::question_of(job);
    Answer nothing;
    Searched searched = answer::searched(question, {}, nothing);
    const search::Contender& first = searched.found.contenders.front();
    const study::Setting<Silent>& setting = searched.setting_of(first);
};

TEST(SchemeWriter, WithWorkingItNamesHowWellFiguresAreKnownAndWhatTheyRestOn) {
    const Designed d;
    Citations citations;
    const SchemeAnswer whole = written(d.question, d.first, d.setting, citations);
    EXPECT_FALSE(citations.empty());
    EXPECT_FALSE(whole.run.figures.longest_m.empty());
    EXPECT_FALSE(whole.bill.empty());
    bool told = false;
    for (const FindingAnswer& finding : whole.findings) told = told || !finding.basis.empty();
    EXPECT_TRUE(told);
}

TEST(SchemeWriter, InShortItLeavesOutHowLongTheRunMayBe) {
    Designed d;
    d.question.in_short = true;
    Citations citations;
    EXPECT_TRUE(written(d.question, d.first, d.setting, citations).run.figures.longest_m.empty());
}

TEST(SchemeWriter, ThePriceRangeIsTheOneGiven) {
    const Designed d;
    PriceRange range;
    range.low.net = pounds(1);
    range.low.total = pounds(2);
    range.high.net = pounds(3);
    range.high.total = pounds(4);
    const PriceAnswer price = written_bare(d.question, d.first, d.setting, range).price;
    EXPECT_EQ(price.net_low, 1);
    EXPECT_EQ(price.total_low, 2);
    EXPECT_EQ(price.net_high, 3);
    EXPECT_EQ(price.total_high, 4);
    EXPECT_EQ(price.total, d.first.price.total.number());
}

}  // namespace
}  // namespace toft::answer
