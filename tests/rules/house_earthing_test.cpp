#include "rules/house_earthing.h"

#include "price/item.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using site::Earthing;
using study::BuildingEarthing;
using support::measured;

site::Job house(Earthing system, double bonding, double earthing) {
    site::Job job = support::plain_job();
    job.intake.earthing = system;
    if (system == Earthing::tt) job.intake.electrode = measured(ohms(50));
    job.intake.main_bonding = measured(square_millimetres(bonding));
    job.intake.earthing_conductor = measured(square_millimetres(earthing));
    return job;
}

Finding<Silent> house_earthing_judged(const site::Job& job,
                                      BuildingEarthing earthing = BuildingEarthing::supply_earth) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = earthing;
    EXPECT_TRUE(support::recorded_alike("house-earthing", job, s));
    return support::finding_of("house-earthing", job, s);
}

TEST(HouseEarthing, DefectsAreCautionsWithARemedyAndNeverFailures) {
    for (double bonding : {0.0, 2.5, 4.0, 6.0}) {
        const auto found = house_earthing_judged(house(Earthing::tn_c_s, bonding, 16));
        EXPECT_EQ(found.verdict, Verdict::caution) << bonding;
        EXPECT_STREQ(found.remedy, "house bonding upgrade");
    }
    const auto earthing = house_earthing_judged(house(Earthing::tn_c_s, 10, 6));
    EXPECT_EQ(earthing.verdict, Verdict::caution);
    EXPECT_STREQ(earthing.remedy, "earthing conductor upgrade");
}

TEST(HouseEarthing, EveryRemedyHasAPrice) {
    for (const auto& job : {house(Earthing::tn_c_s, 0, 16), house(Earthing::tn_c_s, 10, 4)}) {
        bool found = false;
        price::item_of(house_earthing_judged(job).remedy, found);
        EXPECT_TRUE(found) << house_earthing_judged(job).remedy;
    }
}

TEST(HouseEarthing, OnACombinedSupplyBothMustReachTheTable) {
    EXPECT_EQ(house_earthing_judged(house(Earthing::tn_c_s, 10, 10)).verdict,
              Verdict::meets);  // ties
    EXPECT_STREQ(house_earthing_judged(house(Earthing::tn_c_s, 10, 10)).remedy, "");
    site::Job thick = house(Earthing::tn_c_s, 10, 16);
    thick.intake.supply_neutral = measured(square_millimetres(50));
    EXPECT_EQ(house_earthing_judged(thick).verdict, Verdict::caution);
    thick.intake.main_bonding = measured(square_millimetres(16));
    EXPECT_EQ(house_earthing_judged(thick).verdict, Verdict::meets);
}

TEST(HouseEarthing, ElsewhereHalfTheEarthingConductorWill) {
    EXPECT_EQ(house_earthing_judged(house(Earthing::tn_s, 6, 10)).verdict, Verdict::meets);
    EXPECT_EQ(house_earthing_judged(house(Earthing::tn_s, 6, 16)).verdict,
              Verdict::caution);  // asks for 8
    EXPECT_EQ(house_earthing_judged(house(Earthing::tn_s, 10, 16)).verdict, Verdict::meets);
    EXPECT_EQ(house_earthing_judged(house(Earthing::tt, 6, 10), BuildingEarthing::shared_electrode)
                  .verdict,
              Verdict::meets);
}

TEST(HouseEarthing, WhatNobodySawIsTakenAsMissing) {
    site::Job job = house(Earthing::tn_c_s, 10, 16);
    job.intake.main_bonding = {};
    EXPECT_EQ(house_earthing_judged(job).verdict, Verdict::caution);
    job.intake.main_bonding = measured(square_millimetres(10));
    job.intake.earthing_conductor = {};
    EXPECT_EQ(house_earthing_judged(job).verdict, Verdict::caution);
}

TEST(HouseEarthing, ABuildingOnItsOwnRodExtendsNothing) {
    EXPECT_EQ(house_earthing_judged(house(Earthing::tn_c_s, 0, 4), BuildingEarthing::own_electrode)
                  .verdict,
              Verdict::meets);
}

}  // namespace
}  // namespace toft::rules
