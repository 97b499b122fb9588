#include "search/keep.h"

#include "base/order.h"

#include <algorithm>
#include <map>
#include <set>
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
    put_in_order(order, [&](std::size_t a, std::size_t b) {
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

/// Indices of the best of every combination.
std::set<std::size_t> best_of_each(const std::vector<Sound>& found, site::Prefer prefer) {
    std::map<Combination, std::size_t> best;
    for (std::size_t i = 0; i < found.size(); ++i) {
        const auto [at, fresh] = best.emplace(combination(found[i]), i);
        if (!fresh && comes_before(found[i], found[at->second], prefer)) at->second = i;
    }
    std::set<std::size_t> indices;
    for (const auto& [kind, i] : best) indices.insert(i);
    return indices;
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
        laid[i++] = 1 + static_cast<int>(stretch.protective) + 10 * static_cast<int>(stretch.laid);
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
    put_in_order(found,
                 [prefer](const Sound& a, const Sound& b) { return comes_before(a, b, prefer); });
    return found;
}

std::vector<Sound> kept(const std::vector<Sound>& found, site::Prefer prefer, std::size_t most) {
    std::vector<Sound> chosen;
    const std::set<std::size_t> best = best_of_each(found, prefer);
    for (const std::size_t i : best) chosen.push_back(found[i]);
    chosen = ranked(std::move(chosen), prefer);
    if (chosen.size() > most) chosen.resize(most);
    std::vector<Sound> others;
    for (const std::size_t i : unbeaten(found)) {
        if (best.count(i) == 0) others.push_back(found[i]);
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
    std::vector<Sound> both = unsure;
    both.insert(both.end(), sound.begin(), sound.end());
    std::set<std::size_t> stay = best_of_each(both, prefer);
    for (const std::size_t i : unbeaten(both)) stay.insert(i);
    std::vector<Sound> out;
    for (const std::size_t i : stay) {
        if (i < unsure.size()) out.push_back(both[i]);
    }
    return out;
}

}  // namespace toft::search
