#include "tables/shock.h"

namespace toft::tables {

const Condition* find_condition(const Shock& shock, std::string_view words) {
    for (const Condition& condition : shock.conditions) {
        if (condition.words == words) return &condition;
    }
    return nullptr;
}

const HeartFactor* find_heart_factor(const Shock& shock, std::string_view path) {
    for (const HeartFactor& heart : shock.heart) {
        if (heart.path == path) return &heart;
    }
    return nullptr;
}

}  // namespace toft::tables
