#include "tolerance/tolerance.h"

#include "search/evaluate.h"
#include "tolerance/halton.h"

#include <algorithm>

namespace toft::tolerance {

namespace {

using rules::rule_count;

/// All corners of the ranges are looked at up to so many varied figures.
constexpr std::size_t most_cornered = 8;

double use_of(const rules::Finding<Silent>& finding) { return finding.limited ? finding.use : 0; }

bool fails(const rules::Finding<Silent>& finding) {
    return finding.verdict == rules::Verdict::fails;
}

std::vector<RuleOver> at_worst_and_likely(const Subject& subject) {
    search::Evaluation worst;
    const site::Job over = job_over(subject.place.job, subject.varied);
    search::evaluate(prepared_in(subject.place, over), subject.scheme, worst);
    std::vector<double> values;
    for (const Varied& v : subject.varied) values.push_back(v.likely);
    search::Evaluation likely;
    const site::Job middle = job_at(subject.place.job, subject.varied, values);
    search::evaluate(prepared_in(subject.place, middle), subject.scheme, likely);
    std::vector<RuleOver> all(rule_count);
    for (std::size_t i = 0; i < rule_count; ++i) {
        const auto& w = worst.findings[i];
        const auto& l = likely.findings[i];
        all[i] = {w.rule,    w.limited || l.limited,
                  use_of(l), use_of(w),
                  use_of(l), !fails(w),
                  !fails(l), {},
                  w.says};
    }
    return all;
}

/// Corners of the ranges, each figure at one end for all rules alike: every one where they are few,
/// else some spread evenly over all.
std::vector<std::vector<double>> corners_of(const std::vector<Varied>& varied) {
    const std::size_t count = varied.size();
    const bool all = count <= most_cornered;
    const std::size_t corners = std::size_t{1} << std::min(count, most_cornered);
    Halton points(std::min(count, primes.size()));
    std::vector<std::vector<double>> found(corners, std::vector<double>(count));
    for (std::size_t k = 0; k < corners; ++k) {
        const auto& point = points.next();
        for (std::size_t i = 0; i < count; ++i) {
            const bool high = all ? (k >> i & 1) != 0 : point[i % point.size()] >= 0.5;
            found[k][i] = high ? varied[i].high : varied[i].low;
        }
    }
    return found;
}

/// Where a rule is worse at a corner than at its worse ends, those are not trusted with it.
void look_at_corners(const Subject& subject, std::vector<RuleOver>& rules) {
    search::Evaluation e;
    for (const std::vector<double>& values : corners_of(subject.varied)) {
        const site::Job job = job_at(subject.place.job, subject.varied, values);
        search::evaluate(prepared_in(subject.place, job), subject.scheme, e);
        for (std::size_t i = 0; i < rule_count; ++i) {
            rules[i].reached = std::max(rules[i].reached, use_of(e.findings[i]));
            if (fails(e.findings[i])) rules[i].holds_at_worst = false;
        }
    }
}

void add_stays(const Place& place, const std::vector<Varied>& varied, std::vector<Stays>& stays) {
    for (const study::OpenFact& fact : prepared_in(place, place.job).open) {
        const bool varies = std::any_of(varied.begin(), varied.end(),
                                        [&](const Varied& v) { return v.pointer == fact.pointer; });
        const bool told = std::any_of(stays.begin(), stays.end(),
                                      [&](const Stays& s) { return s.pointer == fact.pointer; });
        if (!varies && !told) stays.push_back({fact.pointer, fact.says});
    }
}

}  // namespace

Tolerance tolerance_of(const Place& given, const study::RunScheme& scheme, const Wish& wish) {
    Place place = given;
    place.at.phases = scheme.phases;
    Tolerance out;
    out.varied = varied_in(place, wish);
    add_stays(place, out.varied, out.stays);
    const Subject subject{place, out.varied, scheme};
    out.rules = at_worst_and_likely(subject);
    look_at_corners(subject, out.rules);
    std::array<bool, rule_count> sure{};
    for (std::size_t i = 0; i < rule_count; ++i) sure[i] = out.rules[i].holds_at_worst;
    const Chances chances = tolerance::chances(subject, sure, wish);
    for (std::size_t i = 0; i < rule_count; ++i) {
        out.rules[i].chance = chances.by_rule[i];
        out.rules[i].reached = std::max(out.rules[i].reached, chances.largest[i]);
        out.rules[i].worst = std::max(out.rules[i].worst, out.rules[i].reached);
    }
    out.rules.erase(std::remove_if(out.rules.begin(), out.rules.end(),
                                   [](const RuleOver& r) { return r.rule->only_cautions; }),
                    out.rules.end());
    out.robust = chances.all;
    out.samples = chances.samples;
    out.prepared = chances.prepared;
    out.tornado = tornado_of(subject);
    out.farthest = farthest_of(subject);
    return out;
}

}  // namespace toft::tolerance
