#pragma once
// A horizontal mesh of wire buried in uniform soil (Sverak's formula, IEEE 80):
//
//   R = rho (1/L + 1/sqrt(20 A) (1 + 1/(1 + h sqrt(20/A))))
//
// L all wire together, A the area it covers, h depth 0.25 to 2.5 m. A substation formula: the
// thickness of the wire does not occur in it. Up to 15 % above a field solution from 10 m a side,
// up to 8 % from 50 m (wire of 10 mm, half a metre deep). `within` only for meshes of at least 100
// m2 with at least one and a half times the wire of their rim; smaller ones are `outside`: use the
// field. Page: docs/methods/buried-mesh.md.

#include "earth/estimate.h"

namespace toft::earth {

template <class L>
struct BuriedMesh {
    ValueIn<L, OhmMetres> resistivity{};
    ValueIn<L, Metres> length{};  ///< of the covered rectangle
    ValueIn<L, Metres> width{};
    ValueIn<L, Metres> wire{};  ///< all wire together
    ValueIn<L, Metres> depth{};
};

template <class L>
Estimate<L> buried_mesh(L& ledger, const Name& name, const BuriedMesh<L>& mesh);

}  // namespace toft::earth
