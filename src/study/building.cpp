#include "study/electrode.h"
#include "study/setting_parts.h"

namespace toft::study {

namespace {

/// Whether a part brings in a potential: not with an insulating section at its entry, not when its
/// measured resistance to the earthing terminal exceeds the rulebook's figure.
MetalPart judge_part(Settler& settler, const site::Metalwork& m, const std::string& pointer,
                     const tables::Limits& limits) {
    const Metres reach = limits.reach.value;
    const Ohms threshold = limits.extraneous.value;
    MetalPart part;
    part.name = site::word(m.what);
    part.pointer = pointer;
    if (m.distance.known && m.distance.low > reach) return part;  // nobody touches both
    const bool broken = settler.settle(
        m.insulating_section,
        {pointer + "/insulating_section", "an insulating section in the " + part.name, ""}, false);
    if (broken) return part;
    const bool measured_high = m.resistance_to_met.known && m.resistance_to_met.low > threshold &&
                               m.resistance_to_met.standing == site::Standing::measured;
    part.extraneous = !measured_high;
    const bool tied = settler.settle(
        m.bonded_at_house,
        {pointer + "/bonded_at_house", "the " + part.name + " bonded at the house", ""}, true);
    part.bridges = m.comes_from == site::ComesFrom::house || tied;
    return part;
}

/// Nobody has looked what enters: at the worse end something does, and it runs on to the house.
template <class L>
void unsurveyed(Settler& settler, Setting<L>& s, const std::string& at) {
    const bool enters =
        settler.settle(site::Answer::unknown,
                       {at + "/metalwork", "metalwork from outside enters the building", ""}, true);
    if (enters)
        s.building.parts.push_back(
            {"metalwork that enters, if any,", at + "/metalwork", true, true});
}

/// The building's own metal, where it is of metal or nobody said what it is made of.
template <class L>
void frame(Settler& settler, Setting<L>& s, const std::string& at) {
    const site::Building& b = *s.building_facts;
    if (!b.construction) {
        const bool metal = settler.settle(
            site::Answer::unknown,
            {at + "/construction", "a metal building that stands in the ground", ""}, true);
        if (metal)
            s.building.parts.push_back(
                {"metal frame, if it has one,", at + "/construction", true, false});
        return;
    }
    if (!site::metallic(*b.construction)) return;
    const bool stands = settler.settle(
        b.stands_in_ground,
        {at + "/stands_in_ground", "the metal building stands in the ground", ""}, true);
    s.building.parts.push_back({site::word(*b.construction), at + "/construction", stands, false});
}

template <class L>
void metalwork(Settler& settler, Setting<L>& s, const std::string& at) {
    const site::Building& b = *s.building_facts;
    for (std::size_t i = 0; i < b.metalwork.size(); ++i) {
        s.building.parts.push_back(judge_part(
            settler, b.metalwork[i], fmt::format("{}/metalwork/{}", at, i), s.catalogue->limits));
    }
    if (!b.metalwork_surveyed) unsurveyed(settler, s, at);
    frame(settler, s, at);
    for (const MetalPart& part : s.building.parts) {
        s.building.extraneous = s.building.extraneous || part.extraneous;
        s.building.bridged = s.building.bridged || part.bridges;
    }
}

}  // namespace

template <class L>
void prepare_building(L& ledger, Settler& settler, Setting<L>& s) {
    const site::Building& b = *s.building_facts;
    const std::string at = fmt::format("/buildings/{}", site::building_index(*s.job, b.id));
    metalwork(settler, s, at);
    const auto reach =
        settler.settle(b.reach_of_house_earth,
                       {at + "/reach_of_house_earth_m",
                        "distance from the building to anything on the house's earth", "reach"});
    // Closer is worse: the worse end is the smaller distance.
    s.building.reach_least =
        ledger.stated({"reach", "distance to the nearest thing on the house's earth"},
                      reach.bounds.least, reach.from);
    s.building.gap_judged = s.supply.system == site::Earthing::tn_c_s;
    SoilSetting soil;
    if (s.building.gap_judged || !reading_of(b.electrode).known) {
        soil = settle_soil(settler, *s.catalogue, s.job->ground);
    }
    prepare_electrode(ledger, settler, s, soil, at);
    prepare_separation(ledger, settler, s, soil, at);
    if (!b.use) {
        s.assumed.push_back(
            "use not stated: taken as an ordinary outbuilding, no caravan, boat, pool, tub "
            "or stable");
    }
    const auto open = [](site::Answer a) { return a == site::Answer::unknown; };
    if (open(b.wet_floor) || open(b.barefoot) || open(b.livestock)) {
        s.assumed.push_back(
            "where not stated, the floor is taken as dry, people as shod, and no animals "
            "as kept there");
    }
    if (open(b.vehicle_outdoors)) {
        s.assumed.push_back(
            "where not stated, no vehicle is taken to be charged in the open from there");
    }
}

template void prepare_building(Silent&, Settler&, Setting<Silent>&);
template void prepare_building(Recording&, Settler&, Setting<Recording>&);

}  // namespace toft::study
