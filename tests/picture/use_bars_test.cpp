#include "picture/use_bars.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

using drawing::Box;
using rules::Verdict;

answer::FindingAnswer finding(const char* rule, double value, double limit, double use) {
    answer::FindingAnswer f;
    f.rule = rule;
    f.value = value;
    f.limit = limit;
    f.use = use;
    return f;
}

answer::SchemeAnswer some_scheme() {
    answer::SchemeAnswer scheme;
    scheme.findings = {finding("overload", 10, 20, 0.5), finding("voltage-drop", 2, 2.5, 0.8)};
    scheme.findings[0].unit = "A";
    scheme.findings[1].unit = "%";
    answer::FindingAnswer plain;
    plain.rule = "earthing-choice";
    plain.verdict = Verdict::caution;
    scheme.findings.push_back(plain);
    return scheme;
}

TEST(UseBars, LongestFirstWithFigures) {
    const auto bars = bars_of(some_scheme());
    ASSERT_EQ(bars.size(), 2u);
    EXPECT_EQ(bars[0].figures, "2 %, at most 2.5 %");
    EXPECT_EQ(bars[1].figures, "10 A, at most 20 A");
}

TEST(UseBars, AShareIsToldInPerCentAndLargeCurrentsInKiloamperes) {
    answer::SchemeAnswer scheme;
    scheme.findings = {finding("fault-heat", 0.25, 1, 0.25),
                       finding("breaking-capacity", 1200, 16000, 0.075)};
    scheme.findings[1].unit = "A";
    const auto bars = bars_of(scheme);
    EXPECT_EQ(bars[0].figures, "25 %, at most 100 %");
    EXPECT_EQ(bars[1].figures, "1.2 kA, at most 16 kA");
}

TEST(UseBars, WhatMustBeReachedSaysAtLeast) {
    answer::SchemeAnswer scheme;
    scheme.findings = {finding("separation", 8, 2.5, 0.31)};
    scheme.findings[0].at_least = true;
    EXPECT_EQ(bars_of(scheme)[0].figures, "8, at least 2.5");
}

TEST(UseBars, WhatHasNoFiguresIsNotLost) {
    const auto list = plain_verdicts_of(some_scheme());
    ASSERT_EQ(list.size(), 1u);
    EXPECT_EQ(list[0].verdict, Verdict::caution);
    const drawing::Items items = plain_verdicts(list, Box{0, 0, 400, 40});
    EXPECT_TRUE(says(items, "choice of earth"));
    EXPECT_TRUE(says(items, "caution"));
}

double bar_width(const drawing::Items& items, std::size_t row) {
    const auto& group = std::get<drawing::Group>(items[row].shape);
    std::vector<double> widths;
    for (const drawing::Item& item : group.items) {
        if (const auto* rect = std::get_if<drawing::Rect>(&item.shape)) {
            widths.push_back(rect->box.width());
        }
    }
    return widths.at(1);
}

TEST(UseBars, LengthIsProportionalToUse) {
    const drawing::Items items = use_bars(bars_of(some_scheme()), Box{0, 0, 600, 100});
    EXPECT_NEAR(bar_width(items, 1) / bar_width(items, 0), 0.5 / 0.8, 1e-9);
}

TEST(UseBars, MoreThanTheRoomHoldsIsCounted) {
    const std::vector<UseBar> bars(9, {rule_words("overload"), "1 A, at most 2 A", 0.5});
    const drawing::Items items = use_bars(bars, Box{0, 0, 600, 4 * bar_row});
    EXPECT_EQ(count_kind(items, "use-bar"), 3);
    EXPECT_TRUE(says(items, "and 6 more"));
    const drawing::Items all = use_bars(bars, Box{0, 0, 600, 9 * bar_row});
    EXPECT_EQ(count_kind(all, "use-bar"), 9);
    EXPECT_FALSE(says(all, "more"));
}

TEST(UseBars, AWildUseStaysOnThePaper) {
    const std::vector<UseBar> bars{{rule_words("electrode"), "", 1e9, Verdict::fails}};
    EXPECT_TRUE(drawing::contains(Box{-5, -20, 605, 60},
                                  drawing::box_of(use_bars(bars, Box{0, 0, 600, 40}))));
}

TEST(UseBars, AnUnknownRuleIsNamedAsItIs) {
    EXPECT_EQ(rule_words("some-new-rule")[0].text, "some new rule");
    EXPECT_EQ(rule_words("disconnection")[1].script, drawing::Script::below);
}

TEST(UseBars, ARuleOnACircuitNamesIt) {
    answer::SchemeAnswer scheme;
    scheme.run.id = "shed-feed";
    scheme.findings = {finding("circuit-drop", 2.5, 3, 0.83), finding("voltage-drop", 1, 2.5, 0.4)};
    scheme.findings[0].subject = "Lights over the bench";
    scheme.findings[1].subject = "shed-feed";
    answer::FindingAnswer plain;
    plain.rule = "motor-start";
    plain.subject = "Well pump";
    scheme.findings.push_back(plain);
    const auto bars = bars_of(scheme);
    EXPECT_EQ(bars[0].subject, "Lights over the bench");
    EXPECT_EQ(bars[1].subject, "") << "of the run";
    const Box tall{0, 0, 340, 2 * tall_bar_row};
    EXPECT_TRUE(says(tall_use_bars(bars, tall), "Lights over the bench: drop"));
    EXPECT_TRUE(says(use_bars(bars, {0, 0, 600, 80}), "Lights"));
    EXPECT_TRUE(says(plain_verdicts(plain_verdicts_of(scheme), {0, 0, 340, 60}),
                     "Well pump: motor's start"));
}

TEST(UseBars, ALongNameGivesWayAndTheRuleStays) {
    for (const double room : {158.0, 240.0}) {
        const drawing::TextStyle style{.size = 11};
        const drawing::Spans label =
            named_label(hostile_name(), rule_words("circuit-disconnection"), room, style);
        EXPECT_LE(drawing::text_width(label, style), room + 1e-6);
        EXPECT_EQ(label.back().text, "s");
    }
    std::vector<UseBar> bars(5, {rule_words("circuit-drop"), "2.47 %, at most 5 %", 0.5});
    for (UseBar& bar : bars) bar.subject = hostile_name();
    EXPECT_EQ(clashes(use_bars(bars, {0, 20, 600, 120}), {0, 0, 600, 120}), "");
    const Box tall{10, 100, 350, 100 + 5 * tall_bar_row};
    EXPECT_EQ(clashes(tall_use_bars(bars, tall), tall), "");
}

TEST(UseBars, TallOnesGiveEveryRuleTwoLinesInsideTheBox) {
    const auto bars = bars_of(example("demo").answer.schemes[0]);
    const drawing::Box box{10, 100, 350, 100 + tall_bar_row * static_cast<double>(bars.size())};
    const drawing::Items items = tall_use_bars(bars, box);
    EXPECT_EQ(count_kind(items, "use-bar"), static_cast<int>(bars.size()));
    EXPECT_EQ(clashes(items, box), "");
    for (const UseBar& bar : bars) EXPECT_TRUE(says(items, bar.figures)) << bar.figures;
}

}  // namespace
}  // namespace toft::picture
