#include "site/trenches.h"

#include "site/built.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace toft::site {

namespace {

struct Trench {
    std::optional<Surface> surface;
    std::string first;  ///< pointer of the leg that named it first
    std::set<std::string> fed;
    std::size_t last_run = 0;
};

class TrenchChecker {
public:
    Faults check(const Job& job) {
        for (std::size_t i = 0; i < job.runs.size(); ++i) {
            for (std::size_t k = 0; k < job.runs[i].legs.size(); ++k) {
                const std::string at = fmt::format("/runs/{}/legs/{}", i, k);
                if (!job.runs[i].legs[k].trench.empty()) look_at(job.runs[i], i, k, at);
            }
        }
        return std::move(faults_);
    }

private:
    void look_at(const Run& run, std::size_t place, std::size_t number, const std::string& at) {
        const Leg& leg = run.legs[number];
        if (!buried(leg.method)) {
            fault("trench", at + "/trench", "only a buried leg lies in a trench");
            return;
        }
        const auto [entry, fresh] =
            trenches_.insert({leg.trench, Trench{leg.surface, at, {}, place}});
        Trench& trench = entry->second;
        if (!fresh && trench.last_run == place) {
            fault(
                "trench", at + "/trench",
                fmt::format("run {} lies in the trench {} twice; give each part a name of its own",
                            run.id, leg.trench));
        }
        trench.last_run = place;
        if (leg.surface != trench.surface) {
            fault("trench", at + "/surface",
                  fmt::format("the trench {} has another surface at {}; say the same for both, or "
                              "give each part a name of its own",
                              leg.trench, trench.first));
        }
        const std::size_t most = most_neighbours + 1;
        if (trench.fed.insert(run.to).second && trench.fed.size() == most + 1) {
            fault(
                "trench", at + "/trench",
                fmt::format("cables to more than {} buildings in one trench are not reckoned with",
                            most));
        }
    }

    void fault(const char* code, std::string pointer, std::string says) {
        faults_.push_back({code, std::move(pointer), std::move(says), "", {}});
    }

    std::map<std::string, Trench> trenches_;
    Faults faults_;
};

}  // namespace

Faults faults_in_trenches(const Job& job) { return TrenchChecker().check(job); }

}  // namespace toft::site
