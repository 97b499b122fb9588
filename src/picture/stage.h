#pragma once
// What the parts of the picture share: the job's run and buildings, the chosen scheme, and where
// house, ground, route and outbuilding stand on the sheet.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "picture/route_scale.h"

#include <string>
#include <vector>

namespace toft::picture {

/// The sheet, in the proportions of A4 and A3 lying.
inline constexpr double sheet_wide = 1400;
inline constexpr double sheet_high = 990;
inline constexpr double margin = 44;

/// Metal parts drawn one by one; more are told in words.
inline constexpr std::size_t most_parts = 4;

/// What stands behind a metal part of the outbuilding: a thing surveyed that enters, the building's
/// own metal, or something that nobody has looked for and that is taken to be there.
enum class PartKind { entering, frame, not_surveyed };

/// A metal part of the outbuilding and the bond the scheme asks for.
struct Part {
    std::string what;
    PartKind kind = PartKind::entering;
    const site::Metalwork* metal = nullptr;    ///< of a part that enters, else null
    const answer::BondAnswer* bond = nullptr;  ///< null for none
};

struct Stage {
    const site::Job* job = nullptr;
    const site::Run* run = nullptr;
    const site::Building* house = nullptr;
    const site::Building* far = nullptr;
    const answer::SchemeAnswer* scheme = nullptr;  ///< null when there is none
    std::vector<Part> parts;                       ///< bonded ones first
    RouteScale route;
    double wide = sheet_wide;  ///< of the sheet it is drawn on
    double ground = 0;         ///< of the ground line
    double eaves = 0;
    double soil_foot = 0;  ///< where the drawn ground ends
    double chain = 0;      ///< of the line with the legs' lengths
    double units_per_metre_deep = 0;
    drawing::Box house_box;  ///< outer faces of the walls, eaves to ground
    drawing::Box far_box;

    bool own_electrode() const {
        return scheme != nullptr && scheme->building.electrode.has_value();
    }
    /// Height at which cables run indoors.
    double indoors() const { return ground - 100; }
};

/// The stage for the job's first run and the building at its end. `scheme` may be null.
/// Precondition: the job is valid (site/validate.h). Job and scheme must outlive the stage. A sheet
/// narrower than `sheet_wide` is made as wide as the buildings and a short route ask.
Stage set_stage(const site::Job& job, const answer::SchemeAnswer* scheme, double wide = sheet_wide);

}  // namespace toft::picture
