// Papers on sheets of A4: nothing lost, nothing cut off.

#include "page/pages.h"

#include "page/leaves.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::page {
namespace {

Paper paper_of(std::vector<Block> blocks) {
    return {"Test sheet", "Barn and byre, Hollow Lane", "toft data 2026.11",
            "2026-11-29", "a competent person decides", std::move(blocks)};
}

Table numbered(std::size_t rows) {
    Table table{{{"No.", 1, Side::right}, {"What", 5}}, {}};
    for (std::size_t i = 0; i < rows; ++i) {
        table.rows.push_back({{std::to_string(i), "row " + std::to_string(i)}});
    }
    return table;
}

void expect_all_inside(const std::vector<drawing::Scene>& sheets) {
    const drawing::Box sheet{0, 0, sheet_width, sheet_height};
    for (const drawing::Scene& scene : sheets) {
        EXPECT_TRUE(drawing::contains(sheet, drawing::box_of(scene.items)));
    }
}

TEST(Pages, APaperOfNothingIsOnePageWithHeadAndFoot) {
    const auto sheets = pages(paper_of({}));
    ASSERT_EQ(sheets.size(), 1u);
    const std::string all = run_on(read(sheets));
    EXPECT_NE(all.find("page1of1"), std::string::npos);
    EXPECT_NE(all.find("2026-11-29"), std::string::npos);
    EXPECT_NE(all.find("acompetentpersondecides"), std::string::npos);
    EXPECT_NE(all.find("Testsheet"), std::string::npos);
}

TEST(Pages, EveryRowOfALongTableStandsOnceAndTheHeadOnEveryPage) {
    const auto sheets = pages(paper_of({numbered(200)}));
    ASSERT_GT(sheets.size(), 2u);
    expect_all_inside(sheets);
    const auto reads = read_field(sheets);
    for (std::size_t i = 0; i < 200; ++i) {
        const std::string row = "row " + std::to_string(i);
        EXPECT_EQ(std::count_if(reads.begin(), reads.end(),
                                [&](const Read& one) { return one.words == row; }),
                  1)
            << row;
    }
    EXPECT_EQ(std::count_if(reads.begin(), reads.end(),
                            [](const Read& one) { return one.words == "What"; }),
              static_cast<long>(sheets.size()));
}

TEST(Pages, AHeadingNeverStandsAlone) {
    for (int lines = 30; lines < 60; ++lines) {
        std::vector<Block> blocks;
        for (int i = 0; i < lines; ++i) blocks.push_back(Words{"a line"});
        blocks.push_back(Heading{"Heading here"});
        blocks.push_back(Words{"what follows"});
        std::size_t heading = 0;
        std::size_t words = 1;
        for (const Read& one : read_field(pages(paper_of(blocks)))) {
            if (one.words == "Heading here") heading = one.sheet;
            if (one.words == "what follows") words = one.sheet;
        }
        EXPECT_EQ(heading, words) << lines;
    }
}

TEST(Pages, ANewPageIsBegunButNeverAnEmptyOne) {
    EXPECT_EQ(pages(paper_of({NewPage{}, Words{"a"}, NewPage{}, NewPage{}, Words{"b"}})).size(),
              2u);
}

drawing::Scene wide_drawing() {
    drawing::Scene scene;
    scene.width = 1400;
    scene.height = 900;
    scene.items.emplace_back(drawing::text({100, 100}, "drawn words"));
    return scene;
}

TEST(Pages, AWideDrawingHasALyingPageOfItsOwnAndWordsGoOnBehindIt) {
    const auto sheets =
        pages(paper_of({Words{"before"}, WholePage{wide_drawing()}, Words{"after"}}));
    ASSERT_EQ(sheets.size(), 3u);
    EXPECT_EQ(sheets[1].width, sheet_height);
    EXPECT_EQ(sheets[1].height, sheet_width);
    EXPECT_EQ(sheets[2].width, sheet_width);
    EXPECT_TRUE(
        drawing::contains({0, 0, sheet_height, sheet_width}, drawing::box_of(sheets[1].items)));
    const std::string middle = run_on(read({sheets[1]}));
    EXPECT_NE(middle.find("drawnwords"), std::string::npos);
    EXPECT_NE(middle.find("page2of3"), std::string::npos);
    EXPECT_NE(run_on(read({sheets[2]})).find("after"), std::string::npos);
}

TEST(Pages, ATallDrawingStandsUpright) {
    drawing::Scene scene = wide_drawing();
    std::swap(scene.width, scene.height);
    const auto sheets = pages(paper_of({WholePage{scene}}));
    ASSERT_EQ(sheets.size(), 1u);
    EXPECT_EQ(sheets[0].width, sheet_width);
}

TEST(Pages, ALongTitleIsShortenedAndDoesNotMeetTheNameOfThePaper) {
    Paper paper = paper_of({});
    paper.job = std::string(300, 'W');
    const auto sheets = pages(paper);
    expect_all_inside(sheets);
    const auto reads = read(sheets);
    EXPECT_NE(reads[0].words.find("…"), std::string::npos);
    EXPECT_FALSE(drawing::overlap(reads[0].box, reads[1].box));
}

TEST(Pages, EveryPageSaysHowManyThereAre) {
    const auto sheets = pages(paper_of({numbered(150)}));
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const std::string says =
            "page " + std::to_string(i + 1) + " of " + std::to_string(sheets.size());
        const auto reads = read({sheets[i]});
        EXPECT_TRUE(std::any_of(reads.begin(), reads.end(),
                                [&](const Read& one) { return one.words == says; }));
    }
}

std::string drawn_words() {
    std::string words;
    const int count = *rc::gen::inRange(0, 40);
    for (int i = 0; i < count; ++i) {
        const auto size = static_cast<std::size_t>(*rc::gen::inRange(1, i % 9 == 0 ? 140 : 12));
        words += std::string(size, static_cast<char>('a' + i % 26)) + " ";
    }
    return words;
}

Block drawn_block() {
    switch (*rc::gen::inRange(0, 7)) {
        case 0:
            return Heading{drawn_words()};
        case 1:
            return Words{drawn_words(), "–"};
        case 2:
            return Caution{drawn_words()};
        case 3:
            return Field{drawn_words(), drawn_words()};
        case 4:
            return Gap{30};
        case 5:
            return NewPage{};
        default: {
            Table table{{{"one", 1}, {"two", 2, Side::right}, {"three", 1}}, {}, true};
            const int rows = *rc::gen::inRange(0, 20);
            for (int i = 0; i < rows; ++i) {
                table.rows.push_back({{drawn_words(), drawn_words()}});
            }
            return table;
        }
    }
}

std::size_t letters(const std::string& words) {
    return static_cast<std::size_t>(
        std::count_if(words.begin(), words.end(), [](char c) { return c >= 'a' && c <= 'z'; }));
}

struct Letters {
    std::size_t operator()(const Heading& b) const { return letters(b.words); }
    std::size_t operator()(const Words& b) const { return letters(b.words); }
    std::size_t operator()(const Caution& b) const { return letters(b.words); }
    std::size_t operator()(const Field& b) const { return letters(b.name) + letters(b.known); }
    std::size_t operator()(const Table& b) const {
        std::size_t sum = 0;
        for (const Row& row : b.rows) {
            for (const std::string& cell : row.cells) sum += letters(cell);
        }
        return sum;
    }
    std::size_t operator()(const Picture&) const { return 0; }
    std::size_t operator()(const WholePage&) const { return 0; }
    std::size_t operator()(const Gap&) const { return 0; }
    std::size_t operator()(const NewPage&) const { return 0; }
};

RC_GTEST_PROP(Pages, WhateverIsSaidStandsInsideTheSheetToItsLastLetter, ()) {
    std::vector<Block> blocks;
    const int count = *rc::gen::inRange(1, 12);
    std::size_t wanted = 0;
    for (int i = 0; i < count; ++i) {
        blocks.push_back(drawn_block());
        wanted += std::visit(Letters{}, blocks.back());
    }
    Paper paper = paper_of(std::move(blocks));
    const auto sheets = pages(paper);
    std::size_t heads = 0;
    std::size_t found = 0;
    for (const Read& one : read_field(sheets)) {
        const bool head = one.words == "one" || one.words == "two" || one.words == "three";
        (head ? heads : found) += letters(one.words);
    }
    RC_ASSERT(found == wanted);
    for (const drawing::Scene& scene : sheets) {
        RC_ASSERT(
            drawing::contains({0, 0, sheet_width, sheet_height}, drawing::box_of(scene.items)));
    }
}

}  // namespace
}  // namespace toft::page
