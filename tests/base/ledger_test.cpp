#include "base/ledger.h"

#include "base/interpolate.h"
#include "support/working.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft {
namespace {

const Citation table{"a-source", "Table 1", Basis::published, ""};

TEST(Recording, WritesWhereEveryFigureComesFrom) {
    Recording ledger;
    const auto r = ledger.table({"r", "resistance per metre"},
                                Cited<OhmsPerMetre>{ohms_per_metre(0.002), &table});
    const auto l = ledger.stated({"L", "length", 2}, metres(30), "measured");
    const auto whole = ledger.let({"R", "resistance", 0, "", "a clause"}, r * l);
    EXPECT_EQ(whole.value, ohms(0.06));
    ASSERT_EQ(ledger.lines().size(), 3u);
    EXPECT_EQ(ledger.lines()[0].origin, Origin::table);
    EXPECT_EQ(ledger.lines()[0].citation, &table);
    EXPECT_EQ(ledger.lines()[0].unit, "Ω/m");
    EXPECT_EQ(ledger.lines()[1].origin, Origin::site);
    EXPECT_EQ(ledger.lines()[1].symbol, "L.2");
    EXPECT_EQ(ledger.lines()[1].from, "measured");
    EXPECT_EQ(ledger.lines()[2].origin, Origin::computed);
    EXPECT_EQ(ledger.lines()[2].formula, "r × L.2");
    EXPECT_EQ(ledger.lines()[2].inputs, (std::vector<int>{0, 1}));
    EXPECT_EQ(ledger.lines()[2].unit, "Ω");
    EXPECT_EQ(ledger.lines()[2].from, "a clause");
}

TEST(Recording, GivesBareNumbersTheUnitTheyAreGiven) {
    Recording ledger;
    ledger.let({"drop", "drop", 0, "%"}, ledger.stated({"x", ""}, 3.0, "") * 1.0);
    ledger.stated({"t", "temperature"}, celsius(20), "survey");
    EXPECT_EQ(ledger.lines()[1].unit, "%");
    EXPECT_EQ(ledger.lines()[2].unit, "°C");
}

TEST(Recording, PicksOutTheWorkingOfOneFigure) {
    Recording ledger;
    const auto a = ledger.stated({"a", ""}, 2.0, "");
    const auto b = ledger.stated({"b", ""}, 3.0, "");
    ledger.let({"other", ""}, b * 2.0);
    const auto half = ledger.let({"half", ""}, a / 2.0);
    const auto whole = ledger.let({"whole", ""}, half + a);
    const auto working = ledger.working(whole.expression);
    ASSERT_EQ(working.size(), 3u);
    EXPECT_EQ(working[0].symbol, "a");
    EXPECT_EQ(working[1].symbol, "half");
    EXPECT_EQ(working[2].symbol, "whole");
}

TEST(Silent, HasNothingToWrite) {
    Silent ledger;
    EXPECT_EQ(ledger.let({"R", ""}, ohms(2)), ohms(2));
    EXPECT_EQ(ledger.table({"R", ""}, Cited<Ohms>{ohms(2), &table}), ohms(2));
    EXPECT_EQ(ledger.stated({"R", ""}, ohms(2), "survey"), ohms(2));
    static_assert(!Silent::records && Recording::records);
}

TEST(WrongLines, NoticesAFormulaThatDoesNotGiveItsResult) {
    Recording ledger;
    const auto a = ledger.stated({"a", ""}, 2.0, "");
    ledger.let({"twice", ""}, a * 2.0);
    EXPECT_TRUE(support::wrong_lines(ledger.lines()).empty());
    std::vector<Line> lines = ledger.lines();
    lines[1].value = 4.00001;
    EXPECT_EQ(support::wrong_lines(lines).size(), 1u);
    lines = ledger.lines();
    lines[1].inputs.clear();
    EXPECT_EQ(support::wrong_lines(lines).size(), 1u);
    lines = ledger.lines();
    lines[1].formula = "a × 2 ×";
    EXPECT_EQ(support::wrong_lines(lines).size(), 1u);
}

RC_GTEST_PROP(ReadBetween, KeepsBetweenItsRowsAndWritesWorkingThatHolds, ()) {
    std::vector<TablePoint> points;
    const int count = *rc::gen::inRange(1, 8);
    double x = *rc::gen::inRange(-5, 5);
    for (int i = 0; i < count; ++i) {
        points.push_back({x, {*rc::gen::inRange(1, 1000) / 100.0, &table}});
        x += *rc::gen::inRange(1, 40) / 7.0;
    }
    const double at = *rc::gen::inRange(-200, 600) / 9.0;
    const ReadingNames names{{"below", ""}, {"above", ""}, {"y", ""}};
    Recording recording;
    const auto recorded = read_between(recording, names, points.data(), points.size(), at);
    Silent silent;
    RC_ASSERT(recorded.value == read_between(silent, names, points.data(), points.size(), at));
    double lowest = points[0].y.value;
    double highest = lowest;
    for (const TablePoint& p : points) {
        lowest = least(lowest, p.y.value);
        highest = most(highest, p.y.value);
    }
    RC_ASSERT(recorded.value >= lowest - 1e-12);
    RC_ASSERT(recorded.value <= highest + 1e-12);
    if (at <= points.front().x) RC_ASSERT(recorded.value == points.front().y.value);
    if (at >= points.back().x) RC_ASSERT(recorded.value == points.back().y.value);
    for (const std::string& wrong : support::wrong_lines(recording.lines())) RC_FAIL(wrong);
}

}  // namespace
}  // namespace toft
