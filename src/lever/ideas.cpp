#include "lever/ideas.h"

#include <utility>

namespace toft::lever {

Changes all_changes(const Ground& ground) {
    static constexpr Idea ideas[] = {metal_and_reach, other_route, other_laying, gentler_start,
                                     less_load,       house_work,  wider_offer,  other_earth};
    Changes all;
    for (const Idea idea : ideas) {
        for (Change& change : idea(ground)) all.push_back(std::move(change));
    }
    return all;
}

}  // namespace toft::lever
