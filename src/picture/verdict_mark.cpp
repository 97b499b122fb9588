#include "picture/verdict_mark.h"

#include "picture/ink.h"

namespace toft::picture {

namespace {

Items meets_mark(Point c, double r) {
    Items items;
    items.emplace_back(Circle{c, r, stroked(palette::ink, 1.2)});
    items.emplace_back(Polyline{{c + Point{-0.5 * r, 0.05 * r}, c + Point{-0.1 * r, 0.45 * r},
                                 c + Point{0.55 * r, -0.45 * r}},
                                stroked(palette::ink, 1.5)});
    return items;
}

Items caution_mark(Point c, double r) {
    Items items;
    items.emplace_back(
        Polygon{{c + Point{0, -r}, c + Point{1.1 * r, 0.9 * r}, c + Point{-1.1 * r, 0.9 * r}},
                stroked(palette::ink, 1.4)});
    items.emplace_back(
        Line{c + Point{0, -0.35 * r}, c + Point{0, 0.25 * r}, stroked(palette::ink, 1.6)});
    items.emplace_back(Circle{c + Point{0, 0.58 * r}, 0.9, filled(palette::ink)});
    return items;
}

Items not_known_mark(Point c, double r) {
    Items items;
    items.emplace_back(Polygon{{c + Point{0, -1.15 * r}, c + Point{1.15 * r, 0},
                                c + Point{0, 1.15 * r}, c + Point{-1.15 * r, 0}},
                               dashed(palette::ink, 1.2, {2.5, 1.5})});
    TextStyle style{.size = 1.5 * r, .weight = Weight::bold, .anchor = Anchor::middle};
    items.emplace_back(text(c + Point{0, 0.55 * r}, "?", style));
    return items;
}

Items fails_mark(Point c, double r) {
    Items items;
    Style square = filled(palette::ink);
    items.emplace_back(Rect{box_at(c - Point{r, r}, 2 * r, 2 * r), square});
    const double k = 0.55 * r;
    items.emplace_back(Line{c - Point{k, k}, c + Point{k, k}, stroked(palette::paper, 1.8)});
    items.emplace_back(Line{c + Point{-k, k}, c + Point{k, -k}, stroked(palette::paper, 1.8)});
    return items;
}

}  // namespace

Items verdict_mark(rules::Verdict verdict, Point centre, double size) {
    const double r = size / 2;
    switch (verdict) {
        case rules::Verdict::meets:
            return meets_mark(centre, r);
        case rules::Verdict::caution:
            return caution_mark(centre, r);
        case rules::Verdict::not_known:
            return not_known_mark(centre, r);
        case rules::Verdict::fails:
            return fails_mark(centre, r);
    }
    return {};
}

Items verdict_words(rules::Verdict verdict, Point at, double size) {
    Items items = verdict_mark(verdict, at + Point{size * 0.55, -size * 0.36}, size);
    TextStyle style{.size = size, .weight = Weight::bold};
    items.emplace_back(text(at + Point{size * 1.5, 0}, rules::verdict_word(verdict), style));
    return items;
}

}  // namespace toft::picture
