#include "answer/why.h"

namespace toft::answer {

std::vector<walk::Walk> walks_of(const tables::Catalogue& catalogue, const site::Job& job,
                                 study::GroundMemo* memo) {
    Silent silent;
    std::vector<walk::Walk> walks;
    for (std::size_t run = 0; run < job.runs.size(); ++run) {
        walks.push_back(
            walk::walk(study::prepare(silent, catalogue, job, study::RunAt{run, 0, memo}, {})));
    }
    return walks;
}

std::vector<const Citation*> citations_of(const walk::Walk& walk) {
    std::vector<const Citation*> citations;
    for (const walk::Step& step : walk.steps) {
        if (step.basis) citations.push_back(step.basis->citation);
    }
    return citations;
}

}  // namespace toft::answer
