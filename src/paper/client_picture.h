#pragma once
// The place as a householder knows it: house, building, the cable between, with lengths and depths
// and nothing of the trade's symbols.

#include "paper/subject.h"

#include <vector>

namespace toft::paper {

/// Runs from the house that are drawn at most.
inline constexpr std::size_t most_pictures = 2;

/// A section along each run that leaves the house; without a scheme along the job's first run, as
/// the place stands. Empty where no run is to be drawn.
std::vector<drawing::Scene> client_pictures(const Subject& subject);

}  // namespace toft::paper
