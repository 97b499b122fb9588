#include "drawing/placement.h"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

namespace toft::drawing {
namespace {

const Box page{0, 0, 400, 300};

Wish random_wish() {
    const Point target{static_cast<double>(*rc::gen::inRange(0, 400)),
                       static_cast<double>(*rc::gen::inRange(0, 300))};
    return {around(target, *rc::gen::inRange(5, 70), *rc::gen::inRange(5, 30), 12)};
}

Box random_box() {
    return box_at({static_cast<double>(*rc::gen::inRange(0, 380)),
                   static_cast<double>(*rc::gen::inRange(0, 280))},
                  *rc::gen::inRange(1, 60), *rc::gen::inRange(1, 60));
}

Room random_room() {
    Room room{page};
    const int taken = *rc::gen::inRange(0, 5);
    for (int i = 0; i < taken; ++i) room.taken.push_back(random_box());
    return room;
}

TEST(Placed, TakesTheFirstWishThatIsFree) {
    const Wish wish{around({200, 150}, 50, 20, 10)};
    EXPECT_EQ(placed({wish}, {page})[0].box, wish.preferred[0]);
    const Room room{page, {wish.preferred[0]}, 0};
    EXPECT_EQ(placed({wish}, room)[0].box, wish.preferred[1]);
}

TEST(Placed, ShiftsNoFurtherThanItMust) {
    const Wish wish{{box_at({100, 100}, 50, 20)}};
    const Room room{page, {Box{60, 60, 400, 107}}, 4};
    const Place place = placed({wish}, room)[0];
    EXPECT_TRUE(place.free);
    EXPECT_EQ(place.box, box_at({100, 111}, 50, 20));
}

TEST(Placed, FindsTheOnlyHole) {
    // All is taken but 50 x 20 at (300, 200); the wish is far from it.
    const Room room{
        page, {{0, 0, 400, 200}, {0, 220, 400, 300}, {0, 200, 300, 220}, {350, 200, 400, 220}}, 0};
    const Place place = placed({{{box_at({5, 5}, 50, 20)}}}, room)[0];
    EXPECT_TRUE(place.free);
    EXPECT_EQ(place.box, box_at({300, 200}, 50, 20));
}

TEST(Placed, SaysWhenThereIsNoRoom) {
    const Wish wish{{box_at({5, 5}, 500, 20)}};
    const Place place = placed({wish}, {page})[0];
    EXPECT_FALSE(place.free);
    EXPECT_EQ(place.box, wish.preferred[0]);
    EXPECT_FALSE(placed({Wish{}}, {page})[0].free);
}

TEST(Placed, TriesTheLargestFirstWhenTheOrderGivenFails) {
    const Room room{Box{0, 0, 100, 20}, {}, 0};
    const std::vector<Place> places =
        placed({{{box_at({40, 0}, 20, 20)}}, {{box_at({0, 0}, 80, 20)}}}, room);
    EXPECT_TRUE(places[0].free);
    EXPECT_TRUE(places[1].free);
    EXPECT_FALSE(overlap(places[0].box, places[1].box));
}

RC_GTEST_PROP(Placed, FreePlacesOverlapNothing, ()) {
    const Room room = random_room();
    std::vector<Wish> wishes;
    const int count = *rc::gen::inRange(0, 12);
    for (int i = 0; i < count; ++i) wishes.push_back(random_wish());
    const std::vector<Place> places = placed(wishes, room);
    RC_ASSERT(places.size() == wishes.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (!places[i].free) continue;
        RC_ASSERT(contains(room.frame, places[i].box));
        RC_ASSERT(std::fabs(places[i].box.width() - wishes[i].preferred[0].width()) < 1e-9);
        for (const Box& taken : room.taken) {
            RC_ASSERT(!overlap(places[i].box, grown(taken, room.gap)));
        }
        for (std::size_t j = 0; j < i; ++j) {
            RC_ASSERT(!places[j].free || !overlap(places[i].box, grown(places[j].box, room.gap)));
        }
    }
}

// Seven labels of at most 70 x 30 with gaps of 4 bar the corner of the eighth from at most
// 7 x 148 x 68 square units, less than its 330 x 270: there is always room.
RC_GTEST_PROP(Placed, AllFindRoomOnAnOpenPage, ()) {
    std::vector<Wish> wishes;
    for (int i = 0; i < 8; ++i) wishes.push_back(random_wish());
    for (const Place& place : placed(wishes, {page})) RC_ASSERT(place.free);
}

// Against every place on a grid of whole units: what is found is free and none is nearer.
RC_GTEST_PROP(Placed, IsNearestAmongAllPlacesOfAGrid, ()) {
    Room room{Box{0, 0, 60, 40}, {}, 1};
    for (int i = 0; i < 4; ++i) {
        room.taken.push_back(box_at({static_cast<double>(*rc::gen::inRange(0, 55)),
                                     static_cast<double>(*rc::gen::inRange(0, 35))},
                                    *rc::gen::inRange(1, 30), *rc::gen::inRange(1, 30)));
    }
    const Box wish = box_at({static_cast<double>(*rc::gen::inRange(0, 50)),
                             static_cast<double>(*rc::gen::inRange(0, 30))},
                            *rc::gen::inRange(1, 20), *rc::gen::inRange(1, 15));
    double nearest = std::numeric_limits<double>::infinity();
    for (double y = 0; y <= 40; ++y) {
        for (double x = 0; x <= 60; ++x) {
            const Box box = box_at({x, y}, wish.width(), wish.height());
            bool is_free = contains(room.frame, box);
            for (const Box& taken : room.taken) is_free = is_free && !overlap(box, grown(taken, 1));
            if (is_free) nearest = std::min(nearest, std::hypot(x - wish.left, y - wish.top));
        }
    }
    const Place place = placed({{{wish}}}, room)[0];
    RC_ASSERT(place.free == std::isfinite(nearest));
    if (place.free) {
        RC_ASSERT(std::fabs(distance({place.box.left, place.box.top}, {wish.left, wish.top}) -
                            nearest) < 1e-9);
    }
}

TEST(Around, KeepsTheTargetOutside) {
    const std::vector<Box> boxes = around({10, 10}, 30, 12, 5);
    ASSERT_EQ(boxes.size(), 8u);
    for (const Box& box : boxes) {
        EXPECT_DOUBLE_EQ(box.width(), 30);
        EXPECT_DOUBLE_EQ(box.height(), 12);
        EXPECT_GE(distance(nearest(box, {10, 10}), {10, 10}), 5 - 1e-9);
    }
}

}  // namespace
}  // namespace toft::drawing
