#pragma once
// The outbuilding's board: its main switch, its bar, and a way for each circuit with the devices
// that guard it.

#include "diagram/ladder.h"
#include "picture/stage.h"

namespace toft::diagram {

/// A circuit and what guards it.
struct Way {
    std::string name;
    const site::NamedDevice* device = nullptr;  ///< as stated; null when nobody chose one yet
    const answer::RcdAnswer* rcd = nullptr;     ///< null for none
    const site::Fact<double>* load_w = nullptr;
    int phases = 1;
};

/// The ways: each circuit of the survey, and any that only the scheme names ("every circuit").
std::vector<Way> ways_of(const picture::Stage& stage);

/// Precondition: the stage has a scheme.
void draw_far_board(const picture::Stage& stage, Ladder& ladder);

}  // namespace toft::diagram
