#pragma once
// What takes long to work out of the ground and hangs on few facts: the soil that readings show,
// and electrodes through the year. Kept from setting to setting of one job, so that a search over
// corners and lengths solves each field once. It must not outlive the job's ground and electrodes.

#include "study/electrode.h"

#include <optional>
#include <vector>

namespace toft::study {

/// The year of an electrode in a soil.
struct KeptYear {
    SoilSetting soil;
    BuiltElectrode electrode;
    ThroughTheYear year;
};

struct GroundMemo {
    std::optional<ReadSoil> read;
    std::vector<KeptYear> years;  ///< of electrodes of the job
    Media media;                  ///< all soils looked at
};

/// through_the_year(), kept.
ThroughTheYear kept_year(GroundMemo& memo, const tables::Catalogue& catalogue,
                         const SoilSetting& soil, const BuiltElectrode& electrode);

}  // namespace toft::study
