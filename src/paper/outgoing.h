#pragma once
// The ways of a building's board that feed other buildings.

#include "paper/subject.h"

#include <string>
#include <vector>

namespace toft::paper {

/// The scheme's runs that start at that building, from the house outwards.
std::vector<const answer::SchemeAnswer*> outgoing(const Subject& subject,
                                                  const std::string& building);

/// "at least 8: 5 for circuits, 1 to feed Barn, 2 spare". A board without circuits is reckoned as
/// it is priced, with two.
std::string board_ways_words(const Subject& subject, const answer::SchemeAnswer& part);

}  // namespace toft::paper
