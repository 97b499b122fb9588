#include "field/electrode_shape.h"

#include "support/grounds.h"

#include <cmath>

namespace toft::field {
namespace {

double length_of(const std::vector<Wire>& wires) {
    double sum = 0;
    for (const Wire& wire : wires) {
        const Vector d = vector_of(wire.to) - vector_of(wire.from);
        sum += std::sqrt(dot(d, d));
    }
    return sum;
}

TEST(ElectrodeShape, RodGoesStraightDown) {
    const Wire wire = rod_wire(spot(1, 2, 0.3), metres(2.4), metres(0.008), 3);
    EXPECT_NEAR(wire.to.depth.number(), 2.7, 1e-12);
    EXPECT_EQ(wire.to.east, metres(1));
    EXPECT_EQ(wire.electrode, 3);
}

TEST(ElectrodeShape, RingIsAsLongAsItsCircleAndCloses) {
    for (int sides : {3, 12, 48}) {
        const auto wires = ring_wires(spot(1, 1, 0.6), metres(5), metres(0.004), sides);
        EXPECT_EQ(wires.size(), static_cast<std::size_t>(sides));
        EXPECT_NEAR(length_of(wires), 5 * pi, 1e-9);
        EXPECT_EQ(wires.back().to.east, wires.front().from.east);
    }
}

TEST(ElectrodeShape, MeshHasEverySideOnce) {
    const MeshShape shape{spot(0, 0, 0.5), metres(6), metres(4), 3, 2};
    const auto wires = mesh_wires(shape, metres(0.004));
    EXPECT_EQ(wires.size(), 17u);
    EXPECT_NEAR(length_of(wires), 3 * 6 + 4 * 4, 1e-12);
}

}  // namespace
}  // namespace toft::field
