#include "terrain/above_level.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace toft::terrain {

namespace {

using Outline = std::vector<GroundPoint>;

/// The map's edge walked anticlockwise from the south-west corner, metres.
class Edge {
public:
    explicit Edge(const SurfaceGrid& grid)
        : west_(grid.origin.east_m),
          south_(grid.origin.north_m),
          wide_(grid.east_m()),
          high_(grid.north_m()),
          close_(1e-6 * std::min(grid.step_east_m, grid.step_north_m)) {}

    double round() const { return 2 * (wide_ + high_); }

    /// How far along the edge the place lies; negative when it is not on it.
    double along(GroundPoint p) const {
        const double x = p.east_m - west_;
        const double y = p.north_m - south_;
        if (std::fabs(y) <= close_) return x;
        if (std::fabs(x - wide_) <= close_) return wide_ + y;
        if (std::fabs(y - high_) <= close_) return wide_ + high_ + (wide_ - x);
        if (std::fabs(x) <= close_) return 2 * wide_ + high_ + (high_ - y);
        return -1;
    }

    /// Adds the corners passed on the way from `from` for `by` metres.
    void add_corners(double from, double by, Outline& outline) const {
        for (const double lap : {0.0, round()}) {
            const double at[] = {lap, lap + wide_, lap + wide_ + high_, lap + 2 * wide_ + high_};
            for (std::size_t i = 0; i < 4; ++i) {
                if (at[i] > from && at[i] < from + by) outline.push_back(corner(i));
            }
        }
    }

    Outline whole() const { return {corner(0), corner(1), corner(2), corner(3)}; }

private:
    GroundPoint corner(std::size_t i) const {
        const double x = i == 1 || i == 2 ? wide_ : 0;
        const double y = i >= 2 ? high_ : 0;
        return {west_ + x, south_ + y};
    }

    double west_, south_, wide_, high_, close_;
};

/// Turns the line so that the higher ground is on its left, judged over its longest piece.
void turn_high_left(const SurfaceGrid& grid, Outline& line) {
    std::size_t at = 0;
    double longest = -1;
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const double length =
            std::hypot(line[i + 1].east_m - line[i].east_m, line[i + 1].north_m - line[i].north_m);
        if (length > longest) {
            longest = length;
            at = i;
        }
    }
    if (longest <= 0) return;
    const double east = (line[at + 1].east_m - line[at].east_m) / longest;
    const double north = (line[at + 1].north_m - line[at].north_m) / longest;
    const GroundPoint middle{(line[at].east_m + line[at + 1].east_m) / 2,
                             (line[at].north_m + line[at + 1].north_m) / 2};
    const double aside = 0.3 * std::min(grid.step_east_m, grid.step_north_m);
    const double left =
        share_at(grid, {middle.east_m - aside * north, middle.north_m + aside * east});
    const double right =
        share_at(grid, {middle.east_m + aside * north, middle.north_m - aside * east});
    if (right > left) std::reverse(line.begin(), line.end());
}

/// An open line and where it meets the edge.
struct Crossing {
    Outline line;
    double start = 0;
    double end = 0;
    bool used = false;
};

/// The open line that begins next after `from` along the edge, and how far on.
std::pair<std::size_t, double> next_start(const std::vector<Crossing>& open, double from,
                                          double round) {
    std::size_t best = 0;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < open.size(); ++i) {
        double by = open[i].start - from;
        if (by < 0) by += round;
        if (by < least) {
            least = by;
            best = i;
        }
    }
    return {best, least};
}

void close_along(const Edge& edge, std::vector<Crossing>& open, std::vector<Outline>& outlines) {
    for (std::size_t first = 0; first < open.size(); ++first) {
        if (open[first].used) continue;
        Outline outline;
        std::size_t at = first;
        while (!open[at].used) {
            open[at].used = true;
            outline.insert(outline.end(), open[at].line.begin(), open[at].line.end());
            const auto [next, by] = next_start(open, open[at].end, edge.round());
            edge.add_corners(open[at].end, by, outline);
            at = next;
        }
        outlines.push_back(std::move(outline));
    }
}

}  // namespace

std::vector<Outline> above_level(const SurfaceGrid& grid, const ContourLine& contour) {
    const Edge edge(grid);
    std::vector<Outline> outlines;
    std::vector<Crossing> open;
    for (Outline line : contour.lines) {
        if (line.size() < 2) continue;
        turn_high_left(grid, line);
        if (line.size() > 2 && line.front() == line.back()) {
            outlines.push_back(std::move(line));
            continue;
        }
        const double start = edge.along(line.front());
        const double end = edge.along(line.back());
        if (start >= 0 && end >= 0) open.push_back({std::move(line), start, end});
    }
    if (open.empty() && grid.share.front() >= contour.level) outlines.push_back(edge.whole());
    close_along(edge, open, outlines);
    return outlines;
}

}  // namespace toft::terrain
