#include "lever/ideas.h"

namespace toft::lever {

namespace {

bool is_pipe(site::Metal what) {
    switch (what) {
        case site::Metal::water_pipe:
        case site::Metal::gas_pipe:
        case site::Metal::oil_pipe:
        case site::Metal::heating_pipe:
            return true;
        default:
            return false;
    }
}

}  // namespace

Changes metal_and_reach(const Ground& ground) {
    Changes all;
    const site::Building& b = ground.building();
    for (std::size_t i = 0; i < b.metalwork.size(); ++i) {
        const site::Metalwork& part = b.metalwork[i];
        if (!is_pipe(part.what) || part.insulating_section == site::Answer::yes) continue;
        Change change{"plastic-section", site::word(part.what), ground.job};
        change.job.buildings[ground.place()].metalwork[i].insulating_section = site::Answer::yes;
        all.push_back(std::move(change));
    }
    const Metres reach = ground.catalogue.limits.reach.value;
    if (b.reach_of_house_earth.known && b.reach_of_house_earth.low >= reach) return all;
    Change change{"move-tap", name_of(b), ground.job};
    change.job.buildings[ground.place()].reach_of_house_earth = stated(reach);
    all.push_back(std::move(change));
    return all;
}

}  // namespace toft::lever
