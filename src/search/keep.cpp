#include "search/keep.h"

#include "search/front.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace toft::search {

namespace {

bool equal(const Sound& a, const Sound& b) {
    return a.total == b.total && a.headroom == b.headroom && a.dependability == b.dependability;
}

/// Indices of those that nothing beats. In order of price only dearer ones can be beaten, so each
/// is held against the best headroom met so far at its dependability or above.
std::vector<std::size_t> unbeaten(const std::vector<Sound>& found) {
    std::vector<std::size_t> order(found.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return comes_before(found[a], found[b], site::Prefer::price);
    });
    std::map<double, double, std::greater<>> best;  // headroom reached, by dependability
    std::vector<std::size_t> stay;
    for (std::size_t i : order) {
        bool beaten = false;
        for (const auto& [dependability, headroom] : best) {
            if (dependability < found[i].dependability) break;
            beaten = beaten || headroom >= found[i].headroom;
        }
        if (beaten) continue;
        stay.push_back(i);
        auto& reached = best.emplace(found[i].dependability, found[i].headroom).first->second;
        reached = std::max(reached, found[i].headroom);
    }
    return stay;
}

}  // namespace

Combination combination(const Sound& s) {
    bool cautioned = false;
    for (std::size_t i = 0; i < s.verdicts.size(); ++i) {
        const rules::RuleInfo& rule = *rules::rulebook()[i].info;
        cautioned =
            cautioned || (s.verdicts[i] == rules::Verdict::caution &&
                          rule.sees == rules::Sees::run && rule.thicker == rules::Trend::better);
    }
    std::array<int, 2 * study::most_stretches> laid{};
    std::size_t i = 0;
    for (const study::Stretch& stretch : s.scheme.laid()) {
        laid[i++] = 1 + static_cast<int>(stretch.protective);
        laid[i++] = static_cast<int>(stretch.cable->family);
    }
    return {static_cast<int>(s.scheme.earthing), s.scheme.phases, laid, cautioned};
}

bool comes_before(const Sound& a, const Sound& b, site::Prefer prefer) {
    const auto rank = [prefer](const Sound& s) {
        switch (prefer) {
            case site::Prefer::headroom:
                return std::make_tuple(-s.headroom, s.total, -s.dependability);
            case site::Prefer::dependability:
                return std::make_tuple(-s.dependability, s.total, -s.headroom);
            case site::Prefer::price:
                break;
        }
        return std::make_tuple(s.total, -s.headroom, -s.dependability);
    };
    const auto ra = rank(a);
    const auto rb = rank(b);
    return ra != rb ? ra < rb : a.order < b.order;
}

bool beats(const Sound& a, const Sound& b) {
    if (a.total > b.total || a.headroom < b.headroom || a.dependability < b.dependability)
        return false;
    return !equal(a, b) || a.order < b.order;
}

std::vector<Sound> ranked(std::vector<Sound> found, site::Prefer prefer) {
    std::sort(found.begin(), found.end(),
              [prefer](const Sound& a, const Sound& b) { return comes_before(a, b, prefer); });
    return found;
}

std::vector<Sound> kept(const std::vector<Sound>& found, site::Prefer prefer, std::size_t most) {
    std::map<Combination, std::size_t> best_of;
    for (std::size_t i = 0; i < found.size(); ++i) {
        const auto [at, fresh] = best_of.emplace(combination(found[i]), i);
        if (!fresh && comes_before(found[i], found[at->second], prefer)) at->second = i;
    }
    std::vector<Sound> chosen;
    for (const auto& [kind, i] : best_of) chosen.push_back(found[i]);
    chosen = ranked(std::move(chosen), prefer);
    if (chosen.size() > most) chosen.resize(most);
    std::vector<Sound> others;
    for (std::size_t i : unbeaten(found)) {
        const auto at = best_of.find(combination(found[i]));
        if (at->second != i) others.push_back(found[i]);
    }
    others = ranked(std::move(others), prefer);
    for (const Sound& s : others) {
        if (chosen.size() >= most) break;
        chosen.push_back(s);
    }
    return ranked(std::move(chosen), prefer);
}

std::vector<Sound> promising(const std::vector<Sound>& unsure, const std::vector<Sound>& sound,
                             site::Prefer prefer) {
    Front front;
    std::map<Combination, std::size_t> best_of;
    for (std::size_t i = 0; i < sound.size(); ++i) {
        front.add(sound[i]);
        const auto [at, fresh] = best_of.emplace(combination(sound[i]), i);
        if (!fresh && comes_before(sound[i], sound[at->second], prefer)) at->second = i;
    }
    std::vector<Sound> stay;
    for (const Sound& s : unsure) {
        const auto best = best_of.find(combination(s));
        const bool later = best != best_of.end() && comes_before(sound[best->second], s, prefer);
        if (!later || !front.beats(s.total, s.headroom, s.dependability)) stay.push_back(s);
    }
    return stay;
}

}  // namespace toft::search
