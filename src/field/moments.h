#pragma once
// The rows of equations of a field: what each piece does to each. For the sources of this folder.

#include "field/medium.h"
#include "field/piece.h"

#include <Eigen/Dense>

namespace toft::field {

/// Ohms; only the lower half is filled.
inline Eigen::MatrixXd moments(const Medium& medium, const std::vector<Piece>& pieces) {
    const auto n = static_cast<Eigen::Index>(pieces.size());
    Eigen::MatrixXd matrix(n, n);
    for (Eigen::Index j = 0; j < n; ++j) {
        for (Eigen::Index i = j; i < n; ++i) {
            matrix(i, j) = medium.between(pieces[static_cast<std::size_t>(i)].bar,
                                          pieces[static_cast<std::size_t>(j)].bar);
        }
    }
    return matrix;
}

inline Fault wires_in_each_other() {
    return {"field", "", "the wires lie in each other: the field has no solution", "", {}};
}

}  // namespace toft::field
