#include "board/face.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::board {
namespace {

const answer::RcdAnswer thirty{30, "A", false, {}};

parts::Way way_with(const answer::DeviceAnswer& device, const answer::RcdAnswer* rcd) {
    parts::Way way;
    way.device = device;
    way.rcd = rcd;
    return way;
}

TEST(Face, BearsWhatIsPrintedOnTheDevice) {
    const Face rcbo = way_face(way_with({"BS EN 61009", "B", "RCBO", 20, 6}, &thirty));
    EXPECT_EQ(rcbo.lines, (std::vector<std::string>{"B20", "30 mA", "type A"}));
    EXPECT_EQ(rcbo.shape, Shape::residual);
    const Face bare = way_face(way_with({"BS EN 60898", "C", "breaker", 16, 6}, nullptr));
    EXPECT_EQ(bare.lines, std::vector<std::string>{"C16"});
    EXPECT_EQ(bare.shape, Shape::breaker);
    const Face fuse = way_face(way_with({"BS 88-3", "", "fuse", 16, 80}, &thirty));
    EXPECT_EQ(fuse.lines, (std::vector<std::string>{"16 A", "fuse"}));
    EXPECT_EQ(fuse.shape, Shape::fuse);
    EXPECT_EQ(residual_face(way_with({"BS 88-3", "", "fuse", 16, 80}, &thirty)).lines[1], "30 mA");
}

TEST(Face, WhatNobodyKnowsBearsAQuestionMark) {
    const Face open = way_face(parts::Way{});
    EXPECT_EQ(open.shape, Shape::unknown);
    EXPECT_EQ(open.lines, std::vector<std::string>{"?"});
    const Face unsaid = way_face(way_with({"BS EN 61009", "B", "RCBO", 20, 6}, nullptr));
    EXPECT_EQ(unsaid.lines[1], "mA?");
}

TEST(Face, EachShapeIsDrawnApartAndItsWordsStayOnIt) {
    std::set<std::string> drawn;
    for (const Shape shape :
         {Shape::breaker, Shape::residual, Shape::fuse, Shape::unknown, Shape::blank}) {
        const Face face{shape, {"B32", "300 mA", "type AC"}, 1, "face-way", ""};
        const drawing::Items items = face_items(face, {100, 50}, 1);
        const drawing::Box box{100, 50, 100 + place_wide, 50 + face_high};
        EXPECT_EQ(picture::clashes(items, box), "");
        EXPECT_TRUE(drawing::contains(box, drawing::box_of(items)));
        drawing::Scene scene{200, 200};
        scene.items = items;
        drawn.insert(drawing::to_svg(scene));
    }
    EXPECT_EQ(drawn.size(), 5u);
}

TEST(Face, TheHeadOfEveryRunHasOne) {
    for (const std::string& name : support::example_names()) {
        for (const answer::SchemeAnswer& scheme : picture::example(name).answer.schemes) {
            const Face face = head_face(scheme.run);
            EXPECT_EQ(face.poles, scheme.run.phases);
            EXPECT_EQ(face.shape == Shape::fuse, scheme.run.device.curve.empty());
        }
    }
}

}  // namespace
}  // namespace toft::board
