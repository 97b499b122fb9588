#include "field/touch.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

std::vector<Footing> walk_over(const Field& field, const Currents& currents, const Walk& walk) {
    const Metres east = walk.to.east - walk.from.east;
    const Metres north = walk.to.north - walk.from.north;
    const Metres length = root(squared(east) + squared(north));
    const Driven driven = field.driven(currents);
    const Volts hand = driven.rises().at(static_cast<std::size_t>(walk.electrode));
    const auto ground = [&](Metres distance) {
        const double share = length > metres(0) ? distance / length : 0;
        return driven.potential(
            {walk.from.east + east * share, walk.from.north + north * share, metres(0)});
    };
    const int places = std::max(2, walk.places);
    std::vector<Footing> footings;
    for (int i = 0; i < places; ++i) {
        Footing here;
        here.distance = length * i / (places - 1);
        here.ground = ground(here.distance);
        here.touch = hand - here.ground;
        const Volts step = here.ground - ground(here.distance + metres(pace_m));
        here.step = most(step, Volts() - step);
        footings.push_back(here);
    }
    return footings;
}

}  // namespace toft::field
