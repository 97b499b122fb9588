#pragma once
// Runs of a job from the house outwards.

#include "site/job.h"

#include <vector>

namespace toft::tree {

inline constexpr std::size_t from_house = static_cast<std::size_t>(-1);

struct Place {
    std::size_t run = 0;              ///< in the job's list
    std::size_t parent = from_house;  ///< place in the order of the run that feeds it
};

/// Every run after the one that feeds it; else in the job's order. The runs must form a tree.
std::vector<Place> outwards(const site::Job& job);

/// The places before this one on its way from the house, the house's first; not itself.
std::vector<std::size_t> way_to(const std::vector<Place>& order, std::size_t place);

}  // namespace toft::tree
