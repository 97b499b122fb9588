#pragma once
// Lists of words that jobs and commands share.

#include <string>
#include <vector>

namespace toft::codec {

/// Words for cable families.
const std::vector<std::string>& offered_families();

/// Standards of overcurrent devices.
const std::vector<std::string>& device_standards();

}  // namespace toft::codec
