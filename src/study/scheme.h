#pragma once
// One way to build a run: how the building at its end is earthed, how many phases are taken there,
// which cable lies on each stretch and what serves there as protective conductor, which device
// stands at the head, where it is fed from. Rows are those of the catalogue.

#include "site/words.h"
#include "tables/catalogue.h"

#include <array>
#include <optional>
#include <span>
#include <string>

namespace toft::study {

/// How the building at the end of a run is earthed.
enum class BuildingEarthing { supply_earth, shared_electrode, own_electrode };

/// What carries the fault current of a stretch back.
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

/// Whether a stretch is new, the cable that lies there stays, or a second like it comes beside it.
enum class Laid { anew, kept, doubled };

const char* laid_word(Laid laid);

/// A length of one cable between two terminations: the whole run, or a part of it up to a joint
/// box.
struct Stretch {
    const tables::Cable* cable = nullptr;
    Protective protective = Protective::armour;
    const tables::Conductor* separate = nullptr;  ///< only where it serves
    int parallel = 1;                             ///< equal cables side by side sharing the load
    Laid laid = Laid::anew;

    /// The cable that is there serves on.
    bool old() const { return laid != Laid::anew; }
    bool armoured() const { return cable->armour_r20.citation != nullptr; }
};

/// Changes of cable along one run are at most one fewer.
inline constexpr std::size_t most_stretches = 4;

struct RunScheme {
    BuildingEarthing earthing = BuildingEarthing::supply_earth;
    int phases = 1;
    std::array<Stretch, most_stretches> stretch;  ///< from the near end; the first `stretches`
    std::size_t stretches = 1;
    const tables::Device* device = nullptr;
    site::FedFrom fed_from = site::FedFrom::tails;
    const tables::RunRcd* rcd = nullptr;  ///< residual current device at the head of the run
    bool head_stays = false;              ///< the device that feeds the existing cable stays

    Stretch& first() { return stretch[0]; }
    const Stretch& first() const { return stretch[0]; }
    std::span<const Stretch> laid() const { return {stretch.data(), stretches}; }

    /// The armour is always earthed at the near end; at the far end only if it serves and the
    /// building shares that earth.
    bool armour_at_far_end() const {
        const Stretch& last = stretch[stretches - 1];
        return last.armoured() && armour_serves(last.protective) &&
               earthing != BuildingEarthing::own_electrode;
    }
};

/// Residual current protection at the head of a run.
struct HeadResidual {
    Amperes sensitivity{};
    Cited<Seconds> longest;  ///< break time at that current
    bool delayed = false;
};

/// That of the device in front of the run, or the RCBO's own.
std::optional<HeadResidual> residual_at_head(const RunScheme& scheme);

/// The scheme in one word, the same for the same choices: ties are broken by it.
std::string scheme_key(const RunScheme& scheme);

/// The first part of the key: earthing, phases, cables, protective conductors; ends with a slash.
std::string run_key(const RunScheme& scheme);

/// The rest of the key: device, place, residual current device.
std::string head_key(const RunScheme& scheme);

}  // namespace toft::study
