#pragma once
// Rows that are alike made one, in the order of the list.

#include "ware/draft.h"

#include <vector>

namespace toft::ware {

/// Same group, name, size, unit and price each: quantities, amounts and lines are added up, notes
/// that differ stand side by side. Sorted by group, then name, then size, figures by their value.
std::vector<Draft> merged(std::vector<Draft> drafts);

/// "10 mm²" before "16 mm²": text with its figures compared as figures.
bool by_figures(const std::string& a, const std::string& b);

}  // namespace toft::ware
