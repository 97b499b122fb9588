#include "diagram/title.h"

#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

TEST(Title, SaysJobSchemeAndHowItStands) {
    answer::Answer answer = example("demo").answer;
    for (auto& finding : answer.schemes[0].findings) finding.verdict = rules::Verdict::meets;
    answer.schemes[0].cautions.clear();
    const SetTitle title = set_title(answer, &answer.schemes[0], columns_for(paper_wide));
    EXPECT_TRUE(says(title.items, "Potter's studio"));
    EXPECT_TRUE(says(title.items, "Single-line diagram"));
    EXPECT_TRUE(says(title.items, "every rule judged is met"));
}

TEST(Title, OpenFactsAndCautionsAreNotCalledMet) {
    answer::Answer answer = example("demo").answer;
    answer::SchemeAnswer& scheme = answer.schemes[0];
    scheme.conditional_on = {"the pipe's resistance"};
    scheme.cautions = {"label the building"};
    const SetTitle title = set_title(answer, &scheme, columns_for(paper_wide));
    EXPECT_FALSE(says(title.items, "every rule judged is met"));
    EXPECT_TRUE(says(title.items, "the pipe's resistance"));
    EXPECT_TRUE(says(title.items, "not known"));
    EXPECT_TRUE(says(title.items, "caution: label the building"));
}

TEST(Title, TheFootSaysWhoIsToldAndWhoDecides) {
    const answer::Answer& answer = example("demo").answer;
    const SetTitle foot = set_footing(answer, &answer.schemes[0], columns_for(paper_wide), 0);
    EXPECT_TRUE(says(foot.items, "network operator, before the work"));
    EXPECT_TRUE(says(foot.items, "A competent, licensed person"));
    EXPECT_TRUE(says(foot.items, answer.data_version));
    for (const char* key : {"line", "neutral", "protective", "armour", "there already", "new"}) {
        EXPECT_TRUE(says(foot.items, key)) << key;
    }
}

TEST(Title, KeepsToTheSheetHoweverNarrow) {
    answer::Answer answer = example("demo").answer;
    answer.job = picture::hostile_name();
    answer.schemes[0].cautions.assign(40, picture::hostile_name());
    const Columns c = columns_for(narrowest_sheet);
    const SetTitle title = set_title(answer, &answer.schemes[0], c);
    EXPECT_EQ(picture::clashes(title.items, {0, 0, narrowest_sheet, title.foot}), "");
    EXPECT_TRUE(says(title.items, "34 more in the answer"));
    const SetTitle foot = set_footing(answer, &answer.schemes[0], c, 0);
    EXPECT_EQ(picture::clashes(foot.items, {0, 0, narrowest_sheet, foot.foot}), "");
}

TEST(Title, AZoneTakesItsNameAndKeepsTheLineWhole) {
    const drawing::Items items =
        drawn([](Ladder& ladder) { draw_zone(picture::hostile_name(), ladder); }, 360);
    EXPECT_EQ(picture::clashes(items, {0, 0, 360, 30}), "");
}

}  // namespace
}  // namespace toft::diagram
