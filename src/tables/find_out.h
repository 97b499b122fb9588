#pragma once
// How each fact of a survey is found out: the question in plain words, the way to answer it, the
// minutes it takes and who may do it.

#include "base/citation.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

struct FindOut {
    std::string fact;            ///< pointer into the job, with * for places in lists
    std::string question;        ///< in plain words
    std::string how;             ///< instrument and manner
    double minutes = 0;          ///< on the spot
    std::string by;              ///< anyone, electrician, operator
    std::vector<double> values;  ///< the only ones there are, rising; empty for any in between
    const Citation* citation = nullptr;
};

/// The row for the fact of that pointer, or null.
const FindOut* find_out_for(const std::vector<FindOut>& rows, std::string_view pointer);

}  // namespace toft::tables
