#include "terrain/paper.h"

#include "drawing/measure.h"
#include "terrain/ink.h"

#include <limits>

namespace toft::terrain {

namespace {

constexpr double ruling_apart = 6;  // between figures of the ruling

const Style rule = stroked(palette::faint, 0.7);

void verticals(const Paper& paper, const std::vector<Step>& steps, Items& items) {
    TextStyle style{.size = paper.letters - 1, .anchor = Anchor::middle};
    style.colour = palette::graphite;
    double taken = -std::numeric_limits<double>::infinity();
    for (const Step& step : steps) {
        const double x = paper.across.at(step.figure);
        items.emplace_back(Line{{x, paper.box.top}, {x, paper.box.bottom}, rule});
        const double half = text_width(step.words, style.size) / 2;
        if (step.words.empty() || x - half < taken + ruling_apart) continue;
        items.emplace_back(text({x, paper.box.bottom + paper.letters + 3}, step.words, style));
        taken = x + half;
    }
}

void levels(const Paper& paper, const std::vector<Step>& steps, Items& items) {
    TextStyle style{.size = paper.letters - 1, .anchor = Anchor::end};
    style.colour = palette::graphite;
    double taken = std::numeric_limits<double>::quiet_NaN();
    for (const Step& step : steps) {
        const double y = paper.down.at(step.figure);
        items.emplace_back(Line{{paper.box.left, y}, {paper.box.right, y}, rule});
        if (step.words.empty() || std::fabs(y - taken) < paper.letters + 2) continue;
        items.emplace_back(text({paper.box.left - 5, y + 3.8}, step.words, style));
        taken = y;
    }
}

}  // namespace

Items ruled(const Paper& paper, const std::vector<Step>& across, const std::vector<Step>& down) {
    Items items;
    verticals(paper, across, items);
    levels(paper, down, items);
    items.emplace_back(Rect{paper.box, stroked(palette::graphite, weight::thin)});
    return items;
}

Items band(const std::vector<Point>& low, const std::vector<Point>& high, const BandInk& ink) {
    Items items;
    if (low.empty() || high.empty()) return items;
    if (low.size() == 1 && high.size() == 1) {
        items.emplace_back(Line{low.front(), high.front(), ink.edge});
        return items;
    }
    std::vector<Point> outline = low;
    outline.insert(outline.end(), high.rbegin(), high.rend());
    if (ink.washed) items.emplace_back(Polygon{outline, filled(palette::wash)});
    append(items, hatched(outline, ink.hatch));
    for (const std::vector<Point>& edge : {low, high}) {
        const bool broken = !ink.edge.dash.empty();
        if (broken) items.emplace_back(Polyline{edge, stroked(palette::paper, ink.edge.width)});
        items.emplace_back(Polyline{edge, ink.edge});
    }
    return items;
}

Items span_mark(Point from, Point to, double weight) {
    const Point across = quarter_turned(unit(to - from)) * 5;
    Items items{Line{from, to, stroked(palette::ink, weight)}};
    for (const Point end : {from, to}) {
        items.emplace_back(Line{end - across, end + across, stroked(palette::ink, weight)});
    }
    return items;
}

Items disc(Point centre, const std::string& sign) {
    Style ring = stroked(palette::ink, 1.2);
    ring.fill = palette::paper;
    const TextStyle style{.size = 10.5, .weight = Weight::bold, .anchor = Anchor::middle};
    return {Circle{centre, disc_radius, ring}, text(centre + Point{0, 3.8}, sign, style)};
}

}  // namespace toft::terrain
