#include "unknown/grouped.h"

namespace toft::unknown {

namespace {

void halve(const Group& group, const std::function<bool(const Group&)>& idle,
           std::vector<bool>& found) {
    if (group.empty()) return;
    if (idle(group)) {
        for (const std::size_t place : group) found[place] = true;
        return;
    }
    if (group.size() == 1) return;
    const auto middle = group.begin() + static_cast<std::ptrdiff_t>(group.size() / 2);
    halve(Group(group.begin(), middle), idle, found);
    halve(Group(middle, group.end()), idle, found);
}

}  // namespace

std::vector<bool> idle_among(const std::vector<bool>& grouped,
                             const std::function<bool(const Group&)>& idle) {
    std::vector<bool> found(grouped.size(), false);
    Group group;
    for (std::size_t place = 0; place < grouped.size(); ++place) {
        if (grouped[place]) group.push_back(place);
    }
    halve(group, idle, found);
    return found;
}

}  // namespace toft::unknown
