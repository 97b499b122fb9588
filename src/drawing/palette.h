#pragma once
// The colours of our drawings: ink on paper, one accent, and tones of the ground. Chosen so that
// the order from light to dark survives black and white; a colour never carries a meaning by
// itself.

#include "drawing/style.h"

#include <array>
#include <utility>

namespace toft::drawing::palette {

inline constexpr Colour paper{0xFBF8F1};     ///< warm white
inline constexpr Colour ink{0x1F1C19};       ///< text and main lines
inline constexpr Colour graphite{0x57524B};  ///< second text, dimension lines
inline constexpr Colour pencil{0x8F887D};    ///< construction lines, hatching; not for text
inline constexpr Colour faint{0xD3CCBF};     ///< grid and rules between rows
inline constexpr Colour wash{0xF0EBDF};      ///< light fill of an area
inline constexpr Colour accent{0xA6301F};    ///< brick red: the one thing to look at
inline constexpr Colour blush{0xF2DCD3};     ///< the accent as a light fill
inline constexpr Colour earth{0x7A6C50};     ///< ground line and its strokes
inline constexpr Colour soil{0xE8DFCB};      ///< ground as a fill
inline constexpr Colour stone{0xDDD5C9};     ///< masonry cut through

/// Each colour of the day beside its colour on a dark page: night ink, not inverted paper.
inline constexpr std::array<std::pair<Colour, Colour>, 11> day_and_night = {{
    {paper, Colour{0x1A1D22}},
    {ink, Colour{0xECE5D6}},
    {graphite, Colour{0xB9B2A4}},
    {pencil, Colour{0x857F76}},
    {faint, Colour{0x3B3E43}},
    {wash, Colour{0x23272D}},
    {accent, Colour{0xEE8A72}},
    {blush, Colour{0x43302D}},
    {earth, Colour{0xB3A27E}},
    {soil, Colour{0x2E2B25}},
    {stone, Colour{0x3A3A3B}},
}};

}  // namespace toft::drawing::palette
