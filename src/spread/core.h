#pragma once
// What is left to decide when no solution dearer than a target is wanted: choices that no such
// solution can hold are struck, and branches with one choice left are folded into their
// neighbours. Long chains shrink to the few branches that are truly open.

#include "spread/bound.h"

namespace toft::spread {

struct Core {
    Compact compact;
    Slopes slopes;
};

/// `room`: target less the bound of these slopes. Solutions of the core are the solutions of the
/// problem up to the target (and perhaps dearer ones), in the same order.
Core core_of(const Compact& compact, const Slopes& slopes, double room);

}  // namespace toft::spread
