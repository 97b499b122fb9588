#include "published/shock_methods.h"

#include "base/root.h"
#include "network/lost_neutral.h"
#include "network/terminal_rise.h"
#include "network/touch_voltage.h"
#include "shock/body.h"
#include "shock/electrode_heat.h"
#include "support/catalogue.h"

#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;
using tables::BodyPath;
using tables::Percentile;
using tables::Skin;

const tables::Shock& tables_of_shock() { return support::catalogue().shock; }

shock::BodyCurrent<Silent> through(const PublishedCase& c, Percentile percentile) {
    Silent ledger;
    const bool wet = c.words.count("skin") && c.word("skin") == "salt-wet";
    const bool feet = c.words.count("to") && c.word("to") == "feet";
    const shock::Person person{wet ? Skin::salt_wet : Skin::dry, percentile,
                               feet ? BodyPath::hand_to_both_feet : BodyPath::hand_to_hand};
    return shock::body_current(ledger, tables_of_shock(), person, shock::Footing<Silent>{},
                               volts(c.number("U")));
}

/// The terminal on which one path to earth stands, at a load that the case gives in amperes.
network::FloatingTerminal terminal(double load_a, double earth_ohm) {
    const network::LostNeutral circuit{
        volts(230),
        network::single_phase(volts(230)),
        {{network::LoadKind::constant_impedance, {230 * load_a}, 1, false, 0}},
        {{"electrode", ohms(earth_ohm)}}};
    const auto found = network::lost_neutral(circuit);
    if (!found) throw std::runtime_error(found.error().front().says);
    return *found;
}

}  // namespace

Results body(const PublishedCase& c) {
    const auto five = through(c, Percentile::five);
    const auto fifty = through(c, Percentile::fifty);
    const auto most = through(c, Percentile::ninety_five);
    return {{"Z.5", five.impedance.number()},
            {"Z.50", fifty.impedance.number()},
            {"Z.95", most.impedance.number()},
            {"I.50", fifty.current.number()}};
}

Results electrode_heat(const PublishedCase& c) {
    Silent ledger;
    tables::ElectrodeHeat heat = tables_of_shock().heat;
    if (c.numbers.count("K")) heat.short_time.value = tables::HeatDensity(c.number("K"));
    const shock::HotRod<Silent> rod{ohm_metres(c.number("rho")), metres(c.number("L", 1)),
                                    metres(c.number("d", 1))};
    const auto found = shock::short_current(ledger, unnamed, heat, rod, seconds(c.number("t")));
    return {{"J", found.density.number()},
            {"I", found.current.number()},
            {"n", amperes(c.number("I.fault", 0)) / found.current}};
}

Results lost_neutral(const PublishedCase& c) {
    Silent ledger;
    Amperes load = amperes(c.number("I", 0));
    Results results;
    if (c.numbers.count("I.L1")) {
        load = network::neutral_current(ledger, unnamed, amperes(c.number("I.L1")),
                                        amperes(c.number("I.L2")), amperes(c.number("I.L3")));
        results["I.N"] = load.number();
    }
    if (c.numbers.count("V")) {
        const network::FloatingSupply<Silent> supply{volts(c.number("U0", 230)), c.number("c", 1.1),
                                                     load};
        results["R"] =
            network::electrode_for(ledger, unnamed, supply, volts(c.number("V"))).number();
    }
    if (c.numbers.count("R.path")) {
        const double earth = c.number("R.path");
        const double reached = last_holding(1e-3, 1000, [&](double i) {
            return terminal(i, earth).magnitude <= volts(c.number("V.path"));
        });
        results["I.path"] = terminal(reached, earth).paths.front().number();
    }
    return results;
}

Results touch_voltage(const PublishedCase& c) {
    Silent ledger;
    return {{"Ut", network::own_electrode_touch(ledger, unnamed, amperes(c.number("IdN")),
                                                ohms(c.number("RA")))
                       .number()}};
}

}  // namespace toft::published
