#pragma once
// Which of the schemes found are worth showing: those that nothing beats on price, headroom and
// dependability, and the best of every combination of earthing, protective conductor and family.

#include "search/search.h"

#include <array>
#include <tuple>

namespace toft::search {

/// What a user may want to see at least one of: earthing, phases, what protects, which family and
/// whether it is there already on each stretch, and whether thicker cores would lift a caution on
/// the run (on TN-S it matters whether the bond would serve a combined supply too).
using Combination = std::tuple<int, int, std::array<int, 2 * study::most_stretches>, bool>;

Combination combination(const Sound& sound);

/// Order of preference; ties by price, headroom, dependability, then key.
bool comes_before(const Sound& a, const Sound& b, site::Prefer prefer);

/// `a` is no worse in price, headroom and dependability, and better in one, or first by key.
bool beats(const Sound& a, const Sound& b);

std::vector<Sound> ranked(std::vector<Sound> found, site::Prefer prefer);

/// The best of every combination and what nothing beats, `most` at most, in order of preference.
std::vector<Sound> kept(const std::vector<Sound>& found, site::Prefer prefer, std::size_t most);

/// Of the schemes that hang on open facts those that promise something: the best of every
/// combination of which no sound one comes before it, and what no scheme beats, sound or not.
std::vector<Sound> promising(const std::vector<Sound>& unsure, const std::vector<Sound>& sound,
                             site::Prefer prefer);

}  // namespace toft::search
