#pragma once
// The linear part of a problem of src/spread as an integer program, solved by Cbc: a second opinion
// on the optimum that shares no code and no method with the program.

#include "spread/problem.h"

#include <optional>
#include <string>

namespace toft::support {

/// In the LP format: a yes-or-no variable for each option, one of each branch, and at each branch
/// the sum of amounts along the way within the limit that all its options share. Only problems
/// whose options add and have no other limits can be written; throws at any other.
std::string integer_program(const spread::Problem& problem);

struct CbcAnswer {
    bool proved = false;          ///< false when its time was up
    std::optional<double> price;  ///< of the best it has; none when it found none
    double seconds = 0;           ///< processor time, with its start and the reading of its file
};

/// Runs cbc with no gap allowed, for at most so many seconds. Throws when it cannot be run.
CbcAnswer ask_cbc(const spread::Problem& problem, double most_seconds);

}  // namespace toft::support
