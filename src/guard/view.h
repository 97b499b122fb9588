#pragma once
// What the guard of an outbuilding's circuits is judged by: the survey, the tables, and of the
// scheme how the building is earthed. Pointers stay good as long as what they were taken from.

#include "study/scheme.h"
#include "study/setting.h"

#include <string>

namespace toft::guard {

struct View {
    const site::Job* job = nullptr;
    const site::Building* building = nullptr;
    const tables::Catalogue* catalogue = nullptr;
    int phases = 1;              ///< taken to the building
    bool own_electrode = false;  ///< the building's, apart from the house's earth
    bool behind_island = false;  ///< the board it is fed from is earthed by an electrode of its own
    std::optional<study::HeadResidual> before;  ///< nearest RCD on the runs before, if any
    bool at_house = true;                       ///< fed from the house, not from an outbuilding

    const tables::Limits& limits() const { return catalogue->limits; }
    const tables::Guard& tables() const { return catalogue->guard; }
    bool on_tt() const { return behind_island || job->intake.earthing == site::Earthing::tt; }
    /// An earth fault returns through the ground: overcurrent devices may never see it.
    bool through_ground() const { return on_tt() || own_electrode; }
    bool used_as(site::Use use) const { return building->use == use; }
};

template <class L>
View view_of(const study::Setting<L>& setting, const study::RunScheme& scheme) {
    return {setting.job,
            setting.building_facts,
            setting.catalogue,
            scheme.phases,
            scheme.earthing == study::BuildingEarthing::own_electrode,
            setting.supply.island,
            setting.house.residual_before,
            setting.house.at_house};
}

/// Circuits of the building; where none is stated, one that stands for all.
std::size_t circuit_count(const View& view);

/// The circuit in its place; the one that stands for all is a further board of unknown circuits.
const site::Circuit& circuit_at(const View& view, std::size_t i);

/// Its name; "circuit 2" where it has none, "every circuit" for the one that stands for all.
std::string circuit_name(const View& view, std::size_t i);

/// Some circuit of the building is of that kind.
bool has_kind(const View& view, site::CircuitKind kind);

/// Socket-outlets hang on it: rings and radials, and what nobody described.
bool feeds_sockets(const site::Circuit& circuit);

/// Residual current rating of the breaker that each circuit of the building has of its own.
inline Amperes circuit_sensitivity(const View& view) { return view.limits().residual_socket.value; }

}  // namespace toft::guard
