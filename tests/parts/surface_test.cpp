#include "parts/surface.h"

#include "drawing/measure.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

using namespace picture;

const drawing::Box strip{100, 91, 300, 108};

TEST(Surface, EverySurfaceIsDrawnOnItsStrip) {
    const auto count = site::words<site::Surface>().size();
    for (std::size_t i = 0; i < count; ++i) {
        const drawing::Items items = surface_items(static_cast<site::Surface>(i), strip);
        ASSERT_FALSE(items.empty()) << i;
        EXPECT_TRUE(drawing::contains(drawing::grown(strip, 3), drawing::box_of(items))) << i;
    }
}

TEST(Surface, AVeryShortStripDrawsNothingBeyondIt) {
    const drawing::Box tiny{100, 91, 103, 108};
    for (const auto surface : {site::Surface::lawn, site::Surface::drive, site::Surface::path}) {
        const drawing::Items items = surface_items(surface, tiny);
        if (items.empty()) continue;
        EXPECT_TRUE(drawing::contains(drawing::grown(tiny, 3), drawing::box_of(items)));
    }
}

TEST(Surface, AFenceStandsOnTheGround) {
    EXPECT_NEAR(drawing::box_of(fence({0, 50, 200, 90})).bottom, 90, 1.5);
}

}  // namespace
}  // namespace toft::parts
