#pragma once
// A price book as JSON text.

#include "price/listing.h"

#include <string>
#include <vector>

namespace toft::codec {

/// `toft-prices/1`, ending with a line feed; what the book does not price is null.
std::string write_prices(const std::string& book, const std::vector<price::ListedRow>& rows);

}  // namespace toft::codec
