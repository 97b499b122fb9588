#pragma once
// One table while it is being read: cells by column name, a citation per row, faults collected.

#include "base/csv.h"
#include "tables/catalogue.h"

#include <string>
#include <string_view>

namespace toft::tables {

class Sheet {
public:
    /// Opens file `name` of `files`. A missing or malformed file leaves an empty sheet and a fault.
    Sheet(EmbeddedFiles files, std::string_view name, std::deque<Citation>& citations,
          Faults& faults);

    std::size_t rows() const { return table_.rows.size(); }

    /// The cell as text; a missing column is a fault.
    std::string word(std::size_t row, std::string_view column);
    /// The cell as a finite number; anything else is a fault and reads as 0.
    double number(std::size_t row, std::string_view column);
    /// The row's citation, made on first use. Valid as long as the catalogue.
    const Citation* cite(std::size_t row);

    template <class T>
    Cited<T> cited(std::size_t row, T value) {
        return {value, cite(row)};
    }
    /// The row's number in `column` with its citation.
    Cited<double> figure(std::size_t row, std::string_view column) {
        return cited(row, number(row, column));
    }
    /// Two-column table as points sorted by `x`.
    void points(std::vector<TablePoint>& into, std::size_t row, std::string_view x,
                std::string_view y) {
        into.push_back({number(row, x), figure(row, y)});
    }

    void fault(std::size_t row, std::string says);

private:
    std::string name_;
    CsvTable table_;
    std::vector<const Citation*> made_;
    std::deque<Citation>& citations_;
    Faults& faults_;
};

/// The temperatures and k of a row of the table of heat constants.
FaultHeat heat_in(Sheet& sheet, std::size_t row);

/// Whose word the row is, from its column `kind`; another word is a fault.
Authority authority_in(Sheet& sheet, std::size_t row);

/// Sorts points by abscissa.
void sort_points(std::vector<TablePoint>& points);

/// The readers of the parts of the catalogue; each adds its faults. `read_cables` needs what
/// `read_makes` has read.
void read_cable_constants(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_makes(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_cables(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_devices(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_rulebook(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_demand(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_earth(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_guard(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_found(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_levers(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_tolerances(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_additions(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_ground_and_ware(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_handover(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_ask(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);
void read_shock(EmbeddedFiles files, Catalogue& catalogue, Faults& faults);

}  // namespace toft::tables
