#pragma once
// What must happen before a run is joined, in which order it is built and made live, and what to
// write on it. The order is common practice; docs/papers/installers-sheet.md.

#include "paper/run_sheet.h"

#include <string>
#include <vector>

namespace toft::paper {

/// Whom to tell before, what to find out, what to do at the house.
std::vector<std::string> first_of_all(const RunSheet& sheet);

/// One step after another, dead work first.
std::vector<std::string> order_of_work(const RunSheet& sheet);

struct RunLabel {
    std::string where;
    std::string words;
};

std::vector<RunLabel> run_labels(const RunSheet& sheet);

/// Runs that lie in one trench with this one, in sentences.
std::vector<std::string> trench_words(const RunSheet& sheet);

/// What kills while this run is joined.
std::string danger_words(const RunSheet& sheet);

}  // namespace toft::paper
