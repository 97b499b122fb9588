#pragma once
// Which type of residual current device a circuit asks for by what it feeds, and what type may
// stand in front of it: smooth d.c. blinds a device of a lower type for everything behind it.
// BS 7671 531.3.3, 722.531.3.101; BS EN 62423. Page: docs/methods/residual-type.md.

#include "guard/view.h"

#include <optional>

namespace toft::guard {

struct Sort {
    site::RcdType type = site::RcdType::a;
    bool detection_instead = false;  ///< or A, where the charging point detects 6 mA of smooth d.c.
    const tables::Footing* footing = nullptr;
    const char* why = "";
    bool sure = true;  ///< false where nobody said whether a drive feeds the load

    /// The lowest type that may stand in front of it.
    site::RcdType least_upstream() const { return detection_instead ? site::RcdType::a : type; }
};

Sort sort_of(const View& view, const site::Circuit& circuit);

/// The type that a device in front of all circuits needs: no lower than that of any of them.
site::RcdType upstream_type(const View& view);

/// The same where every charging point detects 6 mA of smooth d.c. itself.
site::RcdType upstream_type_with_detection(const View& view);

/// Whether an upstream device may be blinded by what the building feeds.
enum class Sight { sees, only_with_detection, not_known, blinded };

/// `upstream`: its type as read, none where nobody read it.
Sight sight_of(const View& view, std::optional<site::RcdType> upstream);

}  // namespace toft::guard
