#include "study/setting_parts.h"

namespace toft::study {

namespace {

using cable::Laying;
using site::LegMethod;

Laying laying_of(LegMethod method) {
    switch (method) {
        case LegMethod::tray:
            return Laying::tray;
        case LegMethod::free_air:
            return Laying::free_air;
        case LegMethod::in_conduit:
            return Laying::conduit;
        case LegMethod::in_trunking:
            return Laying::trunking;
        case LegMethod::above_ceiling:
            return Laying::above_ceiling;
        case LegMethod::overhead:
            return Laying::overhead;
        case LegMethod::in_insulation:
            return Laying::insulated;
        case LegMethod::buried_direct:
            return Laying::direct;
        case LegMethod::buried_in_duct:
            return Laying::duct;
        default:
            return Laying::clipped;
    }
}

const tables::DepthAdvice* advice_for(const tables::Catalogue& catalogue, const site::Leg& leg) {
    if (!leg.surface) return nullptr;
    for (const tables::DepthAdvice& advice : catalogue.depth_advice) {
        if (advice.surface == site::word(*leg.surface)) return &advice;
    }
    return nullptr;
}

/// What surrounds the leg at this corner; hotter, drier, deeper and more crowded is worse.
/// `shallowest` takes the least depth of a leg in the ground.
cable::Surroundings surround(Settler& settler, const site::Ground& ground, const site::Leg& leg,
                             const std::string& at, Metres& shallowest) {
    cable::Surroundings around;
    around.laying = laying_of(leg.method);
    const bool in_ground = tables::in_ground(around.laying);
    const auto temperature =
        in_ground
            ? settler.settle(
                  ground.temperature,
                  {"/ground/temperature_c", "temperature of the ground", "ground_temperature"})
            : settler.settle(leg.ambient,
                             {at + "/ambient_c", "temperature of the air", "air_temperature"});
    around.temperature = temperature.bounds.most;
    const auto others =
        settler.settle(leg.other_loaded_circuits,
                       {at + "/other_loaded_circuits", "other loaded circuits beside the cable",
                        in_ground ? "grouped.buried" : "grouped"});
    around.circuits = 1 + others.bounds.most;
    if (in_ground) {
        around.thermal_resistivity =
            settler
                .settle(ground.thermal_resistivity,
                        {"/ground/thermal_resistivity_k_m_per_w", "thermal resistivity of the soil",
                         "thermal_resistivity"})
                .bounds.most;
        const auto depth = settler.settle(leg.depth, {at + "/depth_m", "depth of laying", "depth"});
        around.depth = depth.bounds.most;
        shallowest = depth.bounds.least;
    }
    if (around.laying == Laying::insulated) {
        around.in_insulation =
            leg.insulation_length.known ? leg.insulation_length.high : leg.length.high;
    }
    return around;
}

/// One entry a pointer: several legs share the ground's facts.
void without_repeats(std::vector<OpenFact>& open) {
    std::vector<OpenFact> once;
    for (OpenFact& fact : open) {
        bool known = false;
        for (const OpenFact& seen : once) known = known || seen.pointer == fact.pointer;
        if (!known) once.push_back(std::move(fact));
    }
    open = std::move(once);
}

}  // namespace

template <class L>
void prepare_legs(L& ledger, Settler& settler, Setting<L>& s, std::size_t run_index) {
    const auto& legs = s.run->legs;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        const std::string at = fmt::format("/runs/{}/legs/{}", run_index, i);
        const int number = static_cast<int>(i) + 1;
        LegSetting<L> out;
        out.method = legs[i].method;
        out.laying = laying_of(legs[i].method);
        out.advice = advice_for(*s.catalogue, legs[i]);
        cable::Surroundings around = surround(settler, s.job->ground, legs[i], at, out.depth_least);
        around.leg = number;
        out.factors = cable::leg_factors(
            ledger,
            cable::FactorTables{s.catalogue->cable_constants, s.catalogue->makes[0],
                                s.catalogue->limits.buried_cc},
            around);
        out.surroundings = ledger.stated({"ta", "temperature around the leg", number},
                                         around.temperature, "survey or rulebook");
        const auto length = settler.settle(
            legs[i].length, {at + "/length_m", fmt::format("length of leg {}", number), "", "m"});
        out.length =
            ledger.stated({"L", "length of the leg", number}, length.bounds.most, length.from);
        const auto shortest = ledger.stated({"L.least", "length of the leg, the shortest", number},
                                            length.bounds.least, length.from);
        s.length_most = i == 0 ? out.length : s.length_most + out.length;
        s.length_least = i == 0 ? shortest : s.length_least + shortest;
        s.legs.push_back(std::move(out));
    }
    bool alone = false;
    for (const site::Leg& leg : legs) {
        alone = alone || (site::buried(leg.method) && !leg.other_loaded_circuits.known);
    }
    if (alone) s.assumed.push_back("where not stated, no other loaded cable lies in the trench");
    s.length_most = ledger.let({"L.run", "length of the run"}, s.length_most);
    s.length_least = ledger.let({"L.run.least", "length of the run, the shortest"}, s.length_least);
    without_repeats(s.open);
}

template void prepare_legs(Silent&, Settler&, Setting<Silent>&, std::size_t);
template void prepare_legs(Recording&, Settler&, Setting<Recording>&, std::size_t);

}  // namespace toft::study
