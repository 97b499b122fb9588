#include "earth/buried_mesh.h"

#include "earth/estimating.h"

namespace toft::earth {
namespace {

template <class L>
BuriedMesh<L> mesh(L& ledger, double side, int meshes, double depth) {
    return {given(ledger, "rho", ohm_metres(100)), given(ledger, "b", metres(side)),
            given(ledger, "w", metres(side)), given(ledger, "L", metres(2 * side * (meshes + 1))),
            given(ledger, "h", metres(depth))};
}

double resistance(double side, int meshes, double depth) {
    return worked([&](auto& ledger) {
        return buried_mesh(ledger, {"R", ""}, mesh(ledger, side, meshes, depth)).resistance;
    });
}

double by_field(double side, int meshes, double depth) {
    const MeshShape shape{spot(0, 0, depth), metres(side), metres(side), meshes, meshes};
    return joined(plain_soil(), mesh_wires(shape, metres(0.005)), side / meshes / 2, 2);
}

TEST(BuriedMesh, ReadsUpToFifteenPerCentHighAgainstTheField) {
    for (double side : {10.0, 20.0, 50.0}) {
        for (int meshes : {4, 7}) {
            const double ratio = resistance(side, meshes, 0.5) / by_field(side, meshes, 0.5);
            EXPECT_GT(ratio, 1.0) << side << " m, " << meshes << " meshes a side";
            EXPECT_LT(ratio, 1.15) << side << " m, " << meshes << " meshes a side";
        }
    }
}

TEST(BuriedMesh, SaysWhereItCannotBeTrusted) {
    Silent ledger;
    const auto trust = [&](double side, int meshes, double depth) {
        return buried_mesh(ledger, {"R", ""}, mesh(ledger, side, meshes, depth)).trust;
    };
    EXPECT_EQ(trust(10, 4, 0.5), Trust::within);
    EXPECT_EQ(trust(10, 1, 0.5), Trust::outside);
    EXPECT_EQ(trust(10, 4, 0.1), Trust::outside);
    EXPECT_EQ(trust(4, 4, 0.5), Trust::outside);
}

}  // namespace
}  // namespace toft::earth
