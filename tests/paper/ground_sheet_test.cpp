#include "paper/ground_sheet.h"

#include "page/pages.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::paper {
namespace {

page::Paper sheet_of(const std::string& name) {
    const picture::Example& one = picture::example(name);
    return ground_sheet({support::catalogue(), one.job, one.answer, 0, "2026-11-29"});
}

std::string all_words(const page::Paper& paper) {
    std::string all;
    for (const drawing::Scene& page : page::pages(paper)) {
        for (const drawing::Text& text : picture::texts_in(page.items)) {
            all += picture::line_of(text) + " ";
        }
    }
    return all;
}

template <class B>
std::vector<B> blocks(const page::Paper& paper) {
    std::vector<B> some;
    for (const page::Block& block : paper.blocks) {
        if (const auto* one = std::get_if<B>(&block)) some.push_back(*one);
    }
    return some;
}

/// The row whose first cell is `first`; empty where there is none.
std::vector<std::string> row(const page::Paper& paper, const std::string& first) {
    for (const page::Table& table : blocks<page::Table>(paper)) {
        for (const page::Row& one : table.rows) {
            if (one.cells.front() == first) return one.cells;
        }
    }
    return {};
}

TEST(GroundSheet, TheDrawingsKeepTheirScaleOnThePage) {
    for (const char* name : {"demo", "tansy-bank", "hurdle-farm-yard"}) {
        const auto pictures = blocks<page::Picture>(sheet_of(name));
        ASSERT_GE(pictures.size(), 2u);
        for (const page::Picture& one : pictures) {
            EXPECT_LE(one.scene.width, page::field.width() + 1e-9) << name;
            EXPECT_LE(one.scene.height, page::field.height() - 60) << name;
            EXPECT_LE(one.scene.height, one.most_height) << name;
        }
    }
}

// 21 m of trench, 0.3 m wide, 0.6 m over a cable of 19.5 mm on 75 mm of sand.
TEST(GroundSheet, QuantitiesOfTheDemo) {
    const page::Paper paper = sheet_of("demo");
    const double deep = 0.6 + 0.0195 + 0.075;
    EXPECT_NEAR(std::strtod(row(paper, "Soil dug")[1].c_str(), nullptr), 21 * 0.3 * deep, 0.05);
    EXPECT_NEAR(std::strtod(row(paper, "Soil dug")[2].c_str(), nullptr), 1.25 * 21 * 0.3 * deep,
                0.05);
    EXPECT_EQ(row(paper, "Warning tape")[1], "21 m");
    EXPECT_EQ(row(paper, "Warning tape")[2], "22.5 m");
    EXPECT_EQ(row(paper, "Make good: lawn")[1], "6.3 m²");
    EXPECT_EQ(row(paper, "A2")[1], "21 m");
}

TEST(GroundSheet, NothingIsLostBetweenPagesAndNothingCovered) {
    for (const char* name : {"demo", "tansy-bank", "hurdle-farm-yard", "three-facts"}) {
        for (const drawing::Scene& page : page::pages(sheet_of(name))) {
            EXPECT_EQ(picture::clashes(page.items, {0, 0, page.width, page.height}), "") << name;
        }
    }
}

TEST(GroundSheet, SaysWhatComesBeforeDiggingAndWhatIsPhotographed) {
    const std::string words = all_words(sheet_of("demo"));
    for (const char* what : {"Before digging", "Who digs", "Photograph before it is covered",
                             "Scan along", "trial holes", "depth against a staff",
                             "competent, licensed person", "water pipe (copper)"}) {
        EXPECT_NE(words.find(what), std::string::npos) << what;
    }
}

TEST(GroundSheet, WhatIsNotStatedIsFramed) {
    bool framed = false;
    for (const page::Caution& one : blocks<page::Caution>(sheet_of("three-facts"))) {
        framed = framed || one.words.find("depth is not stated") != std::string::npos;
    }
    EXPECT_TRUE(framed);
}

TEST(GroundSheet, ARunThatIsNotBuriedHasNoTrench) {
    picture::Example one;
    one.job = picture::drawn_job("overhead-stable");
    one.answer = picture::designed(one.job);
    ASSERT_FALSE(one.answer.schemes.empty());
    const page::Paper paper =
        ground_sheet({support::catalogue(), one.job, one.answer, 0, "2026-11-29"});
    const std::string words = all_words(paper);
    EXPECT_NE(words.find("No trench is dug"), std::string::npos);
    EXPECT_NE(words.find("catenary wire"), std::string::npos);
    EXPECT_EQ(words.find("Soil dug"), std::string::npos);
}

}  // namespace
}  // namespace toft::paper
