#include "joins/stroke.h"

#include "drawing/conductor_colours.h"
#include "joins/looking.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::joins {
namespace {

Conductor of(Kind kind, const std::string& colour, int line = 0) {
    Conductor c;
    c.kind = kind;
    c.core.colour = colour;
    c.line = line;
    return c;
}

/// Dashes of all lines, colours left out.
std::string pattern(const drawing::Items& items) {
    std::string found;
    for (const drawing::Item& item : items) {
        if (const auto* group = std::get_if<drawing::Group>(&item.shape)) {
            found += pattern(group->items);
        } else if (const auto* line = std::get_if<drawing::Polyline>(&item.shape)) {
            found += "|" + std::to_string(line->style.width);
            for (const double d : line->style.dash) found += " " + std::to_string(d);
        }
    }
    return found;
}

TEST(Stroke, EveryConductorIsToldWithoutItsColour) {
    std::set<std::string> patterns;
    const std::vector<Conductor> all{of(Kind::line, "brown"),        of(Kind::line, "black", 1),
                                     of(Kind::line, "grey", 2),      of(Kind::neutral, "blue"),
                                     of(Kind::core, "green-yellow"), of(Kind::armour, "")};
    for (const Conductor& c : all) patterns.insert(pattern(stroke(c, 0, 100, 10)));
    EXPECT_EQ(patterns.size(), all.size());
}

TEST(Stroke, HasTheColourOfItsCore) {
    const auto svg = [](const Conductor& c) {
        drawing::Scene scene{100, 20};
        scene.items = stroke(c, 0, 100, 10);
        return drawing::to_svg(scene);
    };
    EXPECT_NE(svg(of(Kind::line, "brown")).find("#6b3f16"), std::string::npos);
    EXPECT_NE(svg(of(Kind::neutral, "blue")).find("#1e6fc8"), std::string::npos);
    EXPECT_NE(svg(of(Kind::core, "green-yellow")).find("#1f8a3b"), std::string::npos);
    EXPECT_EQ(svg(of(Kind::line, "red")).find("#6b3f16"), std::string::npos) << "red is not brown";
}

TEST(Stroke, EqualCablesAreAsManyLinesUpToThree) {
    Conductor c = of(Kind::line, "brown");
    const auto lines = [&](int alike) {
        c.alike = alike;
        const std::string found = pattern(stroke(c, 0, 100, 10));
        return std::count(found.begin(), found.end(), '|') / 2;
    };
    EXPECT_EQ(lines(1), 1);
    EXPECT_EQ(lines(2), 2);
    EXPECT_EQ(lines(5), 3);
}

TEST(Stroke, ASleeveIsThereOnlyWhereACoreNeedsOne) {
    EXPECT_TRUE(sleeve({"brown", "", "line"}, 0, 20, 10).empty());
    EXPECT_EQ(picture::count_kind(sleeve({"grey", "blue", "neutral"}, 0, 20, 10), "sleeve"), 1);
}

TEST(Stroke, AnIsolatedEndLeavesAGap) {
    EXPECT_LT(drawing::box_of(cut_back({50, 10}, 80)).right, 80);
    EXPECT_GT(drawing::box_of(cut_back({50, 10}, 20)).left, 20);
    EXPECT_EQ(picture::count_kind(capped({10, 10}, 1), "capped"), 1);
    EXPECT_EQ(picture::count_kind(gland({10, 10}, 1, Ending::isolated), "insulated"), 1);
    EXPECT_EQ(picture::count_kind(gland({10, 10}, 1, Ending::joined), "insulated"), 0);
    EXPECT_EQ(picture::count_kind(lead({{0, 0}, {9, 0}}), "lead"), 1);
    EXPECT_FALSE(screw({0, 0}).empty());
}

}  // namespace
}  // namespace toft::joins
