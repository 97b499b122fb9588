#pragma once
// Where the run lies on the sheet: each leg at its height or depth, each stretch from joint to
// joint.

#include "picture/stage.h"

#include <vector>

namespace toft::picture {

/// Depth drawn for a leg whose depth nobody knows, metres.
inline constexpr double depth_not_known = 0.5;

double depth_of(const site::Leg& leg);

/// Height of a leg on paper.
double level_of(const Stage& stage, std::size_t leg);

/// The leg's points: level, or hanging between its ends.
std::vector<drawing::Point> leg_line(const Stage& stage, std::size_t leg);

/// The cable's way from the unit that feeds it to the outbuilding's board.
std::vector<drawing::Point> cable_way(const Stage& stage);

/// The boxes where the cable changes, from the house on; beneath a roof where a leg runs there.
/// None without a scheme.
std::vector<drawing::Point> joints_of(const Stage& stage);

/// The way of one stretch of the scheme, from the unit or a joint to the next or the board.
/// Precondition: the stage has a scheme, `stretch` is one of its run.
std::vector<drawing::Point> stretch_way(const Stage& stage, std::size_t stretch);

/// `line` moved sideways by `by`: upwards for a line that runs to the right. Equal neighbours are
/// one point.
std::vector<drawing::Point> beside(const std::vector<drawing::Point>& line, double by);

}  // namespace toft::picture
