#include "field/rod_reach.h"

#include "field/growing.h"

#include <algorithm>
#include <cmath>

namespace toft::field {

namespace {

constexpr double longest_piece = 0.1;  ///< metres
constexpr double shortest_piece = 4;   ///< radii
constexpr double most_line_pieces = 1500;
constexpr double on_it = 1e-6;  ///< metres: ends so near a boundary lie on it

Faults faults_of(const Rods& rods, const RodGroup& group) {
    Faults faults;
    const auto refuse = [&](const char* pointer, const char* says) {
        faults.push_back({"rods", pointer, says, "", {}});
    };
    const double section = rods.section.number();
    const double diameter = rods.diameter.number();
    if (!(diameter > 0) || !std::isfinite(diameter)) {
        refuse("/diameter", "rods need a diameter above 0");
    } else if (!(section >= 2 * diameter) || !std::isfinite(section)) {
        refuse("/section", "a section needs a length of two diameters or more");
    } else if (rods.longest < 1) {
        refuse("/longest", "at least one section must be allowed");
    }
    if (!(rods.top >= metres(0)) || !std::isfinite(rods.top.number())) {
        refuse("/top", "the tops of rods lie at the surface or below");
    }
    if (group.rods < 1) refuse("/rods", "at least one rod is needed");
    if (group.rods > 1 && !(group.spacing >= 2 * rods.diameter)) {
        refuse("/spacing", "rods need two diameters or more between them");
    }
    if (group.arrangement == Arrangement::triangle && group.rods != 3) {
        refuse("/rods", "a triangle has three rods");
    }
    if (group.arrangement == Arrangement::square && (group.rods < 4 || group.rods % 4 != 0)) {
        refuse("/rods", "a square has 4, 8, 12 … rods");
    }
    if (faults.empty() &&
        double{1} * group.rods * rods.longest * std::max(1.0, section / longest_piece) >
            most_line_pieces) {
        refuse("", "so many long rods are too much to solve: allow fewer or shorter ones");
    }
    return faults;
}

/// Depths where pieces end, from the top down: the ends of sections, boundaries, and even cuts
/// between. `sections[i]` counts the pieces down to the end of section i.
struct Ladder {
    std::vector<double> depths;
    std::vector<std::size_t> sections;
};

Ladder ladder_of(const Medium& medium, const Rods& rods) {
    const double top = rods.top.number();
    const double piece = std::max(longest_piece, shortest_piece * rods.diameter.number() / 2);
    Ladder ladder{{top}, {}};
    for (int s = 1; s <= rods.longest; ++s) {
        const double end = top + s * rods.section.number();
        std::vector<double> stops;
        for (double depth : boundaries(medium.soil())) {
            const bool inside = depth > ladder.depths.back() + on_it && depth < end - on_it;
            if (inside) stops.push_back(depth);
        }
        stops.push_back(end);
        for (double stop : stops) {
            const double from = ladder.depths.back();
            const int count =
                std::max(1, static_cast<int>(std::ceil((stop - from) / piece - 1e-9)));
            for (int i = 1; i <= count; ++i) {
                ladder.depths.push_back(i == count ? stop : from + (stop - from) * i / count);
            }
        }
        ladder.sections.push_back(ladder.depths.size() - 1);
    }
    return ladder;
}

Piece piece_of(const Spot& place, double from, double to, Metres diameter) {
    Piece piece;
    piece.bar.middle = {place.east.number(), place.north.number(), (from + to) / 2};
    piece.bar.along = {0, 0, 1};
    piece.bar.half = (to - from) / 2;
    piece.bar.radius = diameter.number() / 2;
    return piece;
}

template <class Reached>
std::optional<Reached> first_within(const std::vector<Reached>& all, Ohms target) {
    const auto met = [&](const Reached& one) { return one.resistance <= target; };
    const auto found = std::find_if(all.begin(), all.end(), met);
    if (found == all.end()) return std::nullopt;
    return *found;
}

}  // namespace

std::vector<Spot> places_of(const RodGroup& group, Metres top) {
    const Metres s = group.spacing;
    std::vector<Spot> places;
    if (group.arrangement == Arrangement::triangle) {
        return {
            {metres(0), metres(0), top}, {s, metres(0), top}, {s / 2, s * std::sqrt(0.75), top}};
    }
    if (group.arrangement == Arrangement::line) {
        for (int i = 0; i < group.rods; ++i) places.push_back({s * i, metres(0), top});
        return places;
    }
    const int side = group.rods / 4;
    for (int i = 0; i < side; ++i) {
        places.push_back({s * i, metres(0), top});
        places.push_back({s * side, s * i, top});
        places.push_back({s * (side - i), s * side, top});
        places.push_back({metres(0), s * (side - i), top});
    }
    return places;
}

Outcome<std::vector<RodLength>> rod_lengths(const Medium& medium, const Rods& rods,
                                            const RodGroup& group) {
    if (Faults faults = faults_of(rods, group); !faults.empty()) return failed(std::move(faults));
    const Ladder ladder = ladder_of(medium, rods);
    const std::vector<Spot> places = places_of(group, rods.top);
    std::vector<Piece> pieces;
    for (std::size_t level = 1; level < ladder.depths.size(); ++level) {
        for (const Spot& place : places) {
            pieces.push_back(
                piece_of(place, ladder.depths[level - 1], ladder.depths[level], rods.diameter));
        }
    }
    std::vector<std::size_t> stages;
    for (std::size_t level : ladder.sections) stages.push_back(level * places.size());
    const auto figures = growing(medium, pieces, stages);
    if (!figures) return failed(figures.error());
    std::vector<RodLength> lengths;
    for (int s = 1; s <= rods.longest; ++s) {
        lengths.push_back({s, rods.section * s, (*figures)[static_cast<std::size_t>(s - 1)]});
    }
    return lengths;
}

Outcome<std::optional<RodLength>> shortest_rods(const Medium& medium, const Rods& rods,
                                                const RodGroup& group, Ohms target) {
    const auto lengths = rod_lengths(medium, rods, group);
    if (!lengths) return failed(lengths.error());
    return first_within(*lengths, target);
}

Outcome<std::vector<RodCount>> rods_in_line(const Medium& medium, const Rods& rods, Metres spacing,
                                            int most) {
    const RodGroup line{Arrangement::line, most, spacing};
    if (Faults faults = faults_of(rods, line); !faults.empty()) return failed(std::move(faults));
    const Ladder ladder = ladder_of(medium, rods);
    std::vector<Piece> pieces;
    std::vector<std::size_t> stages;
    for (const Spot& place : places_of(line, rods.top)) {
        for (std::size_t level = 1; level < ladder.depths.size(); ++level) {
            pieces.push_back(
                piece_of(place, ladder.depths[level - 1], ladder.depths[level], rods.diameter));
        }
        stages.push_back(pieces.size());
    }
    const auto figures = growing(medium, pieces, stages);
    if (!figures) return failed(figures.error());
    std::vector<RodCount> counts;
    for (Ohms resistance : *figures) {
        counts.push_back({static_cast<int>(counts.size()) + 1, resistance});
    }
    return counts;
}

Outcome<std::optional<RodCount>> fewest_in_line(const Medium& medium, const Rods& rods,
                                                const RodGroup& most, Ohms target) {
    const auto counts = rods_in_line(medium, rods, most.spacing, most.rods);
    if (!counts) return failed(counts.error());
    return first_within(*counts, target);
}

}  // namespace toft::field
