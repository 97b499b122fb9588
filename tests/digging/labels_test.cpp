#include "digging/labels.h"

#include "picture/looking.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::digging {
namespace {

using drawing::Box;
using drawing::Point;

Label label(const std::string& words, std::vector<Point> targets) {
    return {{{}, {drawing::plain(words), drawing::plain("second line")}, 10.5, 10},
            std::move(targets)};
}

TEST(Labels, StandBesideWhatTheyTellOf) {
    const Labels one = labelled({label("A1", {{100, 100}})}, {{0, 0, 200, 200}, {}, 3});
    EXPECT_EQ(one.left_out, 0);
    EXPECT_EQ(picture::texts_in(one.items).size(), 2u);
}

TEST(Labels, WithLittleRoomOnlyTheFirstLineStaysAndWithNoneItIsCounted) {
    const Labels little = labelled({label("A1", {{20, 8}})}, {{0, 0, 120, 17}, {}, 1});
    EXPECT_EQ(picture::texts_in(little.items).size(), 1u);
    const Labels none = labelled({label("A1", {{5, 5}})}, {{0, 0, 10, 10}, {}, 1});
    EXPECT_EQ(none.left_out, 1);
    EXPECT_TRUE(none.items.empty());
    EXPECT_EQ(labelled({label("A1", {})}, {{0, 0, 200, 200}, {}, 1}).left_out, 1);
}

RC_GTEST_PROP(Labels, NoneCoversAnotherOrWhatIsTaken, ()) {
    std::vector<Label> all;
    drawing::Room room{{0, 0, 500, 400}, {}, 3};
    for (int i = *rc::gen::inRange(1, 30); i > 0; --i) {
        const Point p{*rc::gen::inRange(0, 500) * 1.0, *rc::gen::inRange(0, 400) * 1.0};
        room.taken.push_back({p.x - 6, p.y - 6, p.x + 6, p.y + 6});
        all.push_back(label("label " + std::to_string(i), {p, p + Point{4, 4}}));
    }
    const Labels words = labelled(all, room);
    RC_ASSERT(picture::clashes(words.items, room.frame) == "");
    for (const drawing::Text& text : picture::texts_in(words.items)) {
        for (const Box& box : room.taken) {
            RC_ASSERT(!drawing::overlap(picture::letters_of(text), box));
        }
    }
}

TEST(Labels, BoxesCoverALine) {
    const std::vector<Box> boxes = boxes_along({0, 0}, {100, 40}, 3);
    for (double t = 0; t <= 1; t += 0.01) {
        const Point p = drawing::between({0, 0}, {100, 40}, t);
        bool covered = false;
        for (const Box& box : boxes) {
            covered = covered || drawing::contains(box, {p.x, p.y, p.x, p.y});
        }
        EXPECT_TRUE(covered);
    }
}

}  // namespace
}  // namespace toft::digging
