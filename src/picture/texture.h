#pragma once
// What a building is made of, hinted at on its wall with faint lines: boards, courses, ribs, panels.

#include "drawing/scene.h"
#include "site/words.h"

namespace toft::picture {

drawing::Items wall_texture(site::Construction construction, const drawing::Box& wall);

/// Two walls of `thick` cut through, and a gable roof over them that rises by `rise`. Inside is paper.
drawing::Items building_shell(const drawing::Box& outer, double thick, double rise);

}  // namespace toft::picture
