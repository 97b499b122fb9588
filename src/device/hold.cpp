#include "device/hold.h"

#include <algorithm>

namespace toft::device {

template <class L>
ValueIn<L, Seconds> holding_time(L& ledger, const Name& name, const tables::Device& device,
                                 const ValueIn<L, Amperes>& current) {
    const auto held = std::find_if(
        device.holds.begin(), device.holds.end(),
        [&](const tables::CurvePoint& p) { return plain(current) <= p.current.value; });
    if (held == device.holds.end()) {
        return ledger.stated(name, seconds(0), "beyond what it is sure to hold");
    }
    return ledger.table(name, Cited<Seconds>{held->time, held->current.citation});
}

template Seconds holding_time(Silent&, const Name&, const tables::Device&, const Amperes&);
template Traced<Seconds> holding_time(Recording&, const Name&, const tables::Device&,
                                      const Traced<Amperes>&);

}  // namespace toft::device
