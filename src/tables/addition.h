#pragma once
// What may be added behind a run in later years.

#include "base/citation.h"

#include <string>

namespace toft::tables {

struct AdditionRow {
    std::string key;
    std::string says;     ///< in a few words
    std::string form;     ///< a kind of circuit, or "building": one fed from the board there
    double load_w = 0;    ///< that it draws, or sends out
    double length_m = 0;  ///< of its circuit, or of the run to the further building
    const Citation* citation = nullptr;
};

}  // namespace toft::tables
