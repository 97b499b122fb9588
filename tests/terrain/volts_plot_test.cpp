#include "terrain/volts_plot.h"

#include "terrain/looking.h"

#include <gtest/gtest.h>

namespace toft::terrain {
namespace {

TEST(VoltsPlot, HasABandForEachWayAndItsLetter) {
    const answer::LostNeutralAnswer fault = looked_at_fault();
    const Drawn drawn = volts_plot(fault, {10, 784, 100});
    EXPECT_EQ(picture::count_kind(drawn.items, "way"), 3);
    for (const char* words :
         {"a", "b", "c", "own electrode", "reckoned with: up to 5.2 kW", "70 V"}) {
        EXPECT_TRUE(picture::says(drawn.items, words)) << words;
    }
}

TEST(VoltsPlot, WaysAreToldApartByTheirStrokes) {
    std::vector<std::vector<double>> dashes;
    for (std::size_t i = 0; i < 3; ++i) {
        for (const drawing::Item& item : way_sign(i)) {
            if (const auto* line = std::get_if<drawing::Line>(&item.shape)) {
                dashes.push_back(line->style.dash);
                break;
            }
        }
    }
    ASSERT_EQ(dashes.size(), 3u);
    EXPECT_NE(dashes[0], dashes[1]);
    EXPECT_NE(dashes[1], dashes[2]);
    EXPECT_NE(dashes[0], dashes[2]);
}

TEST(VoltsPlot, ABrokenLineIsSeenOnAFullOneOfTheSameVolts) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.ways[1].over_load = fault.ways[0].over_load;
    const Drawn drawn = volts_plot(fault, {10, 784, 100});
    std::vector<double> widths;
    bool on_paper = false;
    for (const drawing::Item& item : drawn.items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (!group || group->kind != "way") continue;
        const auto* edge = std::get_if<drawing::Polyline>(&group->items.back().shape);
        ASSERT_TRUE(edge);
        widths.push_back(edge->style.width);
        for (const drawing::Item& inner : group->items) {
            const auto* line = std::get_if<drawing::Polyline>(&inner.shape);
            on_paper = on_paper || (line && line->style.stroke == drawing::palette::paper);
        }
    }
    ASSERT_EQ(widths.size(), 3u);
    EXPECT_GT(widths[0], widths[1]);
    EXPECT_TRUE(on_paper);
}

TEST(VoltsPlot, TheBandStaysInsideThePaper) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.ways[0].over_load.push_back({20000, 120, 207});
    const Drawn drawn = volts_plot(fault, {10, 784, 100});
    for (const drawing::Item& item : drawn.items) {
        const auto* group = std::get_if<drawing::Group>(&item.shape);
        if (!group || group->kind != "way") continue;
        EXPECT_TRUE(drawing::contains({10, 100, 784, drawn.foot}, drawing::box_of(group->items)));
    }
}

TEST(VoltsPlot, LeavesOutPointsThatCannotBeDrawn) {
    answer::LostNeutralWayAnswer way;
    way.over_load = {{2000, 30, 60}, {0, 0, 0}, {-1, 3, 4}, {3000, no_number, 4}, {4, 3, no_end}};
    const auto points = drawable_points(way);
    ASSERT_EQ(points.size(), 2u);
    EXPECT_EQ(points[0].load_w, 0);
    answer::LostNeutralAnswer fault;
    EXPECT_FALSE(has_plot(fault));
    EXPECT_TRUE(volts_plot(fault, {10, 784, 100}).items.empty());
}

TEST(VoltsPlot, MarksTooCloseForTheirFiguresKeepTheirLines) {
    answer::LostNeutralAnswer fault = looked_at_fault();
    fault.marks_v = {50, 51};
    const Drawn drawn = volts_plot(fault, {10, 350, 100, true});
    EXPECT_EQ(picture::clashes(drawn.items, {0, 0, 360, 900}), "");
    EXPECT_TRUE(picture::says(drawn.items, "51 V"));
}

}  // namespace
}  // namespace toft::terrain
