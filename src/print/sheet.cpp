#include "print/sheet.h"

#include "drawing/scene.h"

namespace toft::print {

namespace {

constexpr double largest_side = 1e7;

constexpr double largest_own_side = 1e4;  // of an image without paper

bool drawable_side(double side) { return side > 0 && side <= largest_side; }

/// How large the drawing may be on a sheet of that size; all lengths in mm.
double scale_on(double wide, double high, double sheet_wide, double sheet_high) {
    const double across = (sheet_wide - 2 * sheet_margin) / wide;
    const double down = (sheet_high - 2 * sheet_margin) / high;
    return std::min({1.0, across, down});
}

}  // namespace

Outcome<Sheet> sheet_for(double width, double height) {
    if (!drawable_side(width) || !drawable_side(height)) {
        return failed({"no-size", "", "the drawing has no size that could be printed", "", {}});
    }
    const double wide = drawing::mm_of_units(width);
    const double high = drawing::mm_of_units(height);
    const double lying = scale_on(wide, high, a4_long, a4_short);
    const double standing = scale_on(wide, high, a4_short, a4_long);
    const bool lies = lying > standing || (lying == standing && wide > high);
    Sheet sheet;
    sheet.wide = lies ? a4_long : a4_short;
    sheet.high = lies ? a4_short : a4_long;
    sheet.scale = lies ? lying : standing;
    sheet.corner = {(sheet.wide - wide * sheet.scale) / 2, (sheet.high - high * sheet.scale) / 2};
    return sheet;
}

Outcome<Sheet> sheet_of(double width, double height) {
    if (!drawable_side(width) || !drawable_side(height) ||
        std::max(width, height) > largest_own_side) {
        return failed({"no-size", "", "the drawing has no size that an image could have", "", {}});
    }
    return Sheet{drawing::mm_of_units(width), drawing::mm_of_units(height), 1, {}};
}

}  // namespace toft::print
