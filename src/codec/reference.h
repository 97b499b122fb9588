#pragma once
// Lists to look things up in, as JSON text: the rulebook, a price book.

#include "price/listing.h"

#include <string>
#include <vector>

namespace toft::codec {

/// All rules, `toft-rules/1`.
std::string write_rules();

/// `toft-prices/1`, ending with a line feed; what the book does not price is null.
std::string write_prices(const std::string& book, const std::vector<price::ListedRow>& rows);

}  // namespace toft::codec
