#include "picture/lower_row.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

const drawing::Box lower_row{44, 696, 1356, 932};

TEST(LowerRow, BothEndsOfTheArmourAreShownAsTheSchemeHasThem) {
    const Example& one = example("demo");
    int insulated = 0;
    for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
        const drawing::Items items = scheme_row(set_stage(one.job, &scheme), lower_row);
        EXPECT_EQ(count_kind(items, "armour-earthed"), scheme.run.armour_far ? 2 : 1);
        EXPECT_EQ(count_kind(items, "armour-insulated"), scheme.run.armour_far ? 0 : 1);
        insulated += !scheme.run.armour_far;
    }
    EXPECT_GT(insulated, 0);
}

TEST(LowerRow, EveryFindingIsThere) {
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            const drawing::Items items = scheme_row(set_stage(one.job, &scheme), lower_row);
            std::size_t verdicts = 0;
            for (const drawing::Text& text : texts_in(items)) {
                const std::string line = line_of(text);
                verdicts +=
                    line == "meets" || line == "caution" || line == "not known" || line == "fails";
            }
            EXPECT_EQ(verdicts, scheme.findings.size()) << name << " " << scheme.key;
        }
    }
}

TEST(LowerRow, ReasonsOfTheRulesThatFellTheMost) {
    answer::Answer a;
    a.dropped = {{"overload", "the device carries the current", 3, "", "", 0},
                 {"separation", "out of touch", 40, "", "it misses by 3 %", 1.03}};
    a.unknowns = {{"/x", "what nobody looked at", "", "", 0, 1, false, "decides"},
                  {"/y", "what does not matter", "", "", 0, 1, false, "does not matter"}};
    const drawing::Items items = reasons_row(a, lower_row);
    const std::string words = words_in(items);
    EXPECT_EQ(count_kind(items, "reason"), 2);
    EXPECT_LT(words.find("40 fell: out of touch; nearest it misses by 3 %"),
              words.find("3 fell: the device"));
    EXPECT_NE(words.find("what nobody looked at"), std::string::npos);
    EXPECT_EQ(words.find("what does not matter"), std::string::npos);
}

TEST(LowerRow, MoreReasonsThanRoomAreCounted) {
    answer::Answer a;
    a.dropped.assign(40, {"overload", hostile_name(), 3, "", hostile_name(), 0});
    const drawing::Items items = reasons_row(a, lower_row);
    EXPECT_TRUE(says(items, "more rules"));
    EXPECT_EQ(clashes(items, drawing::Box{40, 690, 1360, 950}), "");
}

}  // namespace
}  // namespace toft::picture
