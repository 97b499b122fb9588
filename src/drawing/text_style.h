#pragma once
// Text as the drawings set it: spans on one line, upright or slanted, with subscripts.

#include "drawing/geometry.h"
#include "drawing/palette.h"

#include <optional>
#include <string>
#include <vector>

namespace toft::drawing {

/// What every drawing asks for; the first is the one whose widths measure.h knows.
inline constexpr const char* font_family = "DejaVu Sans, Liberation Sans, Arial, sans-serif";

enum class Anchor { start, middle, end };
enum class Weight { normal, bold };
enum class Script { level, below, above };

/// Letters set alike; `below` and `above` are small and shifted, as in Zs or mm2.
struct Span {
    std::string text;
    Script script = Script::level;
    friend bool operator==(const Span&, const Span&) = default;
};

using Spans = std::vector<Span>;

struct TextStyle {
    double size = 12;  ///< of the em, user units
    Weight weight = Weight::normal;
    bool italic = false;
    Anchor anchor = Anchor::start;
    double turn = 0;  ///< clockwise about the anchor point, degrees
    Colour colour = palette::ink;
    std::optional<Colour> halo = {};  ///< stroked under the letters, to be read over lines
    double halo_width = 3;            ///< how far the halo reaches beyond the letters
    double opacity = 1;
    friend bool operator==(const TextStyle&, const TextStyle&) = default;
};

/// One line of text; `at` is on its baseline, at the start, middle or end by the style's anchor.
struct Text {
    Point at = {};
    Spans spans = {};
    TextStyle style = {};
    friend bool operator==(const Text&, const Text&) = default;
};

inline Spans plain(std::string text) { return {Span{std::move(text)}}; }

/// A symbol with its subscript, as in Z and s.
inline Spans symbol(std::string letter, std::string below) {
    return {Span{std::move(letter)}, Span{std::move(below), Script::below}};
}

inline Text text(Point at, std::string line, TextStyle style = {}) {
    return {at, plain(std::move(line)), style};
}

/// Size of a `below` or `above` span against the level one, and how far its baseline moves, in em
/// of the level span.
inline constexpr double script_size = 0.7;
inline constexpr double script_drop = 0.22;
inline constexpr double script_rise = 0.36;

}  // namespace toft::drawing
