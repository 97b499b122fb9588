#include "rules/earthing_choice.h"

#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/judging.h"

#include <gtest/gtest.h>

namespace toft::rules {
namespace {

using site::Answer;
using site::Earthing;
using site::Use;
using study::BuildingEarthing;

site::Job used_as(Use use, Earthing system = Earthing::tn_c_s) {
    site::Job job = support::plain_job();
    job.intake.earthing = system;
    job.buildings[1].use = use;
    return job;
}

Finding<Silent> earthing_choice_judged(const site::Job& job,
                                       BuildingEarthing earthing = BuildingEarthing::supply_earth) {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.earthing = earthing;
    EXPECT_TRUE(support::recorded_alike("earthing-choice", job, s));
    return support::finding_of("earthing-choice", job, s);
}

TEST(EarthingChoice, ACombinedEarthMayNeverServeACaravanOrABoat) {
    for (Use use : {Use::caravan_pitch, Use::boat_mooring}) {
        EXPECT_EQ(earthing_choice_judged(used_as(use)).verdict, Verdict::fails) << site::word(use);
        EXPECT_EQ(earthing_choice_judged(used_as(use), BuildingEarthing::own_electrode).verdict,
                  Verdict::meets);
        const auto separate = earthing_choice_judged(used_as(use, Earthing::tn_s));
        EXPECT_EQ(separate.verdict, Verdict::caution) << site::word(use);
        EXPECT_NE(std::string(separate.says).find("may be combined"), std::string::npos);
    }
    const auto shared = [](Use use) {
        return earthing_choice_judged(used_as(use, Earthing::tt),
                                      BuildingEarthing::shared_electrode)
            .verdict;
    };
    EXPECT_EQ(shared(Use::greenhouse), Verdict::meets);
    EXPECT_EQ(shared(Use::stable), Verdict::caution) << "the house's faults reach the animals";
    EXPECT_EQ(shared(Use::animal_house), Verdict::caution);
}

TEST(EarthingChoice, OrdinaryBuildingsTakeTheSuppliesEarth) {
    for (Use use : {Use::shed, Use::garage, Use::store, Use::office, Use::studio, Use::workshop,
                    Use::gym, Use::other}) {
        EXPECT_EQ(earthing_choice_judged(used_as(use)).verdict, Verdict::meets) << site::word(use);
    }
}

TEST(EarthingChoice, WetPlacesAreCautionedOnAnyEarthThatIsOrMayBeCombined) {
    for (Use use : {Use::greenhouse, Use::stable, Use::animal_house}) {
        EXPECT_EQ(earthing_choice_judged(used_as(use)).verdict, Verdict::caution)
            << site::word(use);
        const auto separate = earthing_choice_judged(used_as(use, Earthing::tn_s));
        EXPECT_EQ(separate.verdict, Verdict::caution) << site::word(use);
        EXPECT_NE(std::string(separate.says).find("may be combined"), std::string::npos);
    }
    const auto shared = [](Use use) {
        return earthing_choice_judged(used_as(use, Earthing::tt),
                                      BuildingEarthing::shared_electrode)
            .verdict;
    };
    EXPECT_EQ(shared(Use::greenhouse), Verdict::meets);
    EXPECT_EQ(shared(Use::stable), Verdict::caution) << "the house's faults reach the animals";
    EXPECT_EQ(shared(Use::animal_house), Verdict::caution);
    for (auto wet :
         {&site::Building::wet_floor, &site::Building::barefoot, &site::Building::livestock}) {
        site::Job job = used_as(Use::shed);
        job.buildings[1].*wet = Answer::yes;
        EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
        EXPECT_EQ(earthing_choice_judged(job, BuildingEarthing::own_electrode).verdict,
                  Verdict::meets);
        job.buildings[1].*wet = Answer::no;
        EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::meets);
    }
}

TEST(EarthingChoice, WhatNobodySaidIsCautionedToo) {
    for (auto fact : {&site::Building::wet_floor, &site::Building::barefoot,
                      &site::Building::livestock, &site::Building::vehicle_outdoors}) {
        site::Job job = used_as(Use::shed);
        job.buildings[1].*fact = Answer::unknown;
        const auto found = earthing_choice_judged(job);
        EXPECT_EQ(found.verdict, Verdict::caution);
        EXPECT_NE(std::string(found.says).find("nobody said"), std::string::npos);
        EXPECT_EQ(earthing_choice_judged(job, BuildingEarthing::own_electrode).verdict,
                  Verdict::meets);
    }
    site::Job job = used_as(Use::shed);
    job.buildings[1].use.reset();
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
    job = used_as(Use::shed);
    job.buildings[1].construction.reset();
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
}

TEST(EarthingChoice, WhatIsKnownIsSaidBeforeWhatIsNot) {
    site::Job job = used_as(Use::greenhouse);
    job.buildings[1].livestock = Answer::unknown;
    job.buildings[1].wet_floor = Answer::yes;
    EXPECT_EQ(std::string(earthing_choice_judged(job).says).find("nobody said"), std::string::npos);
}

TEST(EarthingChoice, PoolsAndTubsAreCautionedOnAnySuppliesEarth) {
    for (Use use : {Use::pool_house, Use::hot_tub}) {
        for (Earthing system : {Earthing::tn_s, Earthing::tn_c_s}) {
            const auto found = earthing_choice_judged(used_as(use, system));
            EXPECT_EQ(found.verdict, Verdict::caution) << site::word(use);
            EXPECT_NE(std::string(found.says).find("specialist"), std::string::npos);
        }
    }
}

TEST(EarthingChoice, AVehicleChargedInTheOpenIsCautionedOnASuppliesEarth) {
    site::Job job = used_as(Use::garage);
    job.buildings[1].vehicle_outdoors = Answer::yes;
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
    EXPECT_NE(std::string(earthing_choice_judged(job).says).find("722.411.4.1"), std::string::npos);
    job.intake.earthing = Earthing::tn_s;
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
    job.intake.earthing = Earthing::tt;
    EXPECT_EQ(earthing_choice_judged(job, BuildingEarthing::shared_electrode).verdict,
              Verdict::meets);
    job = used_as(Use::garage);
    site::Circuit charger;
    charger.kind = site::CircuitKind::vehicle_charging;
    charger.load_w = support::measured(7000.0);
    job.buildings[1].circuits = {charger};
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
}

TEST(EarthingChoice, AMetalBuildingInTheGroundIsCautionedOnASuppliesEarth) {
    site::Job job = used_as(Use::store);
    job.buildings[1].construction = site::Construction::steel_frame;
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::meets);  // not in the ground
    job.buildings[1].stands_in_ground = Answer::yes;
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
    job.buildings[1].stands_in_ground = Answer::unknown;
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
    job.intake.earthing = Earthing::tn_s;
    EXPECT_EQ(earthing_choice_judged(job).verdict, Verdict::caution);
}

TEST(EarthingChoice, EveryCautionSaysWhy) {
    for (std::size_t u = 0; u < site::words<Use>().size(); ++u) {
        for (Earthing system : {Earthing::tn_s, Earthing::tn_c_s}) {
            const auto found = earthing_choice_judged(used_as(static_cast<Use>(u), system));
            EXPECT_EQ(found.verdict != Verdict::meets, *found.says != '\0');
        }
    }
}

}  // namespace
}  // namespace toft::rules
