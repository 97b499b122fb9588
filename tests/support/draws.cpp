#include "support/draws.h"

#include "search/candidates.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <algorithm>
#include <ostream>

namespace toft::support {

namespace {

using study::Protective;
using tables::Family;

/// A whole number from 0 up to `count`, all alike from the first try on.
std::size_t place_below(std::size_t count) {
    return *rc::gen::resize(rc::kNominalSize, rc::gen::inRange<std::size_t>(0, count));
}

bool once_in(std::size_t count) { return place_below(count) == 0; }

DrawnLeg any_leg() {
    using site::LegMethod;
    DrawnLeg leg;
    static constexpr LegMethod usual[] = {LegMethod::clipped, LegMethod::tray,
                                          LegMethod::in_insulation, LegMethod::buried_direct,
                                          LegMethod::buried_in_duct};
    leg.method = once_in(4) ? static_cast<LegMethod>(place_below(site::words<LegMethod>().size()))
                            : usual[place_below(5)];
    leg.length_m = number_between(1, 80);
    leg.temperature_c = number_between(10, 40);
    leg.other_circuits = static_cast<double>(place_below(6));
    leg.depth_m = number_between(0.5, 1.2);
    leg.height_m = number_between(3, 7);
    leg.indoors = once_in(2);
    leg.concealed = once_in(4);
    return leg;
}

/// Families and cores that serve so many phases, armoured ones alone or all.
struct Kind {
    Family family;
    int cores;
};
std::vector<Kind> kinds_for(int phases, bool armoured) {
    const int live = phases == 3 ? 4 : 2;
    std::vector<Kind> kinds;
    for (std::size_t f = 0; f < tables::families; ++f) {
        const auto family = static_cast<Family>(f);
        if (armoured && !make(family).armoured) continue;
        for (int cores : {live, live + 1}) {
            const bool flat = family == Family::flat_twin_and_earth;
            const bool spare = cores > live || (flat && phases == 1);
            if (cables_of(family, cores).empty() || (flat && phases == 3)) continue;
            if (make(family).armoured || spare) kinds.push_back({family, cores});
        }
    }
    return kinds;
}

Protective any_protective(const Kind& kind, int phases) {
    std::vector<Protective> may;
    if (make(kind.family).armoured) {
        may = {Protective::armour, Protective::separate, Protective::armour_and_separate};
        if (kind.cores > (phases == 3 ? 4 : 2)) {
            may.push_back(Protective::core);
            may.push_back(Protective::core_and_armour);
        }
    } else {
        may = {Protective::core, Protective::separate};
    }
    return may[place_below(may.size())];
}

DrawnStretch any_stretch(int phases, bool armoured, const DrawnStretch* after) {
    std::vector<Kind> kinds = kinds_for(phases, armoured);
    if (after) {
        kinds.erase(std::remove_if(kinds.begin(), kinds.end(),
                                   [&](const Kind& kind) {
                                       return kind.family == after->family &&
                                              kind.cores == after->cores;
                                   }),
                    kinds.end());
    }
    const Kind kind = kinds[place_below(kinds.size())];
    DrawnStretch s;
    s.family = kind.family;
    s.cores = kind.cores;
    s.size = place_below(sizes_of(s));
    s.protective = any_protective(kind, phases);
    s.separate = place_below(copper_conductors().size());
    s.parallel = make(kind.family).armoured && once_in(5) ? 2 : 1;
    return s;
}

Drawn draw(bool armoured) {
    Drawn d;
    d.phases = once_in(3) ? 3 : 1;
    static_cast<DrawnStretch&>(d) = any_stretch(d.phases, armoured, nullptr);
    const std::size_t more = once_in(2) ? 0 : place_below(3);
    for (std::size_t i = 0; i < more; ++i) {
        const DrawnStretch& last = i == 0 ? d : d.further.back();
        d.further.push_back(any_stretch(d.phases, armoured, &last));
    }
    for (std::size_t i = 0; i <= more; ++i) {
        for (std::size_t legs = 1 + place_below(more == 0 ? 3 : 2); legs > 0; --legs) {
            d.legs.push_back(any_leg());
            d.legs.back().stretch = i;
        }
    }
    d.load_a = number_between(1, 60);
    d.uneven = d.phases == 3 && once_in(2) ? number_between(0, 1) : 0;
    d.power_factor = number_between(0.5, 1);
    d.ze_ohm = number_between(0.02, 0.8);
    d.zn_ohm = number_between(0.02, 0.8);
    d.soil_k_m_w = number_between(0.5, 3);
    d.ground_c = number_between(10, 30);
    d.device = place_below(catalogue().devices.size());
    d.earthing = *rc::gen::element(study::BuildingEarthing::supply_earth,
                                   study::BuildingEarthing::shared_electrode,
                                   study::BuildingEarthing::own_electrode);
    return d;
}

const DrawnStretch& stretch_of(const Drawn& d, std::size_t i) {
    return i == 0 ? d : d.further[i - 1];
}

study::Stretch stretch_of(const DrawnStretch& drawn) {
    study::Stretch s = stretch(*cables_of(drawn.family, drawn.cores)[drawn.size], drawn.protective,
                               drawn.parallel);
    if (study::separate_serves(drawn.protective)) s.separate = copper_conductors()[drawn.separate];
    return s;
}

site::Circuit load(const char* name, int phases, double amperes, double power_factor) {
    site::Circuit circuit;
    circuit.name = name;
    circuit.kind = site::CircuitKind::kiln;  // counts whole
    circuit.phases = phases;
    circuit.load_w = measured(amperes * 230 * phases * power_factor);
    circuit.power_factor = measured(power_factor);
    return circuit;
}

/// Stated in amperes, or as circuits where one line carries more than the others.
void load_of(const Drawn& d, site::Building& b) {
    b.power_factor = measured(d.power_factor);
    if (d.uneven <= 0) {
        b.load = measured(amperes(d.load_a));
        return;
    }
    b.load = {};
    b.circuits = {load("all lines", 3, d.load_a * (1 - d.uneven), d.power_factor),
                  load("one line", 1, d.load_a * d.uneven, d.power_factor)};
}

site::Answer answer(bool yes) { return yes ? site::Answer::yes : site::Answer::no; }

}  // namespace

double number_between(double low, double high) {
    return low + (high - low) * static_cast<double>(place_below(10001)) / 10000.0;
}

std::vector<const tables::Cable*> cables_of(Family family, int cores) {
    std::vector<const tables::Cable*> found;
    for (const tables::Cable& cable : catalogue().cables) {
        if (cable.family == family && cable.cores == cores) found.push_back(&cable);
    }
    return found;
}

std::vector<const tables::Cable*> cables_of(int cores) {
    return cables_of(Family::armoured_xlpe_copper, cores);
}

std::size_t sizes_of(const DrawnStretch& drawn) {
    return cables_of(drawn.family, drawn.cores).size();
}

site::Job job_of(const Drawn& d) {
    std::vector<site::Leg> legs;
    for (const DrawnLeg& drawn : d.legs) {
        site::Leg leg = plain_leg(drawn.method, drawn.length_m);
        leg.ambient = measured(celsius(drawn.temperature_c));
        leg.other_loaded_circuits = measured(drawn.other_circuits);
        leg.depth = measured(metres(drawn.depth_m));
        leg.height = measured(metres(drawn.height_m));
        leg.surface = site::Surface::path;
        leg.insulation_length = measured(metres(drawn.length_m / 100));
        leg.indoors = answer(drawn.indoors);
        leg.concealed = answer(drawn.concealed);
        if (!d.further.empty()) {
            name_cable(leg, *stretch_of(stretch_of(d, drawn.stretch)).cable);
        }
        legs.push_back(leg);
    }
    site::Job job = job_with_legs(std::move(legs));
    if (d.phases == 3) job = on_three_phases(job);
    job.intake.ze = measured(ohms(d.ze_ohm));
    job.intake.line_neutral_loop = measured(ohms(d.zn_ohm));
    job.ground.thermal_resistivity = measured(d.soil_k_m_w);
    job.ground.temperature = measured(celsius(d.ground_c));
    load_of(d, job.buildings[1]);
    return job;
}

study::RunScheme scheme_of(const Drawn& d) {
    const tables::Catalogue& all = catalogue();
    std::vector<study::Stretch> stretches{stretch_of(static_cast<const DrawnStretch&>(d))};
    for (const DrawnStretch& more : d.further) stretches.push_back(stretch_of(more));
    study::RunScheme s = scheme(stretches, all.devices[d.device]);
    s.phases = d.phases;
    s.earthing = d.earthing;
    const bool own = d.earthing == study::BuildingEarthing::own_electrode;
    if (own && !s.device->residual) s.rcd = &all.run_rcds.front();
    return s;
}

rc::Gen<Drawn> any_drawn() {
    return rc::gen::exec([] { return draw(false); });
}

rc::Gen<Drawn> any_armoured() {
    return rc::gen::exec([] { return draw(true); });
}

void showValue(const Drawn& d, std::ostream& out) {
    out << study::scheme_key(scheme_of(d)) << ", " << d.load_a << " A at " << d.power_factor << ", "
        << d.uneven << " of it on one line, Ze " << d.ze_ohm << ", Zn " << d.zn_ohm << ", soil "
        << d.soil_k_m_w << " at " << d.ground_c << " C";
    for (const DrawnLeg& leg : d.legs) {
        out << "; " << site::word(leg.method) << " " << leg.length_m << " m, " << leg.temperature_c
            << " C, " << leg.other_circuits << " beside, " << leg.depth_m << " m deep, "
            << leg.height_m << " m up" << (leg.indoors ? ", indoors" : "")
            << (leg.concealed ? ", hidden" : "") << ", stretch " << leg.stretch + 1;
    }
}

study::RunScheme any_scheme_of(const site::Job& job) {
    const auto setting = prepared(job);
    const search::Shop shop = search::shop_for(setting);
    const auto routes = search::routes_of(shop, setting);
    const auto heads = search::heads_of(shop, setting);
    RC_PRE(!routes.empty() && !heads.empty());
    return search::scheme_of(routes[*rc::gen::inRange<std::size_t>(0, routes.size())],
                             heads[*rc::gen::inRange<std::size_t>(0, heads.size())]);
}

}  // namespace toft::support
