#pragma once
// The least parts of a paper that never break: a line of words, a row of a table, a picture. Drawn
// from their own upper left corner, as wide as the field.

#include "page/blocks.h"

#include <memory>
#include <vector>

namespace toft::page {

struct Piece {
    drawing::Items items;
    double height = 0;
    double above = 0;                             ///< room before it; none at the head of a page
    bool keep_next = false;                       ///< stands on the page of the piece that follows
    bool new_page = false;                        ///< begins one
    std::shared_ptr<const drawing::Scene> alone;  ///< drawn on a page of its own instead
    std::shared_ptr<const Piece> head;            ///< set again above it where it begins a page
};

using Pieces = std::vector<Piece>;

/// Sizes of letters, user units.
inline constexpr double body_size = 12.5;
inline constexpr double small_size = 10.5;
inline constexpr double table_size = 11.5;
inline constexpr double smallest_size = 9.5;  ///< 2.5 mm: tables of workings

/// The block as pieces for a field of that width.
Pieces pieces_of(const Block& block, double width);

/// `words` in lines no wider than `width`: broken at spaces, and inside a word that is wider by
/// itself.
std::vector<std::string> lines_within(const std::string& words, double width, double size,
                                      drawing::Weight weight = drawing::Weight::normal);

/// Of a table; page/table.cpp.
Pieces rows_of(const Table& table, double width);

}  // namespace toft::page
