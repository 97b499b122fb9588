#include "picture/stage.h"

#include "parts/words.h"

#include <algorithm>

namespace toft::picture {

using namespace parts;

namespace {

constexpr double route_start = 250;
constexpr double shortest_route = 190;
constexpr double part_spacing = 38;

bool could_be_bonded(const site::Metalwork& metal) {
    return metal.insulating_section != site::Answer::yes;
}

/// The part a bond is for, among those without one. Where parts of one name outnumber their bonds,
/// those with the highest measured resistance are the ones that need none.
Part* part_for(const answer::BondAnswer& bond, std::vector<Part>& parts) {
    Part* best = nullptr;
    double least = 0;
    for (Part& part : parts) {
        if (part.bond || part.what != bond.part) continue;
        if (part.metal && !could_be_bonded(*part.metal)) continue;
        const bool measured = part.metal && part.metal->resistance_to_met.known;
        const double ohms = measured ? part.metal->resistance_to_met.low.number() : 0;
        if (best && least <= ohms) continue;
        best = &part;
        least = ohms;
    }
    return best;
}

/// Gives each bond to its part. A bond for something the survey does not name is for what nobody
/// has looked at.
void give_bonds(const std::vector<answer::BondAnswer>& bonds, std::vector<Part>& parts) {
    for (const answer::BondAnswer& bond : bonds) {
        if (Part* part = part_for(bond, parts)) {
            part->bond = &bond;
        } else {
            parts.push_back({bond.part, PartKind::not_surveyed, nullptr, &bond});
        }
    }
}

std::vector<Part> parts_of(const site::Building& building, const answer::SchemeAnswer* scheme) {
    std::vector<Part> parts;
    for (const site::Metalwork& metal : building.metalwork) {
        parts.push_back({site::word(metal.what), PartKind::entering, &metal, nullptr});
    }
    if (building.construction && site::metallic(*building.construction)) {
        parts.push_back({site::word(*building.construction), PartKind::frame, nullptr, nullptr});
    }
    if (scheme) give_bonds(scheme->building.bonding, parts);
    std::stable_partition(parts.begin(), parts.end(), [](const Part& p) { return p.bond; });
    return parts;
}

double deepest(const site::Run& run) {
    double depth = 0.5;
    for (const site::Leg& leg : run.legs) {
        if (site::buried(leg.method) && leg.depth.known) {
            depth = std::max(depth, leg.depth.high.number());
        }
    }
    return depth;
}

/// Room right of the route's end: the board, the parts, the wall, the rods.
double far_room(const Stage& stage) {
    double standing = 0;
    for (std::size_t i = 0; i < std::min(most_parts, stage.parts.size()); ++i) {
        standing += stage.parts[i].kind == PartKind::frame ? 0 : part_spacing;
    }
    return 118 + std::max(56.0, standing);
}

double rods_room(const Stage& stage) {
    if (!stage.own_electrode()) return 0;
    return 40 + 22.0 * std::clamp(stage.scheme->building.electrode->rods, 1, 4);
}

}  // namespace

Stage set_stage(const site::Job& job, const answer::SchemeAnswer* scheme, double wide) {
    Stage stage;
    stage.job = &job;
    stage.scheme = scheme;
    stage.run = &job.runs.front();
    stage.house = site::find_building(job, stage.run->from);
    stage.far = site::find_building(job, stage.run->to);
    stage.parts = parts_of(*stage.far, scheme);
    stage.ground = 436;
    stage.eaves = stage.ground - 160;
    stage.soil_foot = stage.ground + 164;
    stage.chain = stage.soil_foot + 22;
    stage.units_per_metre_deep = std::min(150.0, 112 / deepest(*stage.run));
    const double far = far_room(stage) + 14 + rods_room(stage) + margin;
    stage.wide = std::max(wide, route_start + shortest_route + far);
    const double far_right = stage.wide - margin - rods_room(stage);
    stage.route = scale_route(stage.run->legs, route_start, stage.wide - far);
    stage.house_box = {margin + 10, stage.eaves, stage.route.house_end - 3, stage.ground};
    stage.far_box = {stage.route.far_start + 3, stage.eaves + 14, far_right, stage.ground};
    return stage;
}

}  // namespace toft::picture
