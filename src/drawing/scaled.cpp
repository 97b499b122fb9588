#include "drawing/scaled.h"

namespace toft::drawing {

namespace {

Style scaled(Style style, double k) {
    style.width = std::max(std::min(style.width, least_stroke), style.width * k);
    for (double& part : style.dash) part *= k;
    return style;
}

std::vector<Point> scaled(std::vector<Point> points, double k) {
    for (Point& p : points) p = p * k;
    return points;
}

Step scaled_step(const Step& step, double k) {
    if (const auto* move = std::get_if<MoveTo>(&step)) return MoveTo{move->to * k};
    if (const auto* line = std::get_if<LineTo>(&step)) return LineTo{line->to * k};
    if (const auto* quad = std::get_if<QuadTo>(&step))
        return QuadTo{quad->control * k, quad->to * k};
    if (const auto* cubic = std::get_if<CubicTo>(&step)) {
        return CubicTo{cubic->first * k, cubic->second * k, cubic->to * k};
    }
    if (const auto* arc = std::get_if<ArcTo>(&step)) {
        return ArcTo{arc->radius * k, arc->sweep, arc->to * k};
    }
    return step;
}

struct Scale {
    double k;
    bool words;
    Items& out;

    void operator()(const Line& a) const {
        out.emplace_back(Line{a.from * k, a.to * k, scaled(a.style, k)});
    }
    void operator()(const Polyline& a) const {
        out.emplace_back(Polyline{scaled(a.points, k), scaled(a.style, k)});
    }
    void operator()(const Polygon& a) const {
        out.emplace_back(Polygon{scaled(a.points, k), scaled(a.style, k)});
    }
    void operator()(const Rect& a) const {
        const Box box{a.box.left * k, a.box.top * k, a.box.right * k, a.box.bottom * k};
        out.emplace_back(Rect{box, scaled(a.style, k), a.corner * k});
    }
    void operator()(const Circle& a) const {
        out.emplace_back(Circle{a.centre * k, a.radius * k, scaled(a.style, k)});
    }
    void operator()(const Path& a) const {
        Path path{{}, scaled(a.style, k)};
        for (const Step& step : a.steps) path.steps.push_back(scaled_step(step, k));
        out.emplace_back(std::move(path));
    }
    void operator()(const Text& a) const {
        if (!words) return;
        Text text{a.at * k, a.spans, a.style};
        text.style.size *= k;
        text.style.halo_width *= k;
        out.emplace_back(std::move(text));
    }
    void operator()(const Group& a) const {
        Group group{{}, a.shift * k, a.id, a.kind, a.title};
        for (const Item& item : a.items) std::visit(Scale{k, words, group.items}, item.shape);
        out.emplace_back(std::move(group));
    }
};

}  // namespace

Items scaled(const Items& items, double factor) {
    Items out;
    for (const Item& item : items) std::visit(Scale{factor, true, out}, item.shape);
    return out;
}

Items scaled_without_words(const Items& items, double factor) {
    Items out;
    for (const Item& item : items) std::visit(Scale{factor, false, out}, item.shape);
    return out;
}

}  // namespace toft::drawing
