#include "study/selectivity.h"

#include <algorithm>

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

Amperes carried(const tables::Catalogue& catalogue, const site::Circuit& circuit, Volts u0) {
    const Watts p{circuit.load_w.known ? circuit.load_w.high : 0};
    const double pf = circuit.power_factor.known ? circuit.power_factor.low : 1;
    const Amperes load = apparent(p, pf) / u0 / static_cast<double>(circuit.phases);
    switch (circuit.kind) {
        case site::CircuitKind::socket_ring:
            return most(load, catalogue.limits.circuit_ring.value);
        case site::CircuitKind::socket_radial:
            return most(load, catalogue.limits.circuit_radial.value);
        default:
            return load;
    }
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

std::vector<FarDevice> far_devices(const tables::Catalogue& catalogue,
                                   const site::Building& building, Volts u0,
                                   const std::vector<const tables::Device*>& gentlest) {
    std::vector<FarDevice> all;
    for (std::size_t i = 0; i < building.circuits.size(); ++i) {
        const site::Circuit& circuit = building.circuits[i];
        const tables::Device* device = i < gentlest.size() ? gentlest[i] : nullptr;
        if (circuit.device) {
            device = named(catalogue, *circuit.device);
        } else if (!device) {
            device = chosen(catalogue, carried(catalogue, circuit, u0));
        }
        const auto same = std::find_if(all.begin(), all.end(),
                                       [&](const FarDevice& f) { return f.device == device; });
        if (same == all.end()) {
            all.push_back({device, circuit.name, !circuit.device});
        } else {
            same->circuits += ", " + circuit.name;
            same->taken = same->taken || !circuit.device;
        }
    }
    if (all.empty()) all.push_back({nullptr, "", true});
    return all;
}

template <class L>
SelectivePair<L> cut_out_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme) {
    return paired(ledger, setting.house.service_fuse, scheme.device, 1, setting.supply.pscc);
}

template <class L>
SelectivePair<L> far_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                          const Figures<L>& f, std::size_t index) {
    const int part = static_cast<int>(index) + 2;
    const Name name{"Ipf.far", "largest fault current at the building", part};
    const auto one_line = most(f.ln_far, f.le_far);
    const auto largest = setting.phases == 3 ? ledger.let(name, most(one_line, f.lll_far))
                                             : ledger.let(name, one_line);
    return paired(ledger, scheme.device, setting.far[index].device, part, largest);
}

template SelectivePair<Silent> cut_out_pair(Silent&, const Setting<Silent>&, const RunScheme&);
template SelectivePair<Recording> cut_out_pair(Recording&, const Setting<Recording>&,
                                               const RunScheme&);
template SelectivePair<Silent> far_pair(Silent&, const Setting<Silent>&, const RunScheme&,
                                        const Figures<Silent>&, std::size_t);
template SelectivePair<Recording> far_pair(Recording&, const Setting<Recording>&, const RunScheme&,
                                           const Figures<Recording>&, std::size_t);

}  // namespace toft::study
