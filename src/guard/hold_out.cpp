#include "guard/hold_out.h"

#include "base/limit.h"
#include "device/curve.h"
#include "device/hold.h"
#include "site/job.h"

namespace toft::guard {

namespace {

const Name unnamed{"t", ""};
constexpr double step = 1.05;        // from one current looked at to the next
constexpr Seconds longest_short{5};  // the curves' end: what lasts longer is an overload

double hold_time(const tables::Device& device, Amperes current) {
    Silent silent;
    return device::holding_time(silent, unnamed, device, current).number();
}

double clear_time(const tables::Device& device, Amperes current) {
    Silent silent;
    return device::operating_time(silent, unnamed, device, current).number();
}

}  // namespace

const tables::Device* find_device(const tables::Catalogue& catalogue,
                                  const site::NamedDevice& named) {
    for (const tables::Device& device : catalogue.devices) {
        if (device.standard == named.standard && device.curve == named.curve &&
            device.rating == named.rating) {
            return &device;
        }
    }
    return nullptr;
}

bool carries(const tables::Device& device, Amperes current) {
    return within(current.number(), device.rating.number());
}

bool holds_out(const tables::Device& upstream, Seconds time, Amperes most) {
    return carries(upstream, most) || within(time.number(), hold_time(upstream, most));
}

bool holds_out(const tables::Device& upstream, const tables::Device& downstream, Amperes most) {
    const auto held = [&](Amperes current) {
        return carries(upstream, current) ||
               within(clear_time(downstream, current), hold_time(upstream, current));
    };
    if (!held(most)) return false;
    Silent silent;
    const Amperes least = device::operating_current(silent, unnamed, downstream, longest_short);
    for (double current = least.number(); current < most.number(); current *= step) {
        if (!held(amperes(current))) return false;
    }
    return true;
}

}  // namespace toft::guard
