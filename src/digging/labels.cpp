#include "digging/labels.h"

#include "digging/ink.h"

#include <cmath>

namespace toft::digging {

namespace {

/// A place for each callout with the rest of the room as it is; those that found none stay behind.
std::vector<Callout> place_all(std::vector<Callout> callouts, Room& room, Items& items) {
    std::vector<Wish> wishes;
    for (const Callout& callout : callouts) {
        const Box box = callout_box(callout);
        Wish wish;
        for (const double reach : {callout.reach, 2 * callout.reach, 4 * callout.reach}) {
            const std::vector<Box> some = around(callout.target, box.width(), box.height(), reach);
            wish.preferred.insert(wish.preferred.end(), some.begin(), some.end());
        }
        wishes.push_back(std::move(wish));
    }
    const std::vector<Place> places = placed(wishes, room);
    std::vector<Callout> behind;
    for (std::size_t i = 0; i < callouts.size(); ++i) {
        if (!places[i].free) {
            behind.push_back(std::move(callouts[i]));
            continue;
        }
        append(items, callout_at(callouts[i], places[i].box));
        room.taken.push_back(places[i].box);
    }
    return behind;
}

}  // namespace

Labels labelled(const std::vector<Callout>& callouts, const Room& room) {
    Labels done;
    Room left = room;
    std::vector<Callout> behind = place_all(callouts, left, done.items);
    for (Callout& callout : behind) callout.lines.resize(1);
    done.left_out = static_cast<int>(place_all(std::move(behind), left, done.items).size());
    return done;
}

std::vector<Box> boxes_along(Point from, Point to, double half) {
    constexpr double piece = 12;
    std::vector<Box> boxes;
    const int pieces = std::min(400, 1 + static_cast<int>(distance(from, to) / piece));
    for (int i = 0; i < pieces; ++i) {
        const Point a = between(from, to, static_cast<double>(i) / pieces);
        const Point b = between(from, to, static_cast<double>(i + 1) / pieces);
        boxes.push_back(grown(joined(joined(Box{}, a), b), half));
    }
    return boxes;
}

}  // namespace toft::digging
