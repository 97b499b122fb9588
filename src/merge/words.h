#pragma once
// A clash in words. Private to merge.

#include "merge/same.h"

namespace toft::merge {

/// A place in the document: for programs, and for people.
struct Where {
    std::string pointer;
    std::string words;  ///< "building Studio, load w"
    std::string last;   ///< the last key, for what its items are called
};

Where at_key(const Where& where, const std::string& key);

/// The item of a list that stands at `index` of the merged one; nothing: it no longer stands there.
Where at_item(const Where& where, const Json& item, const std::size_t* index);

/// Values may be null pointers: nothing said.
std::string clash_words(const Where& where, const Json* was, const Json* yours, const Json* theirs);

}  // namespace toft::merge
