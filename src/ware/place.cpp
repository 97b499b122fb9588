#include "ware/place.h"

#include <algorithm>

namespace toft::ware {

namespace {

using tables::GlandPlace;

bool wet_use(const std::optional<site::Use>& use) {
    if (!use) return false;
    switch (*use) {
        case site::Use::greenhouse:
        case site::Use::stable:
        case site::Use::animal_house:
        case site::Use::pool_house:
        case site::Use::hot_tub:
        case site::Use::boat_mooring:
            return true;
        default:
            return false;
    }
}

/// The end of `leg` at that building; null for a joint on the way.
GlandPlace end_at(const site::Building* building, const site::Leg& leg) {
    const bool indoors = leg.indoors == site::Answer::yes && !site::buried(leg.method);
    if (!building) return indoors ? GlandPlace::dry : GlandPlace::outdoors;
    if (building->wet_floor == site::Answer::yes || building->livestock == site::Answer::yes ||
        wet_use(building->use)) {
        return GlandPlace::wet;
    }
    const bool known_dry = building->origin || building->wet_floor == site::Answer::no;
    return indoors && known_dry ? GlandPlace::dry : GlandPlace::outdoors;
}

}  // namespace

tables::GlandPlace gland_place(const site::Job& job, const site::Run& run,
                               const answer::StretchAnswer& stretch) {
    const auto first = static_cast<std::size_t>(stretch.first_leg - 1);
    const auto last = static_cast<std::size_t>(stretch.last_leg - 1);
    if (last >= run.legs.size() || first > last) return GlandPlace::outdoors;
    const bool begins = first == 0;
    const bool ends = last + 1 == run.legs.size();
    const GlandPlace near =
        end_at(begins ? site::find_building(job, run.from) : nullptr, run.legs[first]);
    const GlandPlace far =
        end_at(ends ? site::find_building(job, run.to) : nullptr, run.legs[last]);
    return std::max(near, far);
}

}  // namespace toft::ware
