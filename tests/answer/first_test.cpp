// What is shown after each change is what the whole answer says.

#include "answer/first.h"

#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::answer {
namespace {

/// Beside the usual ones: three phases, an old cable, an overhead run, two runs to choose from.
const std::vector<std::string>& jobs() {
    static const std::vector<std::string> names = [] {
        std::vector<std::string> all = support::example_names();
        for (const char* more : {"three-phase-barn", "old-garage-cable", "overhead-stable",
                                 "own-rod-greenhouse", "flat-cable-room", "garage-gym-stable"}) {
            all.emplace_back(more);
        }
        return all;
    }();
    return names;
}

void expect_same(const SchemeAnswer& first, const SchemeAnswer& whole) {
    EXPECT_EQ(first.rank, whole.rank);
    EXPECT_EQ(first.key, whole.key);
    EXPECT_EQ(first.words, whole.words);
    EXPECT_EQ(first.sentence, whole.sentence);
    EXPECT_EQ(first.conditional_on, whole.conditional_on);
    EXPECT_EQ(first.headroom, whole.headroom);
    EXPECT_EQ(first.governed_by, whole.governed_by);
    EXPECT_EQ(first.dependability, whole.dependability);
    EXPECT_EQ(first.building.earthing, whole.building.earthing);
    EXPECT_EQ(first.feeds, whole.feeds);
    const PriceAnswer& a = first.price;
    const PriceAnswer& b = whole.price;
    EXPECT_EQ(a.net, b.net);
    EXPECT_EQ(a.vat, b.vat);
    EXPECT_EQ(a.total, b.total);
    EXPECT_EQ(a.net_low, b.net_low);
    EXPECT_EQ(a.total_low, b.total_low);
    EXPECT_EQ(a.net_high, b.net_high);
    EXPECT_EQ(a.total_high, b.total_high);
    EXPECT_EQ(a.currency, b.currency);
    EXPECT_EQ(a.basis, b.basis);
}

TEST(First, SaysOfEverySchemeWhatTheWholeAnswerSays) {
    for (const std::string& name : jobs()) {
        SCOPED_TRACE(name);
        const site::Job job = support::example_job(name, support::catalogue());
        const Answer whole = design(support::question_of(job));
        const FirstAnswer quick = first(support::question_of(job), "");
        EXPECT_EQ(quick.answer.sound, whole.sound);
        EXPECT_EQ(quick.answer.cautions, whole.cautions);
        ASSERT_EQ(quick.answer.schemes.size(), whole.schemes.size());
        for (std::size_t i = 0; i < whole.schemes.size(); ++i) {
            expect_same(quick.answer.schemes[i], whole.schemes[i]);
        }
        EXPECT_EQ(quick.chosen.has_value(), !whole.schemes.empty());
        if (job.runs.size() == 1) {
            EXPECT_EQ(quick.answer.assumed, whole.assumed);
        }
    }
}

TEST(First, AnySchemeShownCanBeTheOneWrittenWhole) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const Answer whole = design(support::question_of(job));
    ASSERT_GT(whole.schemes.size(), 2u);
    for (const SchemeAnswer& scheme : whole.schemes) {
        const FirstAnswer quick = first(support::question_of(job), scheme.key);
        ASSERT_TRUE(quick.chosen);
        EXPECT_EQ(*quick.chosen + 1, static_cast<std::size_t>(scheme.rank));
        const SchemeAnswer& chosen = quick.answer.schemes[*quick.chosen];
        expect_same(chosen, scheme);
        EXPECT_EQ(chosen.over_years.least, scheme.over_years.least);
        ASSERT_EQ(chosen.findings.size(), scheme.findings.size());
        for (std::size_t i = 0; i < scheme.findings.size(); ++i) {
            EXPECT_EQ(chosen.findings[i].says, scheme.findings[i].says);
            EXPECT_EQ(chosen.findings[i].use, scheme.findings[i].use);
        }
    }
}

TEST(First, AKeyThatIsNotShownGivesTheFirst) {
    const site::Job job = support::example_job("tt-shed", support::catalogue());
    EXPECT_EQ(first(support::question_of(job), "no such key").chosen, std::size_t{0});
}

TEST(First, WhereNothingIsSoundItSaysWhyAndChoosesNothing) {
    const site::Job job = support::example_job("caravan-no-scheme", support::catalogue());
    const FirstAnswer quick = first(support::question_of(job), "");
    EXPECT_FALSE(quick.answer.sound);
    EXPECT_FALSE(quick.chosen);
    EXPECT_FALSE(quick.answer.dropped.empty());
}

TEST(First, WhoStopsTheSearchIsToldThatItWasStopped) {
    const site::Job job = support::example_job("demo", support::catalogue());
    Question question = support::question_of(job);
    question.go_on = [](const Progress&) { return false; };
    const FirstAnswer quick = first(question, "");
    EXPECT_TRUE(quick.answer.search.stopped);
    EXPECT_FALSE(quick.answer.search.proved);
}

}  // namespace
}  // namespace toft::answer
