#include "soil/plausible.h"

#include "soil/driven_rod.h"
#include "soil/soundings.h"

namespace toft::soil {
namespace {

/// How badly soils meet readings.
class Misfit {
public:
    explicit Misfit(const std::vector<SpacingReading>& readings) : sounding_(spreads_of(readings)) {
        for (const SpacingReading& reading : readings) {
            taken_.push_back(std::log(apparent_resistivity(reading).number()));
        }
    }

    double operator()(const field::Strata& soil) const {
        const Numbers seen = sounding_.look(log_soil(soil)).seen;
        double sum = 0;
        for (std::size_t i = 0; i < seen.size(); ++i) sum += std::pow(taken_[i] - seen[i], 2);
        return std::sqrt(sum / static_cast<double>(seen.size()));
    }

private:
    static std::vector<Spread> spreads_of(const std::vector<SpacingReading>& readings) {
        std::vector<Spread> spreads;
        for (const SpacingReading& reading : readings) spreads.push_back(reading.spread);
        return spreads;
    }

    Sounding sounding_;
    Numbers taken_;
};

TEST(Plausible, SoilsAllMeetTheReadingsAboutAsWell) {
    for (const auto& readings : {near_uniform_manual(), remembered_falling(),
                                 read_over(three(200, 1, 30, 3, 500), usual_spacings)}) {
        const SoilFit fit = fit_of(readings);
        const Misfit misfit(readings);
        EXPECT_GE(fit.plausible.size(), 5u);
        EXPECT_LE(fit.plausible.size(), 16u);
        EXPECT_NEAR(misfit(fit.plausible.front()), fit.misfit, 1e-9);
        const double n = static_cast<double>(readings.size());
        for (const field::Strata& soil : fit.plausible) {
            EXPECT_LT(misfit(soil), 2.4 * fit.misfit + 0.02 * 2 / std::sqrt(n));
        }
    }
}

TEST(Plausible, SoilsReachTheEndsOfEveryRange) {
    const SoilFit fit = fit_of(remembered_falling());
    double least = 1e9;
    double most = 0;
    for (const field::Strata& soil : fit.plausible) {
        if (soil.layers.size() != 1) continue;
        least = std::min(least, soil.layers[0].thickness.number());
        most = std::max(most, soil.layers[0].thickness.number());
    }
    EXPECT_NEAR(least / fit.thicknesses[0].low.number(), 1, 0.02);
    EXPECT_NEAR(most / fit.thicknesses[0].high.number(), 1, 0.02);
}

TEST(Plausible, RodsInSoilsThatReadingsAllowStayWithinThoseOfTheList) {
    // A grid of soils, of which those count that meet the readings as well as the list does.
    const auto readings = read_over(two(150, 1.5, 40), {0.5, 1, 2, 3, 4, 6});
    const SoilFit fit = fit_of(readings);
    const Misfit misfit(readings);
    const DrivenRod rod{metres(1.8), metres(0.016), ohms(1)};
    double least = 1e9, most = 0, limit = 0;
    for (const field::Strata& soil : fit.plausible) {
        if (soil.layers.size() > 1) continue;
        least = std::min(least, rod_over(soil, rod)->number());
        most = std::max(most, rod_over(soil, rod)->number());
        limit = std::max(limit, misfit(soil));
    }
    int counted = 0;
    for (double upper = 135; upper < 168; upper += 2) {
        for (double h = 1.3; h < 1.75; h += 0.03) {
            for (double lower = 34; lower < 47; lower += 1.5) {
                if (misfit(two(upper, h, lower)) > limit) continue;
                ++counted;
                const double r = rod_over(two(upper, h, lower), rod)->number();
                EXPECT_GT(r, 0.98 * least);
                EXPECT_LT(r, 1.02 * most);
            }
        }
    }
    EXPECT_GT(counted, 10);
    EXPECT_GT(most / least, 1.05);
}

TEST(Plausible, ReachGrowsWithTheSpacings) {
    const double near = fit_of(read_over(one(60), {0.5, 1, 2, 3})).reach.number();
    const double far = fit_of(read_over(one(60), {5, 10, 20, 30})).reach.number();
    EXPECT_NEAR(far / near, 10, 0.5);
    EXPECT_GT(near, 1.5);
    EXPECT_LT(near, 12);
}

TEST(Plausible, GroundBelowTheReachWouldNotShowAndAboveItWould) {
    const Numbers spacings{0.5, 1, 2, 3, 4};
    const double reach = fit_of(read_over(one(60), spacings)).reach.number();
    EXPECT_EQ(fit_of(read_over(two(60, 1.2 * reach, 6), spacings)).verdict, Verdict::uniform);
    EXPECT_EQ(fit_of(read_over(two(60, 0.4 * reach, 6), spacings)).verdict, Verdict::two_layers);
}

}  // namespace
}  // namespace toft::soil
