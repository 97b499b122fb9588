#include "picture/narrow_heading.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

/// All words with the breaks between lines as spaces.
std::string running(const drawing::Items& items) {
    std::string words = words_in(items);
    std::replace(words.begin(), words.end(), '\n', ' ');
    return words;
}

TEST(NarrowHeading, EveryCautionIsSaidInFull) {
    const Example& one = example("tt-shed");
    const answer::SchemeAnswer& scheme = one.answer.schemes.front();
    ASSERT_FALSE(scheme.cautions.empty());
    parts::WordColumn column(10, 350, 10);
    narrow_heading(one.answer, &scheme, column);
    const double foot = column.y();
    const drawing::Items items = column.take();
    const std::string words = running(items);
    for (const std::string& caution : scheme.cautions) {
        EXPECT_NE(words.find(caution), std::string::npos) << caution;
    }
    EXPECT_NE(words.find(scheme.sentence), std::string::npos);
    EXPECT_NE(words.find("headroom"), std::string::npos);
    EXPECT_EQ(clashes(items, {0, 0, 360, foot}), "");
}

TEST(NarrowHeading, MoreCautionsThanASheetBearsAreCounted) {
    answer::Answer a = example("tt-shed").answer;
    a.schemes.front().cautions.assign(9, "mind the rod");
    parts::WordColumn column(10, 350, 10);
    narrow_heading(a, &a.schemes.front(), column);
    EXPECT_TRUE(says(column.take(), "and 3 more cautions in the answer"));
}

TEST(NarrowHeading, WithoutASchemeItFailsAndTheReasonsStand) {
    const Example& one = example("caravan-no-scheme");
    parts::WordColumn column(10, 350, 10);
    narrow_heading(one.answer, nullptr, column);
    narrow_reasons(one.answer, column);
    const double foot = column.y();
    const drawing::Items items = column.take();
    EXPECT_TRUE(says(items, "fails"));
    EXPECT_NE(running(items).find("No sound scheme:"), std::string::npos);
    EXPECT_EQ(count_kind(items, "reason"), static_cast<int>(one.answer.dropped.size()));
    EXPECT_EQ(clashes(items, {0, 0, 360, foot}), "");
}

TEST(NarrowHeading, TheFootSaysWhoDecides) {
    const Example& one = example("demo");
    parts::WordColumn column(10, 350, 10);
    narrow_footing(one.answer, column);
    const std::string words = running(column.take());
    EXPECT_NE(words.find("the local code and the network operator decide."), std::string::npos);
    EXPECT_NE(words.find("data " + one.answer.data_version), std::string::npos);
}

}  // namespace
}  // namespace toft::picture
