#pragma once
// The ways an outbuilding may be earthed, how a step of the walk bears on each, and how well the
// fact behind it is known.

#include "site/words.h"

#include <array>

namespace toft::walk {

/// How the building may be earthed. The first three are asked on TN supplies, on TT the last two.
enum class Choice {
    supply_earth,     ///< the house's earth, taken out through the run
    added_electrode,  ///< the same with an electrode of the building joined to it
    own_electrode,    ///< an electrode of its own; nothing of the house's earth arrives
    shared_electrode  ///< TT: the house's electrode, taken out through the run
};
inline constexpr std::size_t choice_count = 4;

/// What a step says of a choice, the lighter first.
enum class Bearing : unsigned char { speaks_for, neutral, speaks_against, ruled_out, required };

/// How the fact behind a step is known.
enum class Known : unsigned char { stated, measured, assumed, unknown };

/// Where a choice stands after all steps, the better first. `not_known`: an open fact rules it out
/// at its worse end.
enum class Standing : unsigned char { required, open, judgement, not_known, ruled_out };

const char* choice_word(Choice choice);
const char* bearing_word(Bearing bearing);
const char* known_word(Known known);
const char* standing_word(Standing standing);

/// Whether the choice is there at all on a supply of that kind.
bool offered(Choice choice, site::Earthing system);

/// By choice.
template <class T>
using ByChoice = std::array<T, choice_count>;

constexpr std::size_t at(Choice choice) { return static_cast<std::size_t>(choice); }

}  // namespace toft::walk
