#pragma once
// The devices that stand in series on the way from the operator's fuse to a circuit of the
// outbuilding, two by two. Page: docs/methods/selectivity.md.

#include "device/selectivity.h"
#include "study/figures.h"

namespace toft::study {

/// The devices of the building's circuits, each once: as stated, else the gentlest that may be
/// fitted where the circuit can be designed, else an RCBO of type B of the least rating that
/// carries it. Where no circuit is stated, one entry without a device.
std::vector<FarDevice> far_devices(const tables::Catalogue& catalogue,
                                   const site::Building& building, Volts u0,
                                   const std::vector<const tables::Device*>& gentlest = {});

/// One pair in series.
template <class L>
struct SelectivePair {
    const tables::Device* upstream = nullptr;    ///< null where not known
    const tables::Device* downstream = nullptr;  ///< null where not known
    device::Selectivity<L> result;
    ValueIn<L, Amperes> prospective{};  ///< largest fault current at the downstream device
};

/// The operator's fuse over the device at the head of the run.
template <class L>
SelectivePair<L> cut_out_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme);

/// The device at the head of the run over device `index` of setting.far. Needs stage `current`.
template <class L>
SelectivePair<L> far_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                          const Figures<L>& figures, std::size_t index);

}  // namespace toft::study
