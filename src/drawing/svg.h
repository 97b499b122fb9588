#pragma once
// A scene as SVG text: one element a line, the same bytes for the same scene everywhere. All of it
// is SVG 1.1 but paint-order, which SVG 2 has for halos.

#include "drawing/scene.h"

#include <string>
#include <string_view>

namespace toft::drawing {

/// Characters of `text` ready for XML content or an attribute in double quotes, cleaned first as
/// `drawable` cleans.
std::string xml_escaped(std::string_view text);

/// `x` with at most two decimals, no trailing zeros, no "-0", whatever the locale.
/// Precondition: `x` is finite.
std::string svg_number(double x);

/// The whole drawing, without an XML declaration so that it may also stand inside a page. Refers to
/// nothing outside itself. A shape with a coordinate that is not a number, or beyond ten million
/// units, is left out, and the drawing then says across its top that something is missing.
std::string to_svg(const Scene& scene);

}  // namespace toft::drawing
