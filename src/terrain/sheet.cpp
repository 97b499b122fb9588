#include "terrain/sheet.h"

#include "drawing/measure.h"
#include "parts/words.h"
#include "terrain/ink.h"

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr double wide_edge = 44;
constexpr double edge = 10;
constexpr double gutter = 44;  // between drawing and words beside it
constexpr double words_share = 0.34;
constexpr double words_size = 12;

double sheet_width(double width) {
    return std::isfinite(width) ? std::clamp(width, parts::narrowest_sheet, paper_wide)
                                : paper_wide;
}

void head(const site::Job& job, const Content& content, bool wide, parts::WordColumn& column) {
    const TextStyle kind{.size = 12, .colour = palette::graphite};
    const std::string of = content.building.empty() ? "" : ": " + content.building;
    column.words(content.kind + of, kind, 2);
    column.words(job.title, {.size = wide ? 23.0 : 16.0, .weight = Weight::bold}, 3);
    column.gap(4);
    column.words(content.sentence, {.size = wide ? 14.0 : words_size}, 10);
    if (content.verdict) content.verdict(column);
    column.gap(8);
}

void footing(parts::WordColumn& column) {
    column.gap(12);
    column.placed(
        {Line{{column.left(), column.y()}, {column.right(), column.y()}, stroked(palette::faint)}},
        column.y() + 4);
    column.words("A competent, licensed person, the local code and the network operator decide.",
                 {.size = words_size, .weight = Weight::bold});
}

/// Drawing left, words right.
void beside(const Content& content, parts::WordColumn& column) {
    const double top = column.y();
    const double left = column.right() - words_share * column.width();
    parts::WordColumn words(left, column.right(), top);
    if (content.explain) content.explain(words);
    const double foot = words.y();
    Drawn drawn = content.draw({column.left(), left - gutter, top, false, true});
    column.placed(std::move(drawn.items), drawn.foot);
    column.placed(words.take(), foot);
}

void below(const Content& content, bool phone, parts::WordColumn& column) {
    if (content.draw) {
        Drawn drawn = content.draw({column.left(), column.right(), column.y(), phone, false});
        column.placed(std::move(drawn.items), drawn.foot);
        column.gap(6);
    }
    if (content.explain) content.explain(column);
}

}  // namespace

Scene lay_out(const site::Job& job, const Content& content, double width) {
    const double wide = sheet_width(width);
    const bool set_beside = wide >= beside_wide && content.draw;
    const double margin = wide >= beside_wide ? wide_edge : edge;
    parts::WordColumn column(margin, wide - margin, wide >= beside_wide ? 28 : edge);
    head(job, content, wide >= beside_wide, column);
    if (set_beside) {
        beside(content, column);
    } else {
        below(content, wide <= phone_wide, column);
    }
    footing(column);
    Scene scene{wide, column.y() + (wide >= beside_wide ? 28 : edge)};
    scene.title = content.kind + ": " + job.title;
    scene.description = content.sentence;
    scene.items = column.take();
    return scene;
}

Scene no_such_side(const site::Job& job, const std::string& kind, double width) {
    return lay_out(job, {kind, "", "The answer holds no such outbuilding.", {}, {}, {}}, width);
}

std::string building_words(const site::Job& job, const std::string& named) {
    const site::Building* building = site::find_building(job, named);
    return building ? parts::name_or(building->name, building->id) : named;
}

void say(parts::WordColumn& column, const std::string& words) {
    column.words(words, {.size = words_size});
    column.gap(3);
}

void say_small(parts::WordColumn& column, const std::string& words) {
    column.words(words, {.size = 11, .colour = palette::graphite});
    column.gap(3);
}

void say_signed(parts::WordColumn& column, Items sign, const std::string& head,
                const std::string& words) {
    column.gap(3);
    const Point shift{column.left(), column.y()};
    column.placed({Group{std::move(sign), shift, "", "sign", head}}, column.y());
    const double indent = sign_wide + 7;
    column.words(head, {.size = words_size, .weight = Weight::bold}, 4, indent);
    if (!words.empty()) column.words(words, {.size = words_size}, 8, indent);
    column.gap(2);
}

}  // namespace toft::terrain
