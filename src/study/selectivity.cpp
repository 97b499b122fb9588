#include "study/selectivity.h"

#include <algorithm>
#include <optional>

namespace toft::study {

namespace {

/// The least breaking capacity of what is stated, or null.
const tables::Device* named(const tables::Catalogue& catalogue, const site::NamedDevice& stated) {
    for (const tables::Device& d : catalogue.devices) {
        if (d.standard == stated.standard && d.curve == stated.curve && d.rating == stated.rating) {
            return &d;
        }
    }
    return nullptr;
}

/// What nobody designed is taken to draw: its watts, and sockets no less than is usual of them.
/// Nothing where nobody says what it draws and nothing is usual.
std::optional<Amperes> carried(const tables::Catalogue& catalogue, const site::Circuit& circuit,
                               Volts u0) {
    const auto* usual = tables::find_usual(catalogue.demand, site::word(circuit.kind));
    if (!circuit.load_w.known) {
        return usual ? std::optional(usual->rating.value) : std::nullopt;
    }
    const double pf = circuit.power_factor.known ? circuit.power_factor.low : 1;
    const Amperes load =
        apparent(Watts{circuit.load_w.high}, pf) / u0 / static_cast<double>(circuit.phases);
    const bool sockets = circuit.kind == site::CircuitKind::socket_ring ||
                         circuit.kind == site::CircuitKind::socket_radial;
    return sockets && usual ? most(load, usual->rating.value) : load;
}

/// The type B RCBO of the least rating that carries it; null where none does.
const tables::Device* chosen(const tables::Catalogue& catalogue, Amperes load) {
    const tables::Device* best = nullptr;
    for (const tables::Device& d : catalogue.devices) {
        if (d.kind != tables::Kind::rcbo || d.curve != "B" || d.rating < load) continue;
        if (!best || d.rating < best->rating) best = &d;
    }
    return best;
}

constexpr const char* no_device =
    "which device stands there is not stated, or is none that the tables hold";

template <class L>
SelectivePair<L> paired(L& ledger, const tables::Device* up, const tables::Device* down, int part,
                        const ValueIn<L, Amperes>& prospective) {
    SelectivePair<L> pair;
    pair.upstream = up;
    pair.downstream = down;
    pair.prospective = prospective;
    if (up && down) {
        pair.result = device::selectivity(ledger, device::Pair{*up, *down, part}, prospective);
        return pair;
    }
    pair.result.to = ledger.stated({"Is", "current up to which the pair is selective", part},
                                   amperes(0), "not known");
    pair.result.why = no_device;
    return pair;
}

}  // namespace

template <class L>
std::vector<const tables::Device*> circuit_devices(const Setting<L>& s, const Figures<L>& f) {
    const auto& circuits = s.building_facts->circuits;
    std::vector<const tables::Device*> all(circuits.size());
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        if (circuits[i].device) all[i] = named(*s.catalogue, *circuits[i].device);
    }
    if (!f.circuits_done) return all;
    for (const auto& design : f.circuits) all[design.place] = design.option.device;
    return all;
}

template <class L>
std::vector<FarDevice> far_devices(const Setting<L>& s, const Figures<L>& f) {
    const auto known = circuit_devices(s, f);
    std::vector<FarDevice> all;
    for (std::size_t i = 0; i < known.size(); ++i) {
        const site::Circuit& circuit = s.building_facts->circuits[i];
        const tables::Device* device = known[i];
        FarFrom from = circuit.device ? FarFrom::survey : FarFrom::design;
        if (!device && !circuit.device) {
            from = FarFrom::load;
            const auto load = carried(*s.catalogue, circuit, plain(s.supply.u0));
            if (load) device = chosen(*s.catalogue, *load);
        }
        const auto same = std::find_if(all.begin(), all.end(),
                                       [&](const FarDevice& d) { return d.device == device; });
        if (same == all.end()) {
            all.push_back({device, circuit.name, from, static_cast<int>(all.size()) + 2});
        } else {
            same->circuits += ", " + circuit.name;
            same->from = std::max(same->from, from);
        }
    }
    if (all.empty()) all.push_back({nullptr, "", FarFrom::load, 2});
    return all;
}

template <class L>
SelectivePair<L> cut_out_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme) {
    return paired(ledger, setting.house.service_fuse, scheme.device, 1, setting.supply.pscc);
}

template <class L>
SelectivePair<L> far_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                          const Figures<L>& f, const FarDevice& far) {
    const Name name{"Ipf.far", "largest fault current at the building", far.part};
    const auto one_line = most(f.ln_far, f.le_far);
    const auto largest = setting.phases == 3 ? ledger.let(name, most(one_line, f.lll_far))
                                             : ledger.let(name, one_line);
    return paired(ledger, scheme.device, far.device, far.part, largest);
}

template std::vector<const tables::Device*> circuit_devices(const Setting<Silent>&,
                                                            const Figures<Silent>&);
template std::vector<const tables::Device*> circuit_devices(const Setting<Recording>&,
                                                            const Figures<Recording>&);
template std::vector<FarDevice> far_devices(const Setting<Silent>&, const Figures<Silent>&);
template std::vector<FarDevice> far_devices(const Setting<Recording>&, const Figures<Recording>&);
template SelectivePair<Silent> cut_out_pair(Silent&, const Setting<Silent>&, const RunScheme&);
template SelectivePair<Recording> cut_out_pair(Recording&, const Setting<Recording>&,
                                               const RunScheme&);
template SelectivePair<Silent> far_pair(Silent&, const Setting<Silent>&, const RunScheme&,
                                        const Figures<Silent>&, const FarDevice&);
template SelectivePair<Recording> far_pair(Recording&, const Setting<Recording>&, const RunScheme&,
                                           const Figures<Recording>&, const FarDevice&);

}  // namespace toft::study
