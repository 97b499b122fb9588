#include "earthing/main_bonding.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

double by_neutral(double neutral_mm2) {
    site::Job job = support::plain_job();
    job.intake.supply_neutral = support::measured(square_millimetres(neutral_mm2));
    const auto setting = support::prepared(job);
    Silent silent;
    return bonding_for_combined(silent, setting).number();
}

double by_earthing_conductor(double mm2) {
    const site::Job job = support::plain_job();
    const auto setting = support::prepared(job);
    Silent silent;
    return bonding_for_separate(silent, setting, square_millimetres(mm2)).number();
}

TEST(MainBonding, EveryRowOfTable548UpToAndWithItsUpperEnd) {
    struct Row {
        double neutral, bond;
    };
    for (const Row& row : {Row{16, 10}, Row{25, 10}, Row{35, 10}, Row{35.1, 16}, Row{50, 16},
                           Row{50.1, 25}, Row{70, 25}, Row{95, 25}, Row{95.1, 35}, Row{120, 35},
                           Row{150, 35}, Row{150.1, 50}, Row{300, 50}, Row{5000, 50}}) {
        EXPECT_DOUBLE_EQ(by_neutral(row.neutral), row.bond) << row.neutral;
    }
}

TEST(MainBonding, ElsewhereHalfTheEarthingConductorFromSixToTwentyFive) {
    struct Row {
        double earthing, bond;
    };
    for (const Row& row : {Row{2.5, 6}, Row{6, 6}, Row{10, 6}, Row{12, 6}, Row{16, 8},
                           Row{25, 12.5}, Row{35, 17.5}, Row{50, 25}, Row{70, 25}, Row{120, 25}}) {
        EXPECT_DOUBLE_EQ(by_earthing_conductor(row.earthing), row.bond) << row.earthing;
    }
}

double local(site::Earthing system, double neutral, double earthing, BuildingEarthing building) {
    site::Job job = support::plain_job();
    job.intake.earthing = system;
    if (system == site::Earthing::tt) job.intake.electrode = support::measured(ohms(50));
    job.intake.supply_neutral = support::measured(square_millimetres(neutral));
    job.intake.earthing_conductor = support::measured(square_millimetres(earthing));
    return local_bond(support::prepared(job), building).number();
}

TEST(MainBonding, InTheBuildingTenIsFittedOrWhatTheSharedEarthAsksFor) {
    using site::Earthing;
    const auto supply = BuildingEarthing::supply_earth;
    EXPECT_DOUBLE_EQ(local(Earthing::tn_c_s, 25, 16, supply), 10);
    EXPECT_DOUBLE_EQ(local(Earthing::tn_c_s, 50, 16, supply), 16);
    EXPECT_DOUBLE_EQ(local(Earthing::tn_c_s, 70, 16, supply), 25);
    EXPECT_DOUBLE_EQ(local(Earthing::tn_s, 70, 16, supply), 10);  // 8 asked, 10 stocked
    EXPECT_DOUBLE_EQ(local(Earthing::tn_s, 70, 25, supply), 16);  // 12.5 asked
    EXPECT_DOUBLE_EQ(local(Earthing::tn_c_s, 70, 16, BuildingEarthing::own_electrode), 10);
    EXPECT_DOUBLE_EQ(local(Earthing::tt, 70, 16, BuildingEarthing::shared_electrode), 10);
}

}  // namespace
}  // namespace toft::study
