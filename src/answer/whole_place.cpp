#include "answer/whole_place.h"

#include "base/together.h"
#include "study/path_load.h"

#include <algorithm>

namespace toft::answer {

namespace {

/// What arrives at the board that the run starts from; null for the house's, or where no way tells.
const study::Incoming* arriving_at(const WholePlace& place, std::size_t i) {
    const bool behind = place.tree.order[i].parent != tree::from_house;
    return behind && place.way ? &place.way->runs[i].incoming : nullptr;
}

}  // namespace

std::vector<special::Advice> advice_for(const WholePlace& place) {
    std::vector<special::Advice> all;
    std::vector<std::vector<std::string>> names;
    const std::vector<tree::Place>& order = place.tree.order;
    for (std::size_t i = 0; i < order.size(); ++i) {
        const tree::RunJudge of_run(place.at, order[i].run, 0, arriving_at(place, i));
        const site::Building& building = *of_run.setting().building_facts;
        for (special::Advice& advice : special::advice_of(special::case_of(of_run.setting()))) {
            const auto same = [&](const special::Advice& other) {
                return other.about == advice.about && other.asks == advice.asks &&
                       other.says == advice.says;
            };
            const auto at =
                static_cast<std::size_t>(std::find_if(all.begin(), all.end(), same) - all.begin());
            if (at == all.size()) {
                all.push_back(std::move(advice));
                names.emplace_back();
            }
            names[at].push_back(building.name.empty() ? building.id : building.name);
        }
    }
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i].size() < order.size()) all[i].about += ", " + names_together(names[i]);
    }
    return all;
}

std::vector<std::string> about_lines(const site::Job& built) {
    std::vector<std::string> lines;
    if (built.intake.phases != 3) return lines;
    std::size_t three = 0;
    for (std::size_t i = 0; i < built.runs.size(); ++i) {
        three += study::phases_in_tree(built, i) == 3 ? 1 : 0;
    }
    if (three < built.runs.size()) {
        lines.emplace_back(
            "runs of one phase are put on the lines that each run names, so that the runs load the "
            "lines evenly; what the house draws on each line is not counted in that: look, and "
            "turn the lines if one is loaded more");
    }
    if (three > 1) {
        lines.emplace_back(
            "in every building on three phases its circuits of one phase are put on L1, L2, L3 in "
            "the same order, so L1 carries the most of all: turning the lines from one building to "
            "the next loads them more evenly");
    }
    return lines;
}

std::vector<walk::Walk> walks_for(const WholePlace& place) {
    std::vector<walk::Walk> all;
    Silent silent;
    for (std::size_t i = 0; i < place.tree.order.size(); ++i) {
        const bool behind = place.tree.order[i].parent != tree::from_house;
        if (behind && !place.way) continue;
        study::RunAt at{place.tree.order[i].run, 0, place.at.memo};
        at.incoming = arriving_at(place, i);
        all.push_back(walk::walk(study::prepare(silent, place.at.catalogue, place.at.job, at, {})));
    }
    return all;
}

}  // namespace toft::answer
