#include "worked/longest.h"

#include "base/root.h"
#include "search/evaluate.h"

namespace toft::worked {

namespace {

constexpr double most_stretch = 100;

/// The run of a setting at other lengths.
class Stretched {
public:
    Stretched(const Subject& subject, const study::Setting<Silent>& setting)
        : legs_(subject.job.runs[subject.at.run].legs),
          run_(subject.at.run),
          job_(subject.job),
          setting_(setting) {}

    const study::Setting<Silent>& by(double factor) {
        std::vector<site::Leg>& legs = job_.runs[run_].legs;
        for (std::size_t i = 0; i < legs.size(); ++i) {
            legs[i].length.low = legs_[i].length.low * factor;
            legs[i].length.high = legs_[i].length.high * factor;
        }
        study::lay_anew(setting_, job_, study::Corner{});
        return setting_;
    }

private:
    const std::vector<site::Leg>& legs_;  ///< as they are
    std::size_t run_;
    site::Job job_;
    study::Setting<Silent> setting_;
};

}  // namespace

std::vector<std::pair<std::string, double>> longest_by_rule(const Subject& subject,
                                                            const study::Setting<Silent>& setting,
                                                            const study::RunScheme& scheme) {
    std::vector<std::pair<std::string, double>> longest;
    Stretched stretched(subject, setting);
    const double length = setting.length_most.number();
    const auto& rules = rules::rulebook();
    for (std::size_t i = 0; i < rules.size(); ++i) {
        if (rules[i].info->longer != rules::Trend::worse) continue;
        const auto holds = [&](double factor) {
            return search::judge_one(stretched.by(factor), scheme, i) != rules::Verdict::fails;
        };
        if (!holds(1)) continue;
        longest.emplace_back(rules[i].info->name, length * last_holding(1, most_stretch, holds));
    }
    return longest;
}

}  // namespace toft::worked
