#pragma once
// The ground works of one scheme: every leg of every run, the trenches that are dug, what lies in
// them and what they come to. Page: docs/methods/trench.md.

#include "trench/quantities.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::trench {

/// `scheme` of the (valid) job; null where nothing sound was found: then no cable is known.
struct Of {
    const tables::Catalogue& tables;
    const site::Job& job;
    const answer::SchemeAnswer* scheme = nullptr;
};

struct LegWork {
    std::string sign;     ///< "A2": second leg of run A
    std::size_t run = 0;  ///< place in Works::job
    std::size_t number = 1;
    site::Leg leg;
    const answer::StretchAnswer* cable = nullptr;
    bool stays = false;                 ///< in the ground with nothing new in it: not dug for
    std::optional<std::size_t> trench;  ///< place in Works::trenches
};

/// How deep a trench is reckoned to bring its cable, and how that is known.
struct Cover {
    Metres depth;
    bool stated = false;
    std::optional<Metres> advised;  ///< under that surface; none where the surface is not stated
};

struct Trench {
    std::vector<std::size_t> legs;  ///< that lie in it; the first is the one dug for
    std::string name;               ///< of a shared one, as stated
    std::optional<site::Surface> surface;
    Cover cover;
    std::vector<Lying> lying;
    Section section;
    Quantities of;  ///< by the longest that the length may be
};

/// Trenches of one section, drawn once.
struct Sort {
    std::vector<std::size_t> trenches;
};

/// What the scheme wants in the ground at a building.
struct ElectrodeWork {
    std::string building;  ///< id
    std::string says;      ///< "2 rods of 2.4 m"
};

struct Works {
    site::Job job;  ///< as built, runs in the order of the scheme, from the house outwards
    std::vector<LegWork> legs;
    std::vector<Trench> trenches;
    std::vector<Sort> sorts;
    std::vector<ElectrodeWork> electrodes;
    Quantities total;
    std::vector<std::string> says;  ///< what whoever digs must know or settle first
};

Works works_of(const Of& of);

/// "A" for the first run, then "B" … "Z", "AA".
std::string run_sign(std::size_t run);

/// "A2", or "A2 and B1" of a shared one.
std::string signs_of(const Works& works, const Trench& trench);

/// The row of that surface; the one of a lawn where none is stated, as the price takes it.
const tables::MadeGood& made_good(const tables::Trench& tables,
                                  const std::optional<site::Surface>& surface);

/// The longest that a length may be; nothing where it is not known.
Metres longest(const site::Fact<Metres>& length);

}  // namespace toft::trench
