#pragma once
// Whether a fuse or breaker further in is sure to stay closed while one further out clears a fault:
// its quick edge against the other's slow one, at every current up to the largest. Where the tables
// promise nothing, nothing is taken for sure. Page: docs/methods/dark.md.

#include "tables/catalogue.h"

namespace toft::site {
struct NamedDevice;
}

namespace toft::guard {

/// The device of the tables that the survey names, or null.
const tables::Device* find_device(const tables::Catalogue& catalogue,
                                  const site::NamedDevice& named);

/// `upstream` is sure to hold every current up to `most` for `time`.
bool holds_out(const tables::Device& upstream, Seconds time, Amperes most);

/// `upstream` is sure to hold every short circuit up to `most` until `downstream` has cleared it:
/// currents that open `downstream` within 5 s.
bool holds_out(const tables::Device& upstream, const tables::Device& downstream, Amperes most);

/// `device` is sure to carry `current` without end.
bool carries(const tables::Device& device, Amperes current);

}  // namespace toft::guard
