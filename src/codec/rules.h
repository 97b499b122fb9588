#pragma once
// What an answer goes by, as JSON text: the rulebook and the price book.

#include "price/listing.h"

#include <string>
#include <vector>

namespace toft::codec {

/// All rules, `toft-rules/1`.
std::string write_rules();

/// A price book, `toft-prices/1`; what the book does not price is null.
std::string write_prices(const std::string& book, const std::vector<price::ListedRow>& rows);

}  // namespace toft::codec
