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
void keep(std::vector<Best>& ways, Best way) {
    if (!way.found) return;
    for (const Best& other : ways) {
        if (beats(*other.found, *way.found)) return;
    }
    ways.erase(std::remove_if(ways.begin(), ways.end(),
                              [&](const Best& other) { return beats(*way.found, *other.found); }),
               ways.end());
    ways.push_back(std::move(way));
}

/// Grades of the table above that of the cheapest way.
std::set<double> grades_above(const Workplace& at, double grade) {
    std::set<double> grades;
    for (const tables::Dependability& row : at.catalogue.dependability) {
        if (row.rank.value > grade) grades.insert(row.rank.value);
    }
    return grades;
}

void put_in_order(std::vector<Best>& ways, site::Prefer prefer) {
    std::stable_sort(ways.begin(), ways.end(),
                     [](const Best& a, const Best& b) { return a.found->total < b.found->total; });
    if (prefer == site::Prefer::price) return;
    std::stable_sort(ways.begin(), ways.end(), [&](const Best& a, const Best& b) {
        return prefer == site::Prefer::headroom ? a.found->headroom > b.found->headroom
                                                : a.found->dependability > b.found->dependability;
    });
}

}  // namespace

Alternatives alternatives(const Workplace& at, const Tree& tree, const Asked& asked,
                          const Best* known) {
    Alternatives all;
    all.cheapest = known ? *known : cheapest(at, tree, asked);
    if (!all.cheapest.found) return all;
    keep(all.ways, all.cheapest);
    Asked floor = asked;
    floor.thorough = false;
    for (const double grade : grades_above(at, all.cheapest.found->dependability)) {
        floor.floor = {asked.floor.headroom, grade};
        keep(all.ways, cheapest(at, tree, floor));
    }
    double headroom = all.cheapest.found->headroom;
    while (headroom < most_headroom) {
        headroom = (std::floor(headroom / headroom_step + 1e-9) + 1) * headroom_step;
        floor.floor = {headroom, asked.floor.dependability};
        Best way = cheapest(at, tree, floor);
        if (!way.found) break;
        headroom = std::max(headroom, way.found->headroom);
        keep(all.ways, std::move(way));
    }
    put_in_order(all.ways, at.job.wishes.prefer);
    return all;
}

}  // namespace toft::tree
