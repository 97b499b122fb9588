#pragma once
// What somebody may find wrong at what is there already: what is wrong, what it does to people,
// what to do first, and what that means for each way to build a run.

#include "base/citation.h"

#include <string>
#include <vector>

namespace toft::tables {

struct FoundRow {
    std::string found;     ///< words of the survey
    std::string at;        ///< building, house, run
    std::string earthing;  ///< any, own electrode, house's earth: the way to build it speaks of
    std::string cable;     ///< any, kept, anew
    std::string weight;    ///< danger now, danger, wrong, record
    std::string verdict;   ///< meets, caution, fails
    std::string wrong;
    std::string danger;
    std::string first;  ///< to be done before anything else
    std::string item;   ///< of the price book; empty where it has no price of its own
    std::string tell;   ///< who must be told; empty for nobody
    std::string clause;
    const Citation* citation = nullptr;
};

/// Words that may be found at such places, each once, in the table's order.
std::vector<std::string> found_words(const std::vector<FoundRow>& rows,
                                     const std::vector<std::string>& at);

}  // namespace toft::tables
