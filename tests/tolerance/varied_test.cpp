#include "tolerance/varied.h"

#include "varying.h"

#include <gtest/gtest.h>

namespace toft::tolerance {
namespace {

const Varied* named(const std::vector<Varied>& all, const std::string& pointer) {
    for (const Varied& v : all) {
        if (v.pointer == pointer) return &v;
    }
    return nullptr;
}

TEST(Varied, AStatedRangeVariesAsStated) {
    site::Job job = support::plain_job();
    job.ground.temperature = support::between(celsius(8), celsius(18));
    job.ground.temperature.spread = site::Spread::bell;
    const auto all = varied_in(place_of(job), stated_only());
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(all[0].pointer, "/ground/temperature_c");
    EXPECT_EQ(all[0].low, 8);
    EXPECT_EQ(all[0].likely, 13);
    EXPECT_EQ(all[0].high, 18);
    EXPECT_EQ(all[0].spread, site::Spread::bell);
    EXPECT_EQ(all[0].word, Word::survey);
}

TEST(Varied, AReadingHasTheToleranceOfItsInstrument) {
    const site::Job job = support::plain_job();
    const auto all = varied_in(place_of(job), {});
    const Varied* ze = named(all, "/intake/ze_ohm");
    ASSERT_NE(ze, nullptr);
    const auto* row = tables::find_tolerance(support::catalogue().tolerances, "ze", "measured");
    ASSERT_NE(row, nullptr);
    EXPECT_NEAR(ze->low, 0.2 * (1 - row->per_cent / 100), 1e-12);
    EXPECT_NEAR(ze->high, 0.2 * (1 + row->per_cent / 100), 1e-12);
    EXPECT_EQ(ze->citation, row->citation);
    EXPECT_EQ(ze->word, Word::tables);
}

TEST(Varied, APacedLengthIsWorseThanATapedOne) {
    site::Job job = support::plain_job();
    const auto taped = varied_in(place_of(job), {});
    job.runs[0].legs[0].length.standing = site::Standing::assumed;
    const auto paced = varied_in(place_of(job), {});
    const char* length = "/runs/0/legs/0/length_m";
    EXPECT_GT(named(paced, length)->high, named(taped, length)->high);
}

TEST(Varied, WhatIsAskedForComesBeforeTheUsualTolerance) {
    const site::Job job = support::plain_job();
    Wish wish = stated_only();
    wish.length = 10;
    wish.load = 20;
    wish.temperature = 5;
    const auto all = varied_in(place_of(job), wish);
    const Varied* length = named(all, "/runs/0/legs/0/length_m");
    ASSERT_NE(length, nullptr);
    EXPECT_DOUBLE_EQ(length->low, 27);
    EXPECT_DOUBLE_EQ(length->high, 33);
    EXPECT_EQ(length->word, Word::asked);
    ASSERT_NE(named(all, "/buildings/1"), nullptr);
    EXPECT_DOUBLE_EQ(named(all, "/buildings/1")->high, 1.2);
    EXPECT_DOUBLE_EQ(named(all, "/ground/temperature_c")->high, 20);
    EXPECT_EQ(named(all, "/intake/ze_ohm"), nullptr);
}

TEST(Varied, ADeclaredMaximumStaysOne) {
    site::Job job = support::plain_job();
    job.intake.ze.standing = site::Standing::declared;
    EXPECT_EQ(named(varied_in(place_of(job), {}), "/intake/ze_ohm"), nullptr);
}

TEST(Varied, WhatNobodyGaveVariesOnlyWhenAsked) {
    site::Job job = support::plain_job();
    job.ground.thermal_resistivity = {};
    const char* soil = "/ground/thermal_resistivity_k_m_per_w";
    EXPECT_EQ(named(varied_in(place_of(job), {}), soil), nullptr);
    Wish open;
    open.open = true;
    const auto all = varied_in(place_of(job), open);
    const Varied* varied = named(all, soil);
    ASSERT_NE(varied, nullptr);
    const auto* range = tables::find_open_range(support::catalogue(), "thermal_resistivity");
    EXPECT_EQ(varied->low, range->low.value);
    EXPECT_EQ(varied->high, range->high.value);
    EXPECT_EQ(varied->word, Word::rulebook);
}

TEST(Varied, JobsHaveTheFiguresAtTheirValuesOrOverTheirRanges) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].length = support::between(metres(20), metres(50));
    const auto all = varied_in(place_of(job), stated_only());
    ASSERT_EQ(all.size(), 1u);
    EXPECT_EQ(job_at(job, all, {33}).runs[0].legs[0].length.low, metres(33));
    EXPECT_EQ(job_at(job, all, {33}).runs[0].legs[0].length.high, metres(33));
    EXPECT_EQ(job_over(job, all), job);
}

TEST(Varied, EachWordIsSaid) {
    EXPECT_STREQ(word_of(Word::survey), "survey");
    EXPECT_STREQ(word_of(Word::tables), "usual tolerance");
    EXPECT_STREQ(word_of(Word::asked), "as asked");
    EXPECT_STREQ(word_of(Word::rulebook), "rulebook's range");
}

}  // namespace
}  // namespace toft::tolerance
