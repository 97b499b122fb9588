#include "search/front.h"

#include <algorithm>
#include <limits>

namespace toft::search {

void Front::add(const Sound& sound) {
    std::vector<Step>& steps = levels_[sound.dependability];
    const auto at = std::lower_bound(steps.begin(), steps.end(), sound.total,
                                     [](const Step& s, double total) { return s.total < total; });
    if (at != steps.begin() && std::prev(at)->headroom >= sound.headroom) return;
    if (at != steps.end() && at->total == sound.total && at->headroom >= sound.headroom) return;
    auto last = at;
    while (last != steps.end() && last->headroom <= sound.headroom) ++last;
    steps.insert(steps.erase(at, last), Step{sound.total, sound.headroom});
}

bool Front::beats(double total, double most_headroom, double dependability) const {
    for (const auto& [level, steps] : levels_) {
        if (level < dependability) return false;
        const auto at =
            std::lower_bound(steps.begin(), steps.end(), total,
                             [](const Step& s, double limit) { return s.total < limit; });
        if (at != steps.begin() && std::prev(at)->headroom >= most_headroom) return true;
    }
    return false;
}

double Front::beaten_above(double most_headroom, double dependability) const {
    double least = std::numeric_limits<double>::infinity();
    for (const auto& [level, steps] : levels_) {
        if (level < dependability) break;
        const auto at =
            std::lower_bound(steps.begin(), steps.end(), most_headroom,
                             [](const Step& s, double wanted) { return s.headroom < wanted; });
        if (at != steps.end()) least = std::min(least, at->total);
    }
    return least;
}

}  // namespace toft::search
