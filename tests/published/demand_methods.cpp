#include "published/demand_methods.h"

#include "demand/allowance.h"
#include "demand/scenario.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <algorithm>
#include <stdexcept>

namespace toft::published {

namespace {

using site::CircuitKind;
using support::PublishedCase;

const tables::Demand& demand_tables() { return support::catalogue().demand; }

/// A word of the case with its blanks back.
std::string spaced(std::string word) {
    std::replace(word.begin(), word.end(), '-', ' ');
    return word;
}

CircuitKind kind_of(const std::string& word) {
    const auto& all = site::words<CircuitKind>();
    const auto found = std::find(all.begin(), all.end(), word);
    if (found == all.end()) throw std::runtime_error("no kind of circuit " + word);
    return static_cast<CircuitKind>(found - all.begin());
}

site::Circuit of_watts(CircuitKind kind, double watts) {
    site::Circuit c;
    c.kind = kind;
    c.load_w = support::measured(watts);
    c.power_factor = support::measured(1.0);
    return c;
}

demand::Place<Silent> place_at(double u0) { return {&demand_tables(), volts(u0), 1, ""}; }

}  // namespace

Results allowance(const PublishedCase& c) {
    const auto* found =
        tables::find_allowance(demand_tables(), spaced(c.word("load")), spaced(c.word("premises")));
    if (!found) throw std::runtime_error("no row for " + c.word("load"));
    tables::Allowance row = *found;
    if (!c.numbers.count("sockets")) row.extra.value = amperes(0);
    std::vector<Amperes> currents;
    for (const char* name : {"X", "Y", "Z"}) {
        if (c.numbers.count(name)) currents.push_back(amperes(c.number(name)));
    }
    if (c.numbers.count("P")) currents.push_back(amperes(c.number("P") / c.number("U0")));
    Silent ledger;
    return {{"I", demand::allowed(ledger, row, currents, demand::AllowedAt<Silent>{}).number()}};
}

Results household_demand(const PublishedCase& c) {
    site::Building house;
    const double u0 = c.number("U0");
    house.circuits = {of_watts(CircuitKind::cooker, c.number("P.cooker")),
                      of_watts(CircuitKind::shower, c.number("P.shower")),
                      of_watts(CircuitKind::lighting, c.number("P.lights")),
                      of_watts(CircuitKind::socket_ring, c.number("I.ring") * u0),
                      of_watts(CircuitKind::socket_ring, c.number("I.ring") * u0)};
    Silent ledger;
    const auto found = demand::building_demand(ledger, place_at(u0), house, site::Scenario::today);
    const double socket =
        tables::find_allowance(demand_tables(), "cooking", "household")->extra.value.number();
    return {{"I", found.total.number() - socket}};
}

Results circuit_current(const PublishedCase& c) {
    Silent ledger;
    const CircuitKind kind = kind_of(spaced(c.word("kind")));
    const auto* usual = tables::find_usual(demand_tables(), site::word(kind));
    return {{"I", demand::circuit_load(ledger, place_at(c.number("U0", 230)),
                                       of_watts(kind, c.number("P")), 1)
                      .full.number()},
            {"In", usual ? usual->rating.value.number() : 0}};
}

Results neutral_with_harmonics(const PublishedCase& c) {
    Silent ledger;
    const Amperes line = amperes(c.number("I"));
    const Amperes third = line * c.number("h3");
    return {{"I.N", demand::neutral_current(ledger, demand::Lines<Silent>{{line, line, line}},
                                            demand::Lines<Silent>{{third, third, third}}, "")
                        .number()}};
}

Results operators_bounds(const PublishedCase& c) {
    const tables::Limits& limits = support::catalogue().limits;
    const Volts u0 = volts(c.number("U0"));
    return {{"I", limits.notice_demand.value.number()},
            {"S", (limits.notice_demand.value * u0).number()},
            {"I.generation", limits.notice_generation.value.number()},
            {"S.generation", (limits.notice_generation.value * u0).number()}};
}

}  // namespace toft::published
