#include "study/heat_figures.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <cmath>

namespace toft::study {
namespace {

Figures<Silent> figures(const site::Job& job, const RunScheme& scheme) {
    const auto setting = support::prepared(job);
    Figures<Silent> f;
    Silent silent;
    work_out(silent, setting, scheme, Stage::heat, f);
    return f;
}

RunScheme armour_behind(const tables::Device& device, double mm2 = 10) {
    return support::scheme(support::cable(2, mm2), Protective::armour, device);
}

TEST(HeatFigures, TheWorseOfLiveCoresAndPathCounts) {
    const auto f = figures(support::plain_job(), armour_behind(support::fuse(32)));
    EXPECT_EQ(f.heat, most(f.heat_live, f.heat_path));
    EXPECT_GT(f.heat_live, 0);
    EXPECT_GT(f.heat_path, 0);
}

TEST(HeatFigures, ABreakerThatTripsAtOnceLetsThroughTheFirstCurrentForItsLastTime) {
    const tables::Device& device = support::breaker("B", 32, 6);
    const auto scheme = armour_behind(device);
    const auto f = figures(support::plain_job(), scheme);
    const double i = f.at[0].working.earth.number();
    const double t = device.points.back().time.number();
    const auto& cable = *scheme.first().cable;
    const auto& make = tables::make_of(support::catalogue(), cable);
    const double stands =
        std::pow(make.armour.k.value.number() * cable.armour_area.value.number(), 2);
    ASSERT_GT(f.at[0].early.earth, device.points.back().current.value);
    ASSERT_LT(i * i * t, early_share * stands);
    EXPECT_LE(f.heat_path,
              i * i * t / stands * (1 + 1e-9) + device.let_through->value.number() / stands);
}

TEST(HeatFigures, AFaultThatDoesNotTripAtOnceIsTakenHot) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::measured(metres(150));
    const tables::Device& device = support::breaker("C", 32, 6);
    const auto f = figures(job, armour_behind(device));
    ASSERT_LT(f.at[0].early.earth, device.points.back().current.value);
    EXPECT_GT(f.heat_path, 1);
}

TEST(HeatFigures, TheRcdAtTheHeadEndsEarthFaultsOnly) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::measured(metres(150));
    auto scheme = armour_behind(support::breaker("C", 32, 6));
    const auto without = figures(job, scheme);
    scheme.rcd = &support::catalogue().run_rcds.front();
    const auto with = figures(job, scheme);
    EXPECT_LT(with.heat_path, without.heat_path);
    EXPECT_GE(with.heat_live, 0);
    EXPECT_EQ(with.disconnection, without.disconnection);
}

}  // namespace
}  // namespace toft::study
