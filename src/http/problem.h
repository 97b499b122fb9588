#pragma once
// What went wrong, as problem details (RFC 9457), with faults like those of the commands.

#include "base/outcome.h"
#include "http/message.h"

#include <string>

namespace toft::server {

/// `title`: what is wrong; `detail`: what to do about it.
Response problem(unsigned status, const std::string& title, const std::string& detail = "");

/// With the faults of `toft-faults/1`; the first gives the detail.
Response problem(unsigned status, const std::string& title, const Faults& faults);

/// Told to come again in a moment, with Retry-After.
Response busy(const std::string& title);

/// The caution that every answer carries: no cross-site reading, no guessing of types, no framing.
void dress(Response& response);

}  // namespace toft::server
