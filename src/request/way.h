#pragma once
// Which scheme, and of which run, is asked about. Private to request.

#include "answer/picked.h"
#include "request/body.h"

namespace toft::request {

/// A run that was named, or of several, where none was, the first that leaves the house; a fault
/// where there is no such run.
std::optional<std::size_t> run_named(const site::Job& job, const std::string& name, Body& body);

/// The scheme of that key or rank in the answer, or the first; a fault where there is none.
std::optional<std::size_t> scheme_named(const answer::Answer& answer, const std::string& which,
                                        Body& body);

}  // namespace toft::request
