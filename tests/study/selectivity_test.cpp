#include "study/selectivity.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::study {
namespace {

using site::CircuitKind;

site::Circuit far_circuit(const char* name, CircuitKind kind, double watts) {
    site::Circuit c;
    c.name = name;
    c.kind = kind;
    c.load_w = support::measured(watts);
    return c;
}

struct PairWorked {
    Setting<Silent> setting;
    Figures<Silent> figures;
};

PairWorked selectivity_worked(const site::Job& job, const RunScheme& scheme,
                              Stage stage = Stage::circuits) {
    Silent silent;
    PairWorked w{support::prepared(job), {}};
    work_out(silent, w.setting, scheme, stage, w.figures);
    return w;
}

RunScheme ten_behind(const tables::Device& head) {
    return support::scheme(support::cable(3, 10), Protective::core, head);
}

std::vector<FarDevice> far_of(std::vector<site::Circuit> circuits) {
    site::Job job = support::plain_job();
    job.buildings[1].circuits = std::move(circuits);
    const PairWorked w = selectivity_worked(job, ten_behind(support::fuse(63)));
    return far_devices(w.setting, w.figures);
}

TEST(FarDevices, AreTheLeastThatCarryTheCircuitWhereNoneIsStated) {
    const auto all = far_of({far_circuit("heater", CircuitKind::fixed_load, 3000)});
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].device, &support::device("BS EN 61009", "B", 16));
    EXPECT_EQ(all[0].from, FarFrom::load);
}

TEST(FarDevices, SocketsHaveTheDeviceOfTheirKind) {
    const auto all = far_of({far_circuit("ring", CircuitKind::socket_ring, 2000),
                             far_circuit("radial", CircuitKind::socket_radial, 2000)});
    ASSERT_EQ(all.size(), 2u);
    EXPECT_EQ(all[0].device->rating, amperes(32));
    EXPECT_EQ(all[1].device->rating, amperes(20));
}

TEST(FarDevices, OfACircuitWithoutWattsWhatIsUsualCounts) {
    site::Circuit shower = far_circuit("shower", CircuitKind::shower, 0);
    shower.load_w = {};
    EXPECT_EQ(far_of({shower})[0].device->rating, amperes(50));
    site::Circuit lathe = far_circuit("lathe", CircuitKind::motor, 0);
    lathe.load_w = {};
    EXPECT_EQ(far_of({lathe})[0].device, nullptr);
}

// A motor that takes twelve times its current for a moment is designed behind a type C (a B holds
// three times its rating), though a B would carry it while it runs.
TEST(FarDevices, WhereTheCircuitIsDesignedItsOwnDeviceCounts) {
    site::Circuit saw = far_circuit("saw", CircuitKind::motor, 1500);
    saw.starting_multiple = support::measured(12.0);
    EXPECT_EQ(far_of({saw})[0].device->curve, "B");
    saw.length = support::measured(metres(8));
    const auto all = far_of({saw});
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].device->curve, "C");
    EXPECT_EQ(all[0].from, FarFrom::design);
}

TEST(FarDevices, AreThoseOfTheDesign) {
    site::Job job = support::plain_job();
    site::Circuit heater = far_circuit("heater", CircuitKind::fixed_load, 3000);
    heater.length = support::measured(metres(12));
    job.buildings[1].circuits = {heater};
    const PairWorked w = selectivity_worked(job, ten_behind(support::fuse(63)));
    ASSERT_EQ(w.figures.circuits.size(), 1u);
    EXPECT_EQ(circuit_devices(w.setting, w.figures)[0], w.figures.circuits[0].option.device);
    const PairWorked early = selectivity_worked(job, ten_behind(support::fuse(63)), Stage::current);
    EXPECT_EQ(circuit_devices(early.setting, early.figures)[0], nullptr);
}

TEST(FarDevices, AStatedDeviceStandsAndEachIsNamedOnce) {
    site::Circuit kiln = far_circuit("kiln", CircuitKind::kiln, 6000);
    kiln.device = site::NamedDevice{"BS EN 60898", "C", amperes(32)};
    site::Circuit saw = far_circuit("saw", CircuitKind::motor, 2000);
    saw.device = kiln.device;
    const auto all = far_of({kiln, saw});
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].device, &support::breaker("C", 32));
    EXPECT_EQ(all[0].circuits, "kiln, saw");
    EXPECT_EQ(all[0].from, FarFrom::survey);
}

TEST(FarDevices, ADeviceThatTheTablesDoNotHoldIsNotKnown) {
    site::Circuit odd = far_circuit("odd", CircuitKind::fixed_load, 1000);
    odd.device = site::NamedDevice{"BS EN 60898", "B", amperes(33)};
    EXPECT_EQ(far_of({odd})[0].device, nullptr);
    EXPECT_EQ(far_of({})[0].device, nullptr);
}

site::Job with_cut_out(const char* standard, double rating) {
    site::Job job = support::plain_job();
    job.intake.service_fuse = site::NamedDevice{standard, "", amperes(rating)};
    return job;
}

TEST(SelectivePairs, BeginWithTheOperatorsFuseAtTheFaultCurrentOfTheOrigin) {
    Silent silent;
    const auto scheme =
        support::scheme(support::cable(3, 10), Protective::core, support::breaker("B", 32));
    const site::Job job = with_cut_out("BS 88-3", 80);
    const PairWorked w = selectivity_worked(job, scheme);
    const auto pair = cut_out_pair(silent, w.setting, scheme);
    EXPECT_EQ(pair.upstream, &support::fuse(80));
    EXPECT_EQ(pair.downstream, scheme.device);
    EXPECT_EQ(pair.prospective, w.setting.supply.pscc);
}

TEST(SelectivePairs, OfAFuseNobodyNamedNothingIsKnown) {
    Silent silent;
    site::Job job = support::plain_job();
    job.intake.service_fuse.reset();
    const auto scheme =
        support::scheme(support::cable(3, 10), Protective::core, support::breaker("B", 32));
    const auto pair = cut_out_pair(silent, support::prepared(job), scheme);
    EXPECT_EQ(pair.upstream, nullptr);
    EXPECT_EQ(pair.result.verdict, device::Selective::not_known);
    EXPECT_EQ(pair.result.to, amperes(0));
}

TEST(SelectivePairs, AtTheBuildingTheLargestFaultThereCounts) {
    Silent silent;
    site::Job job = with_cut_out("BS 88-3", 100);
    job.buildings[1].circuits = {far_circuit("heater", CircuitKind::fixed_load, 1200)};
    const auto scheme = support::scheme(support::cable(3, 10), Protective::core, support::fuse(63));
    const PairWorked w = selectivity_worked(job, scheme);
    const auto pair =
        far_pair(silent, w.setting, scheme, w.figures, far_devices(w.setting, w.figures)[0]);
    EXPECT_EQ(pair.upstream, &support::fuse(63));
    EXPECT_EQ(pair.downstream, &support::device("BS EN 61009", "B", 6));
    EXPECT_EQ(pair.prospective, most(w.figures.ln_far, w.figures.le_far));
    EXPECT_LT(pair.prospective, w.setting.supply.pscc);
}

}  // namespace
}  // namespace toft::study
