#pragma once
// Open facts and what to go and find out, as JSON.

#include "answer/unknowns.h"
#include "codec/scheme.h"

#include <string>

namespace toft::codec {

Json unknown_json(const answer::UnknownAnswer& unknown);

/// The document of `toft ask`, format toft-ask/1.
std::string write_ask(const answer::AskAnswer& answer);

}  // namespace toft::codec
