#pragma once
// The earthing walks as a JSON tree. Private to codec.

#include "codec/document.h"
#include "walk/walk.h"

namespace toft::codec {

/// Whose word it is; null for none.
Json basis_json(const tables::EarthingBasis* basis);

Json walks_json(const std::vector<walk::Walk>& walks);

}  // namespace toft::codec
