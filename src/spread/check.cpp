#include "spread/check.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::spread {

namespace {

void look_at_change(const Change& change, const std::string& place, Faults& faults) {
    if (!std::isfinite(change.amount)) {
        faults.push_back({"out-of-range", place, "An amount must be a finite number.", "", {}});
    }
    if (std::isnan(change.takes_at_most) || std::isnan(change.leaves_at_most)) {
        faults.push_back(
            {"out-of-range", place, "A limit must be a number, or infinite for none.", "", {}});
    }
}

void look_at_option(const Option& option, std::size_t resources, const std::string& place,
                    Faults& faults) {
    if (!(option.price >= 0 && std::isfinite(option.price))) {
        faults.push_back({"out-of-range", place, "A price must be finite and at least 0.", "", {}});
    }
    if (std::isnan(option.headroom)) {
        faults.push_back({"out-of-range", place, "A headroom must be a number.", "", {}});
    }
    for (std::size_t i = 0; i < resources; ++i) {
        look_at_change(option.changes[i], fmt::format("{}/changes/{}", place, i), faults);
    }
}

void look_at_branch(const Problem& problem, std::size_t b, std::size_t resources, Faults& faults) {
    const Branch& branch = problem.branches[b];
    const std::string place = fmt::format("/branches/{}", b);
    if (branch.parent != from_root && branch.parent >= problem.branches.size()) {
        faults.push_back({"unknown-reference",
                          place + "/parent",
                          fmt::format("There is no branch {}; name one of the {} branches or the "
                                      "root.",
                                      branch.parent, problem.branches.size()),
                          "",
                          {}});
    }
    if (branch.options.empty()) {
        faults.push_back(
            {"missing", place + "/options", "A branch needs at least one option.", "", {}});
    }
    for (std::size_t o = 0; o < branch.options.size(); ++o) {
        look_at_option(branch.options[o], resources, fmt::format("{}/options/{}", place, o),
                       faults);
    }
}

/// Branches from which the root is not reached.
void look_for_cycles(const Problem& problem, Faults& faults) {
    enum : unsigned char { unseen, on_the_way, reaches_root, lost };
    const std::size_t n = problem.branches.size();
    std::vector<unsigned char> mark(n, unseen);
    std::vector<std::size_t> way;
    for (std::size_t b = 0; b < n; ++b) {
        way.clear();
        std::size_t at = b;
        while (at < n && mark[at] == unseen) {
            mark[at] = on_the_way;
            way.push_back(at);
            at = problem.branches[at].parent;
        }
        const bool good = at >= n || mark[at] == reaches_root;
        for (const std::size_t passed : way) mark[passed] = good ? reaches_root : lost;
        if (mark[b] == lost) {
            faults.push_back({"cycle",
                              fmt::format("/branches/{}/parent", b),
                              "This branch feeds itself or hangs on one that does; let it lead to "
                              "the root.",
                              "",
                              {}});
        }
    }
}

}  // namespace

Faults faults_of(const Problem& problem) {
    Faults faults;
    if (problem.resources > most_resources) {
        faults.push_back({"out-of-range",
                          "/resources",
                          fmt::format("At most {} resources can be followed.", most_resources),
                          "",
                          {}});
    }
    const std::size_t resources = std::min(problem.resources, most_resources);
    for (std::size_t i = 0; i < resources; ++i) {
        if (std::isfinite(problem.at_root[i])) continue;
        faults.push_back({"out-of-range",
                          fmt::format("/at_root/{}", i),
                          "What arrives at the root must be a finite number.",
                          "",
                          {}});
    }
    for (std::size_t b = 0; b < problem.branches.size(); ++b) {
        look_at_branch(problem, b, resources, faults);
    }
    look_for_cycles(problem, faults);
    return faults;
}

}  // namespace toft::spread
