#include "diagram/run_notes.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

Stretch stretch(bool armoured, const char* protective, bool far) {
    Stretch s;
    s.cable.family = armoured ? "armoured XLPE copper" : "flat twin and earth";
    s.cable.live_mm2 = 6;
    s.cable.armoured = s.cable.armour_near = armoured;
    s.cable.armour_far = far;
    s.cable.protective_conductor = protective;
    s.cable.length_m = 12;
    return s;
}

bool note_says(const Note& note, const std::string& words) {
    for (const std::string& line : note.lines) {
        if (line.find(words) != std::string::npos) return true;
    }
    return note.head.find(words) != std::string::npos;
}

TEST(RunNotes, AnEndSaysWhatIsDoneWithTheArmourThere) {
    RunLine run;
    run.stretches = {stretch(true, "armour", true)};
    EXPECT_TRUE(note_says(near_note(run), "armour earthed here"));
    EXPECT_TRUE(note_says(far_note(run), "armour earthed here"));
    run.stretches = {stretch(true, "core", false)};
    EXPECT_TRUE(note_says(far_note(run), "armour insulated here"));
    run.stretches = {stretch(false, "core", false)};
    EXPECT_FALSE(note_says(near_note(run), "armour"));
    EXPECT_FALSE(note_says(near_note(run), "gland"));
}

TEST(RunNotes, ACoreThatStopsAtABuildingWithItsOwnEarthSaysSo) {
    RunLine run;
    run.stretches = {stretch(false, "core", false)};
    run.earth_stops = true;
    EXPECT_TRUE(note_says(far_note(run), "protective core insulated here"));
    run.earth_stops = false;
    EXPECT_FALSE(note_says(far_note(run), "insulated"));
}

TEST(RunNotes, AJointBoxNamesBothCablesAndWhatIsJoined) {
    const Note note =
        joint_note(stretch(false, "core", false).cable, stretch(true, "armour", true).cable);
    EXPECT_EQ(note.head, "joint box");
    EXPECT_TRUE(note_says(note, "flat twin and earth"));
    EXPECT_TRUE(note_says(note, "armoured XLPE copper"));
    EXPECT_TRUE(note_says(note, "core to armour"));
    const Note stopped =
        joint_note(stretch(true, "core", false).cable, stretch(false, "core", false).cable);
    EXPECT_TRUE(note_says(stopped, "armour from the near end insulated here"));
}

TEST(RunNotes, AStretchGivesItsLengthAndWhatTheArmourIsFor) {
    const Note serving = stretch_note(stretch(true, "core and armour", true));
    ASSERT_EQ(serving.figures.size(), 1u);
    EXPECT_EQ(serving.figures[0].value, "12 m");
    EXPECT_TRUE(note_says(serving, "armour (dashed): protective conductor"));
    EXPECT_TRUE(note_says(stretch_note(stretch(true, "core", false)), "covering only"));
    EXPECT_FALSE(note_says(stretch_note(stretch(false, "core", false)), "armour"));
}

}  // namespace
}  // namespace toft::diagram
