// A house on its own electrode: its outbuilding is TT too, and each circuit stands behind an RCD.

#include "answer/answer.h"
#include "support/brute_force.h"
#include "support/catalogue.h"
#include "support/examples.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::trade {
namespace {

site::Job tt_job(double electrode_ohm) {
    site::Job job = support::plain_job();
    job.intake.earthing = site::Earthing::tt;
    job.intake.ze = {};
    job.intake.electrode = support::measured(ohms(electrode_ohm));
    for (const char* name : {"sockets", "lights"}) {
        site::Circuit circuit;
        circuit.name = name;
        circuit.load_w = support::measured(1000.0);
        job.buildings[1].circuits.push_back(circuit);
    }
    job.wishes.smallest_core = support::measured(square_millimetres(16));
    job.runs[0].fed_from = site::FedFrom::tails;
    return job;
}

answer::Answer designed(const site::Job& job) {
    return answer::design({support::catalogue(), support::demo_book(), job, false, nullptr});
}

TEST(TtHouse, EverySchemeIsTtAndBehindResidualCurrentDevices) {
    for (const site::Job& job :
         {tt_job(60), support::example_job("tt-shed", support::catalogue())}) {
        const answer::Answer found = designed(job);
        ASSERT_TRUE(found.sound);
        for (const answer::SchemeAnswer& s : found.schemes) {
            EXPECT_NE(s.building.earthing, "supply earth") << s.key;
            ASSERT_TRUE(s.run.rcd) << s.key;  // of its own, then delayed, or the RCBO's
            EXPECT_EQ(s.run.rcd->delayed, s.run.device.kind != "RCBO") << s.key;
            ASSERT_FALSE(s.building.rcds.empty()) << s.key;
            std::size_t covered = 0;
            for (const answer::RcdAnswer& rcd : s.building.rcds) {
                EXPECT_DOUBLE_EQ(rcd.sensitivity_ma, 30) << s.key;
                covered += rcd.covers.size();
            }
            EXPECT_EQ(covered, std::max<std::size_t>(1, job.buildings[1].circuits.size())) << s.key;
        }
    }
}

TEST(TtHouse, NoSchemeOfAllIsOnASuppliesEarthOrWithoutAnRcdAtItsHead) {
    const auto found =
        support::BruteForce(support::catalogue(), support::demo_book(), tt_job(60)).run();
    ASSERT_FALSE(found.sound.empty());
    for (const support::BruteSound& c : found.sound) {
        EXPECT_NE(c.scheme.earthing, study::BuildingEarthing::supply_earth) << c.key;
        EXPECT_TRUE(study::residual_at_head(c.scheme)) << c.key;
    }
}

TEST(TtHouse, ABadElectrodeOfTheHouseLeavesNothingSound) {
    EXPECT_FALSE(designed(tt_job(600)).sound);  // 100 mA asks for 500 ohm in all
    EXPECT_TRUE(designed(tt_job(400)).sound);
}

}  // namespace
}  // namespace toft::trade
