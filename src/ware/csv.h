#pragma once
// The list as comma-separated text (RFC 4180, UTF-8), for a spreadsheet or a wholesaler's counter.

#include "ware/list.h"

#include <string>
#include <vector>

namespace toft::ware {

enum class Prices { with, without };

/// The names of the columns.
std::vector<std::string> columns_of(Prices prices);

/// A header, then a line for each row.
std::string csv_of(const List& list, Prices prices);

/// Text that no spreadsheet takes for a formula: an apostrophe before what begins like one.
std::string guarded(const std::string& text);

/// The quantity to a thousandth, as it is shown everywhere.
double shown_quantity(const Row& row);

}  // namespace toft::ware
