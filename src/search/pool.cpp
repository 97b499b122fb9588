#include "search/pool.h"

#include <limits>

namespace toft::search {

namespace {

constexpr double always = -std::numeric_limits<double>::infinity();
constexpr double never = std::numeric_limits<double>::infinity();

}  // namespace

bool surely_before(const Sound& a, double total, double most_headroom, site::Prefer prefer) {
    return prefer == site::Prefer::headroom ? a.headroom > most_headroom : a.total < total;
}

double before_above(const Sound& a, double most_headroom, site::Prefer prefer) {
    if (prefer != site::Prefer::headroom) return a.total;
    return a.headroom > most_headroom ? always : never;
}

bool surely_first(const Sound& a, const Hoped& b, site::Prefer prefer) {
    if (prefer != site::Prefer::dependability) return surely_before(a, b.total, b.headroom, prefer);
    if (a.dependability != b.dependability) return a.dependability > b.dependability;
    return a.total < b.total;
}

double first_above(const Sound& a, const Hoped& b, site::Prefer prefer) {
    if (prefer != site::Prefer::dependability) return before_above(a, b.headroom, prefer);
    if (a.dependability != b.dependability) {
        return a.dependability > b.dependability ? always : never;
    }
    return a.total;
}

bool thriftier(const Sound& a, const Sound& b, site::Prefer prefer) {
    const double sum_a = a.total + a.lost;
    const double sum_b = b.total + b.lost;
    return sum_a != sum_b ? sum_a < sum_b : comes_before(a, b, prefer);
}

void Pool::add(const Sound& s, site::Prefer prefer) {
    const bool thrifty = !thrift || thriftier(s, *thrift, prefer);
    if (thrifty) thrift = s;
    const auto [at, fresh] = best.emplace(combination(s), s);
    const bool later = !fresh && surely_before(at->second, s.total, s.headroom, prefer);
    const bool beaten = later && front.beats(s.total, s.headroom, s.dependability);
    if (beaten && !thrifty) return;
    if (!fresh && !later && comes_before(s, at->second, prefer)) at->second = s;
    front.add(s);
    found.push_back(s);
}

}  // namespace toft::search
