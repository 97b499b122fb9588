// What is said of choices.

#include "client/choice_words.h"

#include "paper/written.h"

namespace toft::paper {
namespace {

TEST(ChoiceWords, TheDifferenceIsSaidInOneSentenceByTheAnswersFigures) {
    const auto& one = picture::example("own-rod-greenhouse");
    const Subject s = subject_of(one);
    const auto choices = choices_of(s);
    ASSERT_GE(choices.size(), 2u);
    const std::string words = difference_words(s, choices, 1);
    const auto& a = one.answer.schemes[choices[0].scheme];
    const auto& b = one.answer.schemes[choices[1].scheme];
    EXPECT_NE(words.find(pence_words(b.price.total - a.price.total) + " more"), std::string::npos);
    EXPECT_NE(words.find("earthed in another way"), std::string::npos);
    EXPECT_NE(words.find("more dependable"), std::string::npos);
    EXPECT_NE(words.find(fixed(100 * b.headroom, 0) + " %"), std::string::npos);
    EXPECT_EQ(std::count(words.begin(), words.end(), '\n'), 0);
}

TEST(ChoiceWords, WhatAllChoicesSayIsSaidOnce) {
    const Shared shared = shared_lines({{"a", "b"}, {"b", "c"}, {"b"}});
    EXPECT_EQ(shared.common, (std::vector<std::string>{"b"}));
    EXPECT_EQ(shared.own[0], (std::vector<std::string>{"a"}));
    EXPECT_EQ(shared.own[1], (std::vector<std::string>{"c"}));
    EXPECT_TRUE(shared.own[2].empty());
}

TEST(ChoiceWords, OneThatCostsTheSameOrLessIsSaidSo) {
    picture::Example one = copy_of("own-rod-greenhouse");
    const auto choices = choices_of(subject_of(one));
    answer::SchemeAnswer& second = one.answer.schemes[choices[1].scheme];
    second.price.total = one.answer.schemes[choices[0].scheme].price.total;
    EXPECT_NE(difference_words(subject_of(one), choices, 1).find("costs the same"),
              std::string::npos);
    second.price.total -= 12;
    EXPECT_NE(difference_words(subject_of(one), choices, 1).find("£12.00 less"), std::string::npos);
}

TEST(ChoiceWords, OfATreeTheBuildingsThatAreEarthedInAnotherWayAreNamed) {
    const auto& one = picture::example("garage-gym-stable");
    const auto choices = choices_of(subject_of(one));
    ASSERT_GE(choices.size(), 2u);
    const auto& a = one.answer.schemes[choices[0].scheme];
    const auto& b = one.answer.schemes[choices[1].scheme];
    const std::string words = difference_words(subject_of(one), choices, 1);
    ASSERT_FALSE(earthed_differently(a, b).empty());
    for (const std::string& id : earthed_differently(a, b)) {
        EXPECT_NE(words.find(building_name(subject_of(one), id)), std::string::npos) << words;
    }
}

TEST(ChoiceWords, EveryDutyToTellSaysWhenAndWhom) {
    const auto& scheme = picture::example("demo").answer.schemes.front();
    const ChoiceLines lines = told_lines(scheme);
    ASSERT_EQ(lines.size(), scheme.tell.size());
    for (std::size_t i = 0; i < lines.size(); ++i) {
        EXPECT_NE(lines[i].find(scheme.tell[i].who), std::string::npos);
        EXPECT_NE(lines[i].find(scheme.tell[i].why), std::string::npos);
    }
    EXPECT_EQ(lines.front().rfind("Before the work", 0), 0u);
}

TEST(ChoiceWords, LinesOfACellHaveDashesOnlyWhereThereAreSeveral) {
    EXPECT_EQ(joined_lines({"one"}, true), "one");
    EXPECT_EQ(joined_lines({"one", "two"}, true), "– one\n– two");
    EXPECT_EQ(percent_left(0.446), "45 %");
}

TEST(ChoiceWords, LostEnergyMattersByItsShareOfThePrice) {
    picture::Example one = copy_of("demo");
    const auto choices = choices_of(subject_of(one));
    EXPECT_FALSE(loss_matters(subject_of(one), choices));
    answer::SchemeAnswer& first = one.answer.schemes[choices[0].scheme];
    const double share = support::catalogue().levers.worth.small_cost.value / 100;
    first.over_years.lost = 0.99 * share * first.price.total;
    EXPECT_FALSE(loss_matters(subject_of(one), choices));
    first.over_years.lost = 1.01 * share * first.price.total;
    EXPECT_TRUE(loss_matters(subject_of(one), choices));
    EXPECT_FALSE(loss_matters(subject_of(one), {}));
}

}  // namespace
}  // namespace toft::paper
