#pragma once
// Which sound schemes are worth showing: those that nothing beats on price, headroom and
// dependability at once, and the best of every combination of earthing, protective conductor and
// cable family.

#include "search/search.h"

namespace toft::search {

/// True when `a` comes before `b` for someone who prefers that; ties go by price, headroom,
/// dependability, then by key.
bool comes_before(const Sound& a, const Sound& b, site::Prefer prefer);

/// True when `a` is at least as good as `b` in price, headroom and dependability; of two that are
/// equal in all three the one with the earlier key beats.
bool beats(const Sound& a, const Sound& b);

/// All of `found`, best first.
std::vector<Sound> ranked(std::vector<Sound> found, site::Prefer prefer);

/// The kept ones of `found`, best first, at most `most`; the best of each combination come before
/// others when room is short.
std::vector<Sound> kept(const std::vector<Sound>& found, site::Prefer prefer, std::size_t most);

}  // namespace toft::search
