#include "answer/longest.h"

#include "base/root.h"
#include "rules/rulebook.h"

namespace toft::answer {

namespace {

constexpr double most_stretch = 100;

site::Job stretched(const site::Job& job, std::size_t run, double factor) {
    site::Job longer = job;
    for (site::Leg& leg : longer.runs[run].legs) {
        leg.length.low = leg.length.low * factor;
        leg.length.high = leg.length.high * factor;
    }
    return longer;
}

}  // namespace

std::vector<std::pair<std::string, double>> longest_by_rule(const Question& q,
                                                            const study::RunScheme& scheme) {
    std::vector<std::pair<std::string, double>> longest;
    Silent silent;
    const auto setting =
        study::prepare(silent, q.catalogue, q.job, run_at(q, scheme.phases), study::Corner{});
    const double length = setting.length_most.number();
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (rules[i].info->longer != rules::Trend::worse) continue;
        const auto holds = [&](double factor) {
            const site::Job longer = stretched(q.job, q.run, factor);
            const auto at = study::prepare(silent, q.catalogue, longer, run_at(q, scheme.phases),
                                           study::Corner{});
            return search::judge_one(at, scheme, i) != rules::Verdict::fails;
        };
        if (!holds(1)) continue;
        longest.emplace_back(rules[i].info->name, length * last_holding(1, most_stretch, holds));
    }
    return longest;
}

}  // namespace toft::answer
