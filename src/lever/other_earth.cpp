#include "lever/ideas.h"

namespace toft::lever {

namespace {

void electrode(const Ground& ground, Changes& all) {
    const site::Building& b = ground.building();
    const site::Electrode& e = b.electrode;
    const bool predicted = !e.resistance.known && e.spikes.empty();
    if (e.kind == site::ElectrodeKind::rods && predicted &&
        e.arrangement == site::Arrangement::line) {
        Change change{"more-rods", name_of(b), ground.job};
        const double rods = (e.rods.known ? e.rods.low : 1) + value_of(ground, "more-rods");
        change.job.buildings[ground.place()].electrode.rods = stated(rods);
        all.push_back(std::move(change));
    }
    const Metres away = metres(value_of(ground, "electrode-away"));
    if (ground.job.intake.earthing != site::Earthing::tn_c_s) return;
    if (e.from_house_earth.known && e.from_house_earth.low >= away) return;
    Change change{"electrode-away", name_of(b), ground.job};
    change.job.buildings[ground.place()].electrode.from_house_earth = stated(away);
    all.push_back(std::move(change));
}

/// What was measured of the house's own rod says nothing of the operator's terminal.
void terminal(const Ground& ground, Changes& all) {
    if (ground.job.intake.earthing != site::Earthing::tt) return;
    Change change{"operators-earth", "", ground.job};
    site::Intake& in = change.job.intake;
    in.earthing = site::Earthing::tn_c_s;
    in.ze = {};
    in.ze_declared = {};
    in.pefc = {};
    in.electrode = {};
    all.push_back(std::move(change));
}

}  // namespace

Changes other_earth(const Ground& ground) {
    Changes all;
    electrode(ground, all);
    terminal(ground, all);
    return all;
}

}  // namespace toft::lever
