#pragma once
// The zone of time and current in which a shock from left hand to feet lies (IEC 60479-1). The
// lines were recalled from the drawn curves, to within 15 to 30 %. Between two points a line runs
// straight on log paper; before its first point and after its last it keeps that point's current.
// Another path counts with its heart-current factor first. Page: docs/methods/body-current.md.

#include "tables/shock.h"

namespace toft::shock {

enum class CurrentZone {
    ac1,   ///< usually not felt
    ac2,   ///< felt, muscles may jerk; injury by the current itself is not usual
    ac3,   ///< contractions, breathing difficult; may not be able to let go
    ac41,  ///< fibrillation of the heart in up to 5 %
    ac42,  ///< in up to 50 %
    ac43   ///< in more than 50 %
};

/// "AC-1", …
const char* zone_word(CurrentZone zone);

/// Where that line lies at that time.
Amperes line_at(const tables::Shock& tables, tables::ZoneLine line, Seconds time);

/// The lowest zone whose upper line the current does not pass. On a line it counts to the lower.
CurrentZone current_zone(const tables::Shock& tables, Amperes current, Seconds time);

}  // namespace toft::shock
