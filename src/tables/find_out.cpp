#include "tables/find_out.h"

namespace toft::tables {

namespace {

/// Places in lists as stars.
std::string starred(std::string_view pointer) {
    std::string out;
    for (std::size_t i = 0; i < pointer.size(); ++i) {
        const bool digit = pointer[i] >= '0' && pointer[i] <= '9';
        const bool place = digit && !out.empty() && (out.back() == '/' || out.back() == '*');
        if (!place) {
            out += pointer[i];
        } else if (out.back() != '*') {
            out += '*';
        }
    }
    return out;
}

}  // namespace

const FindOut* find_out_for(const std::vector<FindOut>& rows, std::string_view pointer) {
    const std::string wanted = starred(pointer);
    for (const FindOut& row : rows) {
        if (row.fact == wanted) return &row;
    }
    return nullptr;
}

}  // namespace toft::tables
