#pragma once
// What a building is made of, hinted at on its wall with faint lines: boards, courses, ribs,
// panels.

#include "drawing/scene.h"
#include "site/words.h"

#include <string>

namespace toft::parts {

drawing::Items wall_texture(site::Construction construction, const drawing::Box& wall);

/// The roof over a building: a gable that rises by `rise`, or level when that is 0.
std::vector<drawing::Point> roof_line(const drawing::Box& outer, double rise);

/// The building's name in its gable, or above a level roof.
drawing::Text building_name(const std::string& name, const drawing::Box& outer, double rise);

/// Two walls of `thick` cut through, and the roof over them. Inside is paper.
drawing::Items building_shell(const drawing::Box& outer, double thick, double rise);

}  // namespace toft::parts
