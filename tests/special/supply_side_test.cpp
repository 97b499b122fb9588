#include "special/advising.h"

namespace toft::special {
namespace {

site::Job run_of(double low_m, double high_m) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(low_m), metres(high_m));
    return job;
}

// 534.4.1 as remembered: one surge protective device serves about 10 m of cable.
TEST(SupplySide, ALongRunAsksForASurgeDeviceAtBothEnds) {
    const char* second = "surge at the second board";
    EXPECT_TRUE(holds(about(run_of(30, 30), second).says, "one of its own"));
    EXPECT_TRUE(holds(about(run_of(10, 10), second).says, "serves both"));
    EXPECT_TRUE(holds(about(run_of(8, 14), second).says, "may be too long"));
}

TEST(SupplySide, BehindOtherRunsTheDeviceThatMayServeIsAtTheBoardThatFeeds) {
    const auto behind = [](double low_m, double high_m) {
        const site::Job job = run_of(low_m, high_m);
        Silent silent;
        const auto setting =
            study::prepare(silent, support::catalogue(), job, study::RunAt{0, 1}, {});
        Case c = case_of(setting);
        c.view.at_house = false;
        for (const Advice& advice : advice_of(c)) {
            if (advice.about == "surge at the second board") return advice.says;
        }
        return std::string();
    };
    EXPECT_TRUE(holds(behind(30, 30), "it needs one of its own"));
    EXPECT_TRUE(holds(behind(10, 10), "at the board that feeds it serves both"));
    EXPECT_TRUE(holds(behind(8, 14), "may be too long"));
    EXPECT_FALSE(holds(behind(8, 14), "house"));
}

TEST(SupplySide, WhetherASurgesLossCanBeBorneIsTheOwnersWord) {
    EXPECT_TRUE(about(support::plain_job(), "surge").needs_a_person);
}

TEST(SupplySide, ArcDetectionIsAdviceForSocketsOnOnePhase) {
    EXPECT_FALSE(about(with_circuit(site::CircuitKind::socket_ring), "arc faults").needs_a_person);
    EXPECT_FALSE(advises(with_circuit(site::CircuitKind::lighting), "arc faults"));
    site::Job job = with_circuit(site::CircuitKind::socket_ring);
    job.buildings[1].construction = site::Construction::timber;
    EXPECT_TRUE(holds(about(job, "arc faults").says, "speaks for it"));
    job.buildings[1].circuits[0].phases = 3;
    EXPECT_FALSE(advises(job, "arc faults"));
}

TEST(SupplySide, ASourceAsksForDevicesOfBothDirections) {
    for (const auto kind : {site::CircuitKind::solar, site::CircuitKind::battery}) {
        EXPECT_TRUE(about(with_circuit(kind), "current that flows back").needs_a_person);
    }
    EXPECT_FALSE(advises(with_circuit(site::CircuitKind::kiln), "current that flows back"));
}

}  // namespace
}  // namespace toft::special
