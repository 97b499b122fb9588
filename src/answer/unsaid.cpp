#include "answer/unsaid.h"

#include <algorithm>

namespace toft::answer {

void add_unsaid(const study::Setting<Silent>& setting, std::vector<std::string>& facts) {
    for (const study::UnsaidFact& fact : setting.unsaid) {
        const bool known = std::find(facts.begin(), facts.end(), fact.pointer) != facts.end();
        if (!known) facts.push_back(fact.pointer);
    }
}

std::vector<std::string> unsaid_of(const Question& q) {
    std::vector<std::string> facts;
    Silent silent;
    for (std::size_t run = 0; run < q.job.runs.size(); ++run) {
        add_unsaid(study::prepare(silent, q.catalogue, q.job, study::RunAt{run, 0, q.memo}, {}),
                   facts);
    }
    return facts;
}

}  // namespace toft::answer
