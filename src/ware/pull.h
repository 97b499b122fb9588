#pragma once
// How hard a cable may be pulled and how hard it is to pull through a duct.
// Page: docs/methods/pull.md.

#include "tables/catalogue.h"

#include <optional>
#include <string>

namespace toft::ware {

/// A pulling force.
struct Newtons {
    double newtons = 0;
};

/// A cable that slides.
struct Sliding {
    double friction = 0;           ///< coefficient, cable against duct
    double newtons_per_metre = 0;  ///< its weight
};

/// Pull behind a straight level length: T + µ w L.
Newtons after_straight(Newtons before, const Sliding& cable, Metres length);

/// Pull behind a bend of that angle, the weight in it left out: T e^(µ θ).
Newtons after_bend(Newtons before, double friction, double radians);

/// Quarter turns, all at the far end, that a limit leaves to a pull; below 0 where the pull alone
/// is over it.
int quarter_turns(Newtons pull, Newtons limit, double friction);

/// What the cable bears by a pulling eye on all conductors, and by a stocking over the sheath.
Newtons eye_limit(const tables::Catalogue& catalogue, const tables::Cable& cable);
Newtons stocking_limit(const tables::Catalogue& catalogue, const tables::Cable& cable);

struct PullEstimate {
    Newtons dry, wet;       ///< straight through the duct, level, without and with lubricant
    Newtons eye, stocking;  ///< limits
    int turns_dry = 0, turns_wet = 0;  ///< quarter turns that a stocking leaves
};

/// None where the cable's weight or diameter is not in the tables.
std::optional<PullEstimate> pull_of(const tables::Catalogue& catalogue, const tables::Cable& cable,
                                    Metres length);

/// The same in words; the survey knows of no bends, so that none are taken to be absent.
std::string pull_words(const tables::Catalogue& catalogue, const tables::Cable& cable,
                       Metres length);

}  // namespace toft::ware
