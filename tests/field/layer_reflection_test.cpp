#include "field/layer_reflection.h"

#include "support/grounds.h"

#include <cmath>
#include <limits>

namespace toft::field {
namespace {

struct Wave {
    double potential = 0;
    double slope = 0;  ///< by depth

    void add(double amount, double l, double w, double w_by_depth) {
        const double one = amount * std::exp(-l * w);
        potential += one;
        slope -= l * w_by_depth * one;
    }
};

/// A depth and the layer that it is taken to lie in.
struct Place {
    double depth;
    std::size_t layer;
};

/// What the header says at one place for a source at another: times rho of the upper.
Wave wave(const Strata& soil, double l, const Place& source, const Place& at) {
    const auto [c, i] = source;
    const auto [z, j] = at;
    const std::size_t count = soil.layers.size() + 1;
    std::vector<double> depth = boundaries(soil);
    depth.insert(depth.begin(), 0);
    depth.push_back(depth.back() + 50);
    const bool down = i <= j;
    const std::size_t u = down ? i : j;  // the upper of the two layers
    const std::size_t v = down ? j : i;
    const double t = depth[u];
    const double b = depth[v + 1];
    const LayerReflection r = reflections(soil, l)[pair_number(u, v, count)];
    const double rho = (u + 1 < count ? soil.layers[u].resistivity : soil.deepest).number();
    const double side = down ? 1 : -1;
    Wave sum;
    if (i != j) sum.add(rho * r.through, l, std::fabs(z - c), side);
    if (i == j) sum.add(rho, l, std::fabs(z - c), z > c ? 1 : -1);
    sum.add(rho * r.above, l, z + c - 2 * t, 1);
    sum.add(rho * r.below, l, 2 * b - z - c, -1);
    if (i == j) sum.add(rho * r.both, l, 2 * (b - t) + z - c, 1);
    sum.add(rho * r.both, l, 2 * (b - t) - side * (z - c), -side);
    return sum;
}

TEST(LayerReflection, LetsPotentialAndCurrentThroughEveryBoundaryAndNoneOutOfTheSurface) {
    const Strata soil = stack({{1000, 0.5}, {100, 1.5}, {30, 1}}, 300);
    const std::vector<double> rho{1000, 100, 30, 300};
    const std::vector<double> depths = boundaries(soil);
    const std::vector<double> sources{0.2, 1.1, 2.3, 3.7};
    for (double l : {0.001, 0.03, 0.3, 1.0, 3.0}) {
        for (std::size_t i = 0; i < sources.size(); ++i) {
            EXPECT_NEAR(wave(soil, l, {sources[i], i}, {0, 0}).slope, 0, 1e-9 * l);
            for (std::size_t j = 0; j + 1 < rho.size(); ++j) {
                const Wave above = wave(soil, l, {sources[i], i}, {depths[j], j});
                const Wave below = wave(soil, l, {sources[i], i}, {depths[j], j + 1});
                EXPECT_NEAR(above.potential / below.potential, 1, 1e-11);
                EXPECT_NEAR(above.slope / rho[j], below.slope / rho[j + 1],
                            1e-11 * l * above.potential);
            }
        }
    }
}

TEST(LayerReflection, OfTwoLayersIsTheGeometricSeries) {
    const double k = 0.5;  // 100 on 300
    const double x = std::exp(-2 * 0.7 * 1.2);
    const auto pairs = reflections(stack({{100, 1.2}}, 300), 0.7);
    EXPECT_NEAR(pairs[0].below, k / (1 - k * x), 1e-14);
    EXPECT_NEAR(pairs[1].through, (1 + k) / (1 - k * x), 1e-14);
    EXPECT_NEAR(pairs[2].above, -k + (1 - k * k) * x / (1 - k * x), 1e-14);
    EXPECT_EQ(pairs[2].below, 0);
}

TEST(LayerReflection, FarOffTheDeepestLayerRulesAndCloseByOnlyTheNextBoundary) {
    const Strata soil = stack({{1000, 0.5}, {100, 1.5}}, 300);
    const auto far = reflections(soil, 0);
    // A source of any layer is felt as in uniform soil of the deepest: twice its resistivity.
    EXPECT_NEAR(1000 * (2 + 4 * far[0].below), 2 * 300, 1e-9);
    EXPECT_NEAR(1000 * 2 * (far[2].through + far[2].below), 2 * 300, 1e-9);
    EXPECT_NEAR(300 * (1 + far[5].above), 2 * 300, 1e-9);
    const auto close = reflections(soil, std::numeric_limits<double>::infinity());
    EXPECT_NEAR(close[0].below, -900.0 / 1100, 1e-15);
    EXPECT_NEAR(close[1].through, 1 - 900.0 / 1100, 1e-15);
    EXPECT_EQ(close[0].through, 1);
}

TEST(LayerReflection, PairsAreNumberedRowByRow) {
    EXPECT_EQ(pair_number(0, 0, 3), 0u);
    EXPECT_EQ(pair_number(0, 2, 3), 2u);
    EXPECT_EQ(pair_number(1, 1, 3), 3u);
    EXPECT_EQ(pair_number(2, 2, 3), 5u);
}

}  // namespace
}  // namespace toft::field
