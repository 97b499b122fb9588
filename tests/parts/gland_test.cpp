#include "parts/gland.h"

#include "drawing/conductor_colours.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::parts {
namespace {

using namespace picture;

const drawing::Box gland_room{0, 0, 310, 96};

bool has_protective_line(const drawing::Items& items) {
    drawing::Scene scene{400, 120};
    scene.items = items;
    const auto green = static_cast<unsigned>(drawing::conductor::green);
    char hex[8];
    std::snprintf(hex, sizeof hex, "#%06x", green);
    return drawing::to_svg(scene).find(hex) != std::string::npos;
}

TEST(Gland, EarthedArmourHasAConductorToEarth) {
    const drawing::Items items = gland_detail(ArmourEnd::earthed, "House", gland_room);
    EXPECT_EQ(count_kind(items, "armour-earthed"), 1);
    EXPECT_TRUE(says(items, "armour earthed"));
    EXPECT_TRUE(has_protective_line(items));
}

TEST(Gland, InsulatedArmourHasNone) {
    const drawing::Items items = gland_detail(ArmourEnd::insulated, "Shed", gland_room);
    EXPECT_EQ(count_kind(items, "armour-insulated"), 1);
    EXPECT_EQ(count_kind(items, "armour-earthed"), 0);
    EXPECT_TRUE(says(items, "armour insulated"));
    EXPECT_FALSE(has_protective_line(items));
}

TEST(Gland, WordsStayInTheRoom) {
    for (const ArmourEnd end : {ArmourEnd::earthed, ArmourEnd::insulated}) {
        EXPECT_EQ(clashes(gland_detail(end, hostile_name(), gland_room), gland_room), "");
    }
}

}  // namespace
}  // namespace toft::parts
