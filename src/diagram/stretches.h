#pragma once
// The run as a list of stretches: lengths of one cable each, joined in boxes where the cable
// changes, and what holds for the whole run.

#include "answer/answer.h"
#include "picture/stage.h"
#include "symbol/strokes.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::diagram {

struct Stretch {
    std::string family;
    int cores = 0;
    double live_mm2 = 0;
    std::optional<double> cpc_mm2;
    std::vector<answer::CoreAnswer> core_list;
    double length_m = 0;
    std::vector<std::string> legs;  ///< in words, from the house on
};

struct RunLine {
    std::vector<Stretch> stretches;  ///< from the house on; at least one
    std::string protective;          ///< "core and armour"
    bool armour_near = false;        ///< joined to earth there
    bool armour_far = false;
    std::optional<double> separate_mm2;

    bool core_serves() const;
    bool armour_serves() const;
};

/// True for a family whose cables have armour.
bool armoured(const Stretch& stretch);

/// The conductors of the stretch, lines first; cores whose use is none of the three are left out.
std::vector<symbol::Core> cores_of(const Stretch& stretch);

/// Precondition: the stage has a scheme.
RunLine run_line(const picture::Stage& stage);

}  // namespace toft::diagram
