#include "parts/device_words.h"

#include "base/text.h"

#include <fmt/format.h>

namespace toft::parts {

bool opens_on_residual(const answer::DeviceAnswer& device) { return device.kind == "RCBO"; }

std::string device_words(const answer::DeviceAnswer& device, int phases) {
    const std::string rating = significant(device.rating_a, 6);
    const std::string kind = !device.kind.empty()   ? device.kind
                             : device.curve.empty() ? "fuse"
                                                    : "breaker";
    if (device.curve.empty()) {
        return phases == 3 ? fmt::format("three {} A {} {}s", rating, device.standard, kind)
                           : fmt::format("{} A {} {}", rating, device.standard, kind);
    }
    const std::string poles = phases == 3 ? "three-pole " : "";
    // The trip of a moulded-case breaker is set, not a letter.
    const bool lettered = kind.rfind("moulded", 0) != 0;
    const std::string curve = lettered ? "type " + device.curve + " " : "";
    return fmt::format("{} A {}{}{}, {} kA", rating, poles, curve, kind,
                       significant(device.breaking_capacity_ka, 4));
}

std::string rcd_words(const answer::RcdAnswer& rcd) {
    return fmt::format("{} mA RCD type {}{}", significant(rcd.sensitivity_ma, 4), rcd.type,
                       rcd.delayed ? ", delayed" : "");
}

std::string own_residual_words(const answer::RcdAnswer& rcd) {
    return fmt::format("opens on {} mA to earth too, type {}", significant(rcd.sensitivity_ma, 4),
                       rcd.type);
}

}  // namespace toft::parts
