#include "lever/change.h"

namespace toft::lever {

std::string name_of(const site::Building& building) {
    return building.name.empty() ? building.id : building.name;
}

double value_of(const Ground& ground, const char* key) {
    const tables::LeverRow* row = tables::find_lever(ground.catalogue.levers, key);
    return row && row->value ? *row->value : 0;
}

}  // namespace toft::lever
