#include "tolerance/tornado.h"

#include "search/evaluate.h"

#include <algorithm>
#include <cmath>

namespace toft::tolerance {

namespace {

/// A share without end counts as this.
constexpr double most_use = 1000;

/// Headrooms that differ by less are alike.
constexpr double alike = 1e-9;

void find_moved(Swing& swing) {
    double most = alike;
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (!rules[i].info->graded) continue;
        const double by = std::abs(swing.high.use[i] - swing.low.use[i]);
        if (by <= most) continue;
        most = by;
        swing.moved = i;
    }
}

}  // namespace

Standing standing_in(const Place& place, const site::Job& job, const study::RunScheme& scheme) {
    search::Evaluation e;
    search::evaluate(prepared_in(place, job), scheme, e);
    Standing standing{e.headroom, e.governed_by, true, {}};
    for (std::size_t i = 0; i < e.findings.size(); ++i) {
        const auto& finding = e.findings[i];
        if (finding.limited) standing.use[i] = std::min(finding.use, most_use);
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
        find_moved(tornado.swings.back());
    }
    std::stable_sort(tornado.swings.begin(), tornado.swings.end(),
                     [](const Swing& a, const Swing& b) {
                         if (std::abs(a.size() - b.size()) > alike) return a.size() > b.size();
                         return a.use_moved() > b.use_moved();
                     });
    return tornado;
}

}  // namespace toft::tolerance
