#pragma once
// How deep rods must go: resistance of one rod or a group over the length driven, the shortest that
// meets a target, and the fewest rods of one length. Rods come in sections; every length here is a
// whole number of them. One solution serves all lengths (growing.h), so a longer rod or one more
// rod never reads higher. Against fields whose pieces crowd at the tips: within 1 %.
// Page: docs/methods/rod-reach.md.

#include "field/medium.h"
#include "field/wire.h"

#include <optional>

namespace toft::field {

enum class Arrangement {
    line,      ///< any number of rods, neighbours one spacing apart
    triangle,  ///< three rods, each one spacing from the others
    square     ///< round the sides of a square with equal spacing: 4, 8, 12, … rods
};

struct RodGroup {
    Arrangement arrangement = Arrangement::line;
    int rods = 1;
    Metres spacing{};  ///< between neighbours; not read of one rod
};

/// The rods on offer.
struct Rods {
    Metres diameter{};
    Metres top{};      ///< depth of their tops
    Metres section{};  ///< lengths come in multiples of this
    int longest = 1;   ///< sections that can be driven
};

struct RodLength {
    int sections = 0;
    Metres length{};
    Ohms resistance{};
};

/// One entry for each number of sections from 1 to the longest.
Outcome<std::vector<RodLength>> rod_lengths(const Medium& medium, const Rods& rods,
                                            const RodGroup& group = {});

/// The first of rod_lengths() that is no more than `target`; none when even the longest is.
Outcome<std::optional<RodLength>> shortest_rods(const Medium& medium, const Rods& rods,
                                                const RodGroup& group, Ohms target);

struct RodCount {
    int rods = 0;
    Ohms resistance{};
};

/// Rods of all sections of `rods.longest` in a line, from 1 to `most`.
Outcome<std::vector<RodCount>> rods_in_line(const Medium& medium, const Rods& rods, Metres spacing,
                                            int most);

/// The first of rods_in_line() that is no more than `target`; none when even `most` are not enough.
Outcome<std::optional<RodCount>> fewest_in_line(const Medium& medium, const Rods& rods,
                                                const RodGroup& most, Ohms target);

/// Where the rods of a group stand; the first at the origin of the plan.
std::vector<Spot> places_of(const RodGroup& group, Metres top);

}  // namespace toft::field
