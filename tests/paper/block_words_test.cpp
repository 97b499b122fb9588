// What can be read in a paper before it is laid out.

#include "paper/block_words.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

TEST(BlockWords, EveryBlockGivesAllItsWords) {
    drawing::Scene scene;
    scene.items.emplace_back(drawing::Group{{drawing::text({0, 0}, "inside")}, {}});
    const page::Table table{{{"head", 1}}, {{{"cell"}}}};
    const std::vector<page::Block> blocks{page::Heading{"heading"},
                                          page::Words{"words"},
                                          table,
                                          page::Picture{scene, 100, "under"},
                                          page::Field{"name", "known"},
                                          page::Caution{"caution"},
                                          page::Gap{},
                                          page::NewPage{}};
    std::string all;
    for (const page::Block& block : blocks) all += words_of(block) + "\n";
    for (const char* word :
         {"heading", "words", "head", "cell", "inside", "under", "name", "known", "caution"}) {
        EXPECT_NE(all.find(word), std::string::npos) << word;
    }
}

TEST(BlockWords, AWordStandsByItselfOrWithAnS) {
    EXPECT_TRUE(holds_word("two RCDs, in a row", "RCD"));
    EXPECT_TRUE(holds_word("10 mm² copper", "mm²"));
    EXPECT_TRUE(holds_word("a board.", "board"));
    EXPECT_FALSE(holds_word("RCBO", "RCB"));
    EXPECT_FALSE(holds_word("aboard", "board"));
    EXPECT_FALSE(holds_word("boarding", "board"));
    EXPECT_TRUE(holds_word("aboard a board", "board"));
}

TEST(BlockWords, ASingleLetterIsAUnitOnlyBehindAFigure) {
    EXPECT_TRUE(holds_word("of 10 A and", "A"));
    EXPECT_FALSE(holds_word("A board", "A"));
    EXPECT_FALSE(holds_word("type A", "A"));
}

}  // namespace
}  // namespace toft::paper
