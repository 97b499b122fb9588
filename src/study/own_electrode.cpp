#include "earth/rod.h"
#include "study/ground_memo.h"
#include "study/setting_parts.h"

namespace toft::study {

namespace {

const Name own_ra_name{"RA", "the outbuilding's own electrode, the largest it may be"};

/// Rods for which the closed form stands: few, at the surface, a rod's length apart.
bool simple(const site::Electrode& e) {
    return e.kind == site::ElectrodeKind::rods && !e.spacing.known && !e.depth.known &&
           e.arrangement == site::Arrangement::line && (!e.rods.known || e.rods.low <= 4);
}

template <class L>
ValueIn<L, Ohms> by_closed_form(L& ledger, const Name& name, const Setting<L>& s,
                                const SoilSetting& soil, const BuiltElectrode& electrode) {
    const site::Electrode& e = s.building_facts->electrode;
    const tables::Limits& usual = s.catalogue->limits;
    earth::Rods<L> rods;
    rods.resistivity = ledger.stated({"rho", "resistivity of the soil, the largest it may be"},
                                     soil.worst.front().deepest, soil.from);
    const Name length_name{"L.rod", "length of a rod"};
    const Name diameter_name{"d.rod", "diameter of a rod"};
    rods.length = e.length.known ? ledger.stated(length_name, e.length.low, "survey")
                                 : ledger.table(length_name, usual.rod_length);
    rods.diameter = e.diameter.known ? ledger.stated(diameter_name, e.diameter.low, "survey")
                                     : ledger.table(diameter_name, usual.rod_diameter);
    rods.count = electrode.count;
    return earth::rod_resistance(ledger, name, s.catalogue->rod_parallel, rods);
}

/// A reading rises when the ground dries or freezes; one that was assumed stands for the whole
/// year.
template <class L>
ValueIn<L, Ohms> as_read(L& ledger, Settler& settler, const Setting<L>& s, const SoilSetting& known,
                         const std::string& at) {
    const site::Electrode& e = s.building_facts->electrode;
    const site::Fact<Ohms> reading_stated = reading_of(e);
    const auto read = settler.settle(reading_stated, {at + "/electrode/resistance_ohm",
                                                      "the electrode's resistance", "", "ohm"});
    if (reading_stated.standing == site::Standing::assumed) {
        return ledger.stated(own_ra_name, read.bounds.most, read.from);
    }
    SoilSetting soil = known;
    if (soil.whole_year) {
        // Any even soil will do: what a crust adds does not depend on the resistivity below it.
        soil = settle_season(settler, s.job->ground, {even_soil(ohm_metres(100))});
    }
    const ThroughTheYear year =
        kept_year(settler.memo(), *s.catalogue, soil, built(e, *s.catalogue));
    const auto reading =
        ledger.stated({"RA.read", "the electrode as it was read"}, read.bounds.most, read.from);
    const auto season = ledger.stated({"f.season", "driest or frozen ground over ground as read"},
                                      year.worst_season, "field of the electrode");
    return ledger.let(own_ra_name, reading * season);
}

template <class L>
ValueIn<L, Ohms> predicted(L& ledger, Settler& settler, const Setting<L>& s,
                           const SoilSetting& soil, const BuiltElectrode& electrode) {
    const bool even = soil.worst.size() == 1 && soil.worst.front().layers.empty();
    const bool closed = even && simple(s.building_facts->electrode);
    if (closed && soil.plain()) return by_closed_form(ledger, own_ra_name, s, soil, electrode);
    const ThroughTheYear year = kept_year(settler.memo(), *s.catalogue, soil, electrode);
    if (!year.solved)
        return ledger.stated(own_ra_name, unusable, "this electrode cannot be worked out");
    if (!closed) {
        return ledger.stated(own_ra_name, year.high, "field of the electrode in that soil");
    }
    const auto even_ground = by_closed_form(
        ledger, {"RA.read", "the electrode in the soil as it was read"}, s, soil, electrode);
    const auto season = ledger.stated({"f.season", "driest or frozen ground over ground as read"},
                                      year.worst_season, "field of the electrode");
    return ledger.let(own_ra_name, even_ground * season);
}

/// Concrete on a membrane is no electrode, and one cannot see it from above.
bool parted_from_ground(Settler& settler, const site::Electrode& e, const std::string& at) {
    return e.kind == site::ElectrodeKind::foundation && !reading_of(e).known &&
           settler.settle(
               e.membrane,
               {at + "/electrode/membrane", "a membrane or insulation under the foundation", ""},
               true);
}

}  // namespace

template <class L>
void prepare_electrode(L& ledger, Settler& settler, Setting<L>& s, const SoilSetting& soil,
                       const std::string& at) {
    const site::Electrode& e = s.building_facts->electrode;
    const BuiltElectrode electrode = built(e, *s.catalogue);
    const bool read = reading_of(e).known;
    if (electrode.usual && !read) {
        s.assumed.push_back(
            "where no rod is stated, the usual one is proposed for an own electrode");
    }
    if (parted_from_ground(settler, e, at)) {
        s.building.ra_most =
            ledger.stated(own_ra_name, unusable, "a membrane parts the foundation from the ground");
    } else if (read) {
        s.building.ra_most = as_read(ledger, settler, s, soil, at);
    } else {
        s.building.ra_most = predicted(ledger, settler, s, soil, electrode);
    }
}

template void prepare_electrode(Silent&, Settler&, Setting<Silent>&, const SoilSetting&,
                                const std::string&);
template void prepare_electrode(Recording&, Settler&, Setting<Recording>&, const SoilSetting&,
                                const std::string&);

}  // namespace toft::study
