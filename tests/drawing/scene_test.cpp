#include "drawing/scene.h"

#include <gtest/gtest.h>

namespace toft::drawing {
namespace {

TEST(Scene, UnitIsOnePixelAt96ToTheInch) {
    EXPECT_DOUBLE_EQ(units_of_mm(25.4), 96);
    EXPECT_DOUBLE_EQ(mm_of_units(units_of_mm(297)), 297);
}

TEST(Item, IsMadeFromAnyShapeAndCopiedWhole) {
    Group group{{Line{{0, 0}, {1, 1}}, Circle{{2, 2}, 3}}};
    group.id = "run-1";
    const Item item = group;
    const Item copy = item;
    group.items.clear();
    ASSERT_TRUE(std::holds_alternative<Group>(copy.shape));
    EXPECT_EQ(std::get<Group>(copy.shape).items.size(), 2u);
    EXPECT_EQ(std::get<Group>(copy.shape).id, "run-1");
}

TEST(Items, AppendKeepsOrderFromBackToFront) {
    Items items = {Circle{{}, 1}};
    append(items, {Circle{{}, 2}, Circle{{}, 3}});
    ASSERT_EQ(items.size(), 3u);
    for (std::size_t i = 0; i < items.size(); ++i) {
        EXPECT_EQ(std::get<Circle>(items[i].shape).radius, static_cast<double>(i + 1));
    }
}

}  // namespace
}  // namespace toft::drawing
