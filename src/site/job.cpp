#include "site/job.h"

namespace toft::site {

const Building* find_building(const Job& job, const std::string& id) {
    for (const Building& building : job.buildings) {
        if (building.id == id) return &building;
    }
    return nullptr;
}

int ways_in_use(const Run& run) {
    if (!run.existing || run.existing->fed_from != FedFrom::spare_way) return 0;
    return run.existing->cores > 3 ? 3 : 1;
}

std::size_t building_index(const Job& job, const std::string& id) {
    std::size_t i = 0;
    while (i + 1 < job.buildings.size() && job.buildings[i].id != id) ++i;
    return i;
}

}  // namespace toft::site
