#include "board/face.h"

#include "base/text.h"
#include "board/ink.h"
#include "drawing/measure.h"
#include "parts/device_words.h"
#include "parts/words.h"

#include <algorithm>

namespace toft::board {

namespace {

constexpr double gap = 1.2;        // between neighbours
constexpr double first_line = 20;  // of the words, below the face's top
constexpr double line_step = 11.5;
constexpr double toggle_top = 50;
constexpr double button_at = 71;
constexpr double least_letters = 8.3;

/// "B20"; the trip of a moulded-case breaker is set, not a letter.
std::string marking(const answer::DeviceAnswer& device) {
    const std::string rating = significant(device.rating_a, 4);
    const bool moulded = device.kind.rfind("moulded", 0) == 0;
    if (device.curve.empty() || moulded) return rating + " A";
    return device.curve + rating;
}

std::vector<std::string> residual_lines(const answer::RcdAnswer* rcd) {
    if (!rcd) return {"mA?"};
    return {significant(rcd->sensitivity_ma, 4) + " mA", "type " + rcd->type};
}

void add(std::vector<std::string>& lines, const std::vector<std::string>& more) {
    lines.insert(lines.end(), more.begin(), more.end());
}

Items toggles(const Box& box, int poles) {
    Items items;
    const double step = box.width() / poles;
    for (int i = 0; i < poles; ++i) {
        const double x = box.left + (i + 0.5) * step;
        Style slot = stroked(palette::ink, 0.8);
        slot.fill = palette::wash;
        items.emplace_back(
            Rect{{x - 5, toggle_top + box.top, x + 5, toggle_top + box.top + 14}, slot, 1});
        items.emplace_back(Rect{{x - 5, toggle_top + box.top, x + 5, toggle_top + box.top + 6},
                                filled(palette::ink),
                                1});
    }
    if (poles > 1) {
        const double y = box.top + toggle_top + 3;
        items.emplace_back(Line{
            {box.left + 0.5 * step, y}, {box.right - 0.5 * step, y}, stroked(palette::ink, 3)});
    }
    return items;
}

/// A fuse's barrel with its two caps.
Items barrel(const Box& box) {
    const double x = box.centre().x;
    const double top = box.top + toggle_top;
    Style body = stroked(palette::ink, 0.9);
    body.fill = palette::paper;
    Items items{Rect{{x - 5, top, x + 5, top + 24}, body, 2}};
    items.emplace_back(Rect{{x - 5, top, x + 5, top + 5}, filled(palette::ink)});
    items.emplace_back(Rect{{x - 5, top + 19, x + 5, top + 24}, filled(palette::ink)});
    return items;
}

Items works(const Face& face, const Box& box) {
    if (face.shape == Shape::fuse) return barrel(box);
    Items items;
    if (face.shape == Shape::breaker || face.shape == Shape::residual) {
        append(items, toggles(box, face.poles));
    }
    if (face.shape == Shape::residual) {
        const Point button{box.centre().x, box.top + button_at};
        items.emplace_back(Rect{{button.x - 4, button.y - 3.5, button.x + 4, button.y + 3.5},
                                stroked(palette::ink, 1),
                                1});
        items.emplace_back(Circle{button, 1.4, filled(palette::ink)});
    }
    return items;
}

}  // namespace

Face way_face(const Way& way) {
    Face face{Shape::unknown, {"?"}, way.phases, "face-way", way.name};
    if (way.device) {
        face.shape = way.fused() ? Shape::fuse : Shape::breaker;
        face.lines = {marking(*way.device)};
        if (way.fused()) face.lines.push_back("fuse");
    }
    if (way.device && way.residual_inside()) face.shape = Shape::residual;
    if (!way.residual_apart() && (way.rcd || way.residual_inside())) {
        add(face.lines, residual_lines(way.rcd));
    }
    return face;
}

Face residual_face(const Way& way) {
    Face face{Shape::residual, {"RCD"}, way.phases == 3 ? 4 : 2, "face-rcd", ""};
    face.title = "residual current device of " + way.name;
    add(face.lines, residual_lines(way.rcd));
    return face;
}

Face main_switch_face(int phases) {
    const char* poles = phases == 3 ? "4 poles" : "2 poles";
    return {
        Shape::breaker, {"main switch", poles}, phases == 3 ? 4 : 2, "face-switch", "main switch"};
}

Face head_face(const answer::RunAnswer& run) {
    const answer::DeviceAnswer& d = run.device;
    const bool residual = opens_on_residual(d);
    Face face{residual ? Shape::residual : Shape::breaker,
              {marking(d)},
              run.phases,
              "face-head",
              "device at the head of the run"};
    if (d.curve.empty()) {
        face.shape = Shape::fuse;
        face.lines.push_back("fuse");
    }
    if (residual) add(face.lines, residual_lines(run.rcd ? &*run.rcd : nullptr));
    return face;
}

Face face_of(const Module& module, const std::vector<Way>& ways, int phases) {
    switch (module.holds) {
        case Holds::main_switch:
            return main_switch_face(phases);
        case Holds::way:
            return way_face(ways[module.way]);
        case Holds::residual:
            return residual_face(ways[module.way]);
        case Holds::spare:
            return {Shape::blank, {"spare"}, 1, "face-spare", "spare way"};
        case Holds::free:
            break;
    }
    return {Shape::blank, {"free"}, 1, "face-free", "place left free"};
}

Items face_items(const Face& face, Point corner, int places) {
    const Box box{corner.x + gap, corner.y, corner.x + place_wide * places - gap,
                  corner.y + face_high};
    const bool dashed_line = face.shape == Shape::unknown || face.shape == Shape::blank;
    Style outline = dashed_line ? dashed(palette::graphite, 1, {4, 3}) : stroked(palette::ink, 1.3);
    if (!dashed_line) outline.fill = palette::paper;
    Items items{Rect{box, outline, 2}};
    for (std::size_t i = 0; i < face.lines.size() && i < 3; ++i) {
        TextStyle style{.size = i == 0 ? 10.5 : 8.8, .anchor = Anchor::middle};
        if (i == 0 && !dashed_line) style.weight = Weight::bold;
        const double wide = text_width(face.lines[i], style.size, style.weight);
        const double room = box.width() - 2;
        if (wide > room) style.size = std::max(least_letters, style.size * room / wide);
        const double y = box.top + first_line + line_step * static_cast<double>(i);
        const std::string words =
            shortened(face.lines[i], box.width() - 1, style.size, style.weight);
        items.emplace_back(text({box.centre().x, y}, words, style));
    }
    append(items, works(face, box));
    return {Group{std::move(items), {}, "", std::string("face ") + face.kind, face.title}};
}

}  // namespace toft::board
