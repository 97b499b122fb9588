#pragma once
// What a price book has no price for is not offered, and said to be left out.

#include "price/book.h"

#include <string>
#include <vector>

namespace toft::price {

/// Marks as not offered the cables, separate conductors and devices of `catalogue` that the book
/// does not price. What is there already and stays needs no price.
void offer_only_priced(const Book& book, tables::Catalogue& catalogue);

/// The book's words for what it does not price, each once, in the catalogue's order.
std::vector<std::string> unpriced_items(const Book& book, const tables::Catalogue& catalogue);

/// One sentence on what was left out, by family and sort; empty where nothing was.
std::string left_out_words(const Book& book, const tables::Catalogue& catalogue);

}  // namespace toft::price
