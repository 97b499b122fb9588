#pragma once
// Wires of the usual electrodes, for the field. Radii of the metal in metres.

#include "field/wire.h"

#include <vector>

namespace toft::field {

/// A vertical rod from `top` downwards.
Wire rod_wire(const Spot& top, Metres length, Metres radius, int electrode = 0);

/// A horizontal ring as a polygon of as much wire; at least 3 sides.
std::vector<Wire> ring_wires(const Spot& centre, Metres diameter, Metres radius, int sides,
                             int electrode = 0);

/// A horizontal rectangle of wires; `along_east` and `along_north` count the meshes each way.
struct MeshShape {
    Spot corner;
    Metres east{};
    Metres north{};
    int along_east = 1;
    int along_north = 1;
};

/// The wires of a mesh, one for each side of each mesh.
std::vector<Wire> mesh_wires(const MeshShape& shape, Metres radius, int electrode = 0);

}  // namespace toft::field
