#include "codec/dark.h"

#include "codec/designing.h"
#include "codec/guard_tree.h"

#include <gtest/gtest.h>

namespace toft::codec {
namespace {

TEST(DarkText, IsThePartOfTheAnswerThatSaysWhatGoesDark) {
    const answer::Answer answer = designed(demo());
    const answer::SchemeAnswer& scheme = answer.schemes.at(0);
    const Tree json = Tree::parse(write_dark(answer.job, scheme));
    EXPECT_EQ(json["format"], "toft-dark/1");
    EXPECT_EQ(json["scheme"], scheme.key);
    const Tree whole = Tree::parse(write_answer(answer));
    EXPECT_EQ(json["dark"], whole["schemes"][0]["dark"]);
    EXPECT_EQ(json["residual"], whole["schemes"][0]["residual"]);
}

TEST(DarkText, AdviceStandsInTheAnswerWithItsClause) {
    const Tree whole = Tree::parse(write_answer(designed(demo())));
    ASSERT_FALSE(whole["advice"].empty());
    for (const Tree& advice : whole["advice"]) {
        EXPECT_EQ(advice["clause"], advice["basis"]["clause"]) << advice["about"];
        EXPECT_TRUE(advice["needs_a_person"].is_boolean());
    }
}

}  // namespace
}  // namespace toft::codec
