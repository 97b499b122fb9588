#pragma once
// What the pictures read off a cable of the answer, and its name in few words.

#include "answer/answer.h"

#include <string>

namespace toft::parts {

/// How the cable is made, as far as a drawing shows it.
enum class Build { armoured, round, flat };

Build build_of(const answer::CableAnswer& cable);

/// True for the metal of the family's name.
bool aluminium(const answer::CableAnswer& cable);

/// True where that part of the cable is, or helps to be, the protective conductor.
bool core_serves(const answer::CableAnswer& cable);
bool armour_serves(const answer::CableAnswer& cable);

/// "3-core 10 mm²", "two 4-core 70 mm²"; a flat cable goes by its section, "6 mm²".
std::string size_words(const answer::CableAnswer& cable);

/// "armoured XLPE aluminium cables", "flat twin and earth cable".
std::string family_words(const answer::CableAnswer& cable);

/// "earth core 2.5 mm²" where it differs from the others; else empty.
std::string thin_core_words(const answer::CableAnswer& cable);

/// The stretch whose cable the run is named by. Precondition: the run has stretches.
const answer::StretchAnswer& longest_stretch(const answer::RunAnswer& run);

/// True for an outbuilding that the house's earth does not reach: the run's protective conductor
/// is joined to nothing there.
bool earth_stops(const answer::SchemeAnswer& scheme);

}  // namespace toft::parts
