#include "demand/scenario.h"
#include "outlook/later.h"
#include "site/validate.h"
#include "support/jobs.h"
#include "support/questions.h"

#include <gtest/gtest.h>

namespace toft::outlook {
namespace {

using namespace answer;

const tables::AdditionRow& row_named(const std::string& key) {
    for (const tables::AdditionRow& row : support::catalogue().additions) {
        if (row.key == key) return row;
    }
    ADD_FAILURE() << key;
    return support::catalogue().additions.front();
}

TEST(Additions, EachMakesAValidJob) {
    for (const char* name : {"demo", "tn-s-workshop", "tt-shed"}) {
        const site::Job job = support::example_job(name, support::catalogue());
        for (const tables::AdditionRow& row : support::catalogue().additions) {
            const Faults faults = site::validate(with_addition(support::catalogue(), job, row));
            for (const Fault& f : faults) ADD_FAILURE() << name << row.key << f.says;
        }
    }
}

TEST(Additions, AFigureForTheWholeBuildingGrowsByIt) {
    site::Job job = support::plain_job();  // 20 A at 230 V
    const auto with = with_addition(support::catalogue(), job, row_named("hot-tub-large"));
    EXPECT_NEAR(with.buildings[1].load.high.number(), 20 + 6000 / 230.0, 1e-9);
    job.buildings[1].load = {};
    job.buildings[1].load_w = support::measured(4000.0);
    const auto watts = with_addition(support::catalogue(), job, row_named("hot-tub-large"));
    EXPECT_DOUBLE_EQ(watts.buildings[1].load_w.high, 10000);
}

TEST(Additions, OneOfThreeLinesHasItAll) {
    site::Job job = support::on_three_phases(support::plain_job());
    job.buildings[1].load = {};
    job.buildings[1].load_w = support::measured(9000.0);
    const auto with = with_addition(support::catalogue(), job, row_named("hot-tub-small"));
    // Spread over three lines the figure must put the tub's 3 kW on each.
    EXPECT_DOUBLE_EQ(with.buildings[1].load_w.high / 3, 3000 + 3000);
}

TEST(Additions, PanelsDrawNothing) {
    const site::Job job = support::plain_job();
    const auto with = with_addition(support::catalogue(), job, row_named("solar"));
    EXPECT_EQ(with.buildings[1].load.high, job.buildings[1].load.high);
    EXPECT_EQ(with.buildings[1].circuits.back().kind, site::CircuitKind::solar);
}

TEST(Additions, OnePlannedCircuitLeavesTheRunTheDropItHad) {
    const site::Job job = support::plain_job();
    const auto before = support::prepared(job);
    const auto with = with_addition(support::catalogue(), job, row_named("hot-tub-small"));
    EXPECT_EQ(support::prepared(with).drop_limit, before.drop_limit);
}

TEST(Additions, AChargerIsTakenForAVehicleInTheOpen) {
    const auto with =
        with_addition(support::catalogue(), support::plain_job(), row_named("vehicle-charger"));
    EXPECT_EQ(with.buildings[1].vehicle_outdoors, site::Answer::yes);
}

TEST(Additions, ASecondBuildingHangsOnTheBoardOfTheFirst) {
    const site::Job job = support::plain_job();
    const auto with = with_addition(support::catalogue(), job, row_named("second-building"));
    ASSERT_EQ(with.runs.size(), 2u);
    EXPECT_EQ(with.runs[1].from, job.runs[0].to);
    EXPECT_EQ(with.runs[1].to, with.buildings.back().id);
}

}  // namespace
}  // namespace toft::outlook
