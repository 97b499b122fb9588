#pragma once
// One way to build a run: how the building at its end is earthed, which cable, what serves as
// protective conductor, which device, where it is fed from. Rows are those of the catalogue.

#include "site/words.h"
#include "tables/catalogue.h"

#include <string>

namespace toft::study {

/// How the building at the end of a run is earthed.
enum class BuildingEarthing { supply_earth, shared_electrode, own_electrode };

/// What carries the fault current of the run back.
enum class Protective { armour, core, core_and_armour, separate, armour_and_separate };

const char* earthing_word(BuildingEarthing earthing);
const char* protective_word(Protective protective);

constexpr bool armour_serves(Protective p) {
    return p == Protective::armour || p == Protective::core_and_armour ||
           p == Protective::armour_and_separate;
}
constexpr bool core_serves(Protective p) {
    return p == Protective::core || p == Protective::core_and_armour;
}
constexpr bool separate_serves(Protective p) {
    return p == Protective::separate || p == Protective::armour_and_separate;
}

struct RunScheme {
    BuildingEarthing earthing = BuildingEarthing::supply_earth;
    const tables::Cable* cable = nullptr;
    Protective protective = Protective::armour;
    const tables::Conductor* separate = nullptr;  ///< only where it serves
    const tables::Device* device = nullptr;
    site::FedFrom fed_from = site::FedFrom::tails;
    const tables::RunRcd* rcd = nullptr;  ///< residual current device at the head of the run

    /// The armour is always earthed at the near end; at the far end only if it serves and the
    /// building shares that earth.
    bool armour_at_far_end() const {
        return armour_serves(protective) && earthing != BuildingEarthing::own_electrode;
    }
};

/// The scheme in one word, the same for the same choices: ties are broken by it.
std::string scheme_key(const RunScheme& scheme);

/// The first part of the key: earthing, cable, protective conductor; ends with a slash.
std::string run_key(const RunScheme& scheme);

/// The rest of the key: device, place, residual current device.
std::string head_key(const RunScheme& scheme);

}  // namespace toft::study
