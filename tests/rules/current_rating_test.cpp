#include "rules/current_rating.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using site::LegMethod;
using support::measured;

study::RunScheme with(double section, double fuse) {
    return support::scheme(support::cable(2, section), study::Protective::armour,
                           support::fuse(fuse));
}

/// Tabulated for the two-core cable, single phase.
Amperes rated(double section, tables::ReferenceMethod method) {
    return support::cable(2, section).two.rating[static_cast<std::size_t>(method)].value;
}

Finding<Silent> current_rating_judged(const site::Job& job, const study::RunScheme& scheme) {
    EXPECT_TRUE(support::recorded_alike("current-rating", job, scheme));
    return support::finding_of("current-rating", job, scheme);
}

/// A leg in air at the temperature of the tables.
site::Leg clipped() {
    site::Leg leg = support::plain_leg(LegMethod::clipped);
    leg.ambient = measured(celsius(30));
    return leg;
}

TEST(CurrentRating, AtTheTablesConditionsTheTableItselfStands) {
    const site::Job job = support::job_with_legs({clipped()});
    const auto found = current_rating_judged(job, with(2.5, 32));
    EXPECT_DOUBLE_EQ(found.limit, rated(2.5, tables::ReferenceMethod::c).number());
    EXPECT_DOUBLE_EQ(found.value, 32);
}

TEST(CurrentRating, TheDeviceMayEqualTheRatingAndNoMore) {
    // Six circuits together: scale the leg so that the rating is that of the device.
    site::Job job = support::job_with_legs({clipped()});
    const double full = current_rating_judged(job, with(4, 45)).limit;
    EXPECT_GT(full, 45);
    double cool = 30;
    double hot = 85;
    for (int i = 0; i < 60; ++i) {
        const double middle = (cool + hot) / 2;
        job.runs[0].legs[0].ambient = measured(celsius(middle));
        (current_rating_judged(job, with(4, 45)).verdict == Verdict::meets ? cool : hot) = middle;
    }
    job.runs[0].legs[0].ambient = measured(celsius(cool - 1e-3));
    EXPECT_EQ(current_rating_judged(job, with(4, 45)).verdict, Verdict::meets);
    EXPECT_NEAR(current_rating_judged(job, with(4, 45)).use, 1, 1e-3);
    job.runs[0].legs[0].ambient = measured(celsius(cool + 1e-3));
    EXPECT_EQ(current_rating_judged(job, with(4, 45)).verdict, Verdict::fails);
}

TEST(CurrentRating, TheWorstLegDecides) {
    site::Leg crowded = clipped();
    crowded.other_loaded_circuits = measured(4.0);
    const double alone =
        current_rating_judged(support::job_with_legs({clipped()}), with(10, 63)).limit;
    const double both =
        current_rating_judged(support::job_with_legs({clipped(), crowded}), with(10, 63)).limit;
    const double worst =
        current_rating_judged(support::job_with_legs({crowded}), with(10, 63)).limit;
    EXPECT_LT(both, alone);
    EXPECT_DOUBLE_EQ(both, worst);
}

TEST(CurrentRating, BuriedCableGivesUpATenth) {
    site::Leg leg = support::plain_leg(LegMethod::buried_direct);
    leg.depth = measured(metres(0.7));
    site::Job job = support::job_with_legs({leg});
    job.ground.temperature = measured(celsius(20));
    job.ground.thermal_resistivity = measured(2.5);
    EXPECT_NEAR(current_rating_judged(job, with(10, 32)).limit,
                0.9 * rated(10, tables::ReferenceMethod::d).number(), 1e-9);
}

TEST(CurrentRating, SmallCableBehindALargeFuseFails) {
    const site::Job job = support::job_with_legs({clipped()});
    EXPECT_EQ(current_rating_judged(job, with(1.5, 63)).verdict, Verdict::fails);
    EXPECT_EQ(current_rating_judged(job, with(16, 63)).verdict, Verdict::meets);
}

TEST(CurrentRating, BehindARewirableFuseTheCableCarriesLess) {
    const site::Job job = support::job_with_legs({clipped()});
    auto s = with(4, 32);
    const double full = current_rating_judged(job, s).limit;
    s.device = &support::device("BS 3036", "", 30);
    const auto found = current_rating_judged(job, s);
    EXPECT_NEAR(found.limit, 0.725 * full, 1e-9);
    EXPECT_DOUBLE_EQ(found.value, 30);
    // 0.725 of 36 A is 26.1 A: too little for 30 A, enough for 20.
    auto thin = with(1.5, 20);
    thin.device = &support::device("BS 3036", "", 20);
    const double rated_15 = current_rating_judged(job, with(1.5, 20)).limit;
    EXPECT_EQ(current_rating_judged(job, thin).verdict,
              20 <= 0.725 * rated_15 ? Verdict::meets : Verdict::fails);
    thin.device = &support::device("BS 3036", "", 30);
    EXPECT_EQ(current_rating_judged(job, thin).verdict, Verdict::fails);
}

TEST(CurrentRating, APairCarriesTwiceWhatOneBesideAnotherDoes) {
    site::Leg leg = clipped();
    const site::Job alone = support::job_with_legs({leg});
    leg.other_loaded_circuits = measured(1.0);
    const site::Job grouped = support::job_with_legs({leg});
    auto pair = with(25, 100);
    pair.first().parallel = 2;
    EXPECT_NEAR(current_rating_judged(alone, pair).limit,
                2 * current_rating_judged(grouped, with(25, 100)).limit, 1e-9);
}

TEST(CurrentRating, AStretchOfSmallCableGovernsTheRun) {
    site::Leg first = clipped();
    site::Leg second = clipped();
    support::name_cable(first, support::cable(2, 16));
    support::name_cable(second, support::cable(3, 4));
    const site::Job job = support::job_with_legs({first, second});
    const auto s =
        support::scheme({support::stretch(support::cable(2, 16), study::Protective::armour),
                         support::stretch(support::cable(3, 4), study::Protective::core)},
                        support::fuse(32));
    EXPECT_DOUBLE_EQ(current_rating_judged(job, s).limit,
                     support::cable(3, 4)
                         .two.rating[static_cast<std::size_t>(tables::ReferenceMethod::c)]
                         .value.number());
}

}  // namespace
}  // namespace toft::rules
