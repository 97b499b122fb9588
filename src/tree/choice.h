#pragma once
// One way to build a run of a tree, as figures that add up along the way, and what the ways to
// build the runs before it may leave.

#include "price/book.h"
#include "tree/state.h"

#include <limits>
#include <optional>
#include <vector>

namespace toft::tree {

inline constexpr double no_limit = std::numeric_limits<double>::infinity();

/// Pounds by which no two prices differ.
inline constexpr double penny_part = 1e-6;

/// The earth of the board that a run is fed from.
enum class Earth : unsigned char {
    supply,  ///< the house's, carried out to there
    island   ///< a building's own electrode on the way
};

struct Choice {
    study::RunScheme scheme;
    Earth earth = Earth::supply;  ///< it is for a board so earthed
    double price = 0;             ///< with tax; at least
    std::vector<price::Item> once;
    Figures uses{};          ///< what arrives and this together leave
    Figures takes;           ///< the most that may arrive
    study::Incoming leaves;  ///< where the runs before leave it the most they can
    bool bonds = false;      ///< it may bond a building behind it
    bool asks_bond = false;  ///< its building is bonded to the earth it is fed from

    bool own_electrode() const { return scheme.earthing == study::BuildingEarthing::own_electrode; }
    /// The earth of its building's board.
    Earth earth_left() const { return own_electrode() ? Earth::island : earth; }
};

/// Loops, the largest, that grow with the drop.
inline constexpr std::size_t growing = 6;

/// Between what and what a run may be fed, over all that may lie before it.
struct Arriving {
    study::Incoming best;   ///< each figure the best it can be
    study::Incoming worst;  ///< each the worst
    /// No loop is more than `start` and `per_drop` times the drop (per cent).
    std::array<double, growing> start{};
    std::array<double, growing> per_drop{};
};

using ArrivingByEarth = std::array<std::optional<Arriving>, 2>;

/// What may arrive behind a run of those choices, fed with `before`; by the earth of its building.
ArrivingByEarth arriving_behind(const std::vector<Choice>& choices, const ArrivingByEarth& before,
                                const study::Incoming& house);

/// Where no more than `drop` per cent may be lost before, loops are no larger than goes with that.
void keep_within_drop(Arriving& arriving, double drop);

}  // namespace toft::tree
