#include "answer/answer.h"
#include "site/built.h"

#include <algorithm>

namespace toft::answer {

const SchemeAnswer* part_of(const SchemeAnswer& scheme, const std::string& run) {
    if (scheme.run.id == run) return &scheme;
    for (const SchemeAnswer& part : scheme.further) {
        if (part.run.id == run) return &part;
    }
    return nullptr;
}

site::Job as_built(const site::Job& job, const SchemeAnswer& scheme) {
    std::vector<std::size_t> runs;
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        if (part_of(scheme, job.runs[i].id)) runs.push_back(i);
    }
    return site::as_built(job, runs);
}

site::Job seen_from(const site::Job& job, const std::string& run) {
    site::Job seen = job;
    for (std::size_t i = 0; i < seen.runs.size(); ++i) {
        if (!seen.runs[i].stated_at) seen.runs[i].stated_at = i;
    }
    std::stable_partition(seen.runs.begin(), seen.runs.end(),
                          [&](const site::Run& other) { return other.id == run; });
    return seen;
}

Answer for_run(const Answer& answer, const std::string& run) {
    Answer of_run = answer;
    of_run.schemes.clear();
    for (const SchemeAnswer& scheme : answer.schemes) {
        std::vector<SchemeAnswer> parts{scheme};
        parts.insert(parts.end(), scheme.further.begin(), scheme.further.end());
        for (SchemeAnswer& part : parts) {
            if (part.run.id != run) continue;
            part.further.clear();
            part.sentence = part.run_sentence;
            part.words = part.run_words;
            of_run.schemes.push_back(std::move(part));
        }
    }
    return of_run;
}

}  // namespace toft::answer
