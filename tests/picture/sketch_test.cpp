#include "picture/sketch.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

using drawing::Box;

TEST(Sketch, AThingKeepsWordsOff) {
    Sketch sketch;
    sketch.thing({drawing::Rect{{10, 10, 50, 30}, drawing::filled(drawing::palette::ink)}}, "box",
                 "a box");
    ASSERT_EQ(sketch.taken.size(), 1u);
    EXPECT_EQ(sketch.taken[0], (Box{10, 10, 50, 30}));
    EXPECT_EQ(count_kind(sketch.items, "box"), 1);
}

TEST(Sketch, ASlantingLineIsKeptInSlimPieces) {
    Sketch sketch;
    sketch.keep_line({{0, 0}, {100, 50}}, 3);
    EXPECT_GT(sketch.taken.size(), 4u);
    for (const Box& box : sketch.taken) EXPECT_LT(box.height(), 20);
    sketch.taken.clear();
    sketch.keep_line({{0, 0}, {100, 0}, {100, 50}}, 3);
    EXPECT_EQ(sketch.taken.size(), 2u);
}

TEST(Sketch, NotesAreBrokenToAColumn) {
    const drawing::Callout callout = note({0, 0}, hostile_name(), {hostile_name(), "and so on"});
    EXPECT_LE(drawing::callout_box(callout).width(), 190);
    EXPECT_GE(callout.lines.size(), 3u);
}

TEST(Sketch, SettledNotesDoNotCoverOneAnother) {
    Sketch sketch;
    for (int i = 0; i < 6; ++i) {
        sketch.callouts.push_back(note({200.0 + i, 150}, "note", {"with a line of words"}));
    }
    EXPECT_EQ(settle_callouts(sketch, Box{0, 0, 500, 300}, 150), 0u);
    EXPECT_EQ(count_kind(sketch.items, "note"), 6);
    EXPECT_EQ(clashes(sketch.items, Box{0, 0, 500, 300}), "");
}

TEST(Sketch, NotesWithoutRoomAreCounted) {
    Sketch sketch;
    for (int i = 0; i < 3; ++i) sketch.callouts.push_back(note({10, 10}, "some words"));
    EXPECT_EQ(settle_callouts(sketch, Box{0, 0, 100, 20}, 500), 2u);
    EXPECT_EQ(count_kind(sketch.items, "note"), 1);
}

TEST(Sketch, WordsInTheGroundHaveTheGroundUnderThem) {
    for (const double y : {40.0, 260.0}) {
        Sketch sketch;
        sketch.callouts.push_back(note({200, y}, "note"));
        settle_callouts(sketch, Box{0, 0, 500, 300}, 150);
        const auto texts = texts_in(sketch.items);
        ASSERT_EQ(texts.size(), 1u);
        EXPECT_EQ(texts[0].style.halo, y > 150 ? drawing::palette::soil : drawing::palette::paper);
    }
}

}  // namespace
}  // namespace toft::picture
