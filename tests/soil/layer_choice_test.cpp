#include "soil/layer_choice.h"

#include "soil/soundings.h"

namespace toft::soil {
namespace {

Curve curve_of(const Numbers& spacings, const Numbers& rho) {
    Curve curve;
    for (double a : spacings) curve.ln_spacing.push_back(std::log(a));
    for (double r : rho) curve.taken.ln.push_back(std::log(r));
    curve.taken.weight.assign(rho.size(), 1);
    curve.taken.look = [sounding = Sounding(wenners(spacings))](const LogSoil& soil) {
        return sounding.look(soil);
    };
    curve.floor = 0.02;
    return curve;
}

Curve over_soil(const field::Strata& soil, const Numbers& spacings) {
    return curve_of(spacings, over(soil, wenners(spacings)));
}

int layers_of(const Curve& curve) { return layers_asked_for(curve, best_of_each(curve)); }

TEST(LayerChoice, FindsAsManyLayersAsThereAre) {
    const Numbers spacings{0.5, 1, 2, 4, 8, 16, 32};
    EXPECT_EQ(layers_of(over_soil(one(80), spacings)), 1);
    EXPECT_EQ(layers_of(over_soil(two(80, 2, 400), spacings)), 2);
    EXPECT_EQ(layers_of(over_soil(three(200, 1, 30, 3, 500), spacings)), 3);
    // Three layers that two cannot begin to explain: the curve ends where it began.
    EXPECT_EQ(layers_of(over_soil(three(100, 1, 1000, 3, 100), spacings)), 3);
}

TEST(LayerChoice, BelievesNoLayerThatIsLessThanTheNoise) {
    EXPECT_EQ(layers_of(over_soil(two(80, 2, 82), {0.5, 1, 2, 4, 8, 16})), 1);
    EXPECT_EQ(layers_of(curve_of({0.5, 1, 2, 4, 8, 16}, {80, 84, 79, 81, 77, 82})), 1);
}

TEST(LayerChoice, LeavesAReadingFree) {
    EXPECT_EQ(best_of_each(over_soil(one(80), {1, 2, 4})).size(), 1u);
    EXPECT_EQ(best_of_each(over_soil(one(80), {1, 2, 4, 8})).size(), 2u);
    EXPECT_EQ(best_of_each(over_soil(one(80), {1, 2, 4, 8, 16, 32})).size(), 3u);
    Curve curve = over_soil(one(80), {1, 2, 4, 8});
    EXPECT_EQ(free_readings(curve, 2), 1);
    curve.taken.weight[2] = 0;
    EXPECT_EQ(counted(curve), 3);
    EXPECT_EQ(free_readings(curve, 2), 0);
}

TEST(LayerChoice, SearchesNoLayersTooFarApart) {
    for (const Numbers& rho : {Numbers{10, 10, 10, 10}, Numbers{1, 10, 100, 900}}) {
        const Box box = search_box(curve_of({1, 2, 4, 8}, rho), 2);
        EXPECT_LT(std::exp(box.high[0] - box.low[0]), 1e4);
        EXPECT_LT(box.low[0], std::log(rho.front()));
        EXPECT_GT(box.high[1], std::log(rho.back()));
        EXPECT_NEAR(std::exp(box.low[2]), 0.1, 1e-9);
        EXPECT_NEAR(std::exp(box.high[2]), 40, 1e-9);
    }
}

TEST(LayerChoice, GainsPayAgainstTheFloorOrAgainstTheScatter) {
    const Curve curve = over_soil(one(80), {1, 2, 4, 8});
    const double floor = 0.02 * 0.02;
    EXPECT_FALSE(pays(curve, {9 * floor, 2, 0, 0}, 0.01));
    EXPECT_TRUE(pays(curve, {10 * floor, 2, 0, 0}, 0.01));  // chi-squared of 2: 9.21
    EXPECT_FALSE(pays(curve, {60 * floor, 2, 3 * floor, 3}, 0.01));
    EXPECT_TRUE(pays(curve, {63 * floor, 2, 3 * floor, 3}, 0.01));  // F of 2 and 3: 30.8
    EXPECT_NEAR(allowed_sum(curve, 1, 0), 3.8415 * floor, 1e-3 * floor);
    EXPECT_GT(allowed_sum(curve, 1, 30 * floor), 30 * floor + 3.8415 * floor);
}

}  // namespace
}  // namespace toft::soil
