#include "digging/labels.h"

#include "digging/ink.h"

#include <algorithm>

namespace toft::digging {

namespace {

Wish wish_of(const Label& label) {
    const Box box = callout_box(label.callout);
    Wish wish;
    for (const double times : {1.0, 2.0, 4.0}) {
        for (const Point target : label.targets) {
            const double reach = times * label.callout.reach;
            const std::vector<Box> some = around(target, box.width(), box.height(), reach);
            wish.preferred.insert(wish.preferred.end(), some.begin(), some.end());
        }
    }
    return wish;
}

/// The target that is nearest to the words where they stand.
Point best_target(const Label& label, const Box& box) {
    return *std::min_element(label.targets.begin(), label.targets.end(), [&](Point a, Point b) {
        return distance(nearest(box, a), a) < distance(nearest(box, b), b) - 1e-6;
    });
}

/// A place for each label with the rest of the room as it is; those that found none stay behind.
std::vector<Label> place_all(std::vector<Label> labels, Room& room, Items& items) {
    std::vector<Wish> wishes;
    for (const Label& label : labels) wishes.push_back(wish_of(label));
    const std::vector<Place> places = placed(wishes, room);
    std::vector<Label> behind;
    for (std::size_t i = 0; i < labels.size(); ++i) {
        if (!places[i].free) {
            behind.push_back(std::move(labels[i]));
            continue;
        }
        labels[i].callout.target = best_target(labels[i], places[i].box);
        append(items, callout_at(labels[i].callout, places[i].box));
        room.taken.push_back(places[i].box);
    }
    return behind;
}

}  // namespace

Labels labelled(const std::vector<Label>& labels, const Room& room) {
    Labels done;
    Room left = room;
    std::vector<Label> pointing;
    for (const Label& label : labels) {
        if (label.targets.empty()) {
            ++done.left_out;
        } else {
            pointing.push_back(label);
        }
    }
    std::vector<Label> behind = place_all(std::move(pointing), left, done.items);
    for (Label& label : behind) label.callout.lines.resize(1);
    done.left_out += static_cast<int>(place_all(std::move(behind), left, done.items).size());
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
