#include "curves/band.h"

#include "curves/looking.h"
#include "device/curve.h"
#include "device/hold.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace toft::curves {
namespace {

using drawing::Point;

TEST(Band, TheSlowEdgeGoesUpFromItsFirstPointAndOnFromItsLast) {
    const LogPaper paper = plain_paper();
    const std::vector<Point> edge = slow_edge(paper, breaker());
    ASSERT_EQ(edge.size(), 4u);
    EXPECT_EQ(edge[0], paper.at(100, 3600));
    EXPECT_EQ(edge[1], paper.at(100, 5));
    EXPECT_EQ(edge[2], paper.at(100, 0.1));
    EXPECT_EQ(edge[3], paper.at(6000, 0.1)) << "up to what it can break";
}

TEST(Band, TheQuickEdgeIsAStaircaseInsideWhatIsPromised) {
    const LogPaper paper = plain_paper();
    const std::vector<Point> edge = quick_edge(paper, breaker());
    ASSERT_EQ(edge.size(), 4u);
    EXPECT_EQ(edge[0], paper.at(22.6, 3600));
    EXPECT_EQ(edge[1], paper.at(22.6, 0.1)) << "nothing is promised between two points";
    EXPECT_EQ(edge[2], paper.at(60, 0.1));
    EXPECT_EQ(edge[3], (Point{paper.x(60), 800}));
}

/// The time on the edge at a current: the lowest place on it there.
double time_at(const LogPaper& paper, const std::vector<Point>& edge, double amperes) {
    const double x = paper.x(amperes);
    for (std::size_t i = 1; i < edge.size(); ++i) {
        const Point a = edge[i - 1];
        const Point b = edge[i];
        if (!(a.x <= x && x < b.x)) continue;
        const double y = a.y + (b.y - a.y) * (x - a.x) / (b.x - a.x);
        const double share = (paper.box.bottom - y) / paper.box.height();
        return least_seconds * std::pow(most_seconds / least_seconds, share);
    }
    return -1;
}

TEST(Band, TheEdgesAreThoseTheEngineReckonsWith) {
    const LogPaper paper = plain_paper();
    Silent silent;
    int compared = 0;
    for (const tables::Device& device : support::catalogue().devices) {
        const auto slow = slow_edge(paper, device);
        for (double i = device.points.front().current.value.number() * 1.001;
             i < 0.99 * std::min(device.breaking.value.number(), most_amperes); i *= 1.3) {
            const auto t = device::operating_time(silent, {"t", "time"}, device, amperes(i));
            EXPECT_NEAR(time_at(paper, slow, i) / t.number(), 1, 1e-6)
                << device.standard << device.curve << device.rating.number() << " " << i;
            ++compared;
        }
    }
    EXPECT_GT(compared, 500);
}

TEST(Band, NoDeviceOperatesBeforeItMayAndNoneHoldsWhereItMustNot) {
    Silent silent;
    for (const tables::Device& device : support::catalogue().devices) {
        for (double i = 1; i < 20000; i *= 1.2) {
            const auto hold = device::holding_time(silent, {"t", "time"}, device, amperes(i));
            const auto off = device::operating_time(silent, {"t", "time"}, device, amperes(i));
            EXPECT_LE(hold.number(), off.number()) << device.standard << device.rating.number();
        }
    }
}

TEST(Band, WithoutAQuickEdgeThereIsNoBandAndNothingIsSureToHold) {
    const LogPaper paper = plain_paper();
    tables::Device device = breaker();
    EXPECT_TRUE(picture::says(band(paper, device), "sure to hold"));
    device.holds.clear();
    const drawing::Items items = band(paper, device);
    EXPECT_FALSE(picture::says(items, "sure to hold"));
    EXPECT_TRUE(picture::says(items, "sure to have operated"));
    for (const drawing::Item& item : items) {
        EXPECT_FALSE(std::holds_alternative<drawing::Polygon>(item.shape));
    }
    device.points.clear();
    EXPECT_TRUE(band(paper, device).empty());
}

}  // namespace
}  // namespace toft::curves
