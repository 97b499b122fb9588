#pragma once
// Three values put together. Private to merge.

#include "merge/merge.h"
#include "merge/words.h"

namespace toft::merge {

/// The three values at one place; null pointers where there is nothing.
struct Three {
    const Json* base = nullptr;
    const Json* mine = nullptr;
    const Json* theirs = nullptr;
};

/// Merges by fact and collects what clashes.
class Facts {
public:
    /// Nothing when the place is left empty.
    std::optional<Json> merged(const Three& three, const Where& where);

    std::vector<Clash> clashes;

private:
    Json objects(const Three& three, const Where& where);
    /// Nothing when it cannot be told which item is which.
    std::optional<Json> lists(const Three& three, const Where& where);
    std::optional<Json> clash(const Three& three, const Where& where);
};

}  // namespace toft::merge
