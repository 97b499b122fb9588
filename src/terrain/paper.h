#pragma once
// Ruled paper of a plot: a box with a scale each way, its ruling with figures, and bands between a
// low and a high line.

#include "drawing/hatch.h"
#include "drawing/scene.h"
#include "terrain/scale.h"

#include <string>
#include <vector>

namespace toft::terrain {

struct Paper {
    drawing::Box box;
    Scale across;  ///< from the left to the right
    Scale down;    ///< of the other way, upwards or downwards
    double letters = 11;

    drawing::Point at(double x, double y) const { return {across.at(x), down.at(y)}; }
};

/// A line of the ruling and the figure at its end; no words, a line alone.
struct Step {
    double figure = 0;
    std::string words;
};

/// Thin lines, figures below the box and left of it; a figure that would cover the one before is
/// left out. The box itself is drawn last.
drawing::Items ruled(const Paper& paper, const std::vector<Step>& across,
                     const std::vector<Step>& down);

/// How the room between two lines is inked.
struct BandInk {
    /// Of both lines. A broken one lies on paper of its width: seen on a broader full line too.
    drawing::Style edge;
    drawing::Hatch hatch;
    bool washed = true;  ///< a light fill beneath the hatching
};

/// Between `low` and `high`, each in order; a single point each gives the line between them, an
/// empty line nothing.
drawing::Items band(const std::vector<drawing::Point>& low, const std::vector<drawing::Point>& high,
                    const BandInk& ink);

/// A line with a stroke across each end, from one figure to another.
drawing::Items span_mark(drawing::Point from, drawing::Point to, double weight = 1.8);

/// A number in a ring, as the list beside or below the drawing repeats it.
drawing::Items disc(drawing::Point centre, const std::string& sign);
inline constexpr double disc_radius = 8;

}  // namespace toft::terrain
