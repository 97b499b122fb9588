#include "curves/pair_plot.h"

#include "curves/band.h"
#include "curves/looking.h"

#include <gtest/gtest.h>

namespace toft::curves {
namespace {

const tables::Device& fuse80() { return support::fuse(80); }
const tables::Device& rcbo(double rating) { return support::device("BS EN 61009", "B", rating); }

TEST(PairPlot, AClearingEdgeBeginsAtTheConventionalCurrent) {
    const LogPaper paper = plain_paper();
    const auto fuse = clearing_edge(paper, fuse80());
    EXPECT_NEAR(fuse.front().x, paper.x(1.6 * 80), 1e-9);
    const auto breaker = clearing_edge(paper, rcbo(32));
    EXPECT_NEAR(breaker.front().x, paper.x(1.45 * 32), 1e-9);
    EXPECT_NEAR(breaker[2].y, paper.y(60), 1e-9);
    for (std::size_t i = 1; i < breaker.size(); ++i) {
        EXPECT_GE(breaker[i].x, breaker[i - 1].x - 1e-9);
        EXPECT_GE(breaker[i].y, breaker[i - 1].y - 1e-9);
    }
}

TEST(PairPlot, WithoutConventionalCurrentsItIsTheSlowEdge) {
    const LogPaper paper = plain_paper();
    const tables::Device& old = support::device("BS 1361", "", 60);
    ASSERT_TRUE(old.trips.empty());
    EXPECT_EQ(clearing_edge(paper, old).size(), slow_edge(paper, old).size());
}

TEST(PairPlot, ABearingEdgePassesThroughEveryHold) {
    const LogPaper paper = plain_paper();
    const auto edge = bearing_edge(paper, fuse80());
    for (const tables::CurvePoint& p : fuse80().holds) {
        const drawing::Point spot = paper.at(p.current.value.number(), p.time.number());
        bool found = false;
        for (const drawing::Point& at : edge) found = found || drawing::distance(at, spot) < 1e-6;
        EXPECT_TRUE(found) << p.current.value.number();
    }
}

TEST(PairPlot, HasTwoBandsAndABarOverWhatIsSure) {
    const LogPaper paper = plain_paper();
    Silent silent;
    PairShown pair{&fuse80(), &rcbo(32), {}, amperes(1200)};
    pair.said = device::selectivity(silent, device::Pair{fuse80(), rcbo(32)}, pair.prospective);
    const auto items = pair_plot(paper, pair);
    EXPECT_EQ(picture::count_kind(items, "band"), 2);
    const drawing::Group* bar = picture::find_kind(items, "sure");
    ASSERT_NE(bar, nullptr);
    EXPECT_NEAR(drawing::box_of(bar->items).right, paper.x(610), 2);
    EXPECT_TRUE(picture::says(items, "BS 88-3 80 A"));
    EXPECT_TRUE(picture::says(items, "largest fault 1.2 kA"));
}

TEST(PairPlot, AGapLeavesTheBarInTwoPieces) {
    const LogPaper paper = plain_paper();
    Silent silent;
    PairShown pair{&fuse80(), &rcbo(40), {}, amperes(1200)};
    pair.said = device::selectivity(silent, device::Pair{fuse80(), rcbo(40)}, pair.prospective);
    ASSERT_TRUE(pair.said.gap());
    const drawing::Group* bar = nullptr;
    const auto items = pair_plot(paper, pair);
    bar = picture::find_kind(items, "sure");
    ASSERT_NE(bar, nullptr);
    EXPECT_EQ(bar->items.size(), 4u);
}

TEST(PairPlot, WithoutOneOfTheTwoNothingIsCalledSure) {
    const auto items = pair_plot(plain_paper(), {nullptr, &rcbo(32), {}, amperes(1200)});
    EXPECT_EQ(picture::count_kind(items, "band"), 1);
    EXPECT_EQ(picture::count_kind(items, "sure"), 0);
}

}  // namespace
}  // namespace toft::curves
