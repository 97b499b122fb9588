#include "terrain/scale.h"

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr double round_figures[] = {1, 2, 5, 10};
constexpr double nearly = 1e-9;  // relative: a round figure that arithmetic has bent

double decade_of(double figure) { return std::pow(10.0, std::floor(std::log10(figure) + nearly)); }

bool has_decade(double figure) { return std::isfinite(figure) && figure > 0; }

}  // namespace

double Scale::at(double figure) const {
    const double held = std::isnan(figure) ? low : std::clamp(figure, low, high);
    const bool empty = !(high > low);
    if (empty) return from;
    const double share =
        decades ? std::log(held / low) / std::log(high / low) : (held - low) / (high - low);
    return from + share * (to - from);
}

std::vector<double> even_steps(const Scale& scale, std::size_t most) {
    std::vector<double> steps;
    const double span = scale.high - scale.low;
    if (!has_decade(span) || most < 2) return steps;
    const double step = rounded_up(span / static_cast<double>(most - 1));
    const double first = std::ceil(scale.low / step - nearly);
    const double last = std::floor(scale.high / step + nearly);
    for (double n = first; n <= last; n += 1) steps.push_back(n * step);
    return steps;
}

std::vector<double> decade_steps(const Scale& scale) {
    std::vector<double> steps;
    if (!has_decade(scale.low) || !has_decade(scale.high)) return steps;
    for (double decade = decade_of(scale.low); decade <= scale.high * (1 + nearly); decade *= 10) {
        for (const double digit : {1.0, 2.0, 5.0}) {
            const double figure = digit * decade;
            if (figure < scale.low * (1 - nearly) || figure > scale.high * (1 + nearly)) continue;
            steps.push_back(figure);
        }
    }
    return steps;
}

double rounded_up(double figure) {
    if (!has_decade(figure)) return 1;
    const double decade = decade_of(figure);
    for (const double digit : round_figures) {
        if (digit * decade >= figure * (1 - nearly)) return digit * decade;
    }
    return 10 * decade;
}

double rounded_down(double figure) {
    if (!has_decade(figure)) return 1;
    const double decade = decade_of(figure);
    double best = decade;
    for (const double digit : round_figures) {
        if (digit * decade <= figure * (1 + nearly)) best = digit * decade;
    }
    return best;
}

}  // namespace toft::terrain
