#pragma once
// One scheme of an answer as a JSON tree. Private to codec.

#include "answer/answer.h"
#include "codec/document.h"

namespace toft::codec {

/// `x` to nine significant digits.
double rounded(double x);

/// `x` rounded, or null where it is not finite.
Json finite(double x);

/// Only what sets it apart from others.
Json brief_json(const answer::SchemeAnswer& scheme);

Json scheme_json(const answer::SchemeAnswer& scheme);

}  // namespace toft::codec
