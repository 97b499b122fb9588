#pragma once
// Photos, readings and issues put in as rows, checked before. Private to store.

#include "store/fact_places.h"
#include "store/papers.h"
#include "store/photos.h"
#include "store/readings.h"

namespace toft::store {

/// Each returns the number given to the row.
long insert_photo(Work& work, long job, long revision, const NewPhoto& photo, const Act& act);
long insert_reading(Work& work, long job, long revision, const NewReading& reading, const Act& act);
long insert_issue(Work& work, long job, const NewIssue& issue, const Act& act);

}  // namespace toft::store
