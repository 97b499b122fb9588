#include "special/advice.h"

#include "special/parts.h"

namespace toft::special {

Case case_of(const study::Setting<Silent>& setting) {
    guard::View view;
    view.job = setting.job;
    view.building = setting.building_facts;
    view.catalogue = setting.catalogue;
    view.phases = setting.phases;
    view.behind_island = setting.supply.island;
    view.at_house = setting.house.at_house;
    return {view, setting.run, setting.length_least, setting.length_most};
}

std::vector<Advice> advice_of(const Case& c) {
    std::vector<Advice> all;
    for (const auto part : {surge, arc_faults, vehicle_charging, animals, pool_or_tub, sauna,
                            movable, container, feeding_back, kept_supply, also_carried}) {
        part(c, all);
    }
    return all;
}

}  // namespace toft::special
