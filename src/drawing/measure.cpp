#include "drawing/measure.h"

#include "drawing/advances.h"
#include "drawing/utf8.h"

#include <array>

namespace toft::drawing {

namespace {

double width_of(std::u32string_view text, double size, Weight weight) {
    double em = 0;
    for (const char32_t character : text) em += advance(character, weight);
    return em * size;
}

std::vector<std::u32string> words_of(std::u32string_view line) {
    std::vector<std::u32string> words;
    std::u32string word;
    for (const char32_t character : line) {
        if (character != U' ') {
            word += character;
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    if (!word.empty()) words.push_back(std::move(word));
    return words;
}

std::vector<std::u32string> lines_of(std::u32string_view text) {
    std::vector<std::u32string> lines(1);
    for (const char32_t character : text) {
        if (character == U'\n') {
            lines.emplace_back();
        } else {
            lines.back() += character;
        }
    }
    return lines;
}

Box box_of_points(const std::vector<Point>& points, const Style& style) {
    Box box;
    for (const Point p : points) box = joined(box, p);
    return style.stroke ? grown(box, style.width / 2) : box;
}

Box box_of_text(const Text& text) {
    const TextStyle& style = text.style;
    const double wide = text_width(text.spans, style);
    if (wide <= 0) return {};
    const double share = style.anchor == Anchor::start    ? 0
                         : style.anchor == Anchor::middle ? 0.5
                                                          : 1;
    Box flat{-share * wide, -ascent * style.size, (1 - share) * wide, descent * style.size};
    for (const Span& span : text.spans) {
        if (span.script == Script::above) {
            flat.top = std::min(flat.top, -(script_rise + script_size * ascent) * style.size);
        } else if (span.script == Script::below) {
            flat.bottom = std::max(flat.bottom, (script_drop + script_size * descent) * style.size);
        }
    }
    if (style.halo) flat = grown(flat, style.halo_width);
    const std::array<Point, 4> corners = {{{flat.left, flat.top},
                                           {flat.right, flat.top},
                                           {flat.right, flat.bottom},
                                           {flat.left, flat.bottom}}};
    Box box;
    for (const Point corner : corners) box = joined(box, text.at + turned(corner, style.turn));
    return box;
}

struct BoxOf {
    Box operator()(const Line& line) const {
        return box_of_points({line.from, line.to}, line.style);
    }
    Box operator()(const Polyline& line) const { return box_of_points(line.points, line.style); }
    Box operator()(const Polygon& area) const { return box_of_points(area.points, area.style); }
    Box operator()(const Rect& rect) const {
        return rect.style.stroke ? grown(rect.box, rect.style.width / 2) : rect.box;
    }
    Box operator()(const Circle& circle) const {
        return box_of_points({circle.centre - Point{circle.radius, circle.radius},
                              circle.centre + Point{circle.radius, circle.radius}},
                             circle.style);
    }
    Box operator()(const Path& path) const {
        const Box box = box_of_line(path);
        return path.style.stroke ? grown(box, path.style.width / 2) : box;
    }
    Box operator()(const Text& text) const { return box_of_text(text); }
    Box operator()(const Group& group) const { return moved(box_of(group.items), group.shift); }
};

}  // namespace

double text_width(std::string_view text, double size, Weight weight) {
    return width_of(drawable(text), size, weight);
}

double text_width(const Spans& spans, const TextStyle& style) {
    double wide = 0;
    for (const Span& span : spans) {
        const double size = span.script == Script::level ? style.size : style.size * script_size;
        wide += text_width(span.text, size, style.weight);
    }
    return wide;
}

std::vector<std::string> wrap(std::string_view text, double width, double size, Weight weight) {
    std::vector<std::string> out;
    const double space = advance(U' ', weight) * size;
    const std::u32string clean = drawable_lines(text);
    if (clean.empty()) return out;
    for (const std::u32string& line : lines_of(clean)) {
        std::u32string set;
        double used = 0;
        for (const std::u32string& word : words_of(line)) {
            const double wide = width_of(word, size, weight);
            if (!set.empty() && used + space + wide > width) {
                out.push_back(to_utf8(set));
                set.clear();
            }
            used = set.empty() ? wide : used + space + wide;
            set += (set.empty() ? U"" : U" ") + word;
        }
        out.push_back(to_utf8(set));
    }
    return out;
}

Box box_of(const Item& item) { return std::visit(BoxOf{}, item.shape); }

Box box_of(const Items& items) {
    Box box;
    for (const Item& item : items) box = joined(box, box_of(item));
    return box;
}

}  // namespace toft::drawing
