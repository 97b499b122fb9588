#include "picture/route.h"

#include "picture/looking.h"
#include "picture/run_way.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

TEST(Route, TheCableFollowsTheLegsToScale) {
    const Example& one = example("demo");
    const Stage stage = set_stage(one.job, nullptr);
    const std::vector<drawing::Point> way = cable_way(stage);
    for (std::size_t i = 0; i < stage.route.legs.size(); ++i) {
        const double metres_long = one.job.runs[0].legs[i].length.high.number();
        EXPECT_NEAR(stage.route.legs[i].width(), metres_long * stage.route.units_per_metre, 1e-6);
    }
    for (std::size_t i = 1; i < way.size(); ++i) {
        EXPECT_GE(way[i].x, way[i - 1].x - 1e-9);
        EXPECT_TRUE(way[i].x == way[i - 1].x || way[i].y == way[i - 1].y);
    }
}

TEST(Route, ABuriedLegLiesAtItsDepth) {
    const Stage stage = set_stage(example("demo").job, nullptr);
    const double depth = stage.job->runs[0].legs[1].depth.high.number();
    const double level = stage.ground + depth * stage.units_per_metre_deep;
    bool found = false;
    for (const drawing::Point p : cable_way(stage)) {
        found = found || (p.y == level && p.x == stage.route.legs[1].left);
        EXPECT_LE(p.y, level + 1e-9);
    }
    EXPECT_TRUE(found);
}

TEST(Route, ASeparateConductorIsDrawnOnlyWhereThereIsOne) {
    const Example& one = example("demo");
    int with = 0;
    for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
        Sketch sketch;
        draw_route(set_stage(one.job, &scheme), sketch);
        const int expected = scheme.run.separate_mm2 ? 1 : 0;
        with += expected;
        EXPECT_EQ(count_kind(sketch.items, "separate-conductor"), expected);
        EXPECT_EQ(count_kind(sketch.items, "cable"), 1);
    }
    EXPECT_GT(with, 0);
}

/// How many callouts begin with `words`.
int notes(const Sketch& sketch, const std::string& words) {
    int count = 0;
    for (const drawing::Callout& callout : sketch.callouts) {
        std::string head;
        for (const drawing::Span& span : callout.lines.front()) head += span.text;
        count += head == words;
    }
    return count;
}

TEST(Route, EachStretchIsDrawnAndNamedWithABoxBetween) {
    const Example& one = example("hidden-flat-cable");
    const answer::SchemeAnswer& scheme = one.answer.schemes[0];
    ASSERT_EQ(scheme.run.stretches.size(), 3u);
    Sketch sketch;
    draw_route(set_stage(one.job, &scheme), sketch);
    EXPECT_EQ(count_kind(sketch.items, "cable"), 3);
    EXPECT_EQ(count_kind(sketch.items, "cable-armoured"), 1);
    EXPECT_EQ(count_kind(sketch.items, "cable-unarmoured"), 2);
    EXPECT_EQ(count_kind(sketch.items, "joint-box"), 2);
    EXPECT_EQ(notes(sketch, "6 mm²"), 2);
    EXPECT_EQ(notes(sketch, "2-core 2.5 mm²"), 1);
    EXPECT_EQ(notes(sketch, "joint box"), 2);
}

TEST(Route, APairIsTwoLines) {
    const Example& one = example("aluminium-pair-mill");
    answer::SchemeAnswer scheme = one.answer.schemes[0];
    ASSERT_EQ(scheme.run.stretches[0].parallel, 2);
    Sketch pair;
    draw_route(set_stage(one.job, &scheme), pair);
    scheme.run.stretches[0].parallel = 1;
    Sketch single;
    draw_route(set_stage(one.job, &scheme), single);
    EXPECT_EQ(find_kind(pair.items, "cable")->items.size(),
              2 * find_kind(single.items, "cable")->items.size());
}

TEST(Route, ABreakIsMarkedOnEachBrokenLeg) {
    using site::LegMethod;
    const site::Job job =
        support::job_with_legs({support::plain_leg(LegMethod::clipped, 1),
                                support::plain_leg(LegMethod::buried_direct, 900)});
    Sketch sketch;
    draw_route(set_stage(job, nullptr), sketch);
    EXPECT_EQ(count_kind(sketch.items, "break"), 1);
    Sketch short_run;
    draw_route(set_stage(example("demo").job, nullptr), short_run);
    EXPECT_EQ(count_kind(short_run.items, "break"), 0);
}

TEST(Route, WithoutASchemeTheRunIsOnlyALineOfDashes) {
    Sketch sketch;
    draw_route(set_stage(example("demo").job, nullptr), sketch);
    EXPECT_EQ(count_kind(sketch.items, "cable"), 0);
}

TEST(Route, LegsSayWhatTheyAre) {
    site::Leg leg = support::plain_leg(site::LegMethod::buried_in_duct);
    leg.surface = site::Surface::drive;
    EXPECT_EQ(leg_words(leg), "buried in duct under drive");
    leg.depth = {};
    EXPECT_NE(leg_words(leg).find("depth not known"), std::string::npos);
    EXPECT_EQ(leg_words(support::plain_leg(site::LegMethod::tray)), "tray");
    site::Leg hung = support::plain_leg(site::LegMethod::overhead);
    hung.surface = site::Surface::lawn;
    EXPECT_EQ(leg_words(hung), "overhead over lawn, 6 m high");
    hung.height = {};
    EXPECT_EQ(leg_words(hung), "overhead over lawn, height not known");
}

TEST(Route, GroundIsKeptClearOfWords) {
    Sketch sketch;
    const Stage stage = set_stage(example("demo").job, nullptr);
    draw_ground(stage, sketch);
    ASSERT_EQ(sketch.taken.size(), 1u);
    EXPECT_TRUE(sketch.taken[0].top < stage.ground && sketch.taken[0].bottom > stage.ground);
}

}  // namespace
}  // namespace toft::picture
