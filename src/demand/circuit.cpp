#include "demand/circuit.h"

namespace toft::demand {

namespace {

template <class L>
ValueIn<L, Amperes> full_current(L& ledger, const Place<L>& place, const site::Circuit& circuit,
                                 int number) {
    const Name name{"I", "current of a circuit", number, "", "", place.of};
    switch (current_from(*place.tables, circuit)) {
        case CurrentFrom::nothing:
            return ledger.stated(name, amperes(0), "takes no current, or none is stated");
        case CurrentFrom::device:
            return ledger.stated(name, circuit.device->rating, "rating of the circuit's device");
        case CurrentFrom::usual:
            return ledger.table(
                name, tables::find_usual(*place.tables, site::word(circuit.kind))->rating);
        case CurrentFrom::watts:
            break;
    }
    const double pf = circuit.power_factor.known ? circuit.power_factor.low : 1.0;
    const auto p = ledger.stated({"S", "apparent power of a circuit", number, "", "", place.of},
                                 apparent(Watts{circuit.load_w.high}, pf), "survey");
    if (circuit.phases == 1) return ledger.let(name, p / place.u0);
    return ledger.let(name, p / (place.u0 * 3.0));
}

template <class L>
ValueIn<L, Amperes> lasting_current(L& ledger, const Place<L>& place, const CircuitLoad<L>& load,
                                    int number) {
    const site::Circuit& circuit = *load.circuit;
    if (circuit.kind != site::CircuitKind::welder || !circuit.duty_percent.known) return load.full;
    const auto duty = ledger.stated({"duty", "share of the time at work", number, "", "", place.of},
                                    circuit.duty_percent.high / 100, "survey");
    return ledger.let({"I.eff", "effective current of a welder", number, "", "", place.of},
                      load.full * root(duty));
}

template <class L>
ValueIn<L, Amperes> third_of(L& ledger, const Place<L>& place, const CircuitLoad<L>& load,
                             int number) {
    const site::Fact<double>& stated = load.circuit->third_harmonic;
    const Name name{"I.3rd", "third harmonic of a circuit", number, "", "", place.of};
    if (!stated.known) return ledger.stated(name, amperes(0), "none stated");
    const auto share = ledger.stated({"h3", "share of third harmonic", number, "", "", place.of},
                                     stated.high / 100, "survey");
    return ledger.let(name, load.lasting * share);
}

}  // namespace

CurrentFrom current_from(const tables::Demand& tables, const site::Circuit& circuit) {
    const std::string& kind = site::word(circuit.kind);
    const std::string& load = tables::load_of_kind(tables, kind).load;
    if (load == tables::load_generation) return CurrentFrom::nothing;
    if (circuit.load_w.known) return CurrentFrom::watts;
    if (load == tables::load_storage) return CurrentFrom::nothing;
    if (circuit.device) return CurrentFrom::device;
    return tables::find_usual(tables, kind) ? CurrentFrom::usual : CurrentFrom::nothing;
}

template <class L>
CircuitLoad<L> circuit_load(L& ledger, const Place<L>& place, const site::Circuit& circuit,
                            int number) {
    CircuitLoad<L> load;
    load.circuit = &circuit;
    load.kind = &tables::load_of_kind(*place.tables, site::word(circuit.kind));
    load.full = full_current(ledger, place, circuit, number);
    load.lasting = lasting_current(ledger, place, load, number);
    load.third = third_of(ledger, place, load, number);
    return load;
}

bool sends_out(const tables::Demand& tables, const site::Circuit& circuit) {
    const std::string& load = tables::load_of_kind(tables, site::word(circuit.kind)).load;
    return load == tables::load_generation || load == tables::load_storage;
}

template <class L>
ValueIn<L, Amperes> output_current(L& ledger, const Place<L>& place, const site::Circuit& circuit,
                                   int number) {
    const Name name{"I.out", "current that a circuit may send out", number, "", "", place.of};
    if (circuit.load_w.known) {
        const auto p =
            ledger.stated({"S.out", "what a circuit may send out", number, "", "", place.of},
                          VoltAmperes(circuit.load_w.high), "survey");
        if (circuit.phases == 1) return ledger.let(name, p / place.u0);
        return ledger.let(name, p / (place.u0 * 3.0));
    }
    if (circuit.device) {
        return ledger.stated(name, circuit.device->rating, "rating of the circuit's device");
    }
    return ledger.stated(name, amperes(0), "not stated");
}

template Amperes output_current(Silent&, const Place<Silent>&, const site::Circuit&, int);
template Traced<Amperes> output_current(Recording&, const Place<Recording>&, const site::Circuit&,
                                        int);
template CircuitLoad<Silent> circuit_load(Silent&, const Place<Silent>&, const site::Circuit&, int);
template CircuitLoad<Recording> circuit_load(Recording&, const Place<Recording>&,
                                             const site::Circuit&, int);

}  // namespace toft::demand
