#pragma once
// The single changes on site or in the wishes that a survey allows: how each is said, which item of
// the price book it costs, and when it is worth saying.

#include "base/citation.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

struct LeverRow {
    std::string key;
    std::string says;             ///< with {} where the place is named
    std::string many;             ///< made at several places at once, {} for them; empty for a
                                  ///< change of the house or of the wishes
    std::string cost;             ///< item of the price book, "in the price" or "not priced"
    std::optional<double> value;  ///< what the change sets, where it is a figure
    const Citation* citation = nullptr;
};

/// What a lever must bring.
struct LeverWorth {
    Cited<double> least_saving;   ///< pounds with tax
    Cited<double> more_headroom;  ///< share of the limit
    Cited<double> small_cost;     ///< per cent of the price
};

struct Levers {
    std::vector<LeverRow> rows;
    LeverWorth worth;
};

/// The row of that key, or null.
const LeverRow* find_lever(const Levers& levers, std::string_view key);

}  // namespace toft::tables
