#include "dxf/dxf.h"

#include "drawing/measure.h"
#include "dxf/curves.h"
#include "dxf/groups.h"
#include "dxf/words.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace toft::dxf {

namespace {

using namespace drawing;
using drawing::Point;

constexpr double dark = 0.25;  // luminance below which a fill is drawn solid

bool solid(const Style& style) { return style.fill && luminance(*style.fill) < dark; }

/// The entities of a scene, and the layers they are on.
class Writer {
public:
    explicit Writer(const Space& space) : space_(space) {}

    void write(const Items& items, Point shift, const std::string& layer) {
        for (const Item& item : items) {
            std::visit([&](const auto& shape) { add(shape, shift, layer); }, item.shape);
        }
    }

    Groups entities;
    std::set<std::string> layers{"0"};
    Box extent;
    bool finite = true;

private:
    Point out(Point p) {
        const Point q{(p.x - space_.zero.x) * space_.metres_a_unit,
                      -(p.y - space_.zero.y) * space_.metres_a_unit};
        finite = finite && std::isfinite(q.x) && std::isfinite(q.y);
        extent = joined(extent, q);
        return q;
    }

    void begin(const char* what, const std::string& layer, const Style* style = nullptr) {
        layers.insert(layer);
        entities.word(0, what);
        entities.word(8, layer);
        if (style && !style->dash.empty()) entities.word(6, "DASHED");
    }

    void polyline(const std::vector<Point>& points, bool closed, const std::string& layer,
                  const Style& style) {
        if (points.size() < 2) return;
        begin("POLYLINE", layer, &style);
        entities.whole(66, 1);
        entities.point(10, {});
        entities.number(30, 0);
        entities.whole(70, closed ? 1 : 0);
        for (const Point p : points) {
            entities.word(0, "VERTEX");
            entities.word(8, layer);
            entities.point(10, out(p));
            entities.number(30, 0);
        }
        entities.word(0, "SEQEND");
        entities.word(8, layer);
    }

    /// Three or four corners; release 12 wants the last two of four crossed.
    void filled_corners(std::vector<Point> corners, const std::string& layer) {
        if (corners.size() == 3) corners.push_back(corners.back());
        if (corners.size() != 4) return;
        std::swap(corners[2], corners[3]);
        begin("SOLID", layer);
        for (int i = 0; i < 4; ++i) {
            entities.point(10 + i, out(corners[static_cast<std::size_t>(i)]));
            entities.number(30 + i, 0);
        }
    }

    void outline(std::vector<Point> points, const Style& style, const std::string& layer) {
        if (style.stroke) polyline(points, true, layer, style);
        if (solid(style)) filled_corners(std::move(points), layer);
    }

    void add(const Line& line, Point shift, const std::string& layer) {
        if (!line.style.stroke) return;
        begin("LINE", layer, &line.style);
        entities.point(10, out(line.from + shift));
        entities.number(30, 0);
        entities.point(11, out(line.to + shift));
        entities.number(31, 0);
    }

    static std::vector<Point> shifted(std::vector<Point> points, Point shift) {
        for (Point& p : points) p = p + shift;
        return points;
    }

    void add(const Polyline& line, Point shift, const std::string& layer) {
        if (line.style.stroke) polyline(shifted(line.points, shift), false, layer, line.style);
    }

    void add(const Polygon& shape, Point shift, const std::string& layer) {
        outline(shifted(shape.points, shift), shape.style, layer);
    }

    void add(const Rect& rect, Point shift, const std::string& layer) {
        const Box b = moved(rect.box, shift);
        if (b.empty()) return;
        outline({{b.left, b.top}, {b.right, b.top}, {b.right, b.bottom}, {b.left, b.bottom}},
                rect.style, layer);
    }

    void add(const Circle& circle, Point shift, const std::string& layer) {
        if (!circle.style.stroke && !solid(circle.style)) return;
        begin("CIRCLE", layer, circle.style.stroke ? &circle.style : nullptr);
        entities.point(10, out(circle.centre + shift));
        entities.number(30, 0);
        entities.number(40, circle.radius * space_.metres_a_unit);
    }

    void add(const Path& path, Point shift, const std::string& layer) {
        if (!path.style.stroke) return;
        for (Stroke& stroke : strokes_of(path)) {
            polyline(shifted(std::move(stroke.points), shift), stroke.closed, layer, path.style);
        }
    }

    void add(const Text& text, Point shift, const std::string& layer) {
        std::string words;
        for (const Span& span : text.spans) words += span.text;
        const std::vector<std::string> parts = in_values(words);
        const double wide = text_width(words, text.style.size, text.style.weight);
        const bool whole = parts.size() == 1;
        const double back = text.style.anchor == Anchor::start    ? 0
                            : text.style.anchor == Anchor::middle ? wide / 2
                                                                  : wide;
        const Point along = turned({1, 0}, text.style.turn);
        Point at = text.at + shift - along * (whole ? 0 : back);
        for (const std::string& part : parts) {
            put_text(part, at, text.style, layer, whole);
            at = at + along * text_width(part, text.style.size, text.style.weight);
        }
    }

    void put_text(const std::string& words, Point at, const TextStyle& style,
                  const std::string& layer, bool anchored) {
        begin("TEXT", layer);
        const Point foot = out(at);
        entities.point(10, foot);
        entities.number(30, 0);
        entities.number(40, cap_height * style.size * space_.metres_a_unit);
        entities.word(1, ascii(words));
        if (style.turn != 0) entities.number(50, style.turn > 0 ? 360 - style.turn : -style.turn);
        entities.word(7, "STANDARD");
        if (!anchored || style.anchor == Anchor::start) return;
        entities.whole(72, style.anchor == Anchor::middle ? 1 : 2);
        entities.point(11, foot);
        entities.number(31, 0);
    }

    void add(const Group& group, Point shift, const std::string& layer) {
        write(group.items, shift + group.shift,
              group.kind.empty() ? layer : layer_name(group.kind));
    }

    const Space space_;
};

void header(Groups& g, const Box& extent) {
    g.word(0, "SECTION");
    g.word(2, "HEADER");
    g.word(9, "$ACADVER");
    g.word(1, "AC1009");
    g.word(9, "$INSBASE");
    g.point(10, {});
    g.number(30, 0);
    const Box box = extent.empty() ? Box{0, 0, 1, 1} : extent;
    g.word(9, "$EXTMIN");
    g.point(10, {box.left, box.top});
    g.number(30, 0);
    g.word(9, "$EXTMAX");
    g.point(10, {box.right, box.bottom});
    g.number(30, 0);
    g.word(0, "ENDSEC");
}

void line_types(Groups& g, double metres_a_unit) {
    g.word(0, "TABLE");
    g.word(2, "LTYPE");
    g.whole(70, 2);
    for (const bool dashed : {false, true}) {
        g.word(0, "LTYPE");
        g.word(2, dashed ? "DASHED" : "CONTINUOUS");
        g.whole(70, 0);
        g.word(3, dashed ? "__ __ __" : "Solid line");
        g.whole(72, 65);
        g.whole(73, dashed ? 2 : 0);
        g.number(40, dashed ? 10 * metres_a_unit : 0);
        if (!dashed) continue;
        g.number(49, 6 * metres_a_unit);
        g.number(49, -4 * metres_a_unit);
    }
    g.word(0, "ENDTAB");
}

void tables(Groups& g, const std::set<std::string>& layers, double metres_a_unit) {
    g.word(0, "SECTION");
    g.word(2, "TABLES");
    line_types(g, metres_a_unit);
    g.word(0, "TABLE");
    g.word(2, "LAYER");
    g.whole(70, static_cast<int>(layers.size()));
    for (const std::string& layer : layers) {
        g.word(0, "LAYER");
        g.word(2, layer);
        g.whole(70, 0);
        g.whole(62, 7);
        g.word(6, "CONTINUOUS");
    }
    g.word(0, "ENDTAB");
    g.word(0, "TABLE");
    g.word(2, "STYLE");
    g.whole(70, 1);
    g.word(0, "STYLE");
    g.word(2, "STANDARD");
    g.whole(70, 0);
    g.number(40, 0);
    g.number(41, 1);
    g.number(50, 0);
    g.whole(71, 0);
    g.number(42, 0.2);
    g.word(3, "txt");
    g.word(4, "");
    g.word(0, "ENDTAB");
    g.word(0, "ENDSEC");
}

}  // namespace

Outcome<std::string> to_dxf(const Scene& scene, const Space& space) {
    if (!(space.metres_a_unit > 0) || !std::isfinite(space.metres_a_unit)) {
        return failed({"no-scale", "", "a drawing without a scale has no size in metres", "", {}});
    }
    Writer writer(space);
    writer.write(scene.items, {}, "SHEET");
    if (!writer.finite) {
        return failed(
            {"not-finite", "", "something is drawn at a place that is no number", "", {}});
    }
    Groups file;
    header(file, writer.extent);
    tables(file, writer.layers, space.metres_a_unit);
    file.word(0, "SECTION");
    file.word(2, "ENTITIES");
    file.append(writer.entities.take());
    file.word(0, "ENDSEC");
    file.word(0, "EOF");
    return file.take();
}

}  // namespace toft::dxf
