#include "tolerance/tornado.h"

#include "search/evaluate.h"

#include <algorithm>

namespace toft::tolerance {

Standing standing_in(const Place& place, const site::Job& job, const study::RunScheme& scheme) {
    search::Evaluation e;
    search::evaluate(prepared_in(place, job), scheme, e);
    Standing standing{e.headroom, e.governed_by, true};
    for (const auto& finding : e.findings) {
        const bool fails = finding.verdict == rules::Verdict::fails;
        if (fails && !finding.rule->only_cautions) standing.sound = false;
    }
    return standing;
}

Tornado tornado_of(const Subject& subject) {
    const std::vector<Varied>& varied = subject.varied;
    std::vector<double> likely;
    for (const Varied& v : varied) likely.push_back(v.likely);
    const site::Job job = job_at(subject.place.job, varied, likely);
    Tornado tornado;
    tornado.likely = standing_in(subject.place, job, subject.scheme);
    for (std::size_t i = 0; i < varied.size(); ++i) {
        const auto at = [&](double value) {
            site::Job one = job;
            varied[i].set(one, value, value);
            return standing_in(subject.place, one, subject.scheme);
        };
        tornado.swings.push_back({i, at(varied[i].low), at(varied[i].high)});
    }
    std::stable_sort(tornado.swings.begin(), tornado.swings.end(),
                     [](const Swing& a, const Swing& b) { return a.size() > b.size(); });
    return tornado;
}

}  // namespace toft::tolerance
