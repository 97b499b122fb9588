#include "diagram/stretches.h"

#include "diagram/feeder.h"
#include "diagram/wording.h"
#include "parts/cable_words.h"

namespace toft::diagram {

std::vector<symbol::Core> cores_of(const answer::CableAnswer& cable) {
    std::vector<symbol::Core> cores;
    const std::pair<const char*, symbol::Core> uses[] = {{"line", symbol::Core::line},
                                                         {"neutral", symbol::Core::neutral},
                                                         {"protective", symbol::Core::protective}};
    for (const auto& [use, core] : uses) {
        for (const answer::CoreAnswer& one : cable.core_list) {
            if (one.use.rfind(use, 0) == 0) cores.push_back(core);
        }
    }
    return cores;
}

RunLine run_line(const picture::Stage& stage) {
    RunLine line;
    for (const answer::StretchAnswer& cable : stage.scheme->run.stretches) {
        Stretch stretch{cable, {}};
        for (int leg = cable.first_leg; leg <= cable.last_leg; ++leg) {
            stretch.legs.push_back(leg_words(stage.run->legs[static_cast<std::size_t>(leg - 1)]));
        }
        line.stretches.push_back(std::move(stretch));
    }
    line.near = near_place(stage.scheme->run);
    line.earth_stops = parts::earth_stops(*stage.scheme);
    return line;
}

}  // namespace toft::diagram
