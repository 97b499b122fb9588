#pragma once
// The row of a kind of circuit in a table of kinds. Private to guard.

#include "site/words.h"

#include <string>
#include <vector>

namespace toft::guard {

/// Null where there is none; quickest where the rows stand in the kinds' order.
template <class Row>
const Row* row_of(const std::vector<Row>& rows, site::CircuitKind kind) {
    const std::string& word = site::word(kind);
    const auto place = static_cast<std::size_t>(kind);
    if (place < rows.size() && rows[place].kind == word) return &rows[place];
    for (const Row& row : rows) {
        if (row.kind == word) return &row;
    }
    return nullptr;
}

}  // namespace toft::guard
