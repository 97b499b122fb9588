#pragma once
// Devices in plain words, both ways: "BS 88-3 80 A", "B 32 A RCBO".

#include "tables/device.h"

#include <string>
#include <string_view>
#include <vector>

namespace toft::tables {

/// A fuse by its standard, a breaker by its type: "BS 88-3 80 A", "B 32 A breaker", "C 16 A RCBO",
/// "63 A moulded-case breaker".
std::string device_words(const Device& device);

/// The first device that such words name, in either order and case ("32 A B RCBO", "b32 rcbo"); the
/// standard may be named with any. Null when none is meant.
const Device* device_by_words(const std::vector<Device>& devices, std::string_view words);

}  // namespace toft::tables
