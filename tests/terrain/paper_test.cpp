#include "terrain/paper.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

Paper plain_paper() { return {{50, 10, 250, 110}, {0, 10, 50, 250}, {0, 100, 110, 10}, 11}; }

TEST(Paper, PlacesFiguresByItsTwoScales) {
    EXPECT_EQ(plain_paper().at(5, 100), (drawing::Point{150, 10}));
}

TEST(Paper, AFigureThatWouldCoverTheOneBeforeIsLeftOut) {
    std::vector<Step> across;
    for (int i = 0; i <= 10; ++i) across.push_back({static_cast<double>(i), "1000 Ω"});
    const drawing::Items items = ruled(plain_paper(), across, {});
    EXPECT_EQ(picture::clashes(items, {0, 0, 400, 200}), "");
    const std::size_t figures = picture::texts_in(items).size();
    EXPECT_GT(figures, 1u);
    EXPECT_LT(figures, across.size());
}

TEST(Paper, ABandOfOnePointIsALineAndOfNoneNothing) {
    const BandInk ink{drawing::stroked(drawing::palette::ink), {}};
    EXPECT_TRUE(band({}, {}, ink).empty());
    EXPECT_EQ(band({{1, 1}}, {{4, 1}}, ink).size(), 1u);
    const drawing::Items full = band({{1, 1}, {1, 50}}, {{9, 1}, {9, 50}}, ink);
    EXPECT_EQ(drawing::box_of(full).width(), 9);
}

TEST(Paper, ADiscHoldsItsSign) {
    const drawing::Items one = disc({20, 20}, "3");
    EXPECT_TRUE(picture::says(one, "3"));
    const drawing::Box box = drawing::box_of(one);
    EXPECT_NEAR(box.centre().x, 20, 1e-9);
    EXPECT_TRUE(drawing::contains({0, 0, 40, 40}, drawing::box_of(span_mark({5, 20}, {35, 20}))));
}

}  // namespace
}  // namespace toft::terrain
