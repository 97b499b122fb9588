#include "digging/signs.h"

#include "drawing/measure.h"
#include "drawing/svg.h"

#include <gtest/gtest.h>

#include <set>

namespace toft::digging {
namespace {

std::string inked(drawing::Items items) {
    return drawing::to_svg({100, 100, "", "", {}, std::move(items)});
}

TEST(Signs, EveryWayAndEverySurfaceLooksDifferentWithoutColour) {
    std::set<std::string> lines, bands;
    const std::vector<Way> ways{Way::buried, Way::duct, Way::there, Way::overhead, Way::fixed};
    for (const Way way : ways) lines.insert(inked(leg_line({0, 50}, {90, 50}, way)));
    EXPECT_EQ(lines.size(), ways.size());
    const std::size_t surfaces = site::words<site::Surface>().size();
    for (std::size_t i = 0; i < surfaces; ++i) {
        bands.insert(inked(surface_band({0, 50}, {90, 50}, static_cast<site::Surface>(i))));
    }
    EXPECT_EQ(bands.size(), surfaces);
}

TEST(Signs, HowALegLiesIsReadOffItsMethod) {
    EXPECT_EQ(way_of(site::LegMethod::buried_direct, false), Way::buried);
    EXPECT_EQ(way_of(site::LegMethod::buried_direct, true), Way::there);
    EXPECT_EQ(way_of(site::LegMethod::buried_in_duct, false), Way::duct);
    EXPECT_EQ(way_of(site::LegMethod::overhead, false), Way::overhead);
    EXPECT_EQ(way_of(site::LegMethod::clipped, false), Way::fixed);
    EXPECT_STREQ(way_words(Way::fixed), "above ground, fixed");
}

TEST(Signs, SignsKeepToTheirRoom) {
    const drawing::Box rod = drawing::box_of(electrode_sign({50, 20}));
    EXPECT_TRUE(drawing::contains({41, 18, 59, 43}, rod));
    const drawing::Box north = drawing::box_of(north_arrow({50, 20}));
    EXPECT_TRUE(drawing::contains({38, 17, 62, 67}, north));
    const drawing::Box house = drawing::box_of(building_sign({50, 50}, 24, true));
    EXPECT_NEAR(house.centre().x, 50, 1e-9);
    EXPECT_NEAR(house.centre().y, 50, 1e-9);
    EXPECT_GT(house.width(), drawing::box_of(building_sign({50, 50}, 24, false)).width());
}

}  // namespace
}  // namespace toft::digging
