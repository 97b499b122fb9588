#pragma once
// What must be true of a price book of the user's own, typed in or brought in.

#include "server/office.h"
#include "store/settings.h"

namespace toft::server {

/// Empty where papers can be priced by it. Pointers lead into {"name", "csv"}.
Faults faults_of_book(Office& office, const store::OwnPrices& prices);

}  // namespace toft::server
