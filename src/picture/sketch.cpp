#include "picture/sketch.h"

#include "drawing/measure.h"
#include "parts/words.h"
#include "picture/ink.h"

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double column = 176;
constexpr double bold_wider = 1.13;  // bold letters against upright ones, at most

/// Where the words would stand: around the target, near first, then farther above and below.
std::vector<Box> wishes_of(const Callout& callout) {
    const Box box = callout_box(callout);
    std::vector<Box> wishes;
    for (const double reach : {1.0, 2.2}) {
        const auto ring = around(callout.target, box.width(), box.height(), reach * callout.reach);
        wishes.insert(wishes.end(), ring.begin(), ring.end());
    }
    return wishes;
}

}  // namespace

void Sketch::thing(Items more, const char* kind, std::string title) {
    const Box box = box_of(more);
    if (!box.empty()) keep(box);
    items.emplace_back(Group{std::move(more), {}, "", kind, std::move(title)});
}

void Sketch::keep_line(const std::vector<Point>& points, double reach) {
    // Slanting pieces are kept in short steps, so that their boxes stay slim.
    for (std::size_t i = 1; i < points.size(); ++i) {
        const Point a = points[i - 1];
        const Point b = points[i];
        const bool level = a.x == b.x || a.y == b.y;
        const int steps = level ? 1 : std::max(1, static_cast<int>(distance(a, b) / 14));
        for (int k = 0; k < steps; ++k) {
            const Box box = joined(Box{}, between(a, b, static_cast<double>(k) / steps));
            keep(grown(joined(box, between(a, b, static_cast<double>(k + 1) / steps)), reach));
        }
    }
}

Note note(Point target, std::string_view head, const std::vector<std::string>& more) {
    Note callout;
    callout.target = target;
    callout.head = head;
    callout.more = more;
    callout.size = plain_letters;
    callout.reach = 13;
    for (std::string& part : paragraph(head, column / bold_wider, plain_letters, 2)) {
        callout.lines.push_back(plain(std::move(part)));
    }
    for (const std::string& line : more) {
        for (std::string& part : paragraph(line, column, plain_letters, 3)) {
            callout.lines.push_back(plain(std::move(part)));
        }
    }
    return callout;
}

std::size_t settle_callouts(Sketch& sketch, const Box& frame, double ground) {
    std::vector<Wish> wishes;
    for (const Callout& callout : sketch.callouts) wishes.push_back({wishes_of(callout)});
    const std::vector<Place> places = placed(wishes, Room{frame, sketch.taken, 5});
    std::size_t left_out = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (!places[i].free) {
            ++left_out;
            continue;
        }
        Callout& callout = sketch.callouts[i];
        if (places[i].box.top > ground) callout.under = palette::soil;
        sketch.put(Group{callout_at(callout, places[i].box), {}, "", "note", ""});
        sketch.keep(places[i].box);
    }
    return left_out;
}

}  // namespace toft::picture
