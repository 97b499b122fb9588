#include "print/png.h"

#include "print/image.h"
#include "print/looking.h"

#include <gtest/gtest.h>

#include <cstring>

namespace toft::print {
namespace {

drawing::Scene scene() {
    drawing::Scene one{.width = 1000, .height = 700};
    one.items = {drawing::Rect{{0, 0, 1000, 700}, drawing::filled(drawing::Colour{0xFF0000})}};
    return one;
}

unsigned number_at(const std::string& bytes, std::size_t place) {
    unsigned number = 0;
    for (std::size_t i = 0; i < 4; ++i) {
        number = number << 8 | static_cast<unsigned char>(bytes.at(place + i));
    }
    return number;
}

struct Reading {
    const std::string& bytes;
    std::size_t done = 0;
};

cairo_status_t read_bytes(void* reading, unsigned char* into, unsigned int count) {
    auto& r = *static_cast<Reading*>(reading);
    if (r.bytes.size() - r.done < count) return CAIRO_STATUS_READ_ERROR;
    std::memcpy(into, r.bytes.data() + r.done, count);
    r.done += count;
    return CAIRO_STATUS_SUCCESS;
}

TEST(Png, IsA4AtItsDotsAnInchAndSaysSo) {
    const std::string bytes = to_png(scene(), fonts(), 200)->bytes;
    EXPECT_EQ(number_at(bytes, 16), 2339u);
    EXPECT_EQ(number_at(bytes, 20), 1654u);
    EXPECT_EQ(bytes.substr(37, 4), "pHYs");
    EXPECT_EQ(number_at(bytes, 41), 7874u) << "dots a metre";
    EXPECT_EQ(bytes.at(49), 1) << "the unit is the metre";
    EXPECT_EQ(number_at(bytes, 50), 0x6ed0753eu) << "checksum";
}

TEST(Png, CanBeReadBackAndShowsTheDrawingInTheMiddle) {
    const std::string bytes = to_png(scene(), fonts(), 72)->bytes;
    Reading reading{bytes};
    const Surface surface(cairo_image_surface_create_from_png_stream(read_bytes, &reading));
    ASSERT_EQ(cairo_surface_status(surface.get()), CAIRO_STATUS_SUCCESS);
    Image image(842, 595);
    cairo_set_source_surface(image.pen(), surface.get(), 0, 0);
    cairo_paint(image.pen());
    EXPECT_EQ(image.at(421, 297), 0xFF0000u);
    EXPECT_EQ(image.at(421, 2), 0xFFFFFFu) << "the margin is clear";
}

TEST(Png, SameInputSameBytes) {
    EXPECT_EQ(to_png(scene(), fonts(), 100)->bytes, to_png(scene(), fonts(), 100)->bytes);
}

TEST(Png, DotsOutOfRangeAreRefused) {
    for (const int dpi : {-1, 0, 71, 601}) {
        EXPECT_EQ(to_png(scene(), fonts(), dpi).error().front().code, "dpi");
    }
    drawing::Scene flat = scene();
    flat.width = 0;
    EXPECT_EQ(to_png(flat, fonts(), 72).error().front().code, "no-size");
}

TEST(Png, OfTheDrawingAloneHasNoPaperRoundIt) {
    const std::string bytes = to_png(scene(), fonts(), 96, Ground::drawing)->bytes;
    EXPECT_EQ(number_at(bytes, 16), 1000u);
    EXPECT_EQ(number_at(bytes, 20), 700u);
}

}  // namespace
}  // namespace toft::print
