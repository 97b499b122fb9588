#pragma once
// The closed lists of words a job may use, each an enumeration with its word.

#include <string>
#include <string_view>
#include <vector>

namespace toft::site {

enum class Earthing { tn_s, tn_c_s, tt };
enum class Use {
    shed,
    garage,
    store,
    office,
    studio,
    workshop,
    gym,
    greenhouse,
    stable,
    animal_house,
    pool_house,
    hot_tub,
    caravan_pitch,
    boat_mooring,
    other
};
enum class Construction {
    timber,
    brick,
    stone,
    insulated_panel,
    steel_frame,
    aluminium_frame,
    steel_container,
    canvas
};
enum class Metal {
    water_pipe,
    gas_pipe,
    oil_pipe,
    heating_pipe,
    structural_steel,
    frame,
    drain,
    lightning_rod,
    fence,
    cable_screen,
    other
};
enum class ComesFrom { ground, house, other_building };
enum class LegMethod {
    clipped,
    tray,
    free_air,
    in_conduit,
    in_trunking,
    in_insulation,
    above_ceiling,
    buried_direct,
    buried_in_duct,
    overhead
};
enum class Surface { lawn, bed, path, drive, patio, field, shared_path, road };
enum class CircuitKind {
    socket_ring,
    socket_radial,
    lighting,
    fixed_load,
    motor,
    welder,
    vehicle_charging,
    hot_tub,
    sauna,
    kiln,
    heat_pump,
    pump,
    freezer,
    solar,
    battery,
    sub_board,
    cooker,
    shower,
    water_heater,
    storage_heater
};
/// What a source feeds when the mains fails: nothing, the building it stands in, the house too.
enum class KeepsSupply { nothing, building, house };
/// What is to go the run's way besides the supply.
enum class AlsoCarried { two_way_lighting, switching, alarm, telephone, data };
enum class PinArray { wenner, schlumberger };
enum class Season { wet, dry };
enum class ElectrodeKind { rods, buried_wire, ring, plate, mesh, foundation };
enum class Arrangement { line, triangle, square };
/// Which load a run is sized for: what is there today with diversity, with what is stated for later
/// too, or every circuit at its full load at once.
enum class Scenario { today, likely, everything };
enum class Prefer { price, headroom, dependability };
/// What a residual current device sees, each more than the one before it.
enum class RcdType { ac, a, f, b };
enum class FedFrom { spare_way, tails, new_board };
/// How somebody found a cable that is there.
enum class Condition { sound, damaged, not_seen };
/// What a reading of line and protective conductor went back through.
enum class ReadThrough { armour, core, core_and_armour };

/// The words of a list in the order of its enumeration.
template <class E>
const std::vector<std::string>& words();

/// The word of one value.
template <class E>
const std::string& word(E value) {
    return words<E>()[static_cast<std::size_t>(value)];
}

/// True for constructions that conduct.
bool metallic(Construction construction);

/// True for methods in the ground.
bool buried(LegMethod method);

}  // namespace toft::site
