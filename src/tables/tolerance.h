#pragma once
// By how much a figure of a survey may be off, by what it tells and how it is known.

#include "base/citation.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

struct ToleranceRow {
    std::string fact;     ///< length, ze, neutral loop, fault current, electrode
    std::string known;    ///< measured, declared, assumed
    double per_cent = 0;  ///< to either side of the figure
    bool bell = false;    ///< gathered about the figure; else spread evenly
    const Citation* citation = nullptr;
};

/// The row for a fact that is known so, or null.
const ToleranceRow* find_tolerance(const std::vector<ToleranceRow>& rows, std::string_view fact,
                                   std::string_view known);

}  // namespace toft::tables
