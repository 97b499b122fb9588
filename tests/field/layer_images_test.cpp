#include "field/layer_images.h"

#include "field/layer_reflection.h"
#include "support/grounds.h"

#include <rapidcheck/gtest.h>

#include <cmath>

namespace toft::field {
namespace {

double at(const std::vector<LayerImage>& images, double l) {
    double sum = 0;
    for (const LayerImage& image : images) sum += image.amount * std::exp(-l * image.away);
    return sum;
}

/// The largest miss of all kernels between the wave numbers that the fit looks at.
double worst_miss(const Strata& soil, const ImageFit& fit) {
    double worst = 0;
    for (double u = -17; u < 6; u += 0.0137) {
        const double l = std::exp(u);
        const auto exact = reflections(soil, l);
        for (std::size_t p = 0; p < exact.size(); ++p) {
            const LayerImages& images = fit.pairs[p];
            for (double miss :
                 {at(images.through, l) - exact[p].through, at(images.above, l) - exact[p].above,
                  at(images.below, l) - exact[p].below, at(images.both, l) - exact[p].both}) {
                worst = std::max(worst, std::fabs(miss));
            }
        }
    }
    return worst;
}

TEST(LayerImages, MissNoMoreThanTheyOwnUpTo) {
    for (const Strata& soil :
         {stack({{1000, 0.5}, {100, 1.5}}, 300), stack({{3000, 0.3}, {100, 1}}, 10),
          stack({{50, 0.5}, {500, 2}, {20, 3}}, 1000),
          stack({{100, 0.05}, {400, 4}, {30, 10}, {200, 20}}, 50), stack({{100, 1}}, 300)}) {
        const ImageFit fit = fit_images(soil);
        EXPECT_LT(worst_miss(soil, fit), fit.error);
        EXPECT_LT(fit.error, 2e-7);
    }
}

TEST(LayerImages, FirstImageAndSumAreExact) {
    const Strata soil = stack({{1000, 0.5}, {100, 1.5}}, 300);
    const ImageFit fit = fit_images(soil);
    const auto& images = fit.pairs[0].below;
    EXPECT_NEAR(images.front().amount, -900.0 / 1100, 1e-14);
    EXPECT_EQ(images.front().away, 0);
    EXPECT_NEAR(images[1].away, 1, 1e-12);  // twice the thinnest layer
    EXPECT_NEAR(at(images, 0), reflections(soil, 0)[0].below, 1e-12);
    for (std::size_t i = 1; i < images.size(); ++i) {
        EXPECT_GT(images[i].away, images[i - 1].away);
    }
}

TEST(LayerImages, OfUniformSoilAreTheSurfaceAlone) {
    const ImageFit fit = fit_images(stack({{100, 1}, {100, 1}}, 100));
    EXPECT_TRUE(fit.pairs[0].below.empty());
    EXPECT_LT(fit.error, 2e-7);
}

RC_GTEST_PROP(LayerImages, KeepTheirErrorInAnySoil, ()) {
    const auto number = [](int low, int high) { return *rc::gen::inRange(low, high) / 10.0; };
    std::vector<std::pair<double, double>> layers;
    const int count = *rc::gen::inRange(2, 5);
    for (int i = 0; i < count; ++i) layers.push_back({number(100, 10000), number(1, 50)});
    const Strata soil = stack(layers, number(100, 10000));
    const ImageFit fit = fit_images(soil);
    RC_ASSERT(fit.error < 3e-5);  // layers up to 1000 times apart
    RC_ASSERT(worst_miss(soil, fit) < fit.error);
}

}  // namespace
}  // namespace toft::field
