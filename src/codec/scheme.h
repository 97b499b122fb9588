#pragma once
// One scheme of an answer, and the walks to its earthing, as JSON trees. Private to codec.

#include "answer/answer.h"
#include "codec/document.h"
#include "walk/walk.h"

namespace toft::codec {

/// `x` to nine significant digits.
double rounded(double x);

/// `x` rounded, or null where it is not finite.
Json finite(double x);

/// Only what sets it apart from others.
Json brief_json(const answer::SchemeAnswer& scheme);

Json scheme_json(const answer::SchemeAnswer& scheme);

/// Whose word it is; null for none (why.cpp).
Json basis_json(const tables::EarthingBasis* basis);

Json walks_json(const std::vector<walk::Walk>& walks);

}  // namespace toft::codec
