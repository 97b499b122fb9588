#include "published/methods.h"

#include "published/cable_methods.h"

#include "base/root.h"
#include "cable/drop.h"
#include "cable/fault_heat.h"
#include "cable/resistance.h"
#include "earth/rod.h"
#include "network/drop.h"
#include "network/loop.h"
#include "published/demand_methods.h"
#include "published/device_methods.h"
#include "published/earth_methods.h"
#include "published/guard_methods.h"
#include "published/motor_methods.h"
#include "published/shock_methods.h"
#include "published/soil_methods.h"
#include "study/figures.h"
#include "study/path.h"
#include "support/catalogue.h"
#include "support/jobs.h"
#include "walk/metalwork.h"

#include <functional>
#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;

const tables::CableConstants& constants() { return support::catalogue().cable_constants; }

/// The metal the case names, or null where the tables do not know it.
const tables::Material* metal_of(const PublishedCase& c) {
    const auto metal = tables::metal_of(c.word("metal"));
    return metal ? &constants().material(*metal) : nullptr;
}

double hot(const PublishedCase& c, const std::string& name, const PerKelvin& alpha) {
    Silent ledger;
    const double rise =
        c.numbers.count("rise")
            ? c.number("rise")
            : cable::resistance_rise(ledger, unnamed, alpha, celsius(c.number("t", 20)));
    return cable::resistance_at(ledger, unnamed, ohms_per_metre(c.number(name)), rise).number();
}

Results conductor_resistance(const PublishedCase& c) {
    const tables::Material* metal = metal_of(c);
    if (!metal) throw std::runtime_error("no metal " + c.word("metal"));
    const double r = hot(c, "r20", metal->alpha20.value);
    return {{"r", r}, {"both", 2 * r}, {"line.to.line", root(3.0) * r}};
}

Results earth_fault_loop(const PublishedCase& c) {
    Silent ledger;
    const PerKelvin copper = constants().copper.alpha20.value;
    const Metres length = metres(c.number("length"));
    const OhmsPerMetre loop = ohms_per_metre(hot(c, "r1", copper) + hot(c, "r2", copper));
    const Ohms path = loop * length;
    return {{"R1R2", path.number()},
            {"Zs",
             network::largest_loop(ledger, unnamed, ohms(c.number("Ze")), Impedance{path, ohms(0)})
                 .number()}};
}

Results fault_current(const PublishedCase& c) {
    Silent ledger;
    const Volts u0 = volts(c.number("U0"));
    const double factor = c.number("c", 1);
    if (c.numbers.count("Z")) {
        return {
            {"I",
             network::fault_current(ledger, unnamed, factor, u0, ohms(c.number("Z"))).number()}};
    }
    const Ohms source = u0 / amperes(c.number("I.source"));
    const Impedance added{ohms(c.number("R")), ohms(c.number("X", 0))};
    const auto current = [&](const Ohms& loop) {
        return network::fault_current(ledger, unnamed, factor, u0, loop).number();
    };
    return {{"I.smallest", current(network::largest_loop(ledger, unnamed, source, added))},
            {"I.largest", current(network::smallest_loop(ledger, unnamed, source, added))}};
}

Results fault_heat_constant(const PublishedCase& c) {
    const tables::Material* known = metal_of(c);
    const double big_k = known ? known->big_k.value : c.number("K");
    const double beta = known ? known->beta.value.number() : c.number("beta");
    return {{"k", cable::k_from_principles(big_k, beta, celsius(c.number("t.initial")),
                                           celsius(c.number("t.final")))
                      .number()}};
}

AmpereSquareSeconds withstand(double k, double section) {
    Silent ledger;
    return cable::withstand(ledger, unnamed, heat_constant(k), square_millimetres(section));
}

/// The section at which a conductor of constant `k` just withstands `energy`.
double section_for(double k, AmpereSquareSeconds energy) {
    return last_holding(0, 1e4, [&](double s) { return withstand(k, s) <= energy; });
}

AmpereSquareSeconds energy(double current, double time) {
    return squared(amperes(current)) * seconds(time);
}

Results fault_heat(const PublishedCase& c) {
    const double k = c.number("k");
    Results results;
    if (c.numbers.count("S")) {
        const AmpereSquareSeconds limit = withstand(k, c.number("S"));
        results["I2t"] = limit.number();
        if (c.numbers.count("I")) {
            results["t"] =
                last_holding(0, 100, [&](double t) { return energy(c.number("I"), t) <= limit; });
        }
        if (c.numbers.count("t")) {
            results["I"] =
                last_holding(0, 1e6, [&](double i) { return energy(i, c.number("t")) <= limit; });
        }
        return results;
    }
    const AmpereSquareSeconds fault = c.numbers.count("I2t")
                                          ? ampere_square_seconds(c.number("I2t"))
                                          : energy(c.number("I"), c.number("t"));
    results["S"] = section_for(k, fault);
    return results;
}

Results equal_heat(const PublishedCase& c) {
    return {{"S", section_for(c.number("k.other"), withstand(c.number("k"), c.number("S.given")))}};
}

Results armour_as_copper(const PublishedCase& c) {
    const OhmsPerMetre wanted = support::conductor(c.number("copper")).r20.value;
    for (const tables::Cable& cable : support::catalogue().cables) {
        if (cable.family != tables::Family::armoured_xlpe_copper) continue;
        if (cable.cores == static_cast<int>(c.number("cores")) &&
            cable.armour_r20.value <= wanted) {
            return {{"S", cable.section.number()}};
        }
    }
    return {};
}

Results main_bonding(const PublishedCase& c) {
    const auto neutral = square_millimetres(c.number("neutral"));
    for (const tables::BondingStep& step : support::catalogue().main_bonding) {
        if (neutral > step.over && neutral <= step.to) return {{"S", step.bond.value.number()}};
    }
    return {};
}

Results voltage_drop(const PublishedCase& c) {
    Silent ledger;
    const Metres length = metres(c.number("length"));
    const Impedance line{ohms_per_metre(c.number("r")) * length,
                         ohms_per_metre(c.number("x", 0)) * length};
    return {
        {"dU", network::line_drop(
                   ledger, volts(c.number("U0")),
                   network::Loading<Silent>{amperes(c.number("Ib")), c.number("pf", 1), 0}, line)
                   .number()}};
}

/// The drop and the conductor temperature of the study's own leg, with the size from the tables.
Results working_temperature(const PublishedCase& c) {
    Silent ledger;
    tables::Cable cable = support::cable(2, c.number("S", 50));
    cable::Surroundings around;
    around.laying = c.numbers.count("soil") ? cable::Laying::direct : cable::Laying::clipped;
    around.temperature = celsius(c.number("t.reference", 30));
    around.thermal_resistivity = c.number("soil", 2.5);
    around.depth = metres(0.7);
    const tables::Make& make = support::make(cable.family);
    const auto factors = cable::leg_factors(
        ledger, {constants(), make, support::catalogue().limits.buried_cc}, around);
    if (c.numbers.count("It")) {
        cable.two.rating[static_cast<std::size_t>(*factors.method)].value = amperes(c.number("It"));
    }
    const cable::DropInput<Silent> in{constants(),
                                      make,
                                      cable.two,
                                      factors,
                                      1,
                                      amperes(c.number("Ib")),
                                      0,
                                      celsius(c.number("t.around")),
                                      metres(c.number("length", 1)),
                                      1};
    const auto leg = cable::leg_drop(ledger, in);
    return {{"t", leg.conductor.number()},
            {"Cs", factors.cs},
            {"dU", network::line_drop(ledger, volts(230), network::Loading<Silent>{in.ib, 1.0, 0},
                                      leg.loop)
                       .number()}};
}

/// Line and armour of a cable of given resistances at given temperatures, along the study's own
/// path.
Results armour_loop(const PublishedCase& c) {
    Silent ledger;
    tables::Catalogue own;
    own.cable_constants = constants();
    tables::Make& make = own.makes[static_cast<std::size_t>(tables::Family::armoured_xlpe_copper)];
    make = support::make(tables::Family::armoured_xlpe_copper);
    make.live.initial.value = celsius(c.number("t.line"));
    make.armour.initial.value = celsius(c.number("t.armour"));
    own.cable_constants.armour_ac_factor.value = c.number("ac");
    own.cable_constants.armour_x.value = ohms_per_metre(c.number("x"));
    tables::Cable cable = support::cable(3, 16);
    cable.r20.value = ohms_per_metre(c.number("r1"));
    cable.x.value = ohms_per_metre(0);
    cable.armour_r20.value = ohms_per_metre(c.number("r.armour"));
    study::Setting<Silent> setting;
    setting.catalogue = &own;
    const auto scheme = support::scheme(cable, study::Protective::armour, support::fuse(32));
    const auto path = study::fault_path(
        ledger, setting, scheme.first(),
        study::PathAt<Silent>{study::Heat::working, metres(c.number("length")), 0});
    return {{"Z", magnitude(path.line + path.serving).number()}};
}

Results limiting_loop(const PublishedCase& c) {
    Silent ledger;
    const site::Job job = support::plain_job();
    const tables::Device& device = c.word("device") == "fuse"
                                       ? support::fuse(c.number("In"))
                                       : support::breaker(c.word("device"), c.number("In"));
    const auto scheme = support::scheme(support::cable(3, 10), study::Protective::core, device);
    return {{"Zs",
             study::largest_loop_for(ledger, support::prepared(job), scheme, seconds(c.number("t")))
                 .number()}};
}

Ohms rods(const PublishedCase& c, double count) {
    Silent ledger;
    const earth::Rods<Silent> given{ohm_metres(c.number("rho", 100)), metres(c.number("L", 2.4)),
                                    metres(c.number("d", 0.016)), count};
    return earth::rod_resistance(ledger, unnamed, support::catalogue().rod_parallel, given);
}

Results earth_rods(const PublishedCase& c) {
    const double count = c.number("n", 1);
    const double of_one = rods(c, count) / rods(c, 1);
    return {{"R", rods(c, count).number()},
            {"factor", count * of_one},
            {"R.together", c.number("R.one", 1) * of_one}};
}

Results extraneous_part(const PublishedCase& c) {
    const Volts u0 = support::catalogue().limits.u0.value;
    return {
        {"R",
         walk::extraneous_limit(u0, amperes(c.number("I")), ohms(c.number("R.body"))).number()}};
}

const std::map<std::string, std::function<Results(const PublishedCase&)>>& methods() {
    static const std::map<std::string, std::function<Results(const PublishedCase&)>> known{
        {"conductor resistance", conductor_resistance},
        {"earth fault loop", earth_fault_loop},
        {"fault current", fault_current},
        {"fault heat constant", fault_heat_constant},
        {"fault heat", fault_heat},
        {"equal heat in another metal", equal_heat},
        {"armour as copper", armour_as_copper},
        {"main bonding", main_bonding},
        {"voltage drop", voltage_drop},
        {"working temperature", working_temperature},
        {"tabulated impedance", tabulated_impedance},
        {"rating of a leg", rating_of_leg},
        {"ambient factor", ambient_factor},
        {"armour of a cable", armour_of_cable},
        {"flat cable", flat_cable},
        {"loop through the armour", armour_loop},
        {"limiting loop", limiting_loop},
        {"device", device},
        {"selectivity", selectivity},
        {"residual times", residual_times},
        {"largest electrode", largest_electrode},
        {"residual need", residual_need},
        {"residual pair", residual_pair},
        {"extraneous part", extraneous_part},
        {"earth rods", earth_rods},
        {"four-pin reading", four_pin_reading},
        {"soil fit", soil_fit},
        {"fall of potential", fall_of_potential},
        {"step beside a rod", step_beside_rod},
        {"rods round a rectangle", rods_round_rectangle},
        {"mesh", mesh},
        {"body", body},
        {"electrode heat", electrode_heat},
        {"lost neutral", lost_neutral},
        {"touch voltage", touch_voltage},
        {"allowance", allowance},
        {"household demand", household_demand},
        {"circuit current", circuit_current},
        {"neutral with third harmonics", neutral_with_harmonics},
        {"rating with third harmonics", rating_with_harmonics},
        {"motor's current", motor_current},
        {"voltage a motor takes", motor_voltage},
        {"operators' bounds", operators_bounds}};
    return known;
}

}  // namespace

Results work_out(const PublishedCase& published) {
    const auto method = methods().find(published.method);
    if (method == methods().end()) throw std::runtime_error("no method " + published.method);
    return method->second(published);
}

}  // namespace toft::published
