#pragma once
// The form of the file, and how an older one becomes the newest. Private to store.

#include "store/database.h"

namespace toft::store {

/// The form this program writes (SQLite's user_version); forms count from 1.
long newest_version();

/// Brings the file up to form `to`, in one transaction: wholly or not at all. A file of that form
/// or a newer one stays as it is.
Faults migrate(Database& database, long to);

}  // namespace toft::store
