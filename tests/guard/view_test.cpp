#include "guard/view.h"

#include "guard/row_of.h"

#include "guard/guarding.h"

namespace toft::guard {
namespace {

TEST(View, CircuitsThatNobodyStatedAreOneThatMayHoldAnything) {
    const site::Job job = support::plain_job();
    ASSERT_TRUE(job.buildings[1].circuits.empty());
    EXPECT_EQ(circuit_count(view(job)), 1u);
    EXPECT_EQ(circuit_name(view(job), 0), "every circuit");
    EXPECT_TRUE(feeds_sockets(circuit_at(view(job), 0)));
    EXPECT_FALSE(has_kind(view(job), site::CircuitKind::sub_board));
}

TEST(View, ACircuitWithoutANameIsCounted) {
    const site::Job job = job_with(
        {circuit(site::CircuitKind::lighting, "lights"), circuit(site::CircuitKind::freezer, "")});
    EXPECT_EQ(circuit_name(view(job), 0), "lights");
    EXPECT_EQ(circuit_name(view(job), 1), "circuit 2");
    EXPECT_TRUE(has_kind(view(job), site::CircuitKind::freezer));
}

TEST(View, RowsOfTheTablesAreFoundInTheKindsOrderAndInAnyOther) {
    auto rows = support::catalogue().guard.leakages;
    for (std::size_t k = 0; k < site::words<site::CircuitKind>().size(); ++k) {
        const auto kind = static_cast<site::CircuitKind>(k);
        ASSERT_EQ(row_of(rows, kind), &rows[k]);
    }
    std::swap(rows[2], rows[5]);
    EXPECT_EQ(row_of(rows, static_cast<site::CircuitKind>(2)), &rows[5]);
    rows.erase(rows.begin());
    EXPECT_EQ(row_of(rows, site::CircuitKind::socket_ring), nullptr);
}

TEST(View, AFaultReturnsThroughTheGroundOnTtAndWithAnElectrodeOfItsOwn) {
    site::Job job = job_with({});
    EXPECT_FALSE(view(job).through_ground());
    EXPECT_TRUE(view(job, true).through_ground());
    job.intake.earthing = site::Earthing::tt;
    EXPECT_TRUE(view(job).through_ground());
}

}  // namespace
}  // namespace toft::guard
