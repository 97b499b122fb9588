#pragma once
// How a shape is inked: stroke, dash, fill and opacity, and the few line weights all drawings
// share.

#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace toft::drawing {

/// 0xRRGGBB in sRGB.
enum class Colour : std::uint32_t {};

/// No stroke and no fill draw nothing. Widths and dashes are in user units; opacity 0 to 1.
struct Style {
    std::optional<Colour> stroke = {};
    double width = 1;
    std::vector<double> dash = {};  ///< on, off, on, off …; empty for a full line
    std::optional<Colour> fill = {};
    double opacity = 1;
    friend bool operator==(const Style&, const Style&) = default;
};

/// Line weights in user units (1 unit is 0.265 mm on paper).
namespace weight {
inline constexpr double hair = 0.6;   ///< hatching, leaders, dimension lines
inline constexpr double thin = 1.0;   ///< outlines of things that are only seen
inline constexpr double firm = 1.8;   ///< outlines of things that are cut: walls, ground
inline constexpr double heavy = 3.0;  ///< what the drawing is about
}  // namespace weight

inline Style stroked(Colour colour, double width = weight::thin) {
    return {.stroke = colour, .width = width};
}

inline Style filled(Colour colour, double opacity = 1) {
    return {.fill = colour, .opacity = opacity};
}

inline Style dashed(Colour colour, double width = weight::thin, std::vector<double> dash = {6, 4}) {
    return {.stroke = colour, .width = width, .dash = std::move(dash)};
}

/// Relative luminance of sRGB as WCAG 2 defines it: 0 for black, 1 for white.
double luminance(Colour colour);

/// Contrast ratio of WCAG 2, 1 to 21; 4.5 is the least for text of ordinary size.
double contrast(Colour a, Colour b);

}  // namespace toft::drawing
