#include "print/png.h"

#include "print/canvas.h"
#include "print/paint.h"
#include "print/sheet.h"
#include "print/white.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <cstdint>

namespace toft::print {

namespace {

constexpr double mm_per_inch = 25.4;

/// The checksum of PNG's chunks: CRC-32 of ISO 3309, bit by bit.
std::uint32_t checksum(const std::string& bytes) {
    std::uint32_t crc = 0xffffffffu;
    for (const char byte : bytes) {
        crc ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit) crc = (crc >> 1) ^ ((crc & 1u) != 0 ? 0xedb88320u : 0u);
    }
    return ~crc;
}

std::string four_bytes(std::uint32_t number) {
    std::string bytes;
    for (const int shift : {24, 16, 8, 0}) bytes += static_cast<char>((number >> shift) & 0xffu);
    return bytes;
}

/// The chunk that tells how many dots a metre has, which cairo does not write. It stands after the
/// signature (8 bytes) and the header (25 bytes).
void state_size(std::string& png, int dpi) {
    constexpr std::size_t behind_header = 8 + 25;
    const auto per_metre = static_cast<std::uint32_t>(std::lround(dpi * 1000 / mm_per_inch));
    const std::string content =
        "pHYs" + four_bytes(per_metre) + four_bytes(per_metre) + std::string(1, '\x01');
    const std::string chunk = four_bytes(9) + content + four_bytes(checksum(content));
    png.insert(std::min(behind_header, png.size()), chunk);
}

}  // namespace

Outcome<Printed> to_png(const drawing::Scene& scene, const Fonts& fonts, int dpi, Ground ground) {
    if (dpi < least_dpi || dpi > most_dpi) {
        return failed(
            {"dpi",
             "",
             fmt::format("{} dots an inch; at least {} and at most {}", dpi, least_dpi, most_dpi),
             "",
             {}});
    }
    const auto sheet = ground == Ground::a4 ? sheet_for(scene.width, scene.height)
                                            : sheet_of(scene.width, scene.height);
    if (!sheet) return failed(sheet.error());
    const double dots = dpi / mm_per_inch;
    const Surface page(cairo_image_surface_create(
        CAIRO_FORMAT_RGB24, static_cast<int>(std::lround(sheet->wide * dots)),
        static_cast<int>(std::lround(sheet->high * dots))));
    const Pen pen(cairo_create(page.get()));
    cairo_set_source_rgb(pen.get(), 1, 1, 1);
    cairo_paint(pen.get());
    cairo_scale(pen.get(), dots, dots);
    cairo_translate(pen.get(), sheet->corner.x, sheet->corner.y);
    const double unit = drawing::mm_per_unit * sheet->scale;
    cairo_scale(pen.get(), unit, unit);
    auto missing = paint(pen.get(), on_white(scene), fonts);
    if (!missing) return failed(missing.error());
    Printed printed;
    const auto status = cairo_surface_write_to_png_stream(page.get(), append_bytes, &printed.bytes);
    if (status != CAIRO_STATUS_SUCCESS) return failed(cairo_fault(status));
    state_size(printed.bytes, dpi);
    printed.missing = std::move(*missing);
    return printed;
}

}  // namespace toft::print
