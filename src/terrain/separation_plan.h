#pragma once
// The two earths as islands: the house with what is on its earth, the outbuilding's electrode, how
// far apart they are and ought to be, what comes within reach and what joins them.

#include "base/units.h"
#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "site/job.h"

#include <cstddef>
#include <string>

namespace toft::terrain {

/// Whose plan: outbuilding `side` of `ground`, which was worked out from `job`. `reach` is that of
/// an arm (tables::Limits::reach).
struct SeparationOf {
    const site::Job& job;
    const answer::GroundAnswer& ground;
    std::size_t side = 0;
    Metres reach{};
};

/// `width` in user units, 320 to 1400. Distances that are not known are drawn as not known. The
/// same input gives the same scene. Page: docs/ground-pictures.md.
drawing::Scene separation_plan_picture(const SeparationOf& of, double width);

/// How the two earths stand to each other. What is not known is never `apart`.
enum class Islands { apart, not_known, carried, within_reach, joined };

/// `joined` before `within_reach` before `not_known` before `carried` (apart as metal goes, but the
/// electrode stands nearer than it ought to).
Islands islands_of(const answer::SeparationAnswer& separation, Metres reach);

/// "separate as far as is known", …
std::string island_words(Islands islands);

}  // namespace toft::terrain
