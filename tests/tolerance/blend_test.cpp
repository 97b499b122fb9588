#include "tolerance/blend.h"

#include "support/examples.h"
#include "varying.h"

#include <gtest/gtest.h>

namespace toft::tolerance {
namespace {

site::Job bracketed() {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(20), metres(60));
    job.intake.ze = support::between(ohms(0.1), ohms(0.4));
    job.ground.temperature = support::between(celsius(5), celsius(25));
    job.ground.thermal_resistivity = support::between(1.0, 2.5);
    job.buildings[1].load = support::between(amperes(10), amperes(22));
    return job;
}

TEST(Blend, FiguresThatShareAPlaceAreOfOneGroup) {
    const site::Job job = bracketed();
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    ASSERT_EQ(varied.size(), 5u);
    const Blend blend(place, varied, 16);
    ASSERT_TRUE(blend.possible());
    // Temperature and thermal resistivity of the ground both lower the rating of the leg.
    EXPECT_EQ(blend.groups(), 4u);
    std::size_t together = 0;
    for (std::size_t g = 0; g < blend.groups(); ++g) together += blend.figures_in(g) == 2 ? 1 : 0;
    EXPECT_EQ(together, 1u);
}

/// Every rule on settings blended from pools and on jobs prepared anew.
void expect_same(const site::Job& job, const Wish& wish, const study::RunScheme& scheme) {
    Place place = place_of(job);
    place.at.phases = scheme.phases;
    const auto varied = varied_in(place, wish);
    Blend blend(place, varied, 16);
    ASSERT_TRUE(blend.possible());
    std::vector<std::size_t> at(blend.groups());
    search::Evaluation a;
    search::Evaluation b;
    for (std::size_t n = 0; n < 60; ++n) {
        for (std::size_t g = 0; g < at.size(); ++g) {
            at[g] = (n * (g + 3) + g) % blend.pool_of(g);
            blend.put(g, at[g]);
        }
        const site::Job anew = job_at(job, varied, blend.values_at(at));
        search::evaluate(blend.setting(), scheme, a);
        search::evaluate(prepared_in(place, anew), scheme, b);
        for (std::size_t i = 0; i < rules::rule_count; ++i) {
            const char* rule = a.findings[i].rule->name;
            const bool alike = a.findings[i].use == b.findings[i].use;
            ASSERT_TRUE(alike || !a.findings[i].limited)
                << rule << " " << a.findings[i].use << " " << b.findings[i].use;
            ASSERT_EQ(a.findings[i].verdict, b.findings[i].verdict) << rule;
        }
    }
}

TEST(Blend, ABlendedSettingIsThatOfAJobPreparedAnew) {
    expect_same(bracketed(), stated_only(), thin_scheme());
}

TEST(Blend, SoItIsWithCircuitsAndADozenFigures) {
    Wish wish;
    wish.length = 60;
    wish.ze = 50;
    wish.temperature = 8;
    expect_same(support::example_job("demo", support::catalogue()), wish, thin_scheme());
}

TEST(Blend, AFigureThatTouchesNothingIsOfNoGroup) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].ambient = support::between(celsius(10), celsius(30));  // it lies buried
    const Place place = place_of(job);
    const auto varied = varied_in(place, stated_only());
    ASSERT_EQ(varied.size(), 1u);
    EXPECT_EQ(Blend(place, varied, 16).groups(), 0u);
}

}  // namespace
}  // namespace toft::tolerance
