#pragma once
// The resistance of an electrode at each stage of its growth, for the price of the last stage. With
// pieces numbered as they are added and A = L L' (Cholesky), the conductance of the first n joined
// is the sum of the squares of the first n of L^-1 1: it can only grow.

#include "field/medium.h"
#include "field/piece.h"

namespace toft::field {

/// Ohms of the first `stages[i]` pieces joined, for each i. Every stage counts at least one piece
/// and no more than there are. Refuses pieces that lie in each other.
Outcome<std::vector<Ohms>> growing(const Medium& medium, const std::vector<Piece>& pieces,
                                   const std::vector<std::size_t>& stages);

}  // namespace toft::field
