#include "picture/cable_ends.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

const drawing::Box room{444, 718, 754, 932};

TEST(CableEnds, GlandsOnlyWhereThereIsArmour) {
    const Example& one = example("hidden-flat-cable");
    answer::SchemeAnswer scheme = one.answer.schemes[0];
    const Stage stage = set_stage(one.job, &scheme);
    EXPECT_EQ(ends_title(stage), "how the armour ends");
    const drawing::Items armoured = cable_ends(stage, room);
    EXPECT_EQ(count_kind(armoured, "armour-earthed"), 2);
    EXPECT_TRUE(says(armoured, "Joint box at its start"));
    EXPECT_TRUE(says(armoured, "Joint box at its end"));
    EXPECT_EQ(clashes(armoured, room), "");

    scheme.run.stretches.resize(1);
    ASSERT_FALSE(scheme.run.stretches[0].armoured);
    const drawing::Items flat = cable_ends(stage, room);
    EXPECT_EQ(ends_title(stage), "how the cable ends");
    EXPECT_EQ(count_kind(flat, "armour-earthed") + count_kind(flat, "armour-insulated"), 0);
    EXPECT_TRUE(says(flat, "No armour"));
    EXPECT_FALSE(says(flat, "joined to nothing"));
    EXPECT_EQ(clashes(flat, room), "");
    scheme.building.earthing = "own electrode";
    EXPECT_TRUE(says(cable_ends(stage, room), "joined to nothing"));
}

}  // namespace
}  // namespace toft::picture
