#pragma once
// What the measured resistance of one driven rod says of the soil.
//
// In uniform soil rho = 2 pi L R/(ln(8 L/d) - 1) (BS 7430, 9.5.3, turned round; 1 % low). In layers
// that is the resistivity the rod seems to see, good for rods of about the same length only.
// Page: docs/methods/driven-rod.md.

#include "base/outcome.h"
#include "field/soil.h"
#include "soil/soil_fit.h"

#include <functional>
#include <string>
#include <vector>

namespace toft::soil {

struct DrivenRod {
    Metres length{};  ///< in the ground, its top at the surface
    Metres diameter{};
    Ohms resistance{};   ///< measured
    double error = 0.1;  ///< share by which it may be off either way, model and meter; judgement
};

/// `out-of-range` for lengths, diameters and resistances that are not above 0, rods not at least
/// ten times as long as thick, and errors that are no share.
Faults faults_of(const DrivenRod& rod);

/// The resistivity that the rod seems to see. The rod has no faults.
OhmMetres apparent_resistivity(const DrivenRod& rod);

/// A range for uniform soil, before and after a rod was driven.
struct RodUpdate {
    Range<OhmMetres> range;    ///< what both allow; the rod's own range where they do not meet
    bool contradicts = false;  ///< they do not meet
    std::string says;
};
Outcome<RodUpdate> narrowed(const Range<OhmMetres>& before, const DrivenRod& rod);

/// What resistance a rod should have in a soil.
using RodSolver = std::function<Outcome<Ohms>(const field::Strata&, const DrivenRod&)>;

/// By the field of the rod, in at most two layers; refuses more (`soil`).
Outcome<Ohms> rod_over(const field::Strata& soil, const DrivenRod& rod);

/// Soils held against a rod.
struct RodCheck {
    /// Those that agree with the rod, unchanged, and those that the solver refuses. Where none
    /// agrees: all, each with its resistivities changed by one factor so that it agrees (those
    /// unjudged by the factor of the first one judged).
    std::vector<field::Strata> soils;
    std::size_t agree = 0;
    std::size_t unjudged = 0;  ///< refused by the solver
    bool contradicts = false;  ///< none agreed
    double factor = 1;         ///< measured over expected in the first soil that was judged
    std::string says;
};

/// `soils` as SoilFit::plausible has them, the best first. Refuses a faulty rod and a list that is
/// empty or of which no soil can be judged.
Outcome<RodCheck> held_against(const std::vector<field::Strata>& soils, const DrivenRod& rod,
                               const RodSolver& solver = rod_over);

}  // namespace toft::soil
