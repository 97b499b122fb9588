#include "answer/circuits.h"

#include <cmath>

namespace toft::answer {

namespace {

using circuit::Matter;

std::optional<CircuitMatter> matter(const circuit::CircuitDesign<Recording>& d, Matter m) {
    const auto& j = d.at(m);
    if (!j.applies) return std::nullopt;
    return CircuitMatter{j.value, j.limit, j.use.value};
}

CircuitAnswer circuit_answer(const circuit::CircuitSetting<Recording>& s,
                             const circuit::CircuitDesign<Recording>& d) {
    CircuitAnswer a;
    a.number = static_cast<int>(d.place) + 1;
    a.name = s.facts->name;
    a.kind = site::word(s.facts->kind);
    a.phases = s.phases;
    a.family = tables::family_word(d.option.cable->family);
    a.live_mm2 = d.option.cable->section.number();
    a.cpc_mm2 = d.option.cable->cpc.number();
    a.length_m = d.wired.number();
    const tables::Device& device = *d.option.device;
    a.device = {device.standard, device.curve, kind_of_device(device.kind), device.rating.number(),
                device.breaking.value.number() / 1000};
    a.design_current_a = s.ib.value.number();
    a.rating_a = d.conductors.iz.value.number();
    a.r1_plus_r2_20c_ohm = d.conductors.r1_r2_cold.value.number();
    a.drop_percent = matter(d, Matter::drop);
    if (a.drop_percent) a.drop_own_percent = d.drop_own.value;
    a.loop_ohm = matter(d, Matter::disconnect);
    a.heat = matter(d, Matter::heat);
    a.dip_percent = matter(d, Matter::start_dip);
    a.start_a = matter(d, Matter::start_trip);
    a.rise_percent = matter(d, Matter::rise);
    a.residual_clears = d.by_residual;
    return a;
}

}  // namespace

const char* kind_of_device(tables::Kind kind) {
    switch (kind) {
        case tables::Kind::fuse:
            return "fuse";
        case tables::Kind::rewirable:
            return "rewirable fuse";
        case tables::Kind::breaker:
            return "breaker";
        case tables::Kind::rcbo:
            return "RCBO";
        case tables::Kind::moulded:
            return "moulded-case breaker";
    }
    return "";
}

std::vector<CircuitAnswer> circuits_of(const Recorded& recorded) {
    std::vector<CircuitAnswer> all;
    const auto& settings = recorded.setting().circuits.judged;
    const auto& designs = recorded.figures().circuits;
    for (std::size_t i = 0; i < designs.size(); ++i) {
        all.push_back(circuit_answer(settings[i], designs[i]));
        CircuitAnswer& c = all.back();
        if (!c.loop_ohm || c.residual_clears || !std::isfinite(c.loop_ohm->limit)) continue;
        const auto& limits = recorded.setting().catalogue->limits;
        c.loop_test_limit_ohm = limits.test_factor.value * c.loop_ohm->limit;
    }
    return all;
}

}  // namespace toft::answer
