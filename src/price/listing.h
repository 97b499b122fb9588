#pragma once
// A price book as a list for people: every row with its range and use, a book to begin with, and
// what of a book stands far from another.

#include "price/book.h"

#include <string>
#include <vector>

namespace toft::price {

/// A row as the book has it, with its margin.
struct ListedRow {
    std::string item;
    std::string unit;
    bool priced = true;  ///< the book has it
    double low = 0, net = 0, high = 0;
    std::string use;
};

/// Cables, separate conductors, devices, then the other items; each item of the book once.
std::vector<ListedRow> listed(const Book& book, const tables::Catalogue& catalogue);

/// The rows as a book to fill in: comma-separated, each marked as invented and to be replaced.
std::string book_to_begin_with(const std::vector<ListedRow>& rows);

/// A row whose price is outside half to twice that of the same row elsewhere.
struct FarRow {
    std::string item, unit;
    double here = 0, there = 0;
};

/// Of what both price. A row that is nothing on one side only is far.
std::vector<FarRow> far_from(const Book& book, const Book& other,
                             const tables::Catalogue& catalogue);

}  // namespace toft::price
