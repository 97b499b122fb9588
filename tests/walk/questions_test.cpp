#include "walk/step.h"

#include "rules/rulebook.h"
#include "walk/metalwork.h"
#include "walk/walking.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::walk {
namespace {

TEST(Questions, EachHasAKeyOfItsOwnAndARowThatSaysWhoseWordItIs) {
    std::set<std::string> keys{part_key};
    for (const Question& q : questions()) {
        EXPECT_TRUE(keys.insert(q.key).second) << q.key;
        EXPECT_EQ(q.asks[std::string(q.asks).size() - 1], '?') << q.key;
    }
    std::set<std::string> rows;
    for (const tables::EarthingBasis& row : support::catalogue().earthing_basis) {
        rows.insert(row.key);
        EXPECT_NE(row.citation, nullptr) << row.key;
    }
    EXPECT_EQ(keys, rows);
}

TEST(Questions, TheRuleThatJudgesByAQuestionExists) {
    std::set<std::string> judged;
    for (const Question& q : questions()) {
        if (*q.rule == '\0') continue;
        EXPECT_NE(rules::find_rule(q.rule), nullptr) << q.key;
        judged.insert(q.rule);
    }
    EXPECT_EQ(judged.count("earthing-choice"), 1u);
    EXPECT_EQ(judged.count("separation"), 1u);
    EXPECT_EQ(judged.count("electrode"), 1u);
}

TEST(Questions, OnlyTheOneOnCaravansIsLaw) {
    for (const tables::EarthingBasis& row : support::catalogue().earthing_basis) {
        EXPECT_EQ(row.authority == tables::Authority::law, row.key == "movable") << row.key;
    }
}

}  // namespace
}  // namespace toft::walk
