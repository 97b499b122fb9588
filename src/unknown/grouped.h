#pragma once
// Looking at several facts in one: where none of a group matters, none of them need be looked at
// alone. Page: docs/methods/unknowns.md.

#include <cstddef>
#include <functional>
#include <vector>

namespace toft::unknown {

/// Places in a list of facts.
using Group = std::vector<std::size_t>;

/// Of each place whether it is idle. Those marked in `grouped` are put to `idle` together, and in
/// halves where it does not hold of all; the others are never idle.
std::vector<bool> idle_among(const std::vector<bool>& grouped,
                             const std::function<bool(const Group&)>& idle);

}  // namespace toft::unknown
