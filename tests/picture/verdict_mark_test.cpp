#include "picture/verdict_mark.h"

#include "drawing/measure.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

using rules::Verdict;

constexpr Verdict all[] = {Verdict::meets, Verdict::caution, Verdict::not_known, Verdict::fails};

/// The drawing with every colour made black: what is left is shape.
std::string shape_of(Verdict verdict) {
    drawing::Scene scene{20, 20};
    scene.items = verdict_mark(verdict, {10, 10});
    std::string svg = drawing::to_svg(scene);
    for (std::size_t at = svg.find('#'); at != std::string::npos; at = svg.find('#', at + 1)) {
        svg.replace(at, 7, "#000000");
    }
    return svg;
}

TEST(VerdictMark, EachHasAShapeOfItsOwn) {
    for (const Verdict a : all) {
        for (const Verdict b : all) {
            EXPECT_EQ(shape_of(a) == shape_of(b), a == b);
        }
    }
}

TEST(VerdictMark, StandsInItsSquare) {
    for (const Verdict verdict : all) {
        const drawing::Box box = drawing::box_of(verdict_mark(verdict, {50, 50}, 12));
        EXPECT_FALSE(box.empty());
        EXPECT_TRUE(drawing::contains(drawing::Box{41, 41, 59, 59}, box));
    }
}

TEST(VerdictMark, TheWordStandsBesideTheShape) {
    for (const Verdict verdict : all) {
        EXPECT_TRUE(says(verdict_words(verdict, {0, 20}), rules::verdict_word(verdict)));
    }
}

}  // namespace
}  // namespace toft::picture
