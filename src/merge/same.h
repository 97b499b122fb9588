#pragma once
// Whether two values say the same. Private to merge.

#include "codec/document.h"

namespace toft::merge {

using codec::Json;

/// The order of keys does not count, and 3 is 3.0.
bool same(const Json& a, const Json& b);

/// Both absent (null pointers), or both there and the same.
bool same(const Json* a, const Json* b);

/// What says nothing: absent or null.
inline bool silent(const Json* value) { return !value || value->is_null(); }

/// The value at a key, or nothing where the object is none or lacks it.
const Json* at(const Json* object, const std::string& key);

}  // namespace toft::merge
