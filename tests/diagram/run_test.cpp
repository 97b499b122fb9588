#include "diagram/run.h"

#include "diagram/sheet.h"
#include "diagram/wording.h"

#include <gtest/gtest.h>

namespace toft::diagram {
namespace {

drawing::Items drawn_run(const RunLine& run, const answer::SchemeAnswer& scheme = {}) {
    return drawn([&](Ladder& ladder) { draw_run(run, scheme, ladder); });
}

RunLine armoured_run() {
    Stretch s{"armoured XLPE copper", 3, 10, 10.0, {}, 30, {"30 m clipped"}};
    s.core_list = {{"brown", "", "line"},
                   {"grey", "blue", "neutral"},
                   {"black", "green-yellow", "protective"}};
    return {{s}, "core and armour", true, true, std::nullopt};
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
    each_scheme([&](const Example& one, const answer::SchemeAnswer& scheme) {
        const RunLine run = run_line(picture::set_stage(one.job, &scheme));
        const drawing::Items items = drawn_run(run, scheme);
        const int earthed = run.armour_near + run.armour_far;
        EXPECT_EQ(count_kind(items, "armour-earthed"), earthed);
        EXPECT_EQ(count_kind(items, "armour-insulated"), 2 - earthed);
        EXPECT_EQ(count_kind(items, "gland"), 2);
        EXPECT_EQ(count_kind(items, "core-earthed"), run.core_serves() ? 2 : 0);
        EXPECT_EQ(says(items, "armour insulated here: joined to nothing"), earthed < 2);
        insulated += earthed < 2;
    });
    EXPECT_GT(insulated, 0);
}

TEST(Run, AnInsulatedEndHasNoWireToEarth) {
    RunLine run = armoured_run();
    run.protective = "armour";
    const int both = count_kind(drawn_run(run), "protective");
    run.armour_far = false;
    EXPECT_EQ(count_kind(drawn_run(run), "protective"), both - 1);
    EXPECT_FALSE(brings_earth(run));
}

TEST(Run, ASeparateConductorRunsBesideTheWholeCable) {
    RunLine run = armoured_run();
    run.protective = "separate conductor";
    run.armour_far = false;
    EXPECT_FALSE(brings_earth(run));
    const double without = protective_height(drawn_run(run));
    run.separate_mm2 = 16;
    const drawing::Items items = drawn_run(run);
    EXPECT_TRUE(brings_earth(run));
    EXPECT_GT(protective_height(items), without + 100);
    EXPECT_TRUE(says(items, "protective conductor 16 mm² copper"));
}

TEST(Run, StrokesCountTheCores) {
    RunLine run = armoured_run();
    EXPECT_EQ(count_kind(drawn_run(run), "stroke"), 3);
    auto& cores = run.stretches[0].core_list;
    cores = {{"brown", "", "line 1"},
             {"black", "", "line 2"},
             {"grey", "", "line 3"},
             {"blue", "", "neutral"}};
    const drawing::Items items = drawn_run(run);
    EXPECT_EQ(count_kind(items, "stroke"), 4);
    EXPECT_EQ(count_kind(items, "stroke-line"), 3);
}

TEST(Run, EachChangeOfCableIsABox) {
    RunLine run = armoured_run();
    EXPECT_EQ(count_kind(drawn_run(run), "joint-box"), 0);
    run.stretches.push_back(run.stretches[0]);
    run.stretches[1].live_mm2 = 16;
    run.stretches.push_back(run.stretches[0]);
    const drawing::Items items = drawn_run(run);
    EXPECT_EQ(count_kind(items, "joint-box"), 2);
    EXPECT_EQ(count_kind(items, "armour"), 3 + 2) << "each stretch and the two ends";
    EXPECT_EQ(count_kind(items, "gland"), 2);
    EXPECT_TRUE(says(items, "10 mm² joined to 16 mm²"));
    EXPECT_EQ(picture::clashes(items, {0, 0, paper_wide, 9999}), "");
}

TEST(Run, ACableWithoutArmourHasNoneAndNoGland) {
    RunLine run = armoured_run();
    run.stretches[0].family = "unarmoured";
    run.protective = "core";
    const drawing::Items items = drawn_run(run);
    for (const char* kind : {"armour", "gland", "armour-earthed", "armour-insulated"}) {
        EXPECT_EQ(count_kind(items, kind), 0) << kind;
    }
    EXPECT_EQ(count_kind(items, "core-earthed"), 2);
}

}  // namespace
}  // namespace toft::diagram
