#pragma once
// What goes with the papers for other programs to read: the list of materials as text and as a
// workbook, plan and trenches in metres.

#include "base/outcome.h"
#include "pack/pack.h"
#include "ware/csv.h"

#include <vector>

namespace toft::pack {

/// materials.csv and materials.xlsx. Faults: those of workbook::materials.
Outcome<std::vector<File>> lists_of(const paper::Subject& subject, ware::Prices prices);

/// route.dxf and trench.dxf: one unit is a metre. Faults: those of dxf::to_dxf.
Outcome<std::vector<File>> drawings_of(const paper::Subject& subject);

}  // namespace toft::pack
