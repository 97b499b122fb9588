#pragma once
// What takes long to work out of the ground and hangs on few facts: the soil that readings show,
// and electrodes through the year. Kept from setting to setting of one job, so that a search over
// corners and lengths solves each field once. It must not outlive the job's ground and electrodes.

#include "study/electrode.h"

#include <optional>
#include <utility>
#include <vector>

namespace toft::study {

struct GroundMemo {
    std::optional<ReadSoil> read;
    std::vector<std::pair<SoilSetting, ThroughTheYear>> years;  ///< of the job's electrode
    Media media;                                                ///< all soils looked at
};

/// through_the_year(), kept.
ThroughTheYear kept_year(GroundMemo& memo, const tables::Catalogue& catalogue,
                         const SoilSetting& soil, const BuiltElectrode& electrode);

}  // namespace toft::study
