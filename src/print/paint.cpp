#include "print/paint.h"

#include "print/trace.h"
#include "print/typeset.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace toft::print {

namespace {

using drawing::Colour;
using drawing::Point;

constexpr double slant = 0.2;  ///< of slanted letters: how far they lean for each unit of height

void ink(cairo_t* pen, Colour colour, double opacity) {
    const auto rgb = static_cast<std::uint32_t>(colour);
    const auto part = [&](int shift) { return static_cast<double>((rgb >> shift) & 0xff) / 255; };
    cairo_set_source_rgba(pen, part(16), part(8), part(0), opacity);
}

void set_dash(cairo_t* pen, const std::vector<double>& dash) {
    const bool any = std::any_of(dash.begin(), dash.end(), [](double d) { return d > 0; });
    cairo_set_dash(pen, dash.data(), any ? static_cast<int>(dash.size()) : 0, 0);
}

class Painter {
public:
    Painter(cairo_t* pen, const Fonts& fonts) : pen_(pen), fonts_(fonts) {}

    void items(const drawing::Items& all) {
        for (const drawing::Item& one : all) std::visit(*this, one.shape);
    }

    void operator()(const drawing::Group& group) {
        cairo_save(pen_);
        sound_ = sound_ && sound(group.shift);
        if (sound_) cairo_translate(pen_, group.shift.x, group.shift.y);
        items(group.items);
        cairo_restore(pen_);
    }
    void operator()(const drawing::Text& text);
    template <class OneShape>
    void operator()(const OneShape& shape) {
        cairo_new_path(pen_);
        sound_ = trace(pen_, shape) && sound_;
        if (sound_) apply(shape.style);
    }

    bool all_sound() const { return sound_; }
    std::u32string missing() const { return missing_; }

private:
    void apply(const drawing::Style& style);
    void set_font(const drawing::TextStyle& style, double size);
    void halo(const Typeset& set, const drawing::TextStyle& style);
    void letters(const Typeset& set, const drawing::TextStyle& style);

    cairo_t* pen_;
    const Fonts& fonts_;
    std::u32string missing_;
    bool sound_ = true;
};

void Painter::apply(const drawing::Style& style) {
    const bool together = style.opacity < 1 && style.fill && style.stroke;
    const double opacity = together ? 1 : style.opacity;
    if (together) cairo_push_group(pen_);
    if (style.fill) {
        ink(pen_, *style.fill, opacity);
        cairo_fill_preserve(pen_);
    }
    if (style.stroke) {
        ink(pen_, *style.stroke, opacity);
        cairo_set_line_width(pen_, style.width);
        set_dash(pen_, style.dash);
        cairo_stroke_preserve(pen_);
    }
    cairo_new_path(pen_);
    if (!together) return;
    cairo_pop_group_to_source(pen_);
    cairo_paint_with_alpha(pen_, style.opacity);
}

void Painter::set_font(const drawing::TextStyle& style, double size) {
    auto* face = static_cast<cairo_font_face_t*>(fonts_.of(style.weight).handle());
    cairo_set_font_face(pen_, face);
    cairo_matrix_t matrix;
    cairo_matrix_init(&matrix, size, 0, style.italic ? -slant * size : 0, size, 0, 0);
    cairo_set_font_matrix(pen_, &matrix);
}

std::vector<cairo_glyph_t> placed(const Row& row, double start) {
    std::vector<cairo_glyph_t> glyphs;
    for (const Glyph& glyph : row.glyphs)
        glyphs.push_back({glyph.number, start + glyph.x, row.drop});
    return glyphs;
}

double start_of(const Typeset& set, drawing::Anchor anchor) {
    if (anchor == drawing::Anchor::middle) return -set.width / 2;
    return anchor == drawing::Anchor::end ? -set.width : 0;
}

void Painter::halo(const Typeset& set, const drawing::TextStyle& style) {
    ink(pen_, *style.halo, style.opacity);
    cairo_set_line_width(pen_, 2 * style.halo_width);
    set_dash(pen_, {});
    for (const Row& row : set.rows) {
        set_font(style, row.size);
        const auto glyphs = placed(row, start_of(set, style.anchor));
        cairo_glyph_path(pen_, glyphs.data(), static_cast<int>(glyphs.size()));
    }
    cairo_stroke(pen_);
}

void Painter::letters(const Typeset& set, const drawing::TextStyle& style) {
    ink(pen_, style.colour, style.opacity);
    for (const Row& row : set.rows) {
        set_font(style, row.size);
        const auto glyphs = placed(row, start_of(set, style.anchor));
        std::string utf8;
        std::vector<cairo_text_cluster_t> clusters;
        for (const Glyph& glyph : row.glyphs) {
            utf8 += glyph.utf8;
            clusters.push_back({static_cast<int>(glyph.utf8.size()), 1});
        }
        cairo_show_text_glyphs(pen_, utf8.data(), static_cast<int>(utf8.size()), glyphs.data(),
                               static_cast<int>(glyphs.size()), clusters.data(),
                               static_cast<int>(clusters.size()), cairo_text_cluster_flags_t{});
    }
}

void Painter::operator()(const drawing::Text& text) {
    const drawing::TextStyle& style = text.style;
    sound_ = sound_ && sound(text.at) && sound({style.size, style.halo_width}) &&
             sound({style.turn, style.opacity});
    if (!sound_ || style.size <= 0) return;
    const Typeset set = typeset(text, fonts_.of(style.weight));
    for (const char32_t character : set.missing) {
        if (missing_.find(character) == std::u32string::npos) missing_ += character;
    }
    cairo_save(pen_);
    cairo_new_path(pen_);
    cairo_translate(pen_, text.at.x, text.at.y);
    cairo_rotate(pen_, style.turn * std::numbers::pi / 180);
    if (style.halo) halo(set, style);
    letters(set, style);
    cairo_restore(pen_);
}

}  // namespace

Outcome<std::u32string> paint(cairo_t* pen, const drawing::Scene& scene, const Fonts& fonts) {
    Painter painter(pen, fonts);
    cairo_save(pen);
    cairo_rectangle(pen, 0, 0, scene.width, scene.height);
    cairo_clip(pen);
    cairo_set_line_join(pen, CAIRO_LINE_JOIN_ROUND);
    if (scene.paper) {
        const drawing::Box page = drawing::box_at({}, scene.width, scene.height);
        painter(drawing::Rect{page, drawing::filled(*scene.paper)});
    }
    painter.items(scene.items);
    cairo_restore(pen);
    if (!painter.all_sound()) {
        return failed(
            {"unsound-drawing", "", "part of the drawing has no place on the sheet", "", {}});
    }
    if (const auto status = cairo_status(pen); status != CAIRO_STATUS_SUCCESS) {
        return failed(cairo_fault(status));
    }
    return painter.missing();
}

}  // namespace toft::print
