#include "support/draws.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <ostream>

namespace toft::support {

namespace {

using study::Protective;

/// A whole number from 0 up to `count`, all alike from the first try on.
std::size_t place_below(std::size_t count) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<std::size_t>(0, count));
}

DrawnLeg any_leg() {
    using site::LegMethod;
    DrawnLeg leg;
    leg.method = *rc::gen::element(LegMethod::clipped, LegMethod::tray, LegMethod::in_insulation,
                                   LegMethod::buried_direct, LegMethod::buried_in_duct);
    leg.length_m = number_between(1, 80);
    leg.temperature_c = number_between(10, 40);
    leg.other_circuits = static_cast<double>(place_below(6));
    leg.depth_m = number_between(0.5, 1.2);
    return leg;
}

Drawn draw() {
    Drawn d;
    const std::size_t legs = 1 + place_below(3);
    for (std::size_t i = 0; i < legs; ++i) d.legs.push_back(any_leg());
    d.load_a = number_between(1, 60);
    d.power_factor = number_between(0.5, 1);
    d.ze_ohm = number_between(0.02, 0.8);
    d.zn_ohm = number_between(0.02, 0.8);
    d.soil_k_m_w = number_between(0.5, 3);
    d.ground_c = number_between(10, 30);
    d.protective =
        *rc::gen::element(Protective::armour, Protective::core, Protective::core_and_armour,
                          Protective::separate, Protective::armour_and_separate);
    d.cores = study::core_serves(d.protective) ? 3 : 2 + static_cast<int>(place_below(2));
    d.size = place_below(cables_of(d.cores).size());
    d.device = place_below(catalogue().devices.size());
    d.separate = place_below(copper_conductors().size());
    d.earthing = *rc::gen::element(study::BuildingEarthing::supply_earth,
                                   study::BuildingEarthing::shared_electrode,
                                   study::BuildingEarthing::own_electrode);
    return d;
}

}  // namespace

double number_between(double low, double high) {
    return low + (high - low) * static_cast<double>(place_below(10001)) / 10000.0;
}

std::vector<const tables::Cable*> cables_of(int cores) {
    std::vector<const tables::Cable*> found;
    for (const tables::Cable& cable : catalogue().cables) {
        const bool plain = cable.family == tables::Family::armoured_xlpe_copper;
        if (plain && cable.cores == cores) found.push_back(&cable);
    }
    return found;
}

site::Job job_of(const Drawn& d) {
    std::vector<site::Leg> legs;
    for (const DrawnLeg& drawn : d.legs) {
        site::Leg leg = plain_leg(drawn.method, drawn.length_m);
        leg.ambient = measured(celsius(drawn.temperature_c));
        leg.other_loaded_circuits = measured(drawn.other_circuits);
        leg.depth = measured(metres(drawn.depth_m));
        leg.insulation_length = measured(metres(drawn.length_m / 100));
        legs.push_back(leg);
    }
    site::Job job = job_with_legs(std::move(legs));
    job.intake.ze = measured(ohms(d.ze_ohm));
    job.intake.line_neutral_loop = measured(ohms(d.zn_ohm));
    job.ground.thermal_resistivity = measured(d.soil_k_m_w);
    job.ground.temperature = measured(celsius(d.ground_c));
    job.buildings[1].load = measured(amperes(d.load_a));
    job.buildings[1].power_factor = measured(d.power_factor);
    return job;
}

study::RunScheme scheme_of(const Drawn& d) {
    const tables::Catalogue& all = catalogue();
    study::RunScheme s = scheme(*cables_of(d.cores)[d.size], d.protective, all.devices[d.device]);
    s.earthing = d.earthing;
    if (study::separate_serves(d.protective)) s.first().separate = copper_conductors()[d.separate];
    if (d.earthing == study::BuildingEarthing::own_electrode) s.rcd = &all.run_rcds.front();
    return s;
}

rc::Gen<Drawn> any_drawn() { return rc::gen::exec(draw); }

void showValue(const Drawn& d, std::ostream& out) {
    out << study::scheme_key(scheme_of(d)) << ", " << d.load_a << " A at " << d.power_factor
        << ", Ze " << d.ze_ohm << ", Zn " << d.zn_ohm << ", soil " << d.soil_k_m_w << " at "
        << d.ground_c << " C";
    for (const DrawnLeg& leg : d.legs) {
        out << "; " << site::word(leg.method) << " " << leg.length_m << " m, " << leg.temperature_c
            << " C, " << leg.other_circuits << " beside, " << leg.depth_m << " m deep";
    }
}

}  // namespace toft::support
