#include "picture/heading.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

const drawing::Box heading_sheet{0, 0, 1400, 990};

answer::Answer some_answer() {
    answer::Answer a;
    a.job = "Potting shed";
    a.data_version = "2026.1";
    a.edition = "an edition";
    a.schemes.resize(1);
    a.schemes[0].rank = 1;
    a.schemes[0].sentence = "Feed it with a cable.";
    a.schemes[0].headroom = 0.23;
    a.schemes[0].governed_by = "voltage-drop";
    return a;
}

TEST(Heading, SaysTheSchemeAndHowItStands) {
    const answer::Answer a = some_answer();
    const Heading head = heading(a, &a.schemes[0]);
    for (const char* words : {"Potting shed", "Feed it with a cable.", "meets", "scheme 1 of 1",
                              "every rule judged is met", "headroom 23 %, set by voltage drop"}) {
        EXPECT_TRUE(says(head.items, words)) << words;
    }
}

TEST(Heading, ACautionIsNeverShownAsMet) {
    answer::Answer a = some_answer();
    a.schemes[0].findings.resize(1);
    a.schemes[0].findings[0].verdict = rules::Verdict::caution;
    a.schemes[0].cautions = {"mind the frame", "and the rod", "and the tub"};
    const Heading head = heading(a, &a.schemes[0]);
    EXPECT_TRUE(says(head.items, "caution"));
    EXPECT_FALSE(says(head.items, "every rule judged is met"));
    EXPECT_TRUE(says(head.items, "mind the frame"));
    EXPECT_TRUE(says(head.items, "(and 1 more) and the rod"));
}

TEST(Heading, AConditionalSchemeSaysOnWhat) {
    answer::Answer a = some_answer();
    a.schemes[0].conditional_on = {"/intake/ze_ohm"};
    const Heading head = heading(a, &a.schemes[0]);
    EXPECT_TRUE(says(head.items, "not known"));
    EXPECT_TRUE(says(head.items, "only if these facts turn out well: /intake/ze_ohm"));
    EXPECT_FALSE(says(head.items, "meets"));
}

TEST(Heading, WithoutASchemeSaysSo) {
    const Heading head = heading(some_answer(), nullptr);
    EXPECT_TRUE(says(head.items, "No sound scheme"));
    EXPECT_TRUE(says(head.items, "fails"));
}

TEST(Heading, LongWordsKeepToTheSheet) {
    answer::Answer a = some_answer();
    a.job = hostile_name();
    a.data_version = hostile_name();
    a.edition = hostile_name();
    for (int i = 0; i < 20; ++i) a.schemes[0].sentence += " " + hostile_name();
    a.schemes[0].conditional_on.assign(20, hostile_name());
    a.schemes[0].cautions.assign(20, hostile_name());
    drawing::Items items = heading(a, &a.schemes[0]).items;
    EXPECT_LT(heading(a, &a.schemes[0]).foot, 190);
    drawing::append(items, footing(a));
    EXPECT_EQ(clashes(items, heading_sheet), "");
}

TEST(Heading, TheFootSaysWhoDecidesAndOnWhatData) {
    const drawing::Items items = footing(some_answer());
    EXPECT_TRUE(says(
        items, "A competent, licensed person, the local code and the network operator decide."));
    EXPECT_TRUE(says(items, "data 2026.1"));
    EXPECT_TRUE(says(items, "an edition"));
}

}  // namespace
}  // namespace toft::picture
