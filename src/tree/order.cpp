#include "tree/order.h"

#include <algorithm>

namespace toft::tree {

std::vector<Place> outwards(const site::Job& job) {
    std::vector<Place> order;
    order.reserve(job.runs.size());
    const auto add_from = [&](const std::string& building, std::size_t parent) {
        for (std::size_t run = 0; run < job.runs.size(); ++run) {
            if (job.runs[run].from == building) order.push_back({run, parent});
        }
    };
    for (const site::Building& building : job.buildings) {
        if (building.origin) add_from(building.id, from_house);
    }
    for (std::size_t i = 0; i < order.size(); ++i) add_from(job.runs[order[i].run].to, i);
    return order;
}

std::vector<std::size_t> way_to(const std::vector<Place>& order, std::size_t place) {
    std::vector<std::size_t> way;
    for (std::size_t i = order[place].parent; i != from_house; i = order[i].parent) {
        way.push_back(i);
    }
    std::reverse(way.begin(), way.end());
    return way;
}

}  // namespace toft::tree
