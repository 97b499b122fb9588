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

Fault no_date(const std::string& date) {
    return {"date", "", fmt::format("\"{}\" is no date; write 2026-11-25", date), "", {}};
}

/// A file that grows page by page.
class Document {
public:
    Document(const Fonts& fonts, const Sheet& first)
        : fonts_(fonts),
          surface_(cairo_pdf_surface_create_for_stream(append_bytes, &printed_.bytes,
                                                       first.wide * points_per_mm,
                                                       first.high * points_per_mm)) {}
    Document(const Document&) = delete;
    Document& operator=(const Document&) = delete;

    cairo_surface_t* surface() { return surface_.get(); }

    Outcome<void> page(const drawing::Scene& scene, const Sheet& sheet) {
        cairo_pdf_surface_set_size(surface_.get(), sheet.wide * points_per_mm,
                                   sheet.high * points_per_mm);
        const Pen pen(cairo_create(surface_.get()));
        cairo_scale(pen.get(), points_per_mm, points_per_mm);
        cairo_translate(pen.get(), sheet.corner.x, sheet.corner.y);
        const double unit = drawing::mm_per_unit * sheet.scale;
        cairo_scale(pen.get(), unit, unit);
        auto missing = paint(pen.get(), on_white(scene), fonts_);
        if (!missing) return failed(missing.error());
        for (const char32_t one : *missing) {
            if (printed_.missing.find(one) == std::u32string::npos) printed_.missing += one;
        }
        cairo_show_page(pen.get());
        return {};
    }

    /// The page about to be drawn can be jumped to by that name.
    void name_page(const std::string& name) {
        ++pages_;
        cairo_pdf_surface_add_outline(surface_.get(), CAIRO_PDF_OUTLINE_ROOT,
                                      drawing::to_utf8(drawing::drawable(name)).c_str(),
                                      fmt::format("page={}", pages_).c_str(),
                                      static_cast<cairo_pdf_outline_flags_t>(0));
    }
    void next_page() { ++pages_; }

    Outcome<Printed> close() {
        cairo_surface_finish(surface_.get());
        const auto status = cairo_surface_status(surface_.get());
        if (status != CAIRO_STATUS_SUCCESS) return failed(cairo_fault(status));
        return std::move(printed_);
    }

private:
    const Fonts& fonts_;
    Printed printed_;
    int pages_ = 0;
    Surface surface_;
};

}  // namespace

Outcome<Printed> to_pdf(const drawing::Scene& scene, const Fonts& fonts, const std::string& date) {
    if (!like_a_date(date)) return failed(no_date(date));
    const auto sheet = sheet_for(scene.width, scene.height);
    if (!sheet) return failed(sheet.error());
    Document document(fonts, *sheet);
    describe(document.surface(), scene, date);
    if (auto set = document.page(scene, *sheet); !set) return failed(set.error());
    return document.close();
}

Outcome<Printed> to_pdf(const std::vector<drawing::Scene>& sheets, const Fonts& fonts,
                        const std::string& date) {
    if (!like_a_date(date)) return failed(no_date(date));
    if (sheets.empty()) return failed({"no-pages", "", "there are no pages to print", "", {}});
    const auto first = sheet_of(sheets.front().width, sheets.front().height);
    if (!first) return failed(first.error());
    Document document(fonts, *first);
    describe(document.surface(), sheets.front(), date);
    std::string told;
    for (const drawing::Scene& scene : sheets) {
        if (scene.title == told) {
            document.next_page();
        } else {
            document.name_page(told = scene.title);
        }
        const auto sheet = sheet_of(scene.width, scene.height);
        if (!sheet) return failed(sheet.error());
        if (auto set = document.page(scene, *sheet); !set) return failed(set.error());
    }
    return document.close();
}

}  // namespace toft::print
