#include "earth/buried_mesh.h"

namespace toft::earth {

template <class L>
Estimate<L> buried_mesh(L& ledger, const Name& name, const BuriedMesh<L>& mesh) {
    const auto side = ledger.let({"mesh.side", "root of twentieth of the area", name.part},
                                 root(mesh.length * mesh.width / 20.0));
    const auto spread =
        ledger.let({"mesh.spread", "resistance of the area covered", name.part},
                   mesh.resistivity / (20.0 * side) * (1.0 + 1.0 / (1.0 + mesh.depth / side)));
    const auto r = ledger.let(name, mesh.resistivity / mesh.wire + spread);
    const Metres depth = plain(mesh.depth);
    const bool deep = depth >= metres(0.25) && depth <= metres(2.5);
    const Metres rim = 2.0 * (plain(mesh.length) + plain(mesh.width));
    const bool meshed = plain(mesh.wire) >= 1.5 * rim;
    const bool large = plain(side) >= metres(2.2);
    return {r, deep && meshed && large ? Trust::within : Trust::outside};
}

template Estimate<Silent> buried_mesh(Silent&, const Name&, const BuriedMesh<Silent>&);
template Estimate<Recording> buried_mesh(Recording&, const Name&, const BuriedMesh<Recording>&);

}  // namespace toft::earth
