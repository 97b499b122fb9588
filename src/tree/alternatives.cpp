#include "tree/alternatives.h"

#include "base/limit.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace toft::tree {

namespace {

bool beats(const Followed& a, const Followed& b) {
    return within(a.total, b.total) && a.headroom >= b.headroom &&
           a.dependability >= b.dependability;
}

/// Keeps `way` unless it is beaten, and drops what it beats.
void keep(std::vector<Way>& ways, Best best, Merit merit) {
    if (!best.found) return;
    for (const Way& other : ways) {
        if (beats(*other.found, *best.found)) return;
    }
    ways.erase(std::remove_if(ways.begin(), ways.end(),
                              [&](const Way& other) { return beats(*best.found, *other.found); }),
               ways.end());
    ways.push_back({std::move(best), merit});
}

/// Grades of the table above that of the cheapest way.
std::set<double> grades_above(const Workplace& at, double grade) {
    std::set<double> grades;
    for (const tables::Dependability& row : at.catalogue.dependability) {
        if (row.rank.value > grade) grades.insert(row.rank.value);
    }
    return grades;
}

void put_in_order(std::vector<Way>& ways, site::Prefer prefer) {
    std::stable_sort(ways.begin(), ways.end(),
                     [](const Way& a, const Way& b) { return a.found->total < b.found->total; });
    if (prefer == site::Prefer::price) return;
    std::stable_sort(ways.begin(), ways.end(), [&](const Way& a, const Way& b) {
        return prefer == site::Prefer::headroom ? a.found->headroom > b.found->headroom
                                                : a.found->dependability > b.found->dependability;
    });
}

bool own_electrode(const FollowedRun& run) {
    return run.scheme.earthing == study::BuildingEarthing::own_electrode;
}

bool earthed_alike(const Followed& a, const Followed& b) {
    return std::equal(a.runs.begin(), a.runs.end(), b.runs.begin(),
                      [](const FollowedRun& x, const FollowedRun& y) {
                          return own_electrode(x) == own_electrode(y);
                      });
}

/// Unless one earthed alike is there that costs no more.
void add_earthed(std::vector<Way>& ways, Best best) {
    if (!best.found) return;
    for (const Way& other : ways) {
        if (earthed_alike(*other.found, *best.found) &&
            within(other.found->total, best.found->total)) {
            return;
        }
    }
    ways.push_back({std::move(best), Merit::earth});
}

/// Place of the one that costs as little with the energy it loses, added where there is none.
std::size_t place_over_years(std::vector<Way>& ways, Best best) {
    for (std::size_t i = 0; i < ways.size(); ++i) {
        const Followed& other = *ways[i].found;
        if (other.total + other.lost <= best.found->cost + penny_part) return i;
    }
    ways.push_back({std::move(best), Merit::years});
    return ways.size() - 1;
}

/// All buildings on the supply's earth, all on electrodes of their own, and, where there are few,
/// each in turn on the other side than in `way`.
std::vector<OwnElectrodes> other_earths(const Followed& way) {
    const std::size_t n = way.runs.size();
    std::vector<OwnElectrodes> all{OwnElectrodes(n, false), OwnElectrodes(n, true)};
    for (std::size_t i = 0; i < n && n <= most_turned; ++i) {
        OwnElectrodes turned(n);
        turned[i] = !own_electrode(way.runs[i]);
        all.push_back(std::move(turned));
    }
    return all;
}

/// With the energy lost over the years counted.
Best thriftiest(const Workplace& at, const Tree& tree, const Asked& asked) {
    Workplace years = at;
    years.over_years = true;
    return cheapest(years, tree, asked);
}

}  // namespace

std::vector<std::size_t> shown(const Alternatives& all, std::size_t most) {
    std::vector<std::size_t> stand_out;
    std::vector<std::size_t> steps;
    for (std::size_t i = 0; i < all.ways.size(); ++i) {
        const bool step = all.ways[i].merit == Merit::headroom && all.least_over_years != i;
        (step ? steps : stand_out).push_back(i);
    }
    // With the last step, that of most headroom, before those of other earths.
    if (!steps.empty()) {
        stand_out.push_back(steps.back());
        steps.pop_back();
    }
    const auto rank = [&](std::size_t i) {
        if (all.least_over_years == i) return 1;
        switch (all.ways[i].merit) {
            case Merit::nothing:
                return 0;
            case Merit::earth:
                return 3;
            default:
                return 2;
        }
    };
    std::stable_sort(stand_out.begin(), stand_out.end(),
                     [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    std::vector<std::size_t> places = std::move(stand_out);
    if (places.size() > most) places.resize(most);
    const std::size_t room = std::min(most - places.size(), steps.size());
    for (std::size_t k = 1; k <= room; ++k) places.push_back(steps[k * steps.size() / room - 1]);
    std::sort(places.begin(), places.end());
    return places;
}

Alternatives alternatives(const Workplace& at, const Tree& tree, const Asked& asked,
                          const Best* known) {
    Alternatives all;
    all.cheapest = known ? *known : cheapest(at, tree, asked);
    all.stopped = all.cheapest.stopped;
    if (!all.cheapest.found) return all;
    keep(all.ways, all.cheapest, Merit::nothing);
    Asked more = asked;
    more.thorough = false;
    const auto look = [&] {
        Best way = cheapest(at, tree, more);
        all.stopped = way.stopped;
        return way;
    };
    for (const double grade : grades_above(at, all.cheapest.found->dependability)) {
        if (all.stopped) break;
        more.floor = {asked.floor.headroom, grade};
        keep(all.ways, look(), Merit::dependability);
    }
    double headroom = all.cheapest.found->headroom;
    while (headroom < most_headroom && !all.stopped) {
        headroom = (std::floor(headroom / headroom_step + 1e-9) + 1) * headroom_step;
        more.floor = {headroom, asked.floor.dependability};
        Best way = look();
        if (!way.found) break;
        headroom = std::max(headroom, way.found->headroom);
        keep(all.ways, std::move(way), Merit::headroom);
    }
    more.floor = asked.floor;
    for (OwnElectrodes& own : other_earths(*all.cheapest.found)) {
        if (all.stopped) break;
        more.own_electrode = std::move(own);
        add_earthed(all.ways, look());
    }
    more.own_electrode = asked.own_electrode;
    Best thrift;
    if (!all.stopped) thrift = thriftiest(at, tree, more);
    all.stopped = all.stopped || thrift.stopped;
    if (thrift.found) place_over_years(all.ways, thrift);
    put_in_order(all.ways, at.job.wishes.prefer);
    if (thrift.found) all.least_over_years = place_over_years(all.ways, std::move(thrift));
    return all;
}

}  // namespace toft::tree
