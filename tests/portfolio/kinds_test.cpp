// Every paper there is.

#include "portfolio/kinds.h"

#include "paper/subjects.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::paper {
namespace {

TEST(Papers, AreFoundByTheirFileNamesAndByNoOther) {
    std::set<std::string> names;
    for (const Kind& kind : kinds()) {
        EXPECT_EQ(find_kind(kind.file), &kind);
        names.insert(kind.file);
    }
    EXPECT_EQ(names.size(), kinds().size());
    EXPECT_EQ(find_kind(""), nullptr);
    EXPECT_EQ(find_kind("Test sheet"), nullptr);
}

TEST(Papers, OfEveryKindOfJobStayInsideTheirSheetsAndSayWhoDecides) {
    for (const char* name : {"demo", "tt-shed", "garage-gym-stable"}) {
        for (const Kind& kind : kinds()) {
            const page::Paper paper = kind.write(made(name).subject());
            EXPECT_TRUE(inside_sheets(paper)) << name << " " << kind.file;
            EXPECT_FALSE(paper.blocks.empty()) << name << " " << kind.file;
            EXPECT_EQ(paper.name, kind.name);
            EXPECT_EQ(paper.caution, standing_caution());
        }
    }
}

TEST(Papers, LongNamesAndFortyCircuitsStayInsideToo) {
    const Made many = crowded(40, "The old threshing barn behind the orchard wall, west end x");
    ASSERT_FALSE(many.answer.schemes.empty());
    for (const Kind& kind : kinds()) {
        EXPECT_TRUE(inside_sheets(kind.write(many.subject()))) << kind.file;
    }
}

TEST(Papers, NamesInOtherScriptsAndWithoutAnyLettersStayInside) {
    for (const char* name : {"", "Сарай за садом", "مرآب", "納屋", "\xF0\x9F\x8F\x9A"}) {
        const Made one = crowded(2, name);
        for (const Kind& kind : kinds()) {
            EXPECT_TRUE(inside_sheets(kind.write(one.subject()))) << kind.file << name;
        }
    }
}

TEST(Papers, WhatCanBeWrittenWithoutASchemeIsWrittenWithoutOne) {
    const Made& none = made("caravan-no-scheme");
    ASSERT_TRUE(none.answer.schemes.empty());
    for (const Kind& kind : kinds()) {
        if (!kind.without_scheme) continue;
        EXPECT_TRUE(inside_sheets(kind.write(none.subject()))) << kind.file;
    }
}

}  // namespace
}  // namespace toft::paper
