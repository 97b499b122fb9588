#include "soil/layered_sounding.h"

#include "soil/soundings.h"

#include <rapidcheck/gtest.h>

namespace toft::soil {
namespace {

/// The series of images for four pins of Wenner's over two layers, h = 1 and rho1 = 1, term by
/// term: https://electriciansforums.net/threads/calculating-the-resistivity-of-two-layer-soil.95636
double by_images(double k, double spacing) {
    double sum = 0;
    double power = 1;
    for (int n = 1; n < 400000 && std::fabs(power) > 1e-16; ++n) {
        power *= k;
        const double u = 2 * n / spacing;
        sum += power * (1 / std::sqrt(1 + u * u) - 1 / std::sqrt(4 + u * u));
    }
    return 1 + 4 * sum;
}

double ratio(double k, const Spread& spread) {
    return over(two(1, 1, (1 + k) / (1 - k)), {spread})[0];
}

TEST(LayeredSounding, MeetsTheImagesTermByTerm) {
    for (double k : {-0.9, -0.5, -0.1, 0.1, 0.5, 0.9}) {
        for (double a : {0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 200.0}) {
            EXPECT_NEAR(ratio(k, wenner(a)) / by_images(k, a), 1, 1e-8) << k << " " << a;
        }
    }
    for (double k : {-0.9998, 0.9998}) {  // ten thousand times apart
        for (double a : {0.2, 2.0, 20.0}) {
            EXPECT_NEAR(ratio(k, wenner(a)) / by_images(k, a), 1, 1e-5) << k << " " << a;
        }
    }
}

TEST(LayeredSounding, MeetsTheTabulatedCurve) {
    // Sums of 20 000 terms of the same series, to the last digit printed (own computation).
    const Numbers spacings{0.2, 0.5, 1, 2, 5, 10, 20};
    const Numbers falling{0.99528, 0.93901, 0.71083, 0.28805, 0.06101, 0.05363, 0.05287};
    const Numbers rising{1.00610, 1.08156, 1.43225, 2.46273, 5.22493, 8.44946, 12.22256};
    for (std::size_t i = 0; i < spacings.size(); ++i) {
        EXPECT_NEAR(ratio(-0.9, wenner(spacings[i])), falling[i], 6e-6);
        EXPECT_NEAR(ratio(0.9, wenner(spacings[i])), rising[i], 6e-6);
    }
}

TEST(LayeredSounding, CloseInnerPinsMeetTheirOwnSeries) {
    for (double k : {-0.9, 0.5, 0.9}) {
        for (double half : {0.5, 2.0, 10.0}) {
            double sum = 0;
            double power = 1;
            for (int n = 1; n < 2000; ++n) {
                power *= k;
                const double u = 2 * n / half;
                sum += power / std::pow(1 + u * u, 1.5);
            }
            EXPECT_NEAR(ratio(k, schlumberger(half, 0.00201 * half)) / (1 + 2 * sum), 1, 1e-5);
        }
    }
    EXPECT_NEAR(ratio(0.7, schlumberger(1.5, 1)) / ratio(0.7, wenner(1)), 1, 1e-9);
}

TEST(LayeredSounding, MoreLayersAreFewerWhereTheyAreEqual) {
    const auto spreads = wenners(usual_spacings);
    const Numbers plain = over(two(100, 2, 30), spreads);
    for (const field::Strata& same :
         {three(100, 0.7, 100, 1.3, 30), three(100, 2, 30, 5, 30), three(100, 2, 30, 1e-3, 30)}) {
        const Numbers rho = over(same, spreads);
        for (std::size_t i = 0; i < rho.size(); ++i) EXPECT_NEAR(rho[i] / plain[i], 1, 1e-9);
    }
    for (double rho : over(one(42), spreads)) EXPECT_NEAR(rho, 42, 1e-9);
}

TEST(LayeredSounding, ThinMiddleLayersActByProductOrQuotientAlone) {
    const auto spreads = wenners({2, 5, 10, 20});
    const Numbers a = over(three(100, 2, 5, 0.05, 100), spreads);
    const Numbers b = over(three(100, 2, 10, 0.1, 100), spreads);
    for (std::size_t i = 0; i < a.size(); ++i) EXPECT_NEAR(a[i] / b[i], 1, 0.02);
}

TEST(LayeredSounding, SlopesAreThoseOfTheCurve) {
    const Sounding sounding(wenners({0.5, 2, 8}));
    const LogSoil soil = log_soil(three(200, 1, 30, 3, 500));
    const Sight sight = sounding.look(soil);
    for (std::size_t f = 0; f < soil.size(); ++f) {
        LogSoil up = soil, down = soil;
        up[f] += 1e-5;
        down[f] -= 1e-5;
        const Sight a = sounding.look(up), b = sounding.look(down);
        for (std::size_t i = 0; i < 3; ++i) {
            EXPECT_NEAR(sight.slopes[i + 3 * f], (a.seen[i] - b.seen[i]) / 2e-5, 1e-7);
        }
    }
}

TEST(LayeredSounding, SoilsKeepTheirFiguresThroughLogarithms) {
    const field::Strata soil = strata_of(log_soil(three(200, 1, 30, 3, 500)));
    ASSERT_EQ(soil.layers.size(), 2u);
    EXPECT_NEAR(soil.layers[1].resistivity.number(), 30, 1e-9);
    EXPECT_NEAR(soil.layers[1].thickness.number(), 3, 1e-9);
    EXPECT_NEAR(soil.deepest.number(), 500, 1e-9);
}

TEST(LayeredSounding, RefusesSoilsAndSpreadsThatAreNone) {
    const auto faults = [](const field::Strata& soil, const Spread& spread) {
        const auto result = apparent_over(soil, {spread});
        return result ? std::size_t{0} : result.error().size();
    };
    EXPECT_EQ(faults(two(100, 1, 300), wenner(1)), 0u);
    EXPECT_EQ(faults(two(0, -1, 300), wenner(0)), 3u);
    EXPECT_EQ(faults(two(1, 1, 10001), wenner(1)), 1u);
    EXPECT_EQ(faults(one(0), schlumberger(1, 3)), 2u);
}

RC_GTEST_PROP(LayeredSoundingLaws, ReadingsLieWithinTheLayersAndScaleWithThem, ()) {
    const auto draw = [](int low, int high) { return *rc::gen::inRange(low, high) / 10.0; };
    const field::Strata soil =
        three(draw(50, 20000), draw(1, 50), draw(50, 20000), draw(1, 100), draw(50, 20000));
    const auto spreads = wenners({draw(3, 500)});
    const double rho = over(soil, spreads)[0];
    field::Strata twice = soil;
    for (field::Stratum& layer : twice.layers) layer.resistivity = 2 * layer.resistivity;
    twice.deepest = 2 * twice.deepest;
    RC_ASSERT(std::fabs(over(twice, spreads)[0] / rho - 2) < 1e-9);
    const double a = soil.layers[0].resistivity.number();
    const double b = soil.layers[1].resistivity.number();
    const double c = soil.deepest.number();
    // Wenner's pins may overshoot a little where the curve turns.
    RC_ASSERT(rho > 0.8 * std::min({a, b, c}));
    RC_ASSERT(rho < 1.25 * std::max({a, b, c}));
}

}  // namespace
}  // namespace toft::soil
