#include "tables/lever.h"

namespace toft::tables {

const LeverRow* find_lever(const Levers& levers, std::string_view key) {
    for (const LeverRow& row : levers.rows) {
        if (row.key == key) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
