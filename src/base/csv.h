#pragma once
// Comma-separated tables with a header line. Quoted cells may hold commas, quotes and line ends.

#include "base/outcome.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft {

struct CsvRow {
    int line = 0;  ///< line of the file on which the row starts, counted from 1
    std::vector<std::string> cells;
};

struct CsvTable {
    std::vector<std::string> header;
    std::vector<CsvRow> rows;
};

/// Parses `text`; `name` is used in faults. Refuses ragged rows, an open or a
/// stray quote and an empty file.
Outcome<CsvTable> parse_csv(std::string_view name, std::string_view text);

/// A cell as it stands in such a table: quoted where it holds a comma, a quote or a line end.
std::string csv_cell(const std::string& text);

}  // namespace toft
