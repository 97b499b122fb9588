#pragma once
// A change in words: what to do, and where.

#include "lever/change.h"

namespace toft::lever {

/// Of a job of one run as its row says; of several with the place, or the places, by name.
std::string words_of(const tables::LeverRow& row, const site::Job& job, const Change& change);

/// Names of the buildings that those runs feed: "Gym and Stable", "A, B, C and 3 more", "each of
/// the 10 buildings" where it is all of them.
std::string names_of(const site::Job& job, const std::vector<std::size_t>& runs);

}  // namespace toft::lever
