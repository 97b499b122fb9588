#include "field/soil.h"

#include "support/grounds.h"

#include <cmath>

namespace toft::field {
namespace {

std::string wrong(const Strata& soil) {
    const Faults faults = faults_of(soil);
    return faults.empty() ? "" : faults.front().says;
}

TEST(Soil, NeighboursOfOneResistivityAreOneLayer) {
    const Strata soil = merged(stack({{100, 1}, {100, 0.5}, {300, 2}, {50, 1}, {50, 4}}, 50));
    ASSERT_EQ(soil.layers.size(), 2u);
    EXPECT_EQ(soil.layers[0].thickness, metres(1.5));
    EXPECT_EQ(soil.layers[1].resistivity, ohm_metres(300));
    EXPECT_EQ(soil.deepest, ohm_metres(50));
    EXPECT_TRUE(merged(stack({{50, 1}, {50, 4}}, 50)).layers.empty());
}

TEST(Soil, BoundariesCountFromTheSurface) {
    const auto depths = boundaries(stack({{100, 1}, {200, 0.5}, {300, 2}}, 50));
    EXPECT_EQ(depths, (std::vector<double>{1, 1.5, 3.5}));
    EXPECT_TRUE(boundaries(stack({}, 50)).empty());
}

TEST(Soil, LayersThatCannotBeAreRefused) {
    EXPECT_EQ(wrong(stack({{100, 1}, {400, 2}}, 50)), "");
    EXPECT_EQ(wrong(stack({}, 50)), "");
    EXPECT_NE(wrong(stack({}, 0)), "");
    EXPECT_NE(wrong(stack({{100, 1}, {400, 0}}, 50)), "");
    EXPECT_NE(wrong(stack({{100, 1}, {400, -2}}, 50)), "");
    EXPECT_NE(wrong(stack({{100, 1}, {0, 2}}, 50)), "");
    EXPECT_NE(wrong(stack({{100, 1}, {NAN, 2}}, 50)), "");
    EXPECT_NE(wrong(stack({{100, INFINITY}, {200, 2}}, 50)), "");
    EXPECT_NE(wrong(stack({{100, 1}, {0.001, 2}}, 50)), "");
    EXPECT_NE(wrong(stack({{100, 1e-5}, {200, 2}}, 50)), "");
    EXPECT_NE(wrong(stack(std::vector<std::pair<double, double>>(9, {100, 1}), 50)), "");
}

TEST(Soil, AllThatIsWrongIsSaidAndWhere) {
    const Faults faults = faults_of(stack({{0, 1}, {100, 0}, {-1, 2}}, 50));
    ASSERT_EQ(faults.size(), 3u);
    EXPECT_EQ(faults[0].pointer, "/0");
    EXPECT_EQ(faults[1].pointer, "/1");
    EXPECT_EQ(faults[2].pointer, "/2");
}

}  // namespace
}  // namespace toft::field
