// The parts of a paper that never break.

#include "page/piece.h"

#include "drawing/measure.h"
#include "page/leaves.h"

#include <gtest/gtest.h>

namespace toft::page {
namespace {

constexpr double wide = 600;

void expect_within(const Pieces& pieces) {
    for (const Piece& piece : pieces) {
        if (piece.items.empty()) continue;
        const drawing::Box box = drawing::box_of(piece.items);
        EXPECT_GE(box.left, -1);
        EXPECT_LE(box.right, wide + 1);
        EXPECT_GE(box.top, -1);
        EXPECT_LE(box.bottom, piece.height + 1);
    }
}

TEST(Piece, AWordWiderThanTheLineIsCutAndNothingOfItIsLost) {
    const std::string word(90, 'M');
    const auto lines = lines_within("so " + word + " on", 100, 12);
    std::string all;
    for (const std::string& line : lines) {
        EXPECT_LE(drawing::text_width(line, 12), 100);
        all += line;
    }
    EXPECT_EQ(all, "so" + word + "on");
}

TEST(Piece, FirstAndLastLineOfAParagraphStandWithTheirNeighbours) {
    std::string words;
    for (int i = 0; i < 80; ++i) words += "several words ";
    const Pieces lines = pieces_of(Words{words}, wide);
    ASSERT_GT(lines.size(), 3u);
    EXPECT_TRUE(lines.front().keep_next);
    EXPECT_TRUE(lines[lines.size() - 2].keep_next);
    EXPECT_FALSE(lines.back().keep_next);
    expect_within(lines);
}

TEST(Piece, APictureIsMadeSmallerNeverLarger) {
    drawing::Scene scene{.width = 1200, .height = 300};
    scene.items = {drawing::Rect{{0, 0, 1200, 300}, drawing::filled(drawing::palette::wash)}};
    const Pieces large = pieces_of(Picture{scene, 400}, wide);
    ASSERT_EQ(large.size(), 1u);
    EXPECT_NEAR(drawing::box_of(large[0].items).width(), wide, 1e-9);
    EXPECT_NEAR(drawing::box_of(large[0].items).height(), 150, 1e-9);
    scene.width = 300;
    scene.items = {drawing::Rect{{0, 0, 300, 300}, drawing::filled(drawing::palette::wash)}};
    EXPECT_NEAR(drawing::box_of(pieces_of(Picture{scene, 400}, wide)[0].items).width(), 300, 1e-9);
    EXPECT_NEAR(drawing::box_of(pieces_of(Picture{scene, 150}, wide)[0].items).width(), 150, 1e-9);
}

TEST(Piece, APictureStandsWithTheWordsUnderIt) {
    const Pieces pieces =
        pieces_of(Picture{{.width = 100, .height = 100}, 400, "what it shows"}, wide);
    ASSERT_EQ(pieces.size(), 2u);
    EXPECT_TRUE(pieces[0].keep_next);
}

TEST(Piece, CautionsAndFieldsKeepInsideTheirWidthHoweverLongTheirWords) {
    std::string words;
    for (int i = 0; i < 60; ++i) words += "remarkably ";
    expect_within(pieces_of(Caution{words}, wide));
    expect_within(pieces_of(Field{words, words}, wide));
    expect_within(pieces_of(Heading{words, Level::chapter}, wide));
}

}  // namespace
}  // namespace toft::page
