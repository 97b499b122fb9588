#include "tables/tolerance.h"

namespace toft::tables {

const ToleranceRow* find_tolerance(const std::vector<ToleranceRow>& rows, std::string_view fact,
                                   std::string_view known) {
    for (const ToleranceRow& row : rows) {
        if (row.fact == fact && row.known == known) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
