#pragma once
// Beside the curves: what each line is, what the rules say, and what the curves are not.

#include "answer/answer.h"
#include "curves/withstand.h"
#include "drawing/scene.h"

namespace toft::curves {

struct LegendOf {
    const tables::Device& device;
    const answer::SchemeAnswer& scheme;
    const std::vector<Withstand>& withstands;
    bool lettered = false;  ///< the lines of what the cable bears have letters (tight paper)
};

/// From the top of `box` down: the signs with their meaning, the verdicts, the cautions.
drawing::Items legend(const LegendOf& of, const drawing::Box& box);

/// How much of the device's curve was seen in print: a sentence. With or without its conventional
/// currents in an overload.
std::string curve_basis(const tables::Device& device, bool overloads = false);

}  // namespace toft::curves
