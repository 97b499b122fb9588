#include "terrain/figures.h"

#include "base/text.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::terrain {

namespace {

constexpr double least_share = 0.001;

std::string per_cent(double share) {
    const double figure = 100 * share;
    return figure >= 10 ? fixed(figure, 0) : significant(figure, 2);
}

}  // namespace

bool length_known(double metres) { return std::isfinite(metres) && metres > 0; }

std::string figure_words(double figure) {
    if (std::isnan(figure)) return "not known";
    if (std::isinf(figure)) return "no end";
    const double size = std::fabs(figure);
    return size >= 10 ? fixed(figure, 0) : significant(figure, 2);
}

std::string range_words(double low, double high, const std::string& unit) {
    const std::string first = figure_words(low);
    const std::string last = figure_words(high);
    if (!std::isfinite(high) && !std::isfinite(low)) return last;
    if (first == last) return last + " " + unit;
    if (std::isinf(high)) return fmt::format("{} {} or more, without end", first, unit);
    if (!std::isfinite(low) || !std::isfinite(high)) return "not known";
    return fmt::format("{} to {} {}", first, last, unit);
}

std::string metre_words(double metres) {
    return std::isfinite(metres) ? significant(metres, 3) + " m" : figure_words(metres);
}

std::string load_words(double watts) {
    if (!std::isfinite(watts)) return figure_words(watts);
    if (std::fabs(watts) < 1000) return significant(watts, 3) + " W";
    return significant(watts / 1000, 3) + " kW";
}

std::string share_words(double share) {
    if (!std::isfinite(share)) return "not known";
    if (share > 0 && share < least_share) return "under 0.1 %";
    return per_cent(share) + " %";
}

std::string share_range_words(double low, double high) {
    const std::string first = share_words(low);
    const std::string last = share_words(high);
    if (first == last) return last;
    if (!std::isfinite(low) || !std::isfinite(high)) return "not known";
    if (low < least_share) return fmt::format("{} to {}", low > 0 ? first : "0", last);
    return fmt::format("{} to {}", per_cent(low), last);
}

}  // namespace toft::terrain
