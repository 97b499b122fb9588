#include "diagram/stretches.h"

#include "diagram/wording.h"

namespace toft::diagram {

namespace {

bool mentions(const std::string& words, const char* word) {
    return words.find(word) != std::string::npos;
}

}  // namespace

bool RunLine::core_serves() const { return mentions(protective, "core"); }

bool RunLine::armour_serves() const { return mentions(protective, "armour"); }

bool armoured(const Stretch& stretch) { return stretch.family.rfind("armoured", 0) == 0; }

std::vector<symbol::Core> cores_of(const Stretch& stretch) {
    std::vector<symbol::Core> cores;
    const std::pair<const char*, symbol::Core> uses[] = {{"line", symbol::Core::line},
                                                         {"neutral", symbol::Core::neutral},
                                                         {"protective", symbol::Core::protective}};
    for (const auto& [use, core] : uses) {
        for (const answer::CoreAnswer& one : stretch.core_list) {
            if (one.use.rfind(use, 0) == 0) cores.push_back(core);
        }
    }
    return cores;
}

RunLine run_line(const picture::Stage& stage) {
    const answer::RunAnswer& run = stage.scheme->run;
    Stretch stretch{run.family,           run.cores, run.live_mm2, run.cpc_mm2, run.core_list,
                    run.figures.length_m, {}};
    for (const site::Leg& leg : stage.run->legs) stretch.legs.push_back(leg_words(leg));
    return {{std::move(stretch)},
            run.protective_conductor,
            run.armour_near,
            run.armour_far,
            run.separate_mm2};
}

}  // namespace toft::diagram
