#include "site/built.h"

#include <fmt/format.h>

#include <map>
#include <numeric>
#include <set>

namespace toft::site {

namespace {

struct Lying {
    const Run* run;
    Leg* leg;
};

/// Each of the legs is told which run is dug for, and how many cables lie beside its own.
void share(std::vector<Lying>& legs) {
    const Lying* longest = &legs.front();
    for (const Lying& other : legs) {
        if (longest->leg->length.high < other.leg->length.high) longest = &other;
    }
    for (Lying& lying : legs) {
        if (&lying != longest) lying.leg->dug_for = longest->run->id;
        if (lying.leg->other_loaded_circuits.known) continue;
        const auto others = static_cast<double>(legs.size() - 1);
        lying.leg->other_loaded_circuits = {true, others, others, Standing::declared};
    }
}

}  // namespace

bool has_choice(const Job& job) {
    std::set<std::string> fed;
    for (const Run& run : job.runs) {
        if (!fed.insert(run.to).second) return true;
    }
    return false;
}

Job as_built(const Job& job, const std::vector<std::size_t>& runs) {
    const std::set<std::size_t> places(runs.begin(), runs.end());
    Job built = job;
    built.runs.clear();
    for (const std::size_t place : places) {
        built.runs.push_back(job.runs[place]);
        if (!built.runs.back().stated_at) built.runs.back().stated_at = place;
    }
    std::map<std::string, std::vector<Lying>> trenches;
    for (Run& run : built.runs) {
        for (Leg& leg : run.legs) {
            if (!leg.trench.empty()) trenches[leg.trench].push_back({&run, &leg});
        }
    }
    for (auto& trench : trenches) {
        if (trench.second.size() > 1) {
            share(trench.second);
        } else {
            trench.second.front().leg->trench.clear();
        }
    }
    return built;
}

Job as_built(const Job& job) {
    std::vector<std::size_t> all(job.runs.size());
    std::iota(all.begin(), all.end(), std::size_t{0});
    return as_built(job, all);
}

std::string run_pointer(const Job& job, std::size_t run) {
    return fmt::format("/runs/{}", job.runs[run].stated_at.value_or(run));
}

}  // namespace toft::site
