#include "paper/workings.h"

#include <algorithm>
#include <set>

namespace toft::paper {

namespace {

RunWorkings of_run(const answer::Question& question, const site::Job& built,
                   const answer::SchemeAnswer& part) {
    answer::Question asked{question.catalogue, question.book, built};
    const auto run = std::find_if(built.runs.begin(), built.runs.end(),
                                  [&](const site::Run& one) { return one.id == part.run.id; });
    asked.run = static_cast<std::size_t>(run - built.runs.begin());
    asked.incoming = part.incoming ? &*part.incoming : nullptr;
    asked.bonds_beyond = part.bonds_beyond;
    asked.bought_before = part.bought_before;
    const answer::Recorded recorded(asked, part.scheme);
    RunWorkings workings{part.run.id, {}, 0};
    std::set<int> places;
    for (const std::string& name : recorded.names()) {
        auto working = recorded.working(name);
        if (!working) continue;
        for (const toft::Line& line : working->lines) places.insert(line.place);
        workings.all.push_back(std::move(*working));
    }
    workings.lines = places.size();
    return workings;
}

}  // namespace

std::vector<RunWorkings> workings_of(const answer::Question& question,
                                     const answer::SchemeAnswer& way) {
    const site::Job built = answer::as_built(question.job, way);
    std::vector<RunWorkings> all{of_run(question, built, way)};
    for (const answer::SchemeAnswer& part : way.further) {
        all.push_back(of_run(question, built, part));
    }
    return all;
}

}  // namespace toft::paper
