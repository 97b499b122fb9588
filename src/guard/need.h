#pragma once
// Who asks that a circuit stand behind a residual current device, and how sensitive it must be.
// BS 7671 411.3.3, 411.3.4, 411.5.2, 422.3.9, 522.6.202, sections 702 to 709 and 722.
// Page: docs/methods/residual-need.md.

#include "guard/view.h"

#include <vector>

namespace toft::guard {

/// A reason; `sure` is false where a fact nobody stated, or a reading of a word, stands behind it.
struct Reason {
    const tables::GuardNeed* row = nullptr;
    const char* why = "";
    bool sure = true;
};

struct Need {
    Amperes asked{};  ///< the most sensitive that a reason asks for; 0 where none does
    std::vector<Reason> reasons;

    bool asked_for() const { return asked > amperes(0); }
};

/// All reasons of one circuit of the building. Never empty: where no clause asks, the reason is
/// that every circuit stands behind a device of its own by choice.
Need need_of(const View& view, const site::Circuit& circuit);

}  // namespace toft::guard
