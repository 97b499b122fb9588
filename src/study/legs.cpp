#include "circuit/laying.h"
#include "site/built.h"
#include "study/setting_parts.h"

#include <algorithm>

namespace toft::study {

namespace {

using cable::Laying;
using site::LegMethod;

const tables::DepthAdvice* advice_for(const tables::Catalogue& catalogue, const site::Leg& leg) {
    if (!leg.surface) return nullptr;
    for (const tables::DepthAdvice& advice : catalogue.depth_advice) {
        if (advice.surface == site::word(*leg.surface)) return &advice;
    }
    return nullptr;
}

const tables::HeightAdvice* height_for(const tables::Catalogue& catalogue, const site::Leg& leg) {
    if (!leg.surface) return nullptr;
    for (const tables::HeightAdvice& advice : catalogue.height_advice) {
        if (advice.surface == site::word(*leg.surface)) return &advice;
    }
    return nullptr;
}

/// What surrounds the leg at this corner; hotter, drier, deeper and more crowded is worse.
/// `shallowest` takes the least depth of a leg in the ground.
cable::Surroundings surround(Settler& settler, const site::Ground& ground, const site::Leg& leg,
                             const std::string& at, Metres& shallowest) {
    cable::Surroundings around;
    around.laying = circuit::laying_of(leg.method);
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

/// Families that the survey and the wishes leave to a leg.
std::array<bool, tables::families> families_for(const site::Wishes& wishes, const site::Leg& leg) {
    std::array<bool, tables::families> open{};
    for (std::size_t f = 0; f < tables::families; ++f) {
        const std::string word = tables::family_word(static_cast<tables::Family>(f));
        const bool offered =
            wishes.offer.empty() ||
            std::find(wishes.offer.begin(), wishes.offer.end(), word) != wishes.offer.end();
        open[f] = leg.family.empty() ? offered : leg.family == word;
    }
    return open;
}

bool same_cable(const site::Leg& a, const site::Leg& b) {
    return a.family == b.family && a.cores == b.cores && a.live == b.live;
}

/// Opens a new stretch where the survey names another cable.
template <class L>
void join_stretch(const site::Job& job, const std::vector<site::Leg>& legs, std::size_t i,
                  const tables::Cable* existing, std::vector<StretchSetting<L>>& stretches) {
    if (i > 0 && same_cable(legs[i - 1], legs[i])) {
        ++stretches.back().legs;
        return;
    }
    StretchSetting<L> fresh;
    fresh.first_leg = i;
    fresh.legs = 1;
    fresh.families = families_for(job.wishes, legs[i]);
    fresh.cores = legs[i].cores;
    fresh.live = legs[i].live;
    fresh.existing = existing;
    stretches.push_back(fresh);
}

template <class L>
bool lies_there(const StretchSetting<L>& stretch, std::size_t family) {
    return stretch.existing && static_cast<std::size_t>(stretch.existing->family) == family;
}

/// Factors of the leg for every family its cable may be of, alone and beside a twin.
template <class L>
void leg_factors(L& ledger, const tables::Catalogue& catalogue, const cable::Surroundings& around,
                 const StretchSetting<L>& stretch, LegSetting<L>& out) {
    cable::Surroundings twin = around;
    twin.circuits += 1;
    for (std::size_t f = 0; f < tables::families; ++f) {
        if (!stretch.families[f] && !lies_there(stretch, f)) continue;
        const cable::FactorTables tables{catalogue.cable_constants, catalogue.makes[f],
                                         catalogue.limits.buried_cc};
        out.factors[f] = cable::leg_factors(ledger, tables, around);
        out.paired[f] = cable::leg_factors(ledger, tables, twin);
    }
}

bool in_the_open(const site::Leg& leg) {
    return site::buried(leg.method) || leg.method == LegMethod::overhead;
}

/// Whether a cable without armour may be built with on that stretch: named there, or left open
/// where nothing lies in the ground or hangs in the air.
template <class L>
bool may_lack_armour(const tables::Catalogue& catalogue, const std::vector<site::Leg>& legs,
                     const StretchSetting<L>& stretch) {
    bool unarmoured = false;
    for (std::size_t f = 0; f < tables::families; ++f) {
        const bool offered = stretch.families[f] || lies_there(stretch, f);
        unarmoured = unarmoured || (offered && !catalogue.makes[f].armoured);
    }
    bool open_air = false;
    for (std::size_t i = 0; i < stretch.legs; ++i) {
        open_air = open_air || in_the_open(legs[stretch.first_leg + i]);
    }
    return unarmoured && !open_air;
}

/// Whether a leg's method lets a cable be hidden without anyone having said so.
bool may_hide(LegMethod method) {
    return method == LegMethod::in_conduit || method == LegMethod::in_insulation;
}

/// What a cable without armour would meet on a leg, and how high a leg hangs.
template <class L>
void lie_of_leg(Settler& settler, const site::Leg& leg, const std::string& at, bool may_lack_armour,
                LegSetting<L>& out) {
    if (may_lack_armour) {
        out.indoors = settler.settle(
            leg.indoors, {at + "/indoors", "the leg lies indoors, out of sun and wet", ""}, false);
        // What is clipped to a surface or lies in trunking is in sight unless the survey says not.
        out.concealed =
            may_hide(leg.method) || leg.concealed != site::Answer::unknown
                ? settler.settle(
                      leg.concealed,
                      {at + "/concealed", "cable hidden in a wall less than 50 mm deep", ""}, true)
                : false;
    }
    if (leg.method == LegMethod::overhead) {
        out.height_least =
            settler.settle(leg.height, {at + "/height_m", "height of the overhead cable", "height"})
                .bounds.least;
    }
}

/// Says so where an unknown is read on its kinder side.
template <class L>
void say_what_is_in_sight(Setting<L>& s) {
    for (const LegSetting<L>& leg : s.legs) {
        const site::Leg& stated = s.run->legs[static_cast<std::size_t>(&leg - s.legs.data())];
        if (stated.concealed != site::Answer::unknown || may_hide(leg.method)) continue;
        if (!may_lack_armour(*s.catalogue, s.run->legs, s.stretches[leg.stretch])) continue;
        s.assumed.push_back(
            "clipped cable, and cable on tray or in trunking, is taken as in sight: say so where "
            "it "
            "is hidden in a wall");
        return;
    }
}

/// What is taken for granted of legs in the ground.
template <class L>
void say_of_the_ground(Setting<L>& s) {
    bool alone = false;
    bool no_surface = false;
    for (const site::Leg& leg : s.run->legs) {
        if (!site::buried(leg.method)) continue;
        alone = alone || !leg.other_loaded_circuits.known;
        no_surface = no_surface || (leg.depth.known && !leg.surface);
    }
    if (alone) s.assumed.push_back("where not stated, no other loaded cable lies in the trench");
    if (no_surface) {
        s.assumed.push_back(
            "where nobody said what lies over the cable, the depth stated is taken as enough: "
            "beds, drives, fields and roads ask for more than a lawn");
    }
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
        const std::string at = fmt::format("{}/legs/{}", site::run_pointer(*s.job, run_index), i);
        const int number = static_cast<int>(i) + 1;
        LegSetting<L> out;
        out.method = legs[i].method;
        out.laying = circuit::laying_of(legs[i].method);
        out.advice = advice_for(*s.catalogue, legs[i]);
        out.height_advice = height_for(*s.catalogue, legs[i]);
        cable::Surroundings around = surround(settler, s.job->ground, legs[i], at, out.depth_least);
        around.leg = number;
        if (site::buried(legs[i].method) && !legs[i].depth.known &&
            settler.leaves_open(at + "/depth_m")) {
            s.unsaid.push_back({Unsaid::depth, at + "/depth_m"});
        }
        join_stretch(*s.job, legs, i, s.existing.cable, s.stretches);
        out.stretch = s.stretches.size() - 1;
        StretchSetting<L>& stretch = s.stretches.back();
        leg_factors(ledger, *s.catalogue, around, stretch, out);
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
        const bool opens = stretch.first_leg == i;
        stretch.length_most = opens ? out.length : stretch.length_most + out.length;
        stretch.length_least = opens ? shortest : stretch.length_least + shortest;
        s.legs.push_back(std::move(out));
    }
    for (std::size_t i = 0; i < legs.size(); ++i) {
        lie_of_leg(settler, legs[i],
                   fmt::format("{}/legs/{}", site::run_pointer(*s.job, run_index), i),
                   may_lack_armour(*s.catalogue, legs, s.stretches[s.legs[i].stretch]), s.legs[i]);
    }
    say_what_is_in_sight(s);
    say_of_the_ground(s);
    s.length_most = ledger.let({"L.run", "length of the run"}, s.length_most);
    s.length_least = ledger.let({"L.run.least", "length of the run, the shortest"}, s.length_least);
    without_repeats(s.open);
}

template void prepare_legs(Silent&, Settler&, Setting<Silent>&, std::size_t);
template void prepare_legs(Recording&, Settler&, Setting<Recording>&, std::size_t);

}  // namespace toft::study
