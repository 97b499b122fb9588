#pragma once
// Time-current curves of two devices in series: which of them clears a fault beyond both.

#include "answer/answer.h"
#include "drawing/scene.h"
#include "site/job.h"

#include <cstddef>
#include <string>

namespace toft::curves {

/// What is drawn: two devices in words (tables/device_words.h), on the run of scheme `scheme_index`
/// of `answer`. Left empty, upstream is the operator's fuse and downstream the device at the head
/// of the run; a downstream device that is named stands at the outbuilding.
struct PairOf {
    const tables::Catalogue& catalogue;
    const site::Job& job;
    const answer::Answer& answer;
    std::size_t scheme_index = 0;
    std::string upstream;
    std::string downstream;
};

/// Both bands, what the run's conductors withstand, and the verdict in words. Where the index names
/// no scheme, what fell and why. Widths as for curves_picture.
drawing::Scene pair_picture(const PairOf& of, double width);

}  // namespace toft::curves
