#include "drawing/svg.h"

#include "drawing/utf8.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::drawing {

namespace {

constexpr double largest_coordinate = 1e7;

/// Whether a screen reader meets the text.
enum class Reader { seen, hidden };

/// Writes items after one another; knows when one of them cannot be drawn.
class Writer {
public:
    void item(const Item& item) {
        const std::size_t mark = out_.size();
        const bool outer = broken_;
        broken_ = false;
        std::visit(*this, item.shape);
        if (broken_) {
            out_.resize(mark);
            some_left_out_ = true;
        }
        broken_ = outer;
    }

    void operator()(const Line& line) {
        out_ += "<line";
        put("x1", line.from.x);
        put("y1", line.from.y);
        put("x2", line.to.x);
        put("y2", line.to.y);
        end(line.style);
    }
    void operator()(const Polyline& line) { corners("<polyline", line.points, line.style); }
    void operator()(const Polygon& area) { corners("<polygon", area.points, area.style); }
    void operator()(const Rect& rect) {
        out_ += "<rect";
        put("x", rect.box.left);
        put("y", rect.box.top);
        put("width", rect.box.right - rect.box.left);
        put("height", rect.box.bottom - rect.box.top);
        if (rect.box.empty()) broken_ = true;
        if (rect.corner > 0) put("rx", rect.corner);
        end(rect.style);
    }
    void operator()(const Circle& circle) {
        out_ += "<circle";
        put("cx", circle.centre.x);
        put("cy", circle.centre.y);
        put("r", circle.radius);
        end(circle.style);
    }
    void operator()(const Path& path) {
        out_ += "<path d=\"";
        for (const Step& step : path.steps) std::visit(*this, step);
        out_ += '"';
        end(path.style);
    }
    void operator()(const Text& text);
    void operator()(const Group& group);

    void operator()(const MoveTo& step) { letter('M', {step.to}); }
    void operator()(const LineTo& step) { letter('L', {step.to}); }
    void operator()(const QuadTo& step) { letter('Q', {step.control, step.to}); }
    void operator()(const CubicTo& step) { letter('C', {step.first, step.second, step.to}); }
    void operator()(const ArcTo& step) {
        const std::string radius = number(step.radius);
        out_ += fmt::format("A{} {} 0 {} {}", radius, radius, step.sweep.large ? 1 : 0,
                            step.sweep.clockwise ? 1 : 0);
        letter(' ', {step.to});
    }
    void operator()(const Close&) { out_ += 'Z'; }

    void raw(std::string_view text) { out_ += text; }
    bool some_left_out() const { return some_left_out_; }
    std::string take() { return std::move(out_); }

private:
    std::string number(double x) {
        if (!(std::fabs(x) <= largest_coordinate)) {
            broken_ = true;
            return "0";
        }
        return svg_number(x);
    }
    void put(std::string_view name, double value) {
        out_ += fmt::format(" {}=\"{}\"", name, number(value));
    }
    void put(std::string_view name, std::string_view value) {
        out_ += fmt::format(" {}=\"{}\"", name, xml_escaped(value));
    }
    void put(std::string_view name, Colour colour) {
        out_ += fmt::format(" {}=\"#{:06x}\"", name, static_cast<std::uint32_t>(colour) & 0xffffff);
    }
    void letter(char name, std::initializer_list<Point> points) {
        out_ += name;
        bool first = true;
        for (const Point p : points) {
            if (!first) out_ += ' ';
            first = false;
            out_ += number(p.x) + ' ' + number(p.y);
        }
    }
    void corners(std::string_view name, const std::vector<Point>& points, const Style& style) {
        out_ += name;
        out_ += " points=\"";
        for (std::size_t i = 0; i < points.size(); ++i) {
            if (i > 0) out_ += ' ';
            out_ += number(points[i].x) + ',' + number(points[i].y);
        }
        out_ += '"';
        end(style);
    }
    void end(const Style& style);
    void letters(const Text& text, Reader reader);
    void span(const Span& one, double size, double& shifted);

    std::string out_;
    bool broken_ = false;
    bool some_left_out_ = false;
};

void Writer::end(const Style& style) {
    if (style.fill) put("fill", *style.fill);
    if (style.stroke) {
        put("stroke", *style.stroke);
        if (style.width != 1) put("stroke-width", style.width);
        if (!style.dash.empty()) {
            out_ += " stroke-dasharray=\"";
            for (std::size_t i = 0; i < style.dash.size(); ++i) {
                out_ += (i > 0 ? " " : "") + number(style.dash[i]);
            }
            out_ += '"';
        }
    }
    if (style.opacity != 1) put("opacity", style.opacity);
    out_ += "/>\n";
}

void Writer::span(const Span& one, double size, double& shifted) {
    const double wanted = one.script == Script::below   ? script_drop * size
                          : one.script == Script::above ? -script_rise * size
                                                        : 0;
    const bool small = one.script != Script::level;
    const double move = wanted - shifted;
    shifted = wanted;
    if (!small && move == 0) {
        out_ += xml_escaped(one.text);
        return;
    }
    out_ += "<tspan";
    if (move != 0) put("dy", move);
    if (small) put("font-size", size * script_size);
    out_ += '>' + xml_escaped(one.text) + "</tspan>";
}

bool has_scripts(const Spans& spans) {
    return std::any_of(spans.begin(), spans.end(),
                       [](const Span& span) { return span.script != Script::level; });
}

/// Renderers drop or merge these spaces, also between spans, unless told to keep them.
bool has_loose_spaces(const Spans& spans) {
    std::string whole;
    for (const Span& one : spans) whole += one.text;
    const std::u32string clean = drawable(whole);
    return has_scripts(spans) ||
           (!clean.empty() && (clean.front() == U' ' || clean.back() == U' ')) ||
           clean.find(U"  ") != std::u32string::npos;
}

void Writer::operator()(const Text& text) {
    const std::optional<Colour> halo = text.style.halo;
    if (halo && has_scripts(text.spans)) {
        // Each span paints its own halo, which would cover the span before it: a halo of its own
        // first.
        Text under = text;
        under.style.colour = *halo;
        letters(under, Reader::hidden);
        Text over = text;
        over.style.halo.reset();
        letters(over, Reader::seen);
    } else {
        letters(text, Reader::seen);
    }
}

void Writer::letters(const Text& text, Reader reader) {
    const TextStyle& style = text.style;
    out_ += "<text";
    put("x", text.at.x);
    put("y", text.at.y);
    put("font-size", style.size);
    if (style.weight == Weight::bold) put("font-weight", "bold");
    if (style.italic) put("font-style", "italic");
    if (style.anchor == Anchor::middle) put("text-anchor", "middle");
    if (style.anchor == Anchor::end) put("text-anchor", "end");
    if (style.turn != 0) {
        out_ += fmt::format(" transform=\"rotate({} {} {})\"", number(style.turn),
                            number(text.at.x), number(text.at.y));
    }
    put("fill", style.colour);
    if (style.halo) {
        put("stroke", *style.halo);
        put("stroke-width", 2 * style.halo_width);
        put("paint-order", "stroke");
    }
    if (style.opacity != 1) put("opacity", style.opacity);
    if (reader == Reader::hidden) put("aria-hidden", "true");
    if (has_loose_spaces(text.spans)) put("xml:space", "preserve");
    out_ += '>';
    double shifted = 0;
    for (const Span& one : text.spans) span(one, style.size, shifted);
    out_ += "</text>\n";
}

void Writer::operator()(const Group& group) {
    out_ += "<g";
    if (!group.id.empty()) put("id", group.id);
    if (!group.kind.empty()) put("class", group.kind);
    if (group.shift != Point{}) {
        out_ += fmt::format(" transform=\"translate({} {})\"", number(group.shift.x),
                            number(group.shift.y));
    }
    out_ += ">\n";
    if (!group.title.empty()) out_ += "<title>" + xml_escaped(group.title) + "</title>\n";
    for (const Item& one : group.items) item(one);
    out_ += "</g>\n";
}

Text missing_note(const Scene& scene) {
    TextStyle style{.size = 14, .weight = Weight::bold, .colour = palette::accent};
    style.anchor = Anchor::middle;
    style.halo = scene.paper.value_or(palette::paper);
    return text({scene.width / 2, 18}, "Part of this drawing is missing: do not rely on it.",
                style);
}

double size_or_nothing(double size) { return size >= 0 && size <= largest_coordinate ? size : 0; }

}  // namespace

std::string xml_escaped(std::string_view text) {
    std::string out;
    for (const char32_t character : drawable(text)) {
        switch (character) {
            case U'&':
                out += "&amp;";
                break;
            case U'<':
                out += "&lt;";
                break;
            case U'>':
                out += "&gt;";
                break;
            case U'"':
                out += "&quot;";
                break;
            case U'\'':
                out += "&#39;";
                break;
            default:
                append_utf8(out, character);
        }
    }
    return out;
}

std::string svg_number(double x) {
    std::string out = fmt::format("{:.2f}", x);
    while (out.back() == '0') out.pop_back();
    if (out.back() == '.') out.pop_back();
    return out == "-0" ? "0" : out;
}

std::string to_svg(const Scene& scene) {
    const std::string width = svg_number(size_or_nothing(scene.width));
    const std::string height = svg_number(size_or_nothing(scene.height));
    Writer writer;
    writer.raw(
        fmt::format("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" role=\"img\" "
                    "width=\"{0}\" height=\"{1}\" viewBox=\"0 0 {0} {1}\" "
                    "font-family=\"{2}\" fill=\"none\" stroke-linejoin=\"round\">\n",
                    width, height, font_family));
    if (!scene.title.empty()) writer.raw("<title>" + xml_escaped(scene.title) + "</title>\n");
    if (!scene.description.empty()) {
        writer.raw("<desc>" + xml_escaped(scene.description) + "</desc>\n");
    }
    if (scene.paper) {
        const Box page = box_at({}, size_or_nothing(scene.width), size_or_nothing(scene.height));
        writer.item(Rect{page, filled(*scene.paper)});
    }
    for (const Item& one : scene.items) writer.item(one);
    if (writer.some_left_out()) writer.item(missing_note(scene));
    writer.raw("</svg>\n");
    return writer.take();
}

}  // namespace toft::drawing
