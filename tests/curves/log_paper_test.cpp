#include "curves/log_paper.h"

#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

TEST(LogPaper, EachDecadeIsAsWide) {
    const LogPaper paper = plain_paper();
    EXPECT_DOUBLE_EQ(paper.x(1), 100);
    EXPECT_DOUBLE_EQ(paper.x(20000), 900);
    EXPECT_NEAR(paper.x(100) - paper.x(10), paper.x(10000) - paper.x(1000), 1e-9);
    EXPECT_DOUBLE_EQ(paper.y(0.01), 800);
    EXPECT_DOUBLE_EQ(paper.y(10000), 200);
    EXPECT_NEAR(paper.y(1), 600, 1e-9);
    EXPECT_EQ(paper.at(10, 1), (drawing::Point{paper.x(10), paper.y(1)}));
}

TEST(LogPaper, WhatIsOffThePaperCountsAsItsEdge) {
    const LogPaper paper = plain_paper();
    EXPECT_EQ(paper.x(0), 100);
    EXPECT_EQ(paper.x(1e9), 900);
    EXPECT_EQ(paper.y(0), 800);
    EXPECT_EQ(paper.y(1e9), 200);
}

TEST(LogPaper, FiguresStandAtTheirLines) {
    const LogPaper paper = plain_paper();
    const drawing::Items items = ruling(paper);
    EXPECT_EQ(picture::clashes(items, {40, 190, 950, 830}), "");
    int found = 0;
    for (const drawing::Text& text : picture::texts_in(items)) {
        const std::string words = picture::line_of(text);
        if (words == "20 kA") found += text.at.x == paper.x(20000);
        if (words == "0.01 s") found += text.at.y - 3.5 == paper.y(0.01);
        if (words == "1 h") found += text.at.y - 3.5 == paper.y(3600);
    }
    EXPECT_EQ(found, 3);
}

TEST(LogPaper, FiguresAreWordedInTheirUnit) {
    EXPECT_EQ(ampere_words(17.94), "17.9 A");
    EXPECT_EQ(ampere_words(999), "999 A");
    EXPECT_EQ(ampere_words(1200), "1.2 kA");
    EXPECT_EQ(second_words(0.1), "0.1 s");
}

TEST(LogPaper, TightPaperNamesDecadesOnly) {
    const LogPaper tight{{60, 100, 350, 500}, 12};
    EXPECT_TRUE(tight.tight());
    EXPECT_FALSE(plain_paper().tight());
    EXPECT_FALSE(picture::says(ruling(tight), "20 A"));
    EXPECT_TRUE(picture::says(ruling(tight), "10 A"));
    EXPECT_TRUE(picture::says(ruling(plain_paper()), "20 A"));
    for (const drawing::Text& text : picture::texts_in(ruling(tight))) {
        EXPECT_LE(picture::letters_of(text).right, 351) << picture::line_of(text);
    }
}

}  // namespace
}  // namespace toft::curves
