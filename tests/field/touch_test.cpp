#include "field/touch.h"

#include "support/grounds.h"

#include <cmath>

namespace toft::field {
namespace {

TEST(Touch, OfARodGrowsAndItsStepFallsWithDistance) {
    const Field field = field_of(plain_soil(), {rod(0, 0, 1.2, 0.016)});
    const Currents currents{amperes(1)};
    const Walk walk{spot(0.1, 0, 0), spot(10.1, 0, 0), 11, 0};
    const auto footings = walk_over(field, currents, walk);
    ASSERT_EQ(footings.size(), 11u);
    for (std::size_t i = 1; i < footings.size(); ++i) {
        EXPECT_GT(footings[i].touch, footings[i - 1].touch);
        EXPECT_LT(footings[i].step, footings[i - 1].step);
        EXPECT_NEAR(footings[i].distance.number(), static_cast<double>(i), 1e-9);
        EXPECT_NEAR((footings[i].touch + footings[i].ground).number(), field.joined().number(),
                    1e-9);
    }
    // The places are one pace apart, so a step is the difference of neighbours.
    EXPECT_NEAR(footings[2].step.number(), (footings[2].ground - footings[3].ground).number(),
                1e-9);
    // 81 % of the rise between hand and feet a metre from a 1.2 m rod.
    EXPECT_NEAR(footings[1].touch.number() / field.joined().number(), 0.82, 0.02);
}

TEST(Touch, OfAMeshIsLeastInsideAndDependsOnWhatIsTouched) {
    const MeshShape shape{spot(0, 0, 0.5), metres(6), metres(6), 3, 3};
    std::vector<Wire> wires = mesh_wires(shape, metres(0.004));
    wires.push_back(rod(20, 3, 1.2, 0.016, 1));
    const Field field = field_of(layers(200, 100, 1), wires, 0.5, 4);
    const Currents currents{amperes(1), amperes(0)};
    Walk walk{spot(3, 3, 0), spot(12, 3, 0), 10, 0};
    const auto mesh = walk_over(field, currents, walk);
    EXPECT_LT(mesh.front().touch, 0.5 * mesh.back().touch);
    walk.electrode = 1;
    const auto other = walk_over(field, currents, walk);
    EXPECT_LT(other.front().touch, volts(0)) << "the ground inside the mesh is above the far rod";
    EXPECT_EQ(other.front().ground, mesh.front().ground);
}

}  // namespace
}  // namespace toft::field
