#include "tables/guard.h"

namespace toft::tables {

const GuardNeed* find_need(const Guard& guard, std::string_view key) {
    for (const GuardNeed& row : guard.needs) {
        if (row.footing.key == key) return &row;
    }
    return nullptr;
}

const Footing* find_footing(const Guard& guard, std::string_view key) {
    for (const Footing& row : guard.footings) {
        if (row.key == key) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
