#pragma once
// The grid of what goes dark: a column for each part that may, a row for each fault; and where the
// columns stand, which the tree of devices above shares.

#include "outage/ink.h"

#include <string>
#include <vector>

namespace toft::outage {

/// A fault, or two of one circuit with the same outcome told in one row.
struct GridRow {
    std::string name;
    const guard::Event* event = nullptr;
};

std::vector<GridRow> grid_rows(const guard::Darkness& dark, std::size_t circuits);

/// Columns between names of rows and the right edge. Circuits that would not fit are left out.
struct Columns {
    std::vector<std::size_t> parts;  ///< places in the darkness's list, from the left
    double names = 0;                ///< left edge of the words of rows
    double first = 0;                ///< left edge of the first column
    double each = 0;                 ///< width of one
    std::size_t circuits = 0;        ///< shown of the building
    std::size_t left_out = 0;        ///< of its circuits

    double centre(std::size_t column) const {
        return first + each * (static_cast<double>(column) + 0.5);
    }
    double right() const { return first + each * static_cast<double>(parts.size()); }
};

Columns columns_of(const guard::Darkness& dark, const Space& room);

/// A cell: full for surely, hatched for possibly, an outline for no.
Items cell(const Box& box, Certainty certainty);

/// The rows from `top` down.
Drawn grid(const guard::Darkness& dark, const Columns& columns, const Space& room, double top);

}  // namespace toft::outage
