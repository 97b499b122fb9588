#include "lever/ideas.h"

#include <cmath>

namespace toft::lever {

namespace {

const site::Building* plan_position(const site::Job& job, const std::string& id) {
    const site::Building* b = site::find_building(job, id);
    return b && (b->origin || (b->at_x_m && b->at_y_m)) ? b : nullptr;
}

double coordinate(const site::Building& b, const std::optional<double>& at) {
    return b.origin ? at.value_or(0) : *at;
}

/// Metres as the crow flies; none where a place is not known.
std::optional<double> crow(const site::Job& job, const site::Run& run) {
    const site::Building* a = plan_position(job, run.from);
    const site::Building* b = plan_position(job, run.to);
    if (!a || !b) return std::nullopt;
    return std::hypot(coordinate(*a, a->at_x_m) - coordinate(*b, b->at_x_m),
                      coordinate(*a, a->at_y_m) - coordinate(*b, b->at_y_m));
}

/// All legs shortened alike.
void straight(const Ground& ground, Changes& all) {
    const auto distance = crow(ground.job, ground.feed());
    if (!distance || *distance <= 0) return;
    double length = 0;
    for (const site::Leg& leg : ground.feed().legs) length += leg.length.high.number();
    if (length <= *distance) return;
    const double share = *distance / length;
    Change change{"straight-route", name_of(ground.building()), ground.job};
    for (site::Leg& leg : change.job.runs[ground.run].legs) {
        leg.length.low = leg.length.low * share;
        leg.length.high = leg.length.high * share;
    }
    all.push_back(std::move(change));
}

bool hard_to_dig(const site::Leg& leg) {
    if (!site::buried(leg.method) || !leg.surface) return false;
    switch (*leg.surface) {
        case site::Surface::lawn:
        case site::Surface::bed:
        case site::Surface::field:
            return false;
        default:
            return true;
    }
}

}  // namespace

Changes other_route(const Ground& ground) {
    Changes all;
    straight(ground, all);
    for (std::size_t i = 0; i < ground.feed().legs.size(); ++i) {
        if (!hard_to_dig(ground.feed().legs[i])) continue;
        Change change{"soft-ground", std::to_string(i + 1), ground.job};
        change.job.runs[ground.run].legs[i].surface = site::Surface::lawn;
        all.push_back(std::move(change));
    }
    return all;
}

}  // namespace toft::lever
