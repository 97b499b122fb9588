// What a cable that is there brings: never dearer to keep than to replace, no better for a worse
// reading, out when it is damaged, on condition when nobody looked.

#include "search/search.h"

#include "support/catalogue.h"
#include "support/existing.h"
#include "support/questions.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

namespace toft::search {
namespace {

using study::Laid;

Result found_all(const site::Job& job) {
    Options options;
    options.all = true;
    return search(support::catalogue(), support::demo_book(), job, 0, options);
}

site::Job lies_there(int cores, double mm2) {
    site::Job job = support::plain_job();
    job.runs[0].legs[0].surface = site::Surface::lawn;
    return support::with_cable_there(std::move(job), support::cable(cores, mm2));
}

bool any_of_kind(const Result& found, Laid laid, bool conditional) {
    return std::any_of(found.contenders.begin(), found.contenders.end(), [&](const Contender& c) {
        return c.scheme.first().laid == laid && c.conditional() == conditional;
    });
}

/// The cheapest sound scheme of that kind, or a large sum.
double cheapest_of_kind(const Result& found, Laid laid) {
    double least = 1e9;
    for (const Contender& c : found.contenders) {
        if (c.scheme.first().laid == laid && !c.conditional()) least = std::min(least, c.total);
    }
    return least;
}

TEST(Keeping, ASoundCableOfTheRightSizeComesFirst) {
    const Result found = found_all(lies_there(2, 10));
    ASSERT_TRUE(found.any_sound());
    const Contender& first = found.contenders.front();
    EXPECT_EQ(first.scheme.first().laid, Laid::kept);
    EXPECT_EQ(first.price.run.number(), 0);
    EXPECT_EQ(first.price.ground.number(), 0);
    EXPECT_TRUE(any_of_kind(found, Laid::anew, false));
}

TEST(Keeping, TheDeviceThatFeedsItMayStayForNothing) {
    site::Job job = support::fed_from_a_way(lies_there(2, 10), 32);
    job.intake.board.spare_ways = support::measured(0.0);
    job.intake.board.max_device = support::measured(amperes(63));
    const Result found = found_all(job);
    ASSERT_TRUE(found.any_sound());
    EXPECT_TRUE(found.contenders.front().scheme.head_stays);
    EXPECT_EQ(found.contenders.front().price.house_end.number(), 0);
}

TEST(Keeping, ADamagedCableIsOutAndOneThatNobodySawHangsOnIt) {
    site::Job job = lies_there(2, 10);
    job.runs[0].existing->condition = site::Condition::damaged;
    const Result out = found_all(job);
    for (const bool conditional : {false, true}) {
        EXPECT_FALSE(any_of_kind(out, Laid::kept, conditional));
        EXPECT_FALSE(any_of_kind(out, Laid::doubled, conditional));
    }
    for (const auto seen : {std::optional<site::Condition>{},
                            std::optional<site::Condition>{site::Condition::not_seen}}) {
        job.runs[0].existing->condition = seen;
        const Result open = found_all(job);
        EXPECT_FALSE(any_of_kind(open, Laid::kept, false));
        ASSERT_TRUE(any_of_kind(open, Laid::kept, true));
        for (const Contender& c : open.contenders) {
            if (c.scheme.first().laid == Laid::anew) continue;
            EXPECT_EQ(c.conditional_on, (std::vector<std::string>{"/runs/0/existing/condition"}));
        }
    }
}

TEST(Keeping, WhatWasNotReadIsAskedFor) {
    site::Job job = lies_there(2, 10);
    job.runs[0].existing->insulation = {};
    job.runs[0].existing->r1_r2 = {};
    const Result found = found_all(job);
    EXPECT_FALSE(any_of_kind(found, Laid::kept, false));
    const std::vector<std::string> both{"/runs/0/existing/insulation_megohm",
                                        "/runs/0/existing/r1_r2_ohm"};
    bool asked = false;
    for (const Contender& c : found.contenders) asked = asked || c.conditional_on == both;
    EXPECT_TRUE(asked);
}

TEST(Keeping, ASeparateBondMayBeAddedBesideWhatStays) {
    site::Job job = lies_there(2, 10);
    site::Metalwork pipe;
    pipe.what = site::Metal::water_pipe;
    pipe.insulating_section = site::Answer::no;
    pipe.bonded_at_house = site::Answer::no;
    job.buildings[1].metalwork = {pipe};
    const Result found = found_all(job);
    const auto bond =
        std::find_if(found.contenders.begin(), found.contenders.end(), [](const Contender& c) {
            return c.scheme.first().laid == Laid::kept && c.scheme.first().separate &&
                   c.scheme.earthing == study::BuildingEarthing::supply_earth && !c.conditional();
        });
    ASSERT_NE(bond, found.contenders.end());
    EXPECT_GE(bond->scheme.first().separate->section, square_millimetres(10));
    EXPECT_NEAR(bond->price.ground.number(), 30 * (19 + 4.20), 1e-9);  // it is dug for
}

RC_GTEST_PROP(Keeping, IsNeverDearerThanReplacingByTheSame, ()) {
    const int cores = *rc::gen::element(2, 3);
    const double mm2 = *rc::gen::element(4.0, 6.0, 10.0, 16.0, 25.0);
    site::Job job = lies_there(cores, mm2);
    job.runs[0].legs[0].length = support::measured(metres(*rc::gen::inRange(5, 60)));
    job = support::with_cable_there(std::move(job), support::cable(cores, mm2));
    const Result found = found_all(job);
    RC_PRE(found.any_sound());
    for (const Contender& c : found.contenders) {
        const study::Stretch& laid = c.scheme.first();
        if (laid.laid != Laid::anew || laid.cable != &support::cable(cores, mm2)) continue;
        if (laid.parallel > 1 || c.conditional()) continue;
        RC_ASSERT(cheapest_of_kind(found, Laid::kept) <= c.total);
    }
}

RC_GTEST_PROP(Keeping, AWorseReadingNeverHelps, ()) {
    const double mm2 = *rc::gen::element(4.0, 6.0, 10.0);
    site::Job job = lies_there(*rc::gen::element(2, 3), mm2);
    site::Existing& e = *job.runs[0].existing;
    e.through = site::ReadThrough::armour;
    const double low = *rc::gen::inRange(80, 160) / 100.0;
    const double more = *rc::gen::inRange(0, 60) / 100.0;
    const Ohms fit = e.r1_r2.low;
    const int which = *rc::gen::inRange(0, 4);
    const auto read = [&](double times) {
        if (which == 0) e.r1_r2 = support::measured(fit * times);
        if (which == 1) e.r1_rn = support::measured(fit * times);
        if (which == 2) e.armour = support::measured(fit * (times / 2));
        if (which == 3) e.insulation = support::measured(ohms(2e6 / times));
        return found_all(job);
    };
    const Result before = read(low);
    const Result after = read(low + more);
    for (const Laid laid : {Laid::kept, Laid::doubled}) {
        RC_ASSERT(cheapest_of_kind(before, laid) <= cheapest_of_kind(after, laid));
    }
    RC_ASSERT(cheapest_of_kind(before, Laid::anew) == cheapest_of_kind(after, Laid::anew));
}

}  // namespace
}  // namespace toft::search
