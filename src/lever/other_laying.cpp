#include "lever/ideas.h"

namespace toft::lever {

namespace {

using site::LegMethod;

site::Leg& leg_of(Change& change, const Ground& ground, std::size_t i) {
    return change.job.runs[ground.run].legs[i];
}

Change on_leg(const char* key, const Ground& ground, std::size_t i) {
    return {key, std::to_string(i + 1), ground.job};
}

void other_bed(const Ground& ground, std::size_t i, Changes& all) {
    const LegMethod method = ground.feed().legs[i].method;
    if (method != LegMethod::buried_direct && method != LegMethod::buried_in_duct) return;
    const bool direct = method == LegMethod::buried_direct;
    Change change = on_leg(direct ? "duct" : "direct", ground, i);
    leg_of(change, ground, i).method =
        direct ? LegMethod::buried_in_duct : LegMethod::buried_direct;
    all.push_back(std::move(change));
}

void advised_depth(const Ground& ground, std::size_t i, Changes& all) {
    const site::Leg& leg = ground.feed().legs[i];
    if (!site::buried(leg.method) || !leg.surface) return;
    for (const tables::DepthAdvice& advice : ground.catalogue.depth_advice) {
        if (advice.surface != site::word(*leg.surface)) continue;
        const Metres depth = advice.depth.value;
        if (leg.depth.single() && leg.depth.low == depth) return;
        Change change = on_leg("usual-depth", ground, i);
        leg_of(change, ground, i).depth = stated(depth);
        all.push_back(std::move(change));
    }
}

void cooler(const Ground& ground, std::size_t i, Changes& all) {
    const site::Leg& leg = ground.feed().legs[i];
    if (leg.method == LegMethod::in_insulation) {
        Change change = on_leg("out-of-insulation", ground, i);
        site::Leg& changed = leg_of(change, ground, i);
        changed.method = LegMethod::clipped;
        changed.insulation_length = {};
        changed.concealed = site::Answer::no;
        all.push_back(std::move(change));
    }
    const bool alone = leg.other_loaded_circuits.known && !(leg.other_loaded_circuits.high > 0);
    if (alone || (site::buried(leg.method) && !leg.other_loaded_circuits.known)) return;
    Change change = on_leg("apart", ground, i);
    leg_of(change, ground, i).other_loaded_circuits = stated(0.0);
    all.push_back(std::move(change));
}

}  // namespace

Changes other_laying(const Ground& ground) {
    Changes all;
    for (std::size_t i = 0; i < ground.feed().legs.size(); ++i) {
        other_bed(ground, i, all);
        advised_depth(ground, i, all);
        cooler(ground, i, all);
    }
    return all;
}

}  // namespace toft::lever
