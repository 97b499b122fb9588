#pragma once
// What the store says, as JSON: the same wherever it is told.

#include "http/json.h"
#include "server/form.h"
#include "server/route.h"
#include "store/store.h"

namespace toft::server {

Json state_json(const store::JobState& state);
Json row_json(const store::JobRow& row);
Json revision_json(const store::Revision& revision);
Json photo_json(const store::Photo& photo);
Json reading_json(const store::Reading& reading);
Json issue_json(const store::Issue& issue);

/// Who asks (`site` has looked at the name) and now, with words for the history.
store::Act act_of(const Call& call, const std::string& what);

/// A whole number of the path; -1 where it is none.
long number_of(const std::string& text);

/// Calls `work` with a store, or refuses.
template <class Work>
Response with_store(Office& office, const Work& work) {
    auto store = office.stores.take();
    if (!store) return refused(store.error());
    return work(**store);
}

}  // namespace toft::server
