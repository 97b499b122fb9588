#pragma once
// A small image to ink on and to look at, dot by dot.

#include "print/canvas.h"

#include <cstdint>

namespace toft::print {

class Image {
public:
    Image(int wide, int high)
        : surface_(cairo_image_surface_create(CAIRO_FORMAT_RGB24, wide, high)),
          pen_(cairo_create(surface_.get())) {
        cairo_set_source_rgb(pen_.get(), 1, 1, 1);
        cairo_paint(pen_.get());
        cairo_set_source_rgb(pen_.get(), 0, 0, 0);
    }

    cairo_t* pen() const { return pen_.get(); }

    /// 0xRRGGBB of a dot.
    std::uint32_t at(int x, int y) const {
        cairo_surface_flush(surface_.get());
        const unsigned char* bytes = cairo_image_surface_get_data(surface_.get());
        const int row = cairo_image_surface_get_stride(surface_.get());
        const unsigned char* dot = bytes + y * row + 4 * x;
        return static_cast<std::uint32_t>(dot[2]) << 16 | static_cast<std::uint32_t>(dot[1]) << 8 |
               static_cast<std::uint32_t>(dot[0]);
    }

    /// Dots that are not white.
    int inked() const {
        int count = 0;
        for (int y = 0; y < cairo_image_surface_get_height(surface_.get()); ++y) {
            for (int x = 0; x < cairo_image_surface_get_width(surface_.get()); ++x) {
                count += at(x, y) != 0xFFFFFF;
            }
        }
        return count;
    }

private:
    Surface surface_;
    Pen pen_;
};

}  // namespace toft::print
