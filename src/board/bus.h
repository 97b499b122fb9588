#pragma once
// The bars under a rail that feed its devices: one, or one a line, each with the drops to the poles
// it feeds and the line's letter below them.

#include "drawing/scene.h"

#include <string>
#include <utility>
#include <vector>

namespace toft::board {

class Bus {
public:
    /// Under devices whose lower edge is at `top`. `fed_from`: where the bars of the rail above
    /// end, a point a line; null for the first rail.
    Bus(int phases, double top, const std::vector<drawing::Point>* fed_from);

    /// A pole at `x` joined to the bar of that line, 0 to 2; of three, with the line's letter.
    void drop(int line, double x);
    /// A letter below the bars at that x.
    void letter(const std::string& word, double x);

    /// The bars with their drops. Where `lanes` is over 0 they go on to lanes that end there, to
    /// the right, and `feet` becomes where they do.
    drawing::Items drawn(double lanes, bool on, std::vector<drawing::Point>& feet) const;
    drawing::Items letters() const;

    /// Nothing of it reaches below.
    double foot() const;

private:
    double bar_at(int line) const;

    int phases_;
    double top_;
    std::vector<drawing::Point> fed_from_;
    std::vector<std::pair<int, double>> drops_;
    std::vector<std::pair<std::string, double>> letters_;
};

}  // namespace toft::board
