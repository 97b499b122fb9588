#include "answer/circuits.h"

#include <cmath>

namespace toft::answer {

namespace {

using circuit::Matter;

template <class L>
std::optional<CircuitMatter> matter(const circuit::CircuitDesign<L>& d, Matter m) {
    const auto& j = d.at(m);
    if (!j.applies) return std::nullopt;
    return CircuitMatter{j.value, j.limit, plain(j.use)};
}

template <class L>
CircuitAnswer circuit_answer(const circuit::CircuitSetting<L>& s,
                             const circuit::CircuitDesign<L>& d) {
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
    a.design_current_a = plain(s.ib).number();
    a.rating_a = plain(d.conductors.iz).number();
    a.r1_plus_r2_20c_ohm = plain(d.conductors.r1_r2_cold).number();
    a.drop_percent = matter(d, Matter::drop);
    if (a.drop_percent) a.drop_own_percent = plain(d.drop_own);
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

template <class L>
std::vector<CircuitAnswer> circuits_of(const worked::Worked<L>& worked) {
    std::vector<CircuitAnswer> all;
    const auto& settings = worked.setting().circuits.judged;
    const auto& designs = worked.figures().circuits;
    for (std::size_t i = 0; i < designs.size(); ++i) {
        all.push_back(circuit_answer(settings[i], designs[i]));
        CircuitAnswer& c = all.back();
        if (!c.loop_ohm || c.residual_clears || !std::isfinite(c.loop_ohm->limit)) continue;
        const auto& limits = worked.setting().catalogue->limits;
        c.loop_test_limit_ohm = limits.test_factor.value * c.loop_ohm->limit;
    }
    return all;
}

template std::vector<CircuitAnswer> circuits_of(const worked::Worked<Silent>&);
template std::vector<CircuitAnswer> circuits_of(const worked::Worked<Recording>&);

}  // namespace toft::answer
