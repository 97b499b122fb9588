#include "tables/sheet.h"

#include <gtest/gtest.h>

namespace toft::tables {
namespace {

class OneSheet : public ::testing::Test {
protected:
    Sheet open(const char* text) {
        files_ = {"t.csv", text};
        return Sheet({&files_, 1}, "t.csv", citations_, faults_);
    }

    EmbeddedFile files_;
    std::deque<Citation> citations_;
    Faults faults_;
};

constexpr const char* good =
    "value,source,locator,basis,note\n"
    "1.5,a-key,Table 1,published,\n"
    "2,b-key,page 7,common practice,a note\n";

TEST_F(OneSheet, ReadsCellsByTheNameOfTheirColumn) {
    Sheet sheet = open(good);
    EXPECT_EQ(sheet.rows(), 2u);
    EXPECT_EQ(sheet.number(0, "value"), 1.5);
    EXPECT_EQ(sheet.word(1, "note"), "a note");
    EXPECT_TRUE(faults_.empty());
}

TEST_F(OneSheet, CitesEachRowOnceAndForGood) {
    Sheet sheet = open(good);
    const Cited<double> figure = sheet.figure(1, "value");
    EXPECT_EQ(figure.value, 2);
    EXPECT_EQ(figure.citation, sheet.cite(1));
    EXPECT_EQ(figure.citation->source, "b-key");
    EXPECT_EQ(figure.citation->locator, "page 7");
    EXPECT_EQ(figure.citation->basis, Basis::common_practice);
    EXPECT_EQ(figure.citation->note, "a note");
    EXPECT_EQ(citations_.size(), 1u);
    EXPECT_TRUE(faults_.empty());
}

TEST_F(OneSheet, AMissingColumnIsAFaultAtItsLine) {
    Sheet sheet = open(good);
    EXPECT_EQ(sheet.word(1, "colour"), "");
    ASSERT_EQ(faults_.size(), 1u);
    EXPECT_EQ(faults_[0].pointer, "t.csv:3");
    EXPECT_NE(faults_[0].says.find("colour"), std::string::npos);
}

TEST_F(OneSheet, OnlyFiniteNumbersAreNumbers) {
    for (const char* bad : {"", "nan", "inf", "-inf", "1e999", "one", "1,5", "1.5 A", "--2"}) {
        faults_.clear();
        const std::string text = std::string("value\n\"") + bad + "\"\n";
        Sheet sheet = open(text.c_str());
        ASSERT_EQ(sheet.rows(), 1u) << bad;
        EXPECT_EQ(sheet.number(0, "value"), 0) << bad;
        EXPECT_EQ(faults_.size(), 1u) << bad;
    }
}

TEST_F(OneSheet, AnUnknownBasisIsAFault) {
    Sheet sheet = open("value,source,locator,basis,note\n1,a,b,hearsay,\n");
    sheet.figure(0, "value");
    ASSERT_EQ(faults_.size(), 1u);
    EXPECT_NE(faults_[0].says.find("basis"), std::string::npos);
}

TEST_F(OneSheet, AMissingFileIsAFaultAndHasNoRows) {
    files_ = {"other.csv", good};
    const Sheet sheet({&files_, 1}, "t.csv", citations_, faults_);
    EXPECT_EQ(sheet.rows(), 0u);
    EXPECT_EQ(faults_.size(), 1u);
}

TEST(SortPoints, PutsThemByAbscissa) {
    std::vector<TablePoint> points{{3, {}}, {1, {}}, {2, {}}};
    sort_points(points);
    EXPECT_EQ(points[0].x, 1);
    EXPECT_EQ(points[2].x, 3);
}

}  // namespace
}  // namespace toft::tables
