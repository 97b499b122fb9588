#pragma once
// What laying asks of the cables of a run that are bought.

#include "ware/list.h"

#include <vector>

namespace toft::ware {

/// One for each stretch with a cable to buy, from the near end.
std::vector<Handling> handling_of(const tables::Catalogue& catalogue, const RunBill& part);

}  // namespace toft::ware
