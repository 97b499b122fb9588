#pragma once
// The parts of a setting, each prepared in a file of its own.

#include "study/soil.h"

namespace toft::study {

/// The supply's loops and fault levels at the origin, or where the runs before end.
template <class L>
void prepare_supply(L& ledger, Settler& settler, Setting<L>& setting, const Incoming* incoming);

/// The house's conductors and the board the run may be fed from, there or in an outbuilding.
template <class L>
void prepare_house(L& ledger, Settler& settler, Setting<L>& setting, const Incoming* incoming);

/// The outbuilding: its metalwork, what stands near, its electrode.
template <class L>
void prepare_building(L& ledger, Settler& settler, Setting<L>& setting);

/// The outbuilding's own electrode at its driest; `at` is the building's pointer.
template <class L>
void prepare_electrode(L& ledger, Settler& settler, Setting<L>& setting, const SoilSetting& soil,
                       const std::string& at);

/// How far that electrode stands from the house's earth, and how far it should.
template <class L>
void prepare_separation(L& ledger, Settler& settler, Setting<L>& setting, const SoilSetting& soil,
                        const std::string& at);

/// The row of the cable that lies there; null where there is none, or none for so many phases.
const tables::Cable* cable_there(const tables::Catalogue& catalogue, const site::Run& run,
                                 int phases);

/// How it was found and what it reads; after the legs.
template <class L>
void prepare_existing(L& ledger, Settler& settler, Setting<L>& setting, std::size_t run_index);

/// Legs with their factors and lengths.
template <class L>
void prepare_legs(L& ledger, Settler& settler, Setting<L>& setting, std::size_t run_index);

/// Design current, power factor and the drop allowed.
template <class L>
void prepare_load(L& ledger, Setting<L>& setting, const Incoming* incoming);

}  // namespace toft::study
