#include "site/built_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace toft::site {

std::string name_in(const Job& job, const std::string& building) {
    const Building& b = *find_building(job, building);
    if (b.origin) return "the house";
    return b.name.empty() ? b.id : b.name;
}

std::string start_words(const Job& job, const Run& run) {
    const auto alike = std::count_if(job.runs.begin(), job.runs.end(), [&](const Run& other) {
        return other.from == run.from && other.to == run.to;
    });
    const std::string from = "from " + name_in(job, run.from);
    return alike > 1 ? fmt::format("{} over {}", from, run.id) : from;
}

std::string fed_words(const Job& job) {
    std::string words;
    for (const Run& run : job.runs) {
        words += fmt::format("{}{} {}", words.empty() ? "" : ", ", name_in(job, run.to),
                             start_words(job, run));
    }
    return words;
}

std::vector<std::string> not_built(const Job& stated, const Job& built) {
    std::vector<std::string> ids;
    for (const Run& run : stated.runs) {
        const bool is = std::any_of(built.runs.begin(), built.runs.end(),
                                    [&](const Run& other) { return other.id == run.id; });
        if (!is) ids.push_back(run.id);
    }
    return ids;
}

std::string SharedTrench::says() const {
    std::string runs;
    for (const std::string& id : beside) runs += (runs.empty() ? "" : ", ") + id;
    return fmt::format("{} {} the trench {} with {}, which pays for digging it", runs,
                       beside.size() == 1 ? "shares" : "share", name, dug_for);
}

std::vector<SharedTrench> shared_trenches(const Job& built) {
    std::map<std::string, SharedTrench> trenches;
    for (const Run& run : built.runs) {
        for (const Leg& leg : run.legs) {
            if (leg.trench.empty()) continue;
            SharedTrench& trench = trenches[leg.trench];
            trench.name = leg.trench;
            if (leg.dug_for.empty()) {
                trench.dug_for = run.id;
            } else {
                trench.beside.push_back(run.id);
            }
        }
    }
    std::vector<SharedTrench> all;
    for (auto& [name, trench] : trenches) all.push_back(std::move(trench));
    return all;
}

}  // namespace toft::site
