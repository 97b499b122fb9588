#pragma once
// A device named by its standard.

#include "base/units.h"

#include <string>

namespace toft::site {

/// The operator's fuse, or another device named by standard and rating.
struct NamedDevice {
    std::string standard;
    std::string curve;  ///< empty for fuses
    Amperes rating;

    friend bool operator==(const NamedDevice&, const NamedDevice&) = default;
};

}  // namespace toft::site
