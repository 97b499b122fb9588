#pragma once
// The run's devices in few words, each kind by its name.

#include "answer/answer.h"

#include <string>

namespace toft::parts {

/// True for a device that opens on overcurrent and on residual current: the run's RCD is its own.
bool opens_on_residual(const answer::DeviceAnswer& device);

/// "32 A type B breaker, 6 kA", "three 160 A BS 88-2 fuses", "30 A BS 3036 rewirable fuse",
/// "125 A three-pole moulded-case breaker, 16 kA". `phases` of the run.
std::string device_words(const answer::DeviceAnswer& device, int phases = 1);

/// "30 mA RCD type A", "100 mA RCD type A, delayed".
std::string rcd_words(const answer::RcdAnswer& rcd);

/// The residual part of an RCBO: "opens on 30 mA too, type A".
std::string own_residual_words(const answer::RcdAnswer& rcd);

}  // namespace toft::parts
