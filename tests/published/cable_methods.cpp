#include "published/cable_methods.h"

#include "base/root.h"
#include "cable/drop.h"
#include "cable/harmonics.h"
#include "network/loop.h"
#include "support/catalogue.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;
using tables::Laying;

tables::Family family_of(const PublishedCase& c) {
    std::string word = c.word("family");
    std::replace(word.begin(), word.end(), '-', ' ');
    const auto family = tables::family_of(word);
    if (!family) throw std::runtime_error("no family " + word);
    return *family;
}

int count(const PublishedCase& c, const char* name) { return static_cast<int>(c.number(name)); }

const tables::Cable& cable_of(const PublishedCase& c) {
    return support::cable(family_of(c), count(c, "cores"), c.number("S"));
}

/// The surroundings in which every factor but that for buried cable is 1.
cable::Surroundings tabulated_for(Laying laying) {
    cable::Surroundings at;
    at.laying = laying;
    at.temperature = celsius(tables::in_ground(laying) ? 20 : 30);
    at.depth = metres(0.7);
    return at;
}

}  // namespace

Results tabulated_impedance(const PublishedCase& c) {
    const tables::Cable& cable = cable_of(c);
    const tables::Make& make = support::make(cable.family);
    Silent ledger;
    const cable::FactorTables tables{support::catalogue().cable_constants, make,
                                     support::catalogue().limits.buried_cc};
    const auto factors = cable::leg_factors(ledger, tables, tabulated_for(Laying::clipped));
    const int phases = count(c, "phases");
    const cable::DropInput<Silent> in{tables.constants, make, cable.duty(phases), factors,   phases,
                                      amperes(1e4),     0,    celsius(30),        metres(1), 1};
    const auto leg = cable::leg_drop(ledger, in);
    const double to_line = phases == 3 ? std::sqrt(3.0) : 1;
    return {{"r", leg.loop.r.number() * to_line},
            {"x", leg.loop.x.number() * to_line},
            {"z", magnitude(leg.loop).number() * to_line}};
}

Results rating_of_leg(const PublishedCase& c) {
    const tables::Cable& cable = cable_of(c);
    const tables::Make& make = support::make(cable.family);
    const tables::Duty& duty = cable.duty(count(c, "phases"));
    const cable::FactorTables tables{support::catalogue().cable_constants, make,
                                     support::catalogue().limits.buried_cc};
    Silent ledger;
    Results results;
    for (std::size_t i = 0; i < tables::layings; ++i) {
        const auto laying = static_cast<Laying>(i);
        const auto factors = cable::leg_factors(ledger, tables, tabulated_for(laying));
        if (!factors.method) continue;
        const Amperes rated = cable::leg_rating(ledger, duty, factors, 1);
        results[tables::laying_word(laying)] = (rated / factors.cc).number();
    }
    for (std::size_t i = 0; i < tables::reference_methods; ++i) {
        if (!duty.rating[i].citation) continue;
        results[tables::method_word(static_cast<tables::ReferenceMethod>(i))] =
            duty.rating[i].value.number();
    }
    return results;
}

Results ambient_factor(const PublishedCase& c) {
    Silent ledger;
    const cable::FactorTables tables{support::catalogue().cable_constants,
                                     support::make(family_of(c)),
                                     support::catalogue().limits.buried_cc};
    cable::Surroundings at = tabulated_for(Laying::clipped);
    at.temperature = celsius(c.number("t"));
    return {{"Ca", cable::leg_factors(ledger, tables, at).ca}};
}

Results armour_of_cable(const PublishedCase& c) {
    const tables::Cable& cable = cable_of(c);
    return {{"area", cable.armour_area.value.number()},
            {"r", cable.armour_r20.value.number()},
            {"share", cable.r20.value / cable.armour_r20.value}};
}

Results flat_cable(const PublishedCase& c) {
    const tables::Cable& cable =
        support::cable(tables::Family::flat_twin_and_earth, 2, c.number("S"));
    const OhmsPerMetre both = cable.r20.value + cable.cpc_r20.value;
    Silent ledger;
    const Impedance path{both * metres(c.number("length", 0)) * c.number("rise", 1), ohms(0)};
    return {{"cpc", cable.cpc.number()},
            {"r1r2", both.number()},
            {"Zs", network::largest_loop(ledger, unnamed, ohms(c.number("Ze", 0)), path).number()}};
}

/// The smallest cable that carries the lines of a three-phase load, PVC clipped in air of 30 C.
Results rating_with_harmonics(const PublishedCase& c) {
    Silent ledger;
    const double share = c.number("h3") * 100;
    const auto& steps = support::catalogue().cable_constants.harmonic;
    const double factor =
        share > 0 ? cable::harmonic_factor(ledger, steps,
                                           cable::ThirdHarmonics<Silent>{share, 3 * share / 100, 1})
                  : 1;
    const cable::FactorTables tables{support::catalogue().cable_constants,
                                     support::make(tables::Family::unarmoured_pvc_copper),
                                     support::catalogue().limits.buried_cc};
    const auto factors = cable::leg_factors(ledger, tables, tabulated_for(Laying::clipped));
    double section = 0;
    for (const tables::Cable& cable : support::catalogue().cables) {
        if (cable.family != tables::Family::unarmoured_pvc_copper || cable.cores != 5) continue;
        const Amperes iz = cable::leg_rating(ledger, cable.duty(3), factors, 1) * factor;
        if (iz.number() < c.number("I")) continue;
        if (section == 0 || cable.section.number() < section) section = cable.section.number();
    }
    return {{"I.rating", c.number("I") / factor}, {"S", section}};
}

}  // namespace toft::published
