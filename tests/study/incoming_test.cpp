// What a run leaves at the board of its building for those behind it.

#include "study/incoming.h"

#include "study/figures.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

using support::the_house;

struct Left {
    Setting<Silent> setting;
    Figures<Silent> figures;
    Incoming incoming;
};

Left left(const site::Job& job, std::size_t run, const RunScheme& scheme,
          const Incoming* before = nullptr) {
    Silent silent;
    RunAt at{run, scheme.phases};
    at.incoming = before;
    Left out{prepare(silent, support::catalogue(), job, at, {}), {}, {}};
    work_out(silent, out.setting, scheme, Stage::current, out.figures);
    out.incoming = left_at_board(out.setting, scheme, out.figures);
    return out;
}

RunScheme armoured(double section, BuildingEarthing earthing = BuildingEarthing::supply_earth) {
    RunScheme s = support::scheme(support::cable(3, section), Protective::core_and_armour,
                                  support::breaker("B", 32));
    s.fed_from = site::FedFrom::spare_way;
    s.earthing = earthing;
    return s;
}

TEST(Incoming, DropAddsUpAndTheLastBuildingLosesTheSumOfItsWay) {
    const site::Job job = support::tree_job({the_house, 0, 1});
    const auto first = left(job, 0, armoured(16));
    const auto second = left(job, 1, armoured(10), &first.incoming);
    const auto third = left(job, 2, armoured(4), &second.incoming);
    EXPECT_NEAR(
        third.incoming.drop,
        first.figures.drop_percent + second.figures.drop_percent + third.figures.drop_percent,
        1e-12);
    EXPECT_DOUBLE_EQ(third.incoming.drop, third.figures.drop_path);
}

TEST(Incoming, LoopsGrowAndFaultCurrentsFallAlongTheWay) {
    const site::Job job = support::tree_job({the_house, 0});
    const auto first = left(job, 0, armoured(16));
    const auto second = left(job, 1, armoured(16), &first.incoming);
    for (const auto loop : {&Incoming::ze_working, &Incoming::ze_hot, &Incoming::zn_working,
                            &Incoming::zn_hot, &Incoming::ze_least, &Incoming::zn_least}) {
        EXPECT_LT(first.incoming.*loop, second.incoming.*loop);
    }
    EXPECT_LT(first.setting.supply.ze_most, first.incoming.ze_working);
    EXPECT_LT(second.figures.ln_far, first.figures.ln_far);
    EXPECT_LT(second.figures.le_least, first.figures.le_least);
    EXPECT_LT(second.setting.supply.pscc, first.setting.supply.pscc);
}

TEST(Incoming, AtWorkingTemperatureALoopIsTheSupplyAndTwiceALine) {
    const site::Job job = support::tree_job({the_house, 0});
    const auto first = left(job, 0, armoured(16));
    EXPECT_NEAR(first.incoming.runs.number(),
                (first.incoming.zn_working - first.setting.supply.zn_origin).number(), 1e-12);
    EXPECT_LT(first.incoming.zn_working, first.incoming.zn_hot);
    EXPECT_LT(first.incoming.zn_least, first.incoming.zn_working);
}

TEST(Incoming, BehindABuildingsOwnElectrodeTheSystemIsTt) {
    site::Job job = support::tree_job({the_house, 0});
    job.buildings[1].electrode.resistance = support::measured(ohms(60));
    const auto first = left(job, 0, armoured(16, BuildingEarthing::own_electrode));
    EXPECT_EQ(first.incoming.system, site::Earthing::tt);
    EXPECT_TRUE(first.incoming.island);
    EXPECT_GE(first.incoming.ra_most, ohms(60));
    EXPECT_GT(first.incoming.ze_working, first.incoming.ra_most);
    const auto second = left(job, 1, armoured(10), &first.incoming);
    EXPECT_EQ(second.setting.supply.system, site::Earthing::tt);
    EXPECT_TRUE(second.incoming.island);
    EXPECT_GT(second.incoming.ze_working, first.incoming.ze_working);
}

TEST(Incoming, TheHouseAloneLeavesItsOwnSystem) {
    const site::Job job = support::tree_job({the_house, 0});
    const auto first = left(job, 0, armoured(16));
    EXPECT_EQ(first.incoming.system, site::Earthing::tn_c_s);
    EXPECT_FALSE(first.incoming.island);
    EXPECT_EQ(first.incoming.device, armoured(16).device);
}

TEST(Incoming, TheNearestResidualCurrentDeviceBeforeTheBoardIsTheOneThatCounts) {
    const site::Job job = support::tree_job({the_house, 0});
    RunScheme with = armoured(16);
    with.rcd = &support::catalogue().run_rcds.front();
    const auto first = left(job, 0, with);
    ASSERT_TRUE(first.incoming.residual);
    EXPECT_EQ(first.incoming.residual->sensitivity, residual_at_head(with)->sensitivity);
    const auto second = left(job, 1, armoured(10), &first.incoming);
    ASSERT_TRUE(second.incoming.residual);
    EXPECT_EQ(second.incoming.residual->sensitivity, first.incoming.residual->sensitivity);
    EXPECT_FALSE(left(job, 0, armoured(16)).incoming.residual);
}

TEST(Incoming, BuildingsFedThroughOneAreAllBehindItNearestFirst) {
    const site::Job job = support::tree_job({the_house, 0, 1, the_house});
    const auto behind = fed_through(job, job.buildings[1]);
    ASSERT_EQ(behind.size(), 2u);
    EXPECT_EQ(behind[0]->id, "b1");
    EXPECT_EQ(behind[1]->id, "b2");
    EXPECT_TRUE(fed_through(job, job.buildings[4]).empty());
}

}  // namespace
}  // namespace toft::study
