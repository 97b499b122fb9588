#include "field/medium.h"

#include "support/grounds.h"

namespace toft::field {
namespace {

TEST(Medium, KeepsTheExactSeriesWhereThereAreNoMoreThanTwoLayers) {
    const Ground two(layers(100, 300, 1.5));
    const Medium same = medium(stack({{100, 1.0}, {100, 0.5}, {300, 2}}, 300));
    const Medium uniform = medium(stack({{300, 1}}, 300));
    for (double z : {0.0, 0.7, 2.5}) {
        EXPECT_EQ(same.between(point_bar(2, z), point_bar(0, 0.4)),
                  two.between(point_bar(2, z), point_bar(0, 0.4)));
        EXPECT_EQ(
            uniform.between(point_bar(2, z), point_bar(0, 0.4)),
            Ground(uniform_soil(ohm_metres(300))).between(point_bar(2, z), point_bar(0, 0.4)));
    }
    EXPECT_EQ(same.soil().layers.size(), 1u);
    EXPECT_TRUE(uniform.soil().layers.empty());
    EXPECT_EQ(same.error(), 1e-6);
}

TEST(Medium, OfMoreLayersSaysItsError) {
    const Medium three = medium(stack({{1000, 0.5}, {100, 1}}, 300));
    EXPECT_GT(three.error(), 0);
    EXPECT_LT(three.error(), 2e-7);
}

TEST(Medium, RefusesWhatNoFieldCanBeSolvedIn) {
    EXPECT_FALSE(medium_of(stack({{1000, 0}, {100, 1}}, 300)));
    EXPECT_FALSE(medium_of(layers(0, 100, 1)));
}

}  // namespace
}  // namespace toft::field
