#include "picture/route_scale.h"

#include <algorithm>

namespace toft::picture {

namespace {

bool crosses(site::LegMethod method) {
    return site::buried(method) || method == site::LegMethod::overhead;
}

/// Legs before the first that crosses the ground belong to the house, those after the last to the
/// outbuilding; where none does, the whole run is outdoors.
std::vector<Side> sides_of(const std::vector<site::Leg>& legs) {
    std::vector<Side> sides(legs.size(), Side::between);
    std::size_t first = 0;
    while (first < legs.size() && !crosses(legs[first].method)) ++first;
    if (first == legs.size()) return sides;
    std::size_t past = legs.size();
    while (!crosses(legs[past - 1].method)) --past;
    std::fill(sides.begin(), sides.begin() + static_cast<std::ptrdiff_t>(first), Side::house);
    std::fill(sides.begin() + static_cast<std::ptrdiff_t>(past), sides.end(), Side::outbuilding);
    return sides;
}

/// The longest length drawn in full: the largest cap for which the capped lengths sum to `sum`.
/// Each length is at most the cap in what is drawn; `sum` is at least the count times the shortest.
double cap_for(std::vector<double> lengths, double sum) {
    std::sort(lengths.begin(), lengths.end());
    double below = 0;
    for (std::size_t i = 0; i < lengths.size(); ++i) {
        const double cap = (sum - below) / static_cast<double>(lengths.size() - i);
        if (cap <= lengths[i]) return cap;
        below += lengths[i];
    }
    return lengths.empty() ? 0 : lengths.back();
}

/// Lengths as drawn, in metres of paper: capped where breaks are needed.
std::vector<double> drawn_lengths(const std::vector<double>& lengths, double room) {
    const double longest = *std::max_element(lengths.begin(), lengths.end());
    const double shortest = *std::min_element(lengths.begin(), lengths.end());
    double sum = 0;
    for (const double length : lengths) sum += length;
    const auto count = static_cast<double>(lengths.size());
    const double wanted = std::min(shortest_on_paper, 0.7 * room / count);
    if (longest <= longest_over_shortest * shortest || shortest / sum * room >= wanted) {
        return lengths;
    }
    const double cap = cap_for(lengths, shortest * room / wanted);
    std::vector<double> drawn = lengths;
    for (double& length : drawn) length = std::min(length, cap);
    return drawn;
}

}  // namespace

RouteScale scale_route(const std::vector<site::Leg>& legs, double left, double right) {
    RouteScale route;
    route.start = route.house_end = left;
    route.end = route.far_start = right;
    if (legs.empty()) return route;
    double known_sum = 0;
    double known = 0;
    for (const site::Leg& leg : legs) {
        if (!leg.length.known) continue;
        known_sum += leg.length.high.number();
        known += 1;
    }
    // A leg of no known length takes the mean of the others, broken.
    const double mean = known > 0 ? known_sum / known : 1;
    std::vector<double> lengths;
    for (const site::Leg& leg : legs) {
        lengths.push_back(leg.length.known ? leg.length.high.number() : mean);
    }
    const std::vector<double> drawn = drawn_lengths(lengths, right - left);
    double sum = 0;
    for (const double length : drawn) sum += length;
    const double scale = (right - left) / sum;
    route.units_per_metre = known > 0 ? scale : 0;
    const std::vector<Side> sides = sides_of(legs);
    double at = left;
    for (std::size_t i = 0; i < legs.size(); ++i) {
        const double next = at + drawn[i] * scale;
        const bool broken = drawn[i] < lengths[i] || !legs[i].length.known;
        route.legs.push_back({at, next, broken, sides[i]});
        route.any_broken = route.any_broken || broken;
        if (sides[i] == Side::house) route.house_end = next;
        at = next;
    }
    for (std::size_t i = legs.size(); i-- > 0 && sides[i] == Side::outbuilding;) {
        route.far_start = route.legs[i].left;
    }
    return route;
}

}  // namespace toft::picture
