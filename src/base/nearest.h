#pragma once
// The listed word nearest to one that is not listed: for faults that say what was probably meant.

#include <string>
#include <string_view>
#include <vector>

namespace toft {

/// Letters to change, add, drop or swap with a neighbour to get from `a` to `b` (case ignored).
int word_distance(std::string_view a, std::string_view b);

/// The word of `allowed` nearest to `word`, or empty when none shares at least half its letters.
/// One that differs only in case, blanks and hyphens comes before all others.
std::string nearest_word(std::string_view word, const std::vector<std::string>& allowed);

}  // namespace toft
