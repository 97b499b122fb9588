#include "tables/find_out.h"

#include "support/catalogue.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

const FindOut* row(const char* pointer) {
    return find_out_for(support::catalogue().find_out, pointer);
}

TEST(FindOut, PlacesInListsDoNotTellFactsApart) {
    ASSERT_NE(row("/runs/0/legs/11/length_m"), nullptr);
    EXPECT_EQ(row("/runs/0/legs/11/length_m"), row("/runs/3/legs/2/length_m"));
    EXPECT_EQ(row("/buildings/1/metalwork/0/insulating_section")->by, "anyone");
    EXPECT_NE(row("/buildings/1/metalwork"), row("/buildings/1/metalwork/0/bonded_at_house"));
}

TEST(FindOut, AFactThatNobodyAsksForHasNoRow) { EXPECT_EQ(row("/intake/colour"), nullptr); }

TEST(FindOut, EveryRowHasAQuestionAWayAndATime) {
    for (const FindOut& r : support::catalogue().find_out) {
        EXPECT_EQ(r.question.back(), '?') << r.fact;
        EXPECT_FALSE(r.how.empty()) << r.fact;
        EXPECT_GT(r.minutes, 0) << r.fact;
        EXPECT_NE(r.citation, nullptr) << r.fact;
    }
}

}  // namespace
}  // namespace toft::tables
