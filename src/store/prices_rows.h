#pragma once
// The own price book within a piece of work. Private to store.

#include "store/settings.h"
#include "store/work.h"

namespace toft::store {

std::optional<OwnPrices> read_prices(Work& work);
void write_prices(Work& work, const OwnPrices& prices);

}  // namespace toft::store
