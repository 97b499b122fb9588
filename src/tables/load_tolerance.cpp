#include "tables/sheet.h"

namespace toft::tables {

void read_tolerances(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "tolerance/usual.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        ToleranceRow row{sheet.word(i, "fact"), sheet.word(i, "known"), sheet.number(i, "per_cent"),
                         sheet.word(i, "spread") == "bell", sheet.cite(i)};
        if (row.per_cent <= 0 || row.per_cent >= 100) {
            sheet.fault(i, "a figure is off by more than nothing and less than itself");
        }
        if (!row.bell && sheet.word(i, "spread") != "even") {
            sheet.fault(i, "no such spread: " + sheet.word(i, "spread"));
        }
        c.tolerances.push_back(std::move(row));
    }
}

const ToleranceRow* find_tolerance(const std::vector<ToleranceRow>& rows, std::string_view fact,
                                   std::string_view known) {
    for (const ToleranceRow& row : rows) {
        if (row.fact == fact && row.known == known) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
