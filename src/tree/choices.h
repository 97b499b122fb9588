#pragma once
// What may be chosen for each run of a tree, put as figures that add up along the way: the price of
// each scheme where the runs before leave it the most they can, what it uses up itself, and how
// much the runs before may have used. What can never be part of the cheapest whole is left out.

#include "tree/follow.h"
#include "tree/state.h"

#include <limits>
#include <optional>

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
    Figures uses{};               ///< what arrives and this together leave
    Figures takes;                ///< the most that may arrive
    study::Incoming leaves;       ///< where the runs before leave it the most they can
    bool bonds = false;           ///< it may bond a building behind it
    bool asks_bond = false;       ///< its building is bonded to the earth it is fed from

    bool own_electrode() const {
        return scheme.earthing == study::BuildingEarthing::own_electrode;
    }
    /// The earth of its building's board.
    Earth earth_left() const { return own_electrode() ? Earth::island : earth; }
};

/// Between what and what a run may be fed, over all that may lie before it.
struct Arriving {
    study::Incoming best;   ///< each figure the best it can be
    study::Incoming worst;  ///< each the worst
};

struct RunChoices {
    std::array<std::optional<Arriving>, 2> arriving;  ///< by Earth; of runs fed from others
    std::vector<Choice> choices;
    long considered = 0;  ///< schemes, for all that may arrive
};

/// Choices of every run, in the order of the tree.
std::vector<RunChoices> choices_of(const Workplace& at, const Tree& tree, const Floor& floor);

}  // namespace toft::tree
