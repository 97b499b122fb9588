#pragma once
// Standing current in protective conductors: what is stated, else what is usual for the kind of
// load, added up behind a residual current device and held against 30 % of its rating.
// BS 7671 531.3.2. Page: docs/methods/residual-leakage.md.

#include "guard/view.h"

namespace toft::guard {

/// From the least to the most that is to be expected.
struct Leakage {
    Amperes low{};
    Amperes high{};
    bool stated = true;  ///< by the survey, every part of it
};

Leakage leakage_of(const View& view, const site::Circuit& circuit);

/// Of all circuits of the building together, as if no part cancelled another.
Leakage leakage_of_all(const View& view);

/// Share of the rating that may leak, times the rating.
Amperes leakage_allowed(const View& view, Amperes sensitivity);

/// How a sum stands to what a device of that rating bears.
enum class Budget { kept, may_exceed, exceeds };

Budget budget_of(const View& view, const Leakage& leakage, Amperes sensitivity);

/// The worst of all circuits, each behind a device of its own.
Budget worst_circuit(const View& view);

}  // namespace toft::guard
