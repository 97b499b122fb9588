#pragma once
// The list of materials as a workbook (Office Open XML): numbers as numbers, the same bytes for the
// same list. Page: docs/materials.md.

#include "base/outcome.h"
#include "ware/csv.h"

#include <string>

namespace toft::workbook {

/// What the workbook is about.
struct About {
    std::string job;
    std::string edition;  ///< of rules and data
    std::string caution;
    std::string date;  ///< year-month-day, of making; there is no clock here
};

/// The bytes of `materials.xlsx`: sheets Materials, Handling and About. Faults: `date`, and
/// `workbook` where the library or the disk of temporary files fails.
Outcome<std::string> materials(const ware::List& list, const About& about, ware::Prices prices);

}  // namespace toft::workbook
