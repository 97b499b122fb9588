#include "field/electrode_shape.h"

#include "base/pi.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

Wire rod_wire(const Spot& top, Metres length, Metres radius, int electrode) {
    return {top, {top.east, top.north, top.depth + length}, radius, electrode};
}

std::vector<Wire> ring_wires(const Spot& centre, Metres diameter, Metres radius, int sides,
                             int electrode) {
    const int count = std::max(3, sides);
    // Half a side of the polygon whose sides together are as long as the ring.
    const Metres corner = diameter * (pi / (2 * count * std::sin(pi / count)));
    const auto at = [&](int i) {
        const double turn = 2 * pi * i / count;
        return Spot{centre.east + corner * std::cos(turn), centre.north + corner * std::sin(turn),
                    centre.depth};
    };
    std::vector<Wire> wires;
    for (int i = 0; i < count; ++i)
        wires.push_back({at(i), at((i + 1) % count), radius, electrode});
    return wires;
}

std::vector<Wire> mesh_wires(const MeshShape& shape, Metres radius, int electrode) {
    const auto at = [&](int i, int j) {
        return Spot{shape.corner.east + shape.east * i / shape.along_east,
                    shape.corner.north + shape.north * j / shape.along_north, shape.corner.depth};
    };
    std::vector<Wire> wires;
    for (int j = 0; j <= shape.along_north; ++j) {
        for (int i = 0; i <= shape.along_east; ++i) {
            if (i < shape.along_east) wires.push_back({at(i, j), at(i + 1, j), radius, electrode});
            if (j < shape.along_north) wires.push_back({at(i, j), at(i, j + 1), radius, electrode});
        }
    }
    return wires;
}

}  // namespace toft::field
