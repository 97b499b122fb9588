#include "diagram/far_earth.h"

#include "diagram/run.h"
#include "diagram/sheet.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

drawing::Items far_earth(const Example& one, const answer::SchemeAnswer& scheme) {
    return drawn([&](Ladder& ladder) {
        const picture::Stage stage = picture::set_stage(one.job, &scheme);
        ladder.skip(40);
        draw_far_earth(stage, !run_line(stage).earth_stops, ladder);
    });
}

TEST(FarEarth, EveryBondIsDrawnWithItsSizeAndItsPipe) {
    int bonds = 0;
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const drawing::Items items = far_earth(one, scheme);
        const auto count = static_cast<int>(scheme.building.bonding.size());
        EXPECT_EQ(count_kind(items, "bond"), count);
        bonds += count;
    });
    EXPECT_GT(bonds, 0);
    const Example& demo = example("demo");
    EXPECT_TRUE(says(far_earth(demo, demo.answer.schemes[0]), "bond to the water pipe"));
    EXPECT_TRUE(says(far_earth(demo, demo.answer.schemes[0]), "10 mm²"));
}

TEST(FarEarth, ARodOnlyForAnElectrodeOfItsOwnAndThenNoEarthFromTheRun) {
    int own = 0;
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const drawing::Items items = far_earth(one, scheme);
        const bool electrode = scheme.building.electrode.has_value();
        EXPECT_EQ(count_kind(items, "electrode"), electrode ? 1 : 0);
        EXPECT_EQ(says(items, "earthed by its own electrode, not by the house"), electrode);
        EXPECT_EQ(run_line(picture::set_stage(one.job, &scheme)).earth_stops, electrode);
        double highest = 1e9;
        for (const Polyline& line : all_of<Polyline>(items)) {
            for (const Point p : line.points) highest = std::min(highest, p.y);
        }
        // From the terminal down, or from above it where the run carries the earth on.
        EXPECT_EQ(highest < 50, !electrode);
        own += electrode;
    });
    EXPECT_GT(own, 0);
}

TEST(FarEarth, APipeThatNeedsNoBondIsNamed) {
    const Example& one = example("own-rod-greenhouse");
    EXPECT_TRUE(says(far_earth(one, one.answer.schemes[0]), "insulating section, no bond"));
}

TEST(FarEarth, APredictedElectrodeIsSaidToBePredicted) {
    Example one = example("own-rod-greenhouse");
    answer::SchemeAnswer scheme = *picture::scheme_where(one, picture::has_electrode);
    scheme.building.electrode->measured = false;
    EXPECT_TRUE(says(far_earth(one, scheme), "only a test proves it"));
    scheme.building.electrode->measured = true;
    EXPECT_FALSE(says(far_earth(one, scheme), "only a test proves it"));
}

}  // namespace
}  // namespace toft::diagram
