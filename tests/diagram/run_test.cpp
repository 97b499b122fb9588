#include "diagram/run.h"

#include "diagram/sheet.h"
#include "diagram/wording.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

drawing::Items drawn_run(const RunLine& run, const answer::SchemeAnswer& scheme = {}) {
    return drawn([&](Ladder& ladder) { draw_run(run, scheme, ladder); });
}

Stretch armoured_stretch() {
    Stretch s;
    s.cable.family = "armoured XLPE copper";
    s.cable.cores = 3;
    s.cable.live_mm2 = 10;
    s.cable.core_list = {{"brown", "", "line"},
                         {"grey", "blue", "neutral"},
                         {"black", "green-yellow", "protective"}};
    s.cable.protective_conductor = "core and armour";
    s.cable.armour_far = true;
    s.cable.length_m = 30;
    s.legs = {"30 m clipped"};
    return s;
}

Stretch flat_stretch() {
    Stretch s = armoured_stretch();
    s.cable.family = "flat twin and earth";
    s.cable.cores = 2;
    s.cable.cpc_mm2 = 4;
    s.cable.protective_conductor = "core";
    s.cable.armoured = s.cable.armour_near = s.cable.armour_far = false;
    return s;
}

/// Height of the sheet over which some protective conductor runs in its own column.
double protective_height(const drawing::Items& items) {
    const double x = columns_for(paper_wide).earth;
    double height = 0;
    for (const Polyline& line : all_of<Polyline>(items)) {
        if (line.points.size() != 2 || line.style.dash.empty()) continue;
        if (line.points[0].x != x || line.points[1].x != x) continue;
        height += line.points[1].y - line.points[0].y;
    }
    return height;
}

TEST(Run, ArmourIsEarthedOrInsulatedAsTheSchemeSays) {
    int insulated = 0;
    int unarmoured = 0;
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const drawing::Items items =
            drawn_run(run_line(picture::set_stage(one.job, &scheme)), scheme);
        int ends = 0;
        int earthed = 0;
        int glands = 0;
        for (const answer::StretchAnswer& s : scheme.run.stretches) {
            ends += s.armoured ? 2 : 0;
            glands += s.armoured ? 2 * s.parallel : 0;
            earthed += s.armoured ? s.armour_near + s.armour_far : 0;
            unarmoured += !s.armoured;
        }
        EXPECT_EQ(count_kind(items, "armour-earthed"), earthed);
        EXPECT_EQ(count_kind(items, "armour-insulated"), ends - earthed);
        EXPECT_EQ(count_kind(items, "gland"), glands);
        EXPECT_EQ(count_kind(items, "joint-box"),
                  static_cast<int>(scheme.run.stretches.size()) - 1);
        insulated += earthed < ends;
    });
    EXPECT_GT(insulated, 0);
    EXPECT_GT(unarmoured, 0);
}

TEST(Run, NoWordsCoverOthersAtAnyWidth) {
    for (const std::string& name : picture::drawn_job_names()) {
        const Example& one = example(name);
        ASSERT_FALSE(one.answer.schemes.empty()) << name;
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            const RunLine run = run_line(picture::set_stage(one.job, &scheme));
            for (const double width : {360.0, paper_wide}) {
                const drawing::Items items =
                    drawn([&](Ladder& ladder) { draw_run(run, scheme, ladder); }, width);
                EXPECT_EQ(picture::clashes(items, {0, 0, width, 9999}), "") << name;
            }
        }
    }
}

TEST(Run, AnInsulatedEndHasNoWireToEarth) {
    RunLine run{{armoured_stretch()}};
    run.stretches[0].cable.protective_conductor = "armour";
    const int both = count_kind(drawn_run(run), "protective");
    run.stretches[0].cable.armour_far = false;
    const drawing::Items items = drawn_run(run);
    EXPECT_EQ(count_kind(items, "protective"), both - 1);
    EXPECT_TRUE(says(items, "armour insulated here: joined to nothing"));
}

TEST(Run, ACoreThatEndsAtTheOutbuildingsOwnEarthIsJoinedToNothing) {
    RunLine run{{flat_stretch()}};
    EXPECT_EQ(count_kind(drawn_run(run), "core-earthed"), 2);
    run.earth_stops = true;
    const drawing::Items items = drawn_run(run);
    EXPECT_EQ(count_kind(items, "core-earthed"), 1);
    EXPECT_TRUE(says(items, "protective core insulated here: joined to nothing"));
}

TEST(Run, ASeparateConductorRunsBesideItsStretchAlone) {
    RunLine run{{armoured_stretch(), armoured_stretch()}};
    const double without = protective_height(drawn_run(run));
    run.stretches[1].cable.separate_mm2 = 16;
    const double half = protective_height(drawn_run(run));
    run.stretches[0].cable.separate_mm2 = 16;
    const double whole = protective_height(drawn_run(run));
    EXPECT_GT(half, without + 100);
    EXPECT_GT(whole, half + 100);
    EXPECT_TRUE(says(drawn_run(run), "protective conductor 16 mm² copper"));
}

TEST(Run, StrokesCountTheCoresOfEachCable) {
    RunLine run{{armoured_stretch()}};
    EXPECT_EQ(count_kind(drawn_run(run), "stroke"), 3);
    run.stretches[0].cable.core_list = {{"brown", "", "line 1"},
                                        {"black", "", "line 2"},
                                        {"grey", "", "line 3"},
                                        {"blue", "", "neutral"}};
    EXPECT_EQ(count_kind(drawn_run(run), "stroke"), 4);
    EXPECT_EQ(count_kind(drawn_run(run), "stroke-line"), 3);
    run.stretches[0].cable.parallel = 2;
    const drawing::Items pair = drawn_run(run);
    EXPECT_EQ(count_kind(pair, "stroke-line"), 6);
    EXPECT_EQ(count_kind(pair, "gland"), 4);
    EXPECT_EQ(count_kind(pair, "pair"), 2) << "spread at one end, joined at the other";
    EXPECT_EQ(count_kind(pair, "armour-earthed"), 2);
    EXPECT_TRUE(says(pair, "two 3-core 10 mm²"));
}

TEST(Run, WhereTheCableChangesProtectiveConductorsAreJoinedInTheBox) {
    RunLine run{{flat_stretch(), armoured_stretch(), flat_stretch()}};
    run.stretches[1].cable.protective_conductor = "armour";
    const drawing::Items items = drawn_run(run);
    EXPECT_EQ(count_kind(items, "joint-box"), 2);
    EXPECT_EQ(count_kind(items, "gland"), 2);
    EXPECT_EQ(count_kind(items, "core-earthed"), 4) << "both ends and both boxes";
    EXPECT_TRUE(says(items, "protective conductors joined: core to armour"));
    EXPECT_TRUE(says(items, "protective conductors joined: armour to core"));
    EXPECT_TRUE(says(items, "earth core 4 mm²"));
    EXPECT_EQ(picture::clashes(items, {0, 0, paper_wide, 9999}), "");
}

TEST(Run, AluminiumIsSaid) {
    RunLine run{{armoured_stretch()}};
    EXPECT_FALSE(says(drawn_run(run), "aluminium"));
    run.stretches[0].cable.family = "armoured XLPE aluminium";
    EXPECT_TRUE(says(drawn_run(run), "aluminium: glands and lugs made for it"));
}

}  // namespace
}  // namespace toft::diagram
