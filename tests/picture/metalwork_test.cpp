#include "picture/metalwork.h"

#include "picture/looking.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

namespace toft::picture {
namespace {

Sketch metalwork_of(const site::Job& job, const answer::SchemeAnswer* scheme) {
    Sketch sketch;
    draw_metalwork(set_stage(job, scheme), {1200, 400}, 1240, sketch);
    for (const drawing::Callout& callout : sketch.callouts) {
        for (const drawing::Spans& line : callout.lines) sketch.put(drawing::Text{{}, line, {}});
    }
    return sketch;
}

site::Job job_with(std::vector<site::Metalwork> metalwork) {
    site::Job job = support::plain_job();
    job.buildings[1].metalwork = std::move(metalwork);
    return job;
}

answer::SchemeAnswer with_bonds(std::size_t count) {
    answer::SchemeAnswer scheme;
    scheme.building.bonding.assign(count, {"water pipe", 6, 10});
    return scheme;
}

site::Metalwork water_pipe() {
    site::Metalwork metal;
    metal.what = site::Metal::water_pipe;
    metal.material = "copper";
    return metal;
}

TEST(Metalwork, ABondIsDrawnOnlyWhereTheSchemeAsksForOne) {
    const site::Job job = job_with({water_pipe()});
    const answer::SchemeAnswer bonded = with_bonds(1);
    const Sketch with = metalwork_of(job, &bonded);
    EXPECT_EQ(count_kind(with.items, "bond"), 1);
    EXPECT_TRUE(says(with.items, "bond 10 mm² copper"));
    const answer::SchemeAnswer none = with_bonds(0);
    const Sketch without = metalwork_of(job, &none);
    EXPECT_EQ(count_kind(without.items, "bond"), 0);
    EXPECT_EQ(count_kind(without.items, "metal"), 1);
    EXPECT_TRUE(says(without.items, "no bond asked for"));
}

TEST(Metalwork, WithoutASchemeNothingIsSaidOfBonds) {
    const Sketch sketch = metalwork_of(job_with({water_pipe()}), nullptr);
    EXPECT_FALSE(says(sketch.items, "bond"));
    EXPECT_TRUE(says(sketch.items, "water pipe"));
}

TEST(Metalwork, SaysWhereItComesFromAndWhatInterruptsIt) {
    site::Metalwork metal = water_pipe();
    metal.comes_from = site::ComesFrom::house;
    metal.insulating_section = site::Answer::yes;
    const Sketch sketch = metalwork_of(job_with({metal}), nullptr);
    EXPECT_TRUE(says(sketch.items, "copper, from the house"));
    EXPECT_TRUE(says(sketch.items, "insulating section"));
    metal.comes_from = site::ComesFrom::other_building;
    EXPECT_TRUE(says(metalwork_of(job_with({metal}), nullptr).items, "from another building"));
}

TEST(Metalwork, ABondThatIsNotDrawnIsStillTold) {
    const std::vector<site::Metalwork> many(12, water_pipe());
    const answer::SchemeAnswer scheme = with_bonds(12);
    const Sketch sketch = metalwork_of(job_with(many), &scheme);
    EXPECT_EQ(count_kind(sketch.items, "bond"), static_cast<int>(most_parts));
    EXPECT_TRUE(says(sketch.items, "8 more parts not drawn"));
    EXPECT_TRUE(says(sketch.items, "water pipe: bond 10 mm²"));
    EXPECT_TRUE(says(sketch.items, "and others: see the"));
}

TEST(Metalwork, WhatNobodyLookedForIsDrawnAsAQuestion) {
    const answer::SchemeAnswer scheme = with_bonds(1);
    const Sketch sketch = metalwork_of(job_with({}), &scheme);
    EXPECT_EQ(count_kind(sketch.items, "not-surveyed"), 1);
    EXPECT_EQ(count_kind(sketch.items, "bond"), 1);
    EXPECT_TRUE(says(sketch.items, "?"));
}

}  // namespace
}  // namespace toft::picture
