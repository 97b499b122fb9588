#include "lever/ideas.h"

#include <algorithm>
#include <utility>

namespace toft::lever {

Changes all_changes(const Ground& ground) {
    static constexpr Idea ideas[] = {metal_and_reach, other_route, other_laying, gentler_start,
                                     less_load,       house_work,  wider_offer,  other_earth};
    Changes all;
    for (const Idea idea : ideas) {
        for (Change& change : idea(ground)) {
            const auto* row = tables::find_lever(ground.catalogue.levers, change.key);
            if (row && !row->many.empty()) change.runs = {ground.run};
            all.push_back(std::move(change));
        }
    }
    return all;
}

Changes all_changes_of(const tables::Catalogue& catalogue, const site::Job& job) {
    Changes all;
    for (std::size_t run = 0; run < job.runs.size(); ++run) {
        for (Change& change : all_changes({catalogue, job, run})) {
            if (run > 0 && change.runs.empty()) continue;
            all.push_back(std::move(change));
        }
    }
    return all;
}

Change made_together(const tables::Catalogue& catalogue, const site::Job& job,
                     const std::vector<const Change*>& parts) {
    Change whole;
    whole.job = job;
    whole.count = parts.size();
    for (const Change* part : parts) {
        const std::size_t run = part->runs.front();
        whole.key = part->key;
        whole.widens = whole.widens || part->widens;
        const Changes now = all_changes({catalogue, whole.job, run});
        const auto same = std::find_if(now.begin(), now.end(), [&](const Change& change) {
            return change.key == part->key && change.where == part->where;
        });
        if (same == now.end()) continue;
        whole.job = same->job;
        if (whole.runs.empty() || whole.runs.back() != run) whole.runs.push_back(run);
    }
    return whole;
}

}  // namespace toft::lever
