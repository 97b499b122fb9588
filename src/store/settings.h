#pragma once
// Settings of this store: an own price book, and named texts (hashes of pairing secrets, …).

#include "base/outcome.h"
#include "store/act.h"

#include <map>
#include <optional>
#include <string>

namespace toft::store {

struct OwnPrices {
    std::string name;
    std::string csv;  ///< the whole book; whether it holds water is not asked here
};

/// Nothing where there is none.
Outcome<std::optional<OwnPrices>> own_prices(Store& store);
Faults set_own_prices(Store& store, const OwnPrices& prices);
Faults drop_own_prices(Store& store);

/// The text under a name of 1 to 100 bytes that does not begin with a dot (fault `bad-name`);
/// nothing where there is none. Settings are never part of an export.
Outcome<std::optional<std::string>> setting(Store& store, const std::string& name);
/// All whose name begins so.
Outcome<std::map<std::string, std::string>> settings(Store& store, const std::string& beginning);
Faults set_setting(Store& store, const std::string& name, const std::string& text);
Faults drop_setting(Store& store, const std::string& name);

}  // namespace toft::store
