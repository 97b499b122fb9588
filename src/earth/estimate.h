#pragma once
// What a closed formula answers: a resistance to earth, and how far it can be trusted there.

#include "base/ledger.h"
#include "base/pi.h"
#include "base/units.h"

namespace toft::earth {

enum class Trust {
    within,   ///< inside the range for which the header states an error
    outside,  ///< outside that range; reads high or by little wrong: no figure to build on
    unsafe    ///< known to read low here: the true resistance is higher
};

template <class L>
struct Estimate {
    ValueIn<L, Ohms> resistance{};
    Trust trust = Trust::outside;
};

}  // namespace toft::earth
