#pragma once
// What comes first over the range of one open fact: the range cut into pieces, each with one answer
// throughout. A piece stands because what is sound at its worse end is sound all through it, and
// what may be sound anywhere in it shows at its better end; where the two do not agree it is
// halved, down to a small part of the range, in which the answer then switches: where, is found by
// trying figures.
// Page: docs/methods/unknowns.md.

#include "solve/solver.h"

#include <string>
#include <vector>

namespace toft::unknown {

/// Part of a fact's range with one answer, in the unit of the fact.
struct Piece {
    double low = 0;
    double high = 0;
    solve::Solution best;
    double total_low = 0;   ///< price of the best with the fact at `low`, pounds with tax
    double total_high = 0;  ///< … and at `high`
};

/// One fact, and how all others are read meanwhile.
struct Looked {
    study::OpenFact fact;
    study::Corner others;        ///< names every other fact, or leaves it at its worse end
    std::vector<double> values;  ///< the only ones the fact takes, rising; empty for any in between
};

/// The corner with that fact in a part of its range, read at `end` of it.
study::Corner corner_in(const Looked& at, double low, double high, study::End end);

/// Whether `sure`, sound all through a part of the range, is as good as `may_be`, which is the best
/// that may be sound in it: no better choice is left, or both are nothing.
bool settled(const solve::Solver& solver, const solve::Solution& sure,
             const solve::Solution& may_be, const study::Corner& kinder);

/// The pieces by rising value. Between two of them the answer switches; neighbours differ.
std::vector<Piece> pieces_over(const solve::Solver& solver, const Looked& at);

/// The shortest decimal figure from `low` to `high`, both included.
double shortest_between(double low, double high);

}  // namespace toft::unknown
