#include "curves/band.h"

#include "curves/ink.h"
#include "drawing/hatch.h"
#include "drawing/label.h"

namespace toft::curves {

namespace {

const Hatch may_do_either = {.angle = -45, .spacing = 7};

double longest_test(const tables::Device& device) {
    if (device.holds.empty()) return most_seconds;
    return std::min(device.holds.front().time.number(), most_seconds);
}

Items named_sides(const LogPaper& paper, const tables::Device& device) {
    Items items;
    TextStyle style{.size = 13, .weight = Weight::bold, .colour = palette::graphite};
    if (!device.holds.empty()) {
        items.emplace_back(haloed(text(paper.at(1.25, 0.05), "sure to hold", style)));
    }
    style.anchor = Anchor::end;
    if (paper.tight()) {
        const Point end = paper.at(15000, 300);
        items.emplace_back(haloed(text(end - Point{0, 16}, "sure to have", style)));
        items.emplace_back(haloed(text(end, "operated", style)));
        return items;
    }
    items.emplace_back(haloed(text(paper.at(15000, 300), "sure to have operated", style)));
    return items;
}

}  // namespace

std::vector<Point> slow_edge(const LogPaper& paper, const tables::Device& device) {
    std::vector<Point> edge;
    if (device.points.empty()) return edge;
    edge.push_back(paper.at(device.points.front().current.value.number(),
                            std::max(longest_test(device), device.points.front().time.number())));
    for (const tables::CurvePoint& p : device.points) {
        edge.push_back(paper.at(p.current.value.number(), p.time.number()));
    }
    edge.push_back(paper.at(device.breaking.value.number(), device.points.back().time.number()));
    return edge;
}

std::vector<Point> quick_edge(const LogPaper& paper, const tables::Device& device) {
    std::vector<Point> edge;
    for (const tables::CurvePoint& p : device.holds) {
        const Point corner = paper.at(p.current.value.number(), p.time.number());
        if (!edge.empty()) edge.push_back({edge.back().x, corner.y});
        edge.push_back(corner);
    }
    if (!edge.empty()) edge.push_back({edge.back().x, paper.box.bottom});
    return edge;
}

Items band(const LogPaper& paper, const tables::Device& device) {
    Items items;
    const std::vector<Point> slow = slow_edge(paper, device);
    const std::vector<Point> quick = quick_edge(paper, device);
    if (slow.empty()) return items;
    if (!quick.empty()) {
        std::vector<Point> outline = slow;
        outline.push_back({slow.back().x, paper.box.bottom});
        outline.insert(outline.end(), quick.rbegin(), quick.rend());
        items.emplace_back(Polygon{outline, filled(palette::wash)});
        append(items, hatched(outline, may_do_either));
        items.emplace_back(Polyline{quick, stroked(palette::ink, 1.6)});
        items.emplace_back(
            Line{quick.front(), slow.front(), dashed(palette::graphite, weight::thin, {2, 3})});
    }
    items.emplace_back(Polyline{slow, stroked(palette::ink, weight::heavy)});
    append(items, named_sides(paper, device));
    return items;
}

}  // namespace toft::curves
