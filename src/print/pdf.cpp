#include "print/pdf.h"

#include "drawing/utf8.h"
#include "print/canvas.h"
#include "print/paint.h"
#include "print/sheet.h"
#include "print/white.h"

#include <cairo/cairo-pdf.h>
#include <fmt/format.h>

#include <algorithm>

namespace toft::print {

namespace {

constexpr double points_per_mm = 72 / 25.4;

/// Only the shape of a date: ten characters, digits and hyphens in their places.
bool like_a_date(const std::string& date) {
    constexpr std::string_view shape = "0000-00-00";
    return date.size() == shape.size() &&
           std::equal(date.begin(), date.end(), shape.begin(), [](char c, char wanted) {
               return wanted == '0' ? c >= '0' && c <= '9' : c == wanted;
           });
}

void describe(cairo_surface_t* page, const drawing::Scene& scene, const std::string& date) {
    const auto say = [&](cairo_pdf_metadata_t which, const std::string& text) {
        cairo_pdf_surface_set_metadata(page, which,
                                       drawing::to_utf8(drawing::drawable(text)).c_str());
    };
    say(CAIRO_PDF_METADATA_TITLE, scene.title);
    say(CAIRO_PDF_METADATA_SUBJECT, scene.description);
    say(CAIRO_PDF_METADATA_CREATOR, "toft");
    say(CAIRO_PDF_METADATA_CREATE_DATE, date + "T00:00:00Z");
}

}  // namespace

Outcome<Printed> to_pdf(const drawing::Scene& scene, const Fonts& fonts, const std::string& date) {
    if (!like_a_date(date)) {
        return failed(
            {"date", "", fmt::format("\"{}\" is no date; write 2026-11-25", date), "", {}});
    }
    const auto sheet = sheet_for(scene.width, scene.height);
    if (!sheet) return failed(sheet.error());
    Printed printed;
    const Surface page(cairo_pdf_surface_create_for_stream(
        append_bytes, &printed.bytes, sheet->wide * points_per_mm, sheet->high * points_per_mm));
    describe(page.get(), scene, date);
    const Pen pen(cairo_create(page.get()));
    cairo_scale(pen.get(), points_per_mm, points_per_mm);
    cairo_translate(pen.get(), sheet->corner.x, sheet->corner.y);
    const double unit = drawing::mm_per_unit * sheet->scale;
    cairo_scale(pen.get(), unit, unit);
    auto missing = paint(pen.get(), on_white(scene), fonts);
    cairo_surface_finish(page.get());
    if (!missing) return failed(missing.error());
    if (const auto status = cairo_surface_status(page.get()); status != CAIRO_STATUS_SUCCESS) {
        return failed(cairo_fault(status));
    }
    printed.missing = std::move(*missing);
    return printed;
}

}  // namespace toft::print
