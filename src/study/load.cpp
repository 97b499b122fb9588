#include "study/setting_parts.h"

namespace toft::study {

namespace {

/// A power factor that nobody stated is taken as 1, as the trade does when it divides watts by
/// volts; the answer says so.
double stated_power_factor(const site::Fact<double>& fact, bool& missing) {
    missing = missing || !fact.known;
    return fact.known ? fact.low : 1.0;
}

/// All circuits together, no diversity: those with watts at their power factor, the others at the
/// rating of their device.
template <class L>
ValueIn<L, Amperes> circuits_current(L& ledger, const Setting<L>& s, bool& missing) {
    ValueIn<L, Amperes> sum = ledger.stated({"I.none", "no circuit"}, amperes(0), "survey");
    int number = 0;
    for (const site::Circuit& circuit : s.building_facts->circuits) {
        ++number;
        const Name name{"I", "current of a circuit", number};
        if (!circuit.load_w.known) {
            sum =
                sum + ledger.stated(name, circuit.device->rating, "rating of the circuit's device");
            continue;
        }
        const double pf = stated_power_factor(circuit.power_factor, missing);
        const auto p = ledger.stated({"S", "apparent power of a circuit", number},
                                     apparent(Watts{circuit.load_w.high}, pf), "survey");
        sum = sum + ledger.let(name, p / s.supply.u0);
    }
    return sum;
}

template <class L>
ValueIn<L, Amperes> present_current(L& ledger, const Setting<L>& s, bool& missing) {
    const site::Building& b = *s.building_facts;
    if (b.load.known)
        return ledger.stated({"I.load", "load of the building"}, b.load.high, "survey");
    if (!b.load_w.known) return circuits_current(ledger, s, missing);
    const double pf = stated_power_factor(b.power_factor, missing);
    const auto p = ledger.stated({"S.load", "apparent power of the building"},
                                 apparent(Watts{b.load_w.high}, pf), "survey");
    return ledger.let({"I.load", "load of the building"}, p / s.supply.u0);
}

/// Power factor of the whole: stated for the building, else that of all circuits' watts together.
template <class L>
double whole_power_factor(const Setting<L>& s) {
    const site::Building& b = *s.building_facts;
    if (b.power_factor.known) return b.power_factor.low;
    double watts = 0;
    double volt_amperes = 0;
    for (const site::Circuit& c : b.circuits) {
        if (!c.load_w.known) continue;
        watts += c.load_w.high;
        volt_amperes += c.load_w.high / (c.power_factor.known ? c.power_factor.low : 1.0);
    }
    return volt_amperes > 0 ? watts / volt_amperes : 1.0;
}

/// The drop allowed to the run, never more than what any load behind it may lose in all.
template <class L>
ValueIn<L, double> drop_limit(L& ledger, const Setting<L>& s) {
    const tables::Limits& limits = s.catalogue->limits;
    const site::Wishes& wishes = s.job->wishes;
    const auto pick = [&](const Name& name, const site::Fact<double>& wish,
                          const Cited<double>& rule) -> ValueIn<L, double> {
        if (wish.known) return ledger.stated(name, wish.low, "wish");
        return ledger.table(name, rule);
    };
    const auto run =
        pick({"drop.run", "drop allowed to the run", 0, "%"}, wishes.drop_run, limits.drop_run);
    const auto other = pick({"drop.other", "drop allowed to any load", 0, "%", "525"},
                            wishes.drop_other, limits.drop_other);
    const Name result{"drop.limit", "drop the run may have", 0, "%", "525"};
    bool lights = false;
    for (const site::Circuit& c : s.building_facts->circuits) {
        lights = lights || c.kind == site::CircuitKind::lighting;
    }
    if (!lights) return ledger.let(result, least(run, other));
    const auto lighting = pick({"drop.lighting", "drop allowed to lighting", 0, "%", "525"},
                               wishes.drop_lighting, limits.drop_lighting);
    return ledger.let(result, least(least(run, other), lighting));
}

}  // namespace

template <class L>
void prepare_load(L& ledger, Settler&, Setting<L>& s) {
    const site::Building& b = *s.building_facts;
    bool missing = false;
    const auto present = present_current(ledger, s, missing);
    const auto future = ledger.stated({"I.future", "allowance for later"},
                                      b.future_load.known ? b.future_load.high : amperes(0),
                                      b.future_load.known ? "survey" : "none stated");
    s.ib = ledger.let({"Ib", "design current of the run", 0, "", "433.1.1"}, present + future);
    s.power_factor =
        ledger.stated({"cos.phi", "power factor of the load"}, whole_power_factor(s), "survey");
    s.drop_limit = drop_limit(ledger, s);
    if (missing) {
        s.assumed.push_back(
            "power factor not stated: watts over volts gives the current; motors and "
            "inverters draw more");
    }
    if (!b.load.known && !b.load_w.known && b.circuits.size() > 1) {
        s.assumed.push_back("all circuits are taken together, without diversity");
    }
}

template void prepare_load(Silent&, Settler&, Setting<Silent>&);
template void prepare_load(Recording&, Settler&, Setting<Recording>&);

}  // namespace toft::study
