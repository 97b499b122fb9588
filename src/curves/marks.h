#pragma once
// Currents and times that the curve is read against: what is drawn, rated and carried, when a fault
// must be off, and where the smallest one meets the device.

#include "answer/answer.h"
#include "curves/log_paper.h"
#include "site/job.h"

#include <cstddef>
#include <iterator>

namespace toft::curves {

/// Time within which an earth fault of the run must be off, seconds (411.3.2.3, 411.3.2.4).
double time_allowed(const tables::Catalogue& catalogue, const site::Job& job);

/// Design current Ib, rated current In of the device and rating Iz of the cable, upright, with
/// their figures above the paper.
drawing::Items current_marks(const LogPaper& paper, const answer::RunAnswer& run);

/// Room that the figures of current_marks take above the paper, user units.
inline constexpr double mark_room = 58;

/// The level line of the time allowed, and where a residual current device stands at the head, that
/// of its longest break time.
drawing::Items time_marks(const LogPaper& paper, const study::RunScheme& scheme, double allowed);

/// Upright lines of the smallest earth fault and of the largest fault, down to the paper's foot,
/// and a ring where the former meets the slow edge, if it does.
drawing::Items fault_marks(const LogPaper& paper, const answer::FigureAnswers& figures);

/// The largest fault current anywhere on the run, amperes.
double largest_fault(const answer::FigureAnswers& figures);

/// Dashes: rated current is a full line.
inline constexpr double design_dash[] = {2, 3};
inline constexpr double rating_dash[] = {9, 3, 2, 3};
inline constexpr double allowed_dash[] = {14, 4};
inline constexpr double residual_dash[] = {8, 3, 2, 3, 2, 3};
inline constexpr double fault_dash[] = {1, 3};

/// A line of that pattern.
template <std::size_t n>
drawing::Style mark_line(const double (&dash)[n], double width) {
    return drawing::dashed(drawing::palette::ink, width, {std::begin(dash), std::end(dash)});
}

}  // namespace toft::curves
