#include "picture/outbuilding.h"

#include "picture/looking.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

Sketch outbuilding_of(const site::Job& job, const answer::SchemeAnswer* scheme) {
    Sketch sketch;
    const Stage stage = set_stage(job, scheme);
    draw_outbuilding_shell(stage, sketch);
    draw_outbuilding_fittings(stage, sketch);
    for (const drawing::Callout& callout : sketch.callouts) {
        for (const drawing::Spans& line : callout.lines) sketch.put(drawing::Text{{}, line, {}});
    }
    return sketch;
}

TEST(Outbuilding, HasARodOnlyWithItsOwnElectrode) {
    int own = 0;
    int shared = 0;
    for (const char* name : {"demo", "tt-shed", "steel-container"}) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            const Sketch sketch = outbuilding_of(one.job, &scheme);
            const int rods = scheme.building.electrode ? scheme.building.electrode->rods : 0;
            (rods > 0 ? own : shared) += 1;
            EXPECT_EQ(count_kind(sketch.items, "rod"), rods) << scheme.key;
            EXPECT_EQ(says(sketch.items, "own electrode"), rods > 0) << scheme.key;
        }
    }
    EXPECT_GT(own, 0);
    EXPECT_GT(shared, 0);
}

TEST(Outbuilding, BondsAreThoseOfTheScheme) {
    for (const std::string& name : support::example_names()) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            EXPECT_EQ(count_kind(outbuilding_of(one.job, &scheme).items, "bond"),
                      static_cast<int>(scheme.building.bonding.size()))
                << name << " " << scheme.key;
        }
    }
}

TEST(Outbuilding, TheBoardNamesItsRcdAndCircuits) {
    const Example& one = example("demo");
    const Sketch sketch = outbuilding_of(one.job, &one.answer.schemes.front());
    for (const char* words :
         {"Potter's studio: board", "double-pole", "30 mA RCD type A", "Sockets"}) {
        EXPECT_TRUE(says(sketch.items, words)) << words;
    }
}

TEST(Outbuilding, APredictedElectrodeIsNotPassedOffAsMeasured) {
    const Example& one = example("steel-container");
    const answer::SchemeAnswer* scheme = scheme_where(one, has_electrode);
    ASSERT_TRUE(scheme);
    answer::SchemeAnswer measured = *scheme;
    EXPECT_TRUE(says(outbuilding_of(one.job, scheme).items, "predicted"));
    measured.building.electrode->measured = true;
    const Sketch sketch = outbuilding_of(one.job, &measured);
    EXPECT_FALSE(says(sketch.items, "predicted"));
    EXPECT_TRUE(says(sketch.items, "measured"));
}

TEST(Outbuilding, WhatIsNotKnownOfItIsSaid) {
    site::Job job = example("steel-container").job;
    job.buildings[1].stands_in_ground = site::Answer::unknown;
    EXPECT_TRUE(says(outbuilding_of(job, nullptr).items, "in the ground?"));
    job.buildings[1].stands_in_ground = site::Answer::yes;
    EXPECT_FALSE(says(outbuilding_of(job, nullptr).items, "in the ground?"));
    job.buildings[1].construction.reset();
    EXPECT_TRUE(says(outbuilding_of(job, nullptr).items, "construction not known"));
}

}  // namespace
}  // namespace toft::picture
