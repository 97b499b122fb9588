#include "base/nearest.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft {
namespace {

const std::vector<std::string> methods{"clipped", "tray", "buried direct", "buried in duct"};

TEST(NearestWord, FindsWhatWasMeant) {
    EXPECT_EQ(nearest_word("burried direct", methods), "buried direct");
    EXPECT_EQ(nearest_word("buried_in_duct", methods), "buried in duct");
    EXPECT_EQ(nearest_word("CLIPPED", methods), "clipped");
    EXPECT_EQ(nearest_word("trya", methods), "tray");
}

TEST(NearestWord, GuessesNothingFromAWordThatIsFarFromAll) {
    EXPECT_EQ(nearest_word("overhead", methods), "");
    EXPECT_EQ(nearest_word("x", methods), "");
    EXPECT_EQ(nearest_word("tray", {}), "");
}

TEST(NearestWord, HyphensBlanksAndCaseMatterLeast) {
    const std::vector<std::string> earthing{"TN-S", "TN-C-S", "TT"};
    for (const char* word : {"TN-CS", "TNCS", "tnc-s", "TN C S", "TN_C_S"}) {
        EXPECT_EQ(nearest_word(word, earthing), "TN-C-S") << word;
    }
    EXPECT_EQ(nearest_word("TNS", earthing), "TN-S");
    EXPECT_EQ(nearest_word("burieddirect", {"buried duct", "buried direct"}), "buried direct");
}

TEST(WordDistance, CountsASwapOfNeighboursAsOneSlip) {
    EXPECT_EQ(word_distance("garage", "garaeg"), 1);
    EXPECT_EQ(word_distance("shed", "shd"), 1);
    EXPECT_EQ(word_distance("shed", "sheds"), 1);
    EXPECT_EQ(word_distance("shed", "shad"), 1);
    EXPECT_EQ(word_distance("", "shed"), 4);
}

RC_GTEST_PROP(WordDistance, IsTheSameBothWaysAndZeroOnlyForTheSameWord, ()) {
    const auto word = rc::gen::container<std::string>(rc::gen::inRange('a', 'f'));
    const std::string a = *word;
    const std::string b = *word;
    RC_ASSERT(word_distance(a, b) == word_distance(b, a));
    RC_ASSERT(word_distance(a, a) == 0);
    if (a.size() < 64 && b.size() < 64) {
        RC_ASSERT((word_distance(a, b) == 0) == (a == b));
    }
}

RC_GTEST_PROP(NearestWord, AnswersWithAListedWordOrNothing, ()) {
    const std::string found = nearest_word(*rc::gen::string<std::string>(), methods);
    bool listed = found.empty();
    for (const std::string& method : methods) listed = listed || method == found;
    RC_ASSERT(listed);
}

TEST(NearestWord, AHugeWordIsNoTrouble) {
    EXPECT_EQ(nearest_word(std::string(1000000, 'a'), methods), "");
}

}  // namespace
}  // namespace toft
