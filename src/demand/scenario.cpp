#include "demand/scenario.h"

#include "demand/allowance.h"

#include <string>

namespace toft::demand {

namespace {

template <class L>
using Loads = std::vector<CircuitLoad<L>>;

/// What one line carries.
template <class L>
struct OnLine {
    const Place<L>& place;
    Loads<L> loads;
    bool allowances = true;
    int line = 0;  ///< for the working; 0 where there is one
};

template <class L>
void add(ValueIn<L, Amperes>& sum, bool& any, const ValueIn<L, Amperes>& more) {
    sum = any ? sum + more : more;
    any = true;
}

/// The row that makes an allowance for the circuit, or null.
template <class L>
const tables::Allowance* row_for(const CircuitLoad<L>& load, const tables::Demand& demand,
                                 const std::string& premises) {
    return tables::find_allowance(demand, load.kind->load, premises);
}

/// Circuits of one row on one line: what it allows, and not less than the largest that draws its
/// whole current.
template <class L>
ValueIn<L, Amperes> of_one_load(L& ledger, const OnLine<L>& on, const tables::Allowance& row,
                                const Loads<L>& loads) {
    std::vector<ValueIn<L, Amperes>> currents;
    const CircuitLoad<L>* alone = nullptr;
    for (const CircuitLoad<L>& load : loads) {
        currents.push_back(load.lasting);
        if (!load.kind->alone) continue;
        if (!alone || plain(alone->lasting) < plain(load.lasting)) alone = &load;
    }
    return allowed(ledger, row, currents,
                   AllowedAt<L>{on.line, on.place.of, alone ? &alone->lasting : nullptr});
}

/// The current of a line: row by row with its allowance, the rest in full.
template <class L>
ValueIn<L, Amperes> line_current(L& ledger, const OnLine<L>& on, const std::string& premises) {
    const tables::Demand& demand = *on.place.tables;
    ValueIn<L, Amperes> sum{};
    bool any = false;
    for (const tables::Allowance& row : demand.allowances) {
        if (row.premises != premises || !on.allowances) continue;
        Loads<L> of_row;
        for (const CircuitLoad<L>& load : on.loads) {
            const bool constant = load.circuit->continuous == site::Answer::yes;
            if (load.kind->load == row.load && !constant) of_row.push_back(load);
        }
        if (!of_row.empty()) add<L>(sum, any, of_one_load(ledger, on, row, of_row));
    }
    for (const CircuitLoad<L>& load : on.loads) {
        const tables::Allowance* row = row_for(load, demand, premises);
        const bool constant = load.circuit->continuous == site::Answer::yes;
        if (on.allowances && row && !constant) continue;
        add<L>(sum, any, on.allowances ? load.lasting : load.full);
        if (!row || !(row->extra.value > amperes(0))) continue;
        add<L>(sum, any,
               ledger.table({"extra", "a socket in the control unit", 0, "", "", row->cell.c_str()},
                            row->extra));
    }
    const Name name{"I.line", "current of a line", on.line, "", "", on.place.of};
    if (!any) return ledger.stated(name, amperes(0), "no circuit");
    return ledger.let(name, sum);
}

/// Third harmonics of a line, in the same share as its current.
template <class L>
ValueIn<L, Amperes> line_third(L& ledger, const OnLine<L>& on, const ValueIn<L, Amperes>& line) {
    ValueIn<L, Amperes> third{};
    ValueIn<L, Amperes> all{};
    bool any = false;
    bool stated = false;
    for (const CircuitLoad<L>& load : on.loads) {
        all = any ? all + load.lasting : load.lasting;
        third = any ? third + load.third : load.third;
        any = true;
        stated = stated || plain(load.third) > amperes(0);
    }
    const Name name{"I.line3", "third harmonic of a line", on.line, "", "", on.place.of};
    if (!stated) return ledger.stated(name, amperes(0), "none stated");
    const auto sum = ledger.let({"I.all", "all on the line", on.line, "", "", on.place.of}, all);
    return ledger.let(name, third * (line / sum));
}

template <class L>
void from_circuits(L& ledger, const Place<L>& place, const site::Building& building,
                   site::Scenario scenario, BuildingDemand<L>& out) {
    Loads<L> loads;
    std::vector<Spread> shapes;
    int number = 0;
    for (const site::Circuit& circuit : building.circuits) {
        ++number;
        if (!counts(circuit, scenario)) continue;
        if (current_from(*place.tables, circuit) == CurrentFrom::nothing) continue;
        loads.push_back(circuit_load(ledger, place, circuit, number));
        shapes.push_back(
            {plain(loads.back().full), circuit.phases, circuit.later == site::Answer::yes});
    }
    const std::vector<int> at = spread(shapes, place.phases);
    const std::string& premises =
        tables::premises_of(*place.tables, building.use ? site::word(*building.use) : "");
    Lines<L> third;
    for (int k = 0; k < place.phases; ++k) {
        OnLine<L> on{
            place, {}, scenario != site::Scenario::everything, place.phases == 1 ? 0 : k + 1};
        for (std::size_t i = 0; i < loads.size(); ++i) {
            if (at[i] == every_line || at[i] == k) on.loads.push_back(loads[i]);
        }
        const auto line = static_cast<std::size_t>(k);
        out.lines.each[line] = line_current(ledger, on, premises);
        if (place.phases == 3) third.each[line] = line_third(ledger, on, out.lines.each[line]);
    }
    out.heaviest = out.lines.each[most_loaded(out.lines, place.phases)];
    out.neutral =
        place.phases == 1 ? out.heaviest : neutral_current(ledger, out.lines, third, place.of);
    const auto& [d, e, f] = third.each;
    out.harmonics = plain(d) + plain(e) + plain(f) > amperes(0);
    if (!out.harmonics) return;
    out.third = ledger.let({"I.3rd.mean", "mean third harmonic of the lines", 0, "", "", place.of},
                           (d + e + f) / 3.0);
}

/// One figure for the whole building, the same on every line.
template <class L>
ValueIn<L, Amperes> stated_load(L& ledger, const Place<L>& place, const site::Building& b) {
    const Name name{"I.load", "load of the building", 0, "", "", place.of};
    if (b.load.known) return ledger.stated(name, b.load.high, "survey");
    const double pf = b.power_factor.known ? b.power_factor.low : 1.0;
    const auto p = ledger.stated({"S.load", "apparent power of the building", 0, "", "", place.of},
                                 apparent(Watts{b.load_w.high}, pf), "survey");
    if (place.phases == 1) return ledger.let(name, p / place.u0);
    return ledger.let(name, p / (place.u0 * 3.0));
}

template <class L>
void from_figure(L& ledger, const Place<L>& place, const site::Building& building,
                 BuildingDemand<L>& out) {
    out.heaviest = stated_load(ledger, place, building);
    for (int k = 0; k < place.phases; ++k) {
        out.lines.each[static_cast<std::size_t>(k)] = out.heaviest;
    }
    out.neutral = place.phases == 1
                      ? out.heaviest
                      : ledger.stated({"I.N", "current of the neutral", 0, "", "", place.of},
                                      amperes(0), "spread evenly");
}

}  // namespace

bool counts(const site::Circuit& circuit, site::Scenario scenario) {
    return scenario != site::Scenario::today || circuit.later != site::Answer::yes;
}

bool by_circuits(const site::Building& building) {
    return !building.load.known && !building.load_w.known && !building.circuits.empty();
}

bool load_is_stated(const site::Building& building) {
    return building.load.known || building.load_w.known || !building.circuits.empty();
}

template <class L>
BuildingDemand<L> building_demand(L& ledger, const Place<L>& place, const site::Building& building,
                                  site::Scenario scenario) {
    BuildingDemand<L> out;
    if (building.load.known || building.load_w.known) {
        from_figure(ledger, place, building, out);
    } else {
        from_circuits(ledger, place, building, scenario, out);
    }
    const bool more = building.future_load.known && scenario != site::Scenario::today;
    out.later = ledger.stated({"I.future", "allowance for later", 0, "", "", place.of},
                              more ? building.future_load.high : amperes(0),
                              more ? "survey" : "none counted");
    out.total = ledger.let({"I.demand", "demand of the building", 0, "", "", place.of},
                           out.heaviest + out.later);
    return out;
}

template <class L>
ValueIn<L, Amperes> sent_out(L& ledger, const Place<L>& place, const site::Building& building,
                             site::Scenario scenario) {
    const Name name{"I.sent", "sent out by solar and batteries", 0, "", "", place.of};
    ValueIn<L, Amperes> sum{};
    bool any = false;
    int number = 0;
    for (const site::Circuit& circuit : building.circuits) {
        ++number;
        if (!counts(circuit, scenario) || !sends_out(*place.tables, circuit)) continue;
        add<L>(sum, any, output_current(ledger, place, circuit, number));
    }
    return any ? ledger.let(name, sum) : ledger.stated(name, amperes(0), "none");
}

template Amperes sent_out(Silent&, const Place<Silent>&, const site::Building&, site::Scenario);
template Traced<Amperes> sent_out(Recording&, const Place<Recording>&, const site::Building&,
                                  site::Scenario);
template BuildingDemand<Silent> building_demand(Silent&, const Place<Silent>&,
                                                const site::Building&, site::Scenario);
template BuildingDemand<Recording> building_demand(Recording&, const Place<Recording>&,
                                                   const site::Building&, site::Scenario);

}  // namespace toft::demand
