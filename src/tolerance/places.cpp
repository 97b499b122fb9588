#include "tolerance/places.h"

namespace toft::tolerance {

namespace {

class Collector {
public:
    explicit Collector(std::vector<double*>& places) : places_(places) {}

    template <class... Figures>
    void take(Figures&... figures) {
        (one(figures), ...);
    }

    void factors(cable::LegFactors<Silent>& f) {
        take(f.ca, f.cg, f.ci, f.cs, f.cd, f.cc, f.heat, f.total);
    }

private:
    void one(double& figure) { places_.push_back(&figure); }

    /// A quantity is one number and nothing else, so its address is that of the number.
    template <class Q>
    void one(Q& figure) {
        static_assert(std::is_standard_layout_v<Q> && sizeof(Q) == sizeof(double));
        places_.push_back(reinterpret_cast<double*>(&figure));
    }

    std::vector<double*>& places_;
};

void take_supply(Collector& c, study::SupplySetting<Silent>& s) {
    c.take(s.u0, s.c_min, s.c_max, s.ze_most, s.ze_hot, s.ze_least, s.zn_most, s.zn_working);
    c.take(s.zn_origin, s.runs, s.zn_least, s.zl_most, s.zl_least, s.pscc, s.ra_most, s.ra_least);
}

void take_house(Collector& c, study::HouseSetting<Silent>& s) {
    c.take(s.neutral_most, s.earthing_most, s.earthing_least, s.bonding_least, s.spare_ways);
    c.take(s.max_device_least, s.behind_rcd, s.breaking_least, s.tails_most, s.service_fuse_least);
    c.take(s.service_fuse_most, s.limits.fuse, s.limits.tails, s.limits.main_switch);
    for (auto& demand : s.demand.by) c.take(demand);
}

void take_building(Collector& c, study::BuildingSetting<Silent>& s) {
    c.take(s.reach_least, s.ra_most, s.returning, s.gap_least, s.gap_needed, s.lift_most);
}

void take_leg(Collector& c, study::LegSetting<Silent>& leg) {
    for (auto& f : leg.factors) c.factors(f);
    for (auto& f : leg.paired) c.factors(f);
    c.take(leg.height_least, leg.surroundings, leg.length, leg.depth_least);
}

void take_circuit(Collector& c, circuit::CircuitSetting<Silent>& s) {
    c.factors(s.factors);
    c.factors(s.plain_factors);
    c.take(s.surroundings, s.neutral.over_line, s.neutral.leaves, s.ib, s.drop_current);
    c.take(s.power_factor, s.length, s.drop_limit, s.start, s.dip_limit, s.rise_limit);
    for (auto& k : s.conductors) {
        c.take(k.iz, k.load.r, k.load.x, k.r1_r2_cold, k.live_stands, k.back_stands);
        for (auto& z : k.line) c.take(z.r, z.x);
        for (auto& z : k.back) c.take(z.r, z.x);
    }
}

}  // namespace

std::vector<double*> places_in(study::Setting<Silent>& s) {
    std::vector<double*> places;
    Collector c(places);
    take_supply(c, s.supply);
    take_house(c, s.house);
    take_building(c, s.building);
    for (auto& leg : s.legs) take_leg(c, leg);
    for (auto& stretch : s.stretches) c.take(stretch.length_most, stretch.length_least);
    c.take(s.length_most, s.length_least, s.demand, s.beside, s.ib, s.neutral_share);
    c.take(s.harmonic_factor, s.power_factor, s.drop_before, s.drop_limit);
    for (auto& line : s.lines) c.take(line.along, line.across);
    for (auto& circuit : s.circuits.judged) take_circuit(c, circuit);
    return places;
}

}  // namespace toft::tolerance
