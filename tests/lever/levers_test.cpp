// Levers against the public entry: what is said to save does when the changed job is designed, and
// nothing that the survey allows is left out.

#include "lever/levers.h"

#include "lever/ideas.h"
#include "site/validate.h"
#include "solve/solve.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/random_jobs.h"
#include "support/trees.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace toft::lever {
namespace {

using support::measured;

const solve::Means& means() {
    static const solve::Means all{support::catalogue(), support::demo_book()};
    return all;
}

site::Job with_pipe() {
    site::Job job = support::plain_job();
    job.buildings[1].load = measured(amperes(10));
    site::Metalwork pipe;
    pipe.what = site::Metal::water_pipe;
    pipe.insulating_section = site::Answer::no;
    pipe.bonded_at_house = site::Answer::yes;
    job.buildings[1].metalwork = {pipe};
    return job;
}

const Lever* lever_of(const Weighed& all, const std::string& key) {
    for (const Lever& lever : all.levers) {
        if (lever.key == key) return &lever;
    }
    return nullptr;
}

TEST(Levers, APlasticSectionSparesTheThickConductor) {
    const Weighed all = weigh(means(), with_pipe());
    const Lever* section = lever_of(all, "plastic-section");
    ASSERT_NE(section, nullptr);
    EXPECT_EQ(section->words, "fit a plastic section where the water pipe enters");
    EXPECT_EQ(section->costs, Cost::of_the_book);
    EXPECT_NEAR(*section->cost, support::demo_book().amount(price::Item::plastic_section) * 1.2,
                1e-9);
    EXPECT_GT(*section->net(), 0);
}

TEST(Levers, AJobThatNothingHelpsHasNone) {
    site::Job job = support::plain_job();
    job.buildings[1].load = measured(amperes(6));
    job.intake.board.spare_ways = measured(4.0);
    const Weighed all = weigh(means(), job);
    EXPECT_TRUE(all.levers.empty());
    EXPECT_GT(all.tried, 0u);
}

TEST(Levers, WhatIsNotPricedIsNeverCountedAsFree) {
    site::Job job = support::plain_job();
    job.buildings[1].load = measured(amperes(10));
    job.intake.board.spare_ways = measured(0.0);
    const Weighed all = weigh(means(), job);
    const Lever* way = lever_of(all, "free-way");
    ASSERT_NE(way, nullptr);
    EXPECT_EQ(way->costs, Cost::not_priced);
    EXPECT_FALSE(way->cost.has_value());
    EXPECT_FALSE(way->net().has_value());
    EXPECT_GT(way->saves, 0);
}

TEST(Levers, MovingATapMakesACaravanPossible) {
    site::Job job = support::plain_job();
    job.buildings[1].use = site::Use::caravan_pitch;
    job.buildings[1].reach_of_house_earth = measured(metres(1));
    const Weighed all = weigh(means(), job);
    EXPECT_FALSE(all.before.sound());
    ASSERT_FALSE(all.levers.empty());
    EXPECT_EQ(all.levers.front().key, "move-tap");
    EXPECT_TRUE(all.levers.front().opens);
}

/// Design of the changed job by the program's own entry.
void expect_designed_so(const Weighed& all, const Lever& lever) {
    const answer::Answer designed = answer::design(support::question_of(lever.job));
    ASSERT_TRUE(designed.sound) << lever.words;
    EXPECT_EQ(designed.schemes.front().key, lever.after.key) << lever.words;
    EXPECT_NEAR(designed.schemes.front().price.total, lever.after.total, 1e-6) << lever.words;
    if (lever.opens) return;
    EXPECT_NEAR(all.before.total - designed.schemes.front().price.total, lever.saves, 1e-6);
}

TEST(Levers, WhatIsSaidToSaveSavesWhenTheChangedJobIsDesigned) {
    int levers = 0;
    for (unsigned seed = 1; seed <= 10; ++seed) {
        SCOPED_TRACE("seed " + std::to_string(seed));
        const site::Job job = support::all_said(support::random_job(seed));
        const Weighed all = weigh(means(), job);
        const answer::Answer before = answer::design(support::question_of(job));
        EXPECT_EQ(before.sound, all.before.sound());
        for (const Lever& lever : all.levers) expect_designed_so(all, lever);
        levers += static_cast<int>(all.levers.size());
    }
    EXPECT_GT(levers, 3);
}

/// The list told again without the room's own ranking: each change solved, kept or not by the words
/// of the tables.
std::vector<std::string> by_brute_force(const site::Job& job) {
    const tables::LeverWorth& worth = support::catalogue().levers.worth;
    const solve::Solution before = solve::solve(means(), job);
    std::vector<std::string> kept;
    for (const Change& change : all_changes({support::catalogue(), job})) {
        if (!site::validate(change.job).empty()) continue;
        const answer::Answer a = answer::design(support::question_of(change.job));
        if (!a.sound) continue;
        const auto& first = a.schemes.front();
        const auto* row = tables::find_lever(support::catalogue().levers, change.key);
        bool priced = false;
        const price::Item item = price::item_of(row->cost, priced);
        const double cost = priced ? support::demo_book().amount(item) * 1.2 : 0;
        const double brings = before.total - first.price.total - cost;
        if (!before.sound() || brings >= worth.least_saving.value) {
            kept.push_back(change.key + change.where);
            continue;
        }
        const bool better = first.headroom - before.headroom >= worth.more_headroom.value ||
                            first.dependability > before.dependability;
        if (!better || -brings > before.total * worth.small_cost.value / 100) continue;
        const solve::Solution same = solve::solve_as(means(), job, {first.scheme});
        const bool already = !change.widens && same.sound() &&
                             same.total <= first.price.total + 1e-6 &&
                             same.headroom >= first.headroom - 1e-9;
        if (!already) kept.push_back(change.key + change.where);
    }
    std::sort(kept.begin(), kept.end());
    return kept;
}

TEST(Levers, AreAllThatPayOfAllThatTheSurveyAllows) {
    for (unsigned seed = 21; seed <= 30; ++seed) {
        const site::Job job = support::all_said(support::random_job(seed));
        std::vector<std::string> said;
        const Weighed all = weigh(means(), job);
        for (const Change& change : all_changes({support::catalogue(), job})) {
            if (!site::validate(change.job).empty()) continue;
            const Lever lever = weighed(means(), job, all.before, change);
            if (worth_saying(support::catalogue().levers.worth, all.before, lever)) {
                said.push_back(change.key + change.where);
            }
        }
        std::sort(said.begin(), said.end());
        EXPECT_EQ(said.size(), all.levers.size());
        EXPECT_EQ(said, by_brute_force(job)) << "seed " << seed;
    }
}

TEST(Levers, StandByWhatTheyBring) {
    for (unsigned seed = 41; seed <= 50; ++seed) {
        const Weighed all = weigh(means(), support::random_job(seed));
        for (std::size_t i = 1; i < all.levers.size(); ++i) {
            const Lever& a = all.levers[i - 1];
            const Lever& b = all.levers[i];
            EXPECT_GE(a.opens, b.opens);
            if (a.opens || b.opens) continue;
            EXPECT_GE(a.net().has_value(), b.net().has_value());
            if (a.net().has_value() != b.net().has_value()) continue;
            EXPECT_GE(a.net().value_or(a.saves), b.net().value_or(b.saves));
        }
    }
}

/// Of several runs.
Weighed weighed_whole(const site::Job& job) {
    return weigh({support::small_shop().catalogue, support::small_shop().book}, job);
}

/// Runs under a drive, in ducts here and there; pipes that a plastic section would cut.
site::Job worth_changing(unsigned seed) {
    site::Job job = support::random_tree_job(seed);
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        site::Leg& leg = job.runs[i].legs[0];
        leg.surface = site::Surface::drive;
        if ((seed + i) % 2 == 0) leg.method = site::LegMethod::buried_in_duct;
        for (site::Metalwork& part : job.buildings[i + 1].metalwork) {
            part.what = site::Metal::water_pipe;
        }
    }
    return job;
}

double by_plain_loop(const site::Job& job) {
    const auto& shop = support::small_shop();
    study::GroundMemo memo;
    return support::brute_cheapest({shop.catalogue, shop.book, job, {}, &memo}, {}).total;
}

TEST(Levers, OfSeveralRunsSaveWhatThePlainLoopSaves) {
    int levers = 0;
    for (unsigned seed = 21; seed < 30; ++seed) {
        const site::Job job = worth_changing(seed);
        const Weighed all = weighed_whole(job);
        EXPECT_TRUE(all.proved);
        for (const Lever& lever : all.levers) {
            const double plain = by_plain_loop(lever.job);
            EXPECT_NEAR(lever.after.total, plain, 1e-5) << seed << lever.words;
            if (lever.opens) continue;
            EXPECT_NEAR(lever.saves, all.before.total - plain, 1e-5) << seed << lever.words;
            ++levers;
        }
    }
    EXPECT_GT(levers, 5);
}

TEST(Levers, OfSeveralRunsNoChangeThatPaysIsLeftOut) {
    const auto& shop = support::small_shop();
    const double least = shop.catalogue.levers.worth.least_saving.value;
    int paying = 0;
    for (unsigned seed = 31; seed < 40; ++seed) {
        const site::Job job = worth_changing(seed);
        const Weighed all = weighed_whole(job);
        if (!all.before.sound()) continue;
        for (const Change& change : all_changes_of(shop.catalogue, job)) {
            if (!site::validate(change.job).empty()) continue;
            const Lever one = weighed({shop.catalogue, shop.book}, job, all.before, change);
            if (!one.after.sound() || one.net().value_or(one.saves) < least) continue;
            const Lever* said = lever_of(all, change.key);
            ASSERT_NE(said, nullptr) << seed << one.words;
            EXPECT_GE(said->net().value_or(said->saves), one.net().value_or(one.saves) - 1e-6);
            ++paying;
        }
    }
    EXPECT_GT(paying, 10);
}

TEST(Levers, TheSameChangeAtSeveralPlacesIsOneLever) {
    site::Job job = support::tree_job({support::the_house, 0, 0});
    for (site::Run& run : job.runs) run.legs[0].surface = site::Surface::drive;
    const Weighed all = weighed_whole(job);
    const Lever* lawn = lever_of(all, "soft-ground");
    ASSERT_NE(lawn, nullptr);
    EXPECT_EQ(lawn->runs, (std::vector<std::size_t>{0, 1, 2}));
    EXPECT_EQ(lawn->singly.size(), 3u);
    EXPECT_NE(lawn->words.find("b0, b1 and b2"), std::string::npos) << lawn->words;
    for (const Singly& one : lawn->singly) EXPECT_LT(one.brings, lawn->saves);
    EXPECT_EQ(std::count_if(all.levers.begin(), all.levers.end(),
                            [](const Lever& l) { return l.key == "soft-ground"; }),
              1);
}

TEST(Levers, WhatItCostsAtSeveralPlacesIsCountedAtEach) {
    site::Job job = support::tree_job({support::the_house, support::the_house});
    for (std::size_t i = 1; i < job.buildings.size(); ++i) {
        site::Metalwork pipe;
        pipe.what = site::Metal::water_pipe;
        pipe.insulating_section = site::Answer::no;
        pipe.bonded_at_house = site::Answer::yes;
        job.buildings[i].metalwork = {pipe};
    }
    const solve::Means all{support::small_shop().catalogue, support::small_shop().book};
    const Changes changes = all_changes_of(all.catalogue, job);
    std::vector<const Change*> pipes;
    for (const Change& change : changes) {
        if (change.key == "plastic-section") pipes.push_back(&change);
    }
    ASSERT_EQ(pipes.size(), 2u);
    const auto before = solve::solve(all, job);
    const Lever both = weighed(all, job, before, made_together(all.catalogue, job, pipes));
    const Lever one = weighed(all, job, before, *pipes.front());
    EXPECT_NEAR(*both.cost, 2 * *one.cost, 1e-9);
}

}  // namespace
}  // namespace toft::lever
