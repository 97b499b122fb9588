#pragma once
// The pictures there are, by name.

#include "answer/answer.h"
#include "digging/measured.h"
#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "outlook/tolerances.h"
#include "site/job.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace toft::gallery {

/// What a picture is drawn of: scheme `scheme_index` of `answer`, which was worked out from the
/// (valid) `job` and the tables. The index may name no scheme.
struct Subject {
    const tables::Catalogue& catalogue;
    const site::Job& job;
    const answer::Answer& answer;
    std::size_t scheme_index = 0;
    double width = 0;  ///< of the drawing, user units; 0 for the sheet that paper is given
    const answer::GroundAnswer* ground = nullptr;  ///< of the job, for the pictures that show it
    std::string upstream = {};                     ///< devices of a pair in words; empty: the
    std::string downstream = {};                   ///< operator's fuse, the head of the run
    const outlook::ToleranceAnswer* tolerance = nullptr;  ///< of the scheme, for what shows it
};

struct Picture {
    const char* name;  ///< as a command line names it
    const char* says;  ///< what it shows, in a few words
    drawing::Scene (*draw)(const Subject& subject);
    bool of_ground = false;     ///< it reads the subject's ground; without one the sheet is bare
    bool of_pair = false;       ///< it reads the subject's pair of devices
    bool of_tolerance = false;  ///< it reads the subject's tolerance
    bool from_building = false;  ///< it shows a run from another building than the house as it is
    /// The same, for a picture that is true to scale: it can be had in metres, and shows all runs
    /// of the place at once. Null for the others.
    digging::Measured (*to_scale)(const Subject& subject) = nullptr;
};

/// Widths that a drawing can be asked to have, user units.
inline constexpr double least_width = 320;
inline constexpr double most_width = 1400;

/// All of them, the usual one first.
const std::vector<Picture>& pictures();

/// Null when none has that name.
const Picture* find_picture(std::string_view name);

}  // namespace toft::gallery
