#pragma once
// The soil of the place as a column beside a scale of depths: its layers, how well their ends are
// known, and a rod in it.

#include "drawing/scene.h"
#include "groundwork/ground.h"
#include "parts/word_column.h"
#include "terrain/scale.h"

#include <optional>

namespace toft::terrain {

struct SoilColumn {
    double left = 0;
    double right = 0;
    Scale depth;                  ///< metres, downwards
    std::optional<double> rod_m;  ///< a rod so long is drawn in it
};

/// Layers as far as the scale goes, each with its resistivity where there is room; the ends of
/// layers with what the survey leaves open of them. Without layers the column says "?".
drawing::Items soil_column(const answer::SoilAnswer& soil, const SoilColumn& column);

/// Depths at which a layer of the soil ends, best known, metres.
std::vector<double> layer_ends(const answer::SoilAnswer& soil);

/// The layers in words, from the surface down, and how they are known.
void soil_words(const answer::SoilAnswer& soil, parts::WordColumn& column);

}  // namespace toft::terrain
