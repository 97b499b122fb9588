#pragma once
// The devices that stand in series on the way from the operator's fuse to a circuit of the
// outbuilding, two by two. Page: docs/methods/selectivity.md.

#include "device/selectivity.h"
#include "study/figures.h"

#include <string>
#include <vector>

namespace toft::study {

/// Whose word it is that a device protects a circuit, the surest first.
enum class FarFrom { survey, design, load };

/// A device of the building's circuits.
struct FarDevice {
    const tables::Device* device = nullptr;  ///< null where none is known
    std::string circuits;                    ///< that it protects
    FarFrom from = FarFrom::survey;          ///< the least sure of those circuits'
    int part = 2;                            ///< of the working; the operator's fuse is 1
};

/// The device of each circuit by its place in the building's list, as designed behind the run, else
/// as stated; null where neither is known. Designs are there from stage `circuits` on.
template <class L>
std::vector<const tables::Device*> circuit_devices(const Setting<L>& setting,
                                                   const Figures<L>& figures);

/// The devices of the building's circuits, each once. A circuit without one is given an RCBO of
/// type B of the least rating that carries it, and none where nobody said what it draws. Where no
/// circuit is stated, one entry without a device.
template <class L>
std::vector<FarDevice> far_devices(const Setting<L>& setting, const Figures<L>& figures);

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

/// The device at the head of the run over a far device. Needs stage `current`.
template <class L>
SelectivePair<L> far_pair(L& ledger, const Setting<L>& setting, const RunScheme& scheme,
                          const Figures<L>& figures, const FarDevice& far);

}  // namespace toft::study
