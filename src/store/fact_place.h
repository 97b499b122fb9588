#pragma once
// The fact that a photo or a reading belongs to.

#include <string>

namespace toft::store {

/// Buildings come and go, and with them the numbers in pointers. So it is kept which revision a
/// pointer was meant in, and it is followed from there to the current one (`merge::follow`).
struct FactPlace {
    std::string fact;   ///< JSON pointer into the current revision; as it was given when gone
    long revision = 0;  ///< current when it was tied to the fact
    bool gone = false;  ///< what the fact belonged to is no longer in the job
};

}  // namespace toft::store
