// The search against its own definition: every head on every core, every rule, at every end.

#include "search/search.h"

#include "search/keep.h"
#include "support/brute_force.h"
#include "support/catalogue.h"
#include "support/examples.h"
#include "support/jobs.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <utility>

namespace toft::search {
namespace {

const price::Book& book() {
    static const price::Book loaded = support::demo_book(support::catalogue());
    return loaded;
}

Result searched(const site::Job& job, bool all = false) {
    Options options;
    options.all = all;
    return search(support::catalogue(), book(), job, 0, options);
}

void expect_same_drops(const Result& found, const support::BruteResult& brute) {
    std::map<std::string, const Dropped*> by_name;
    for (const Dropped& d : found.dropped) by_name[d.rule->name] = &d;
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        const std::string name = rules::rulebook()[i].info->name;
        const auto at = by_name.find(name);
        ASSERT_EQ(at != by_name.end(), brute.dropped[i] > 0) << name;
        if (at == by_name.end()) continue;
        const Dropped& d = *at->second;
        EXPECT_EQ(d.count, brute.dropped[i]) << name;
        EXPECT_EQ(d.says, brute.says[i]) << name;
        ASSERT_EQ(d.nearest.has_value(), brute.nearest[i].has_value()) << name;
        if (!d.nearest) continue;
        EXPECT_EQ(d.nearest_use, brute.nearest[i]->use) << name;
        EXPECT_EQ(study::scheme_key(*d.nearest), brute.nearest[i]->key) << name;
    }
}

using Found = std::vector<support::BruteSound>;

bool brute_beats(const support::BruteSound& a, const support::BruteSound& b) {
    if (a.total > b.total || a.headroom < b.headroom || a.dependability < b.dependability) {
        return false;
    }
    const bool equal =
        a.total == b.total && a.headroom == b.headroom && a.dependability == b.dependability;
    return !equal || a.key < b.key;
}

/// What is compared before the key, best first.
std::array<double, 3> rank_of(const support::BruteSound& s, site::Prefer prefer) {
    if (prefer == site::Prefer::headroom) return {-s.headroom, s.total, -s.dependability};
    if (prefer == site::Prefer::dependability) return {-s.dependability, s.total, -s.headroom};
    return {s.total, -s.headroom, -s.dependability};
}

bool brute_before(const support::BruteSound& a, const support::BruteSound& b, site::Prefer prefer) {
    return std::make_pair(rank_of(a, prefer), a.key) < std::make_pair(rank_of(b, prefer), b.key);
}

/// Earthing, protective conductor, family, and whether its bond is cautioned.
std::string kind_of(const support::BruteSound& s) {
    const auto bond =
        static_cast<std::size_t>(rules::find_rule("bonding-size") - rules::rulebook().data());
    const bool cautioned = s.verdicts[bond] == rules::Verdict::caution;
    return std::string(study::earthing_word(s.scheme.earthing)) + "/" +
           study::protective_word(s.scheme.protective) + "/" +
           tables::family_word(s.scheme.cable->family) + (cautioned ? "!" : "");
}

/// Those that nothing beats and the best of each kind, best first.
Found worth_showing(const Found& found, site::Prefer prefer) {
    std::map<std::string, const support::BruteSound*> best;
    for (const auto& s : found) {
        auto& at = best[kind_of(s)];
        if (!at || brute_before(s, *at, prefer)) at = &s;
    }
    Found kept;
    for (const auto& s : found) {
        const bool beaten = std::any_of(found.begin(), found.end(),
                                        [&](const auto& other) { return brute_beats(other, s); });
        if (!beaten || best[kind_of(s)] == &s) kept.push_back(s);
    }
    std::sort(kept.begin(), kept.end(),
              [&](const auto& a, const auto& b) { return brute_before(a, b, prefer); });
    return kept;
}

/// What is shown is what the plain loop would show, in its order, with its figures.
void expect_same_schemes(const Result& all, const support::BruteResult& brute,
                         site::Prefer prefer) {
    Found expected = worth_showing(brute.sound, prefer);
    const std::size_t sure = expected.size();
    const Found unsure = worth_showing(brute.conditional, prefer);
    expected.insert(expected.end(), unsure.begin(), unsure.end());
    ASSERT_EQ(all.contenders.size(), expected.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const Contender& c = all.contenders[i];
        const support::BruteSound& s = expected[i];
        ASSERT_EQ(c.key, s.key) << "in place " << i;
        EXPECT_EQ(c.total, s.total) << c.key;
        EXPECT_EQ(c.price.total.number(), s.total) << c.key;
        EXPECT_EQ(c.headroom, s.headroom) << c.key;
        EXPECT_EQ(c.dependability, s.dependability) << c.key;
        EXPECT_EQ(c.verdicts, s.verdicts) << c.key;
        EXPECT_EQ(c.conditional(), i >= sure) << c.key;
    }
}

void expect_agreement(const site::Job& job) {
    const support::BruteResult brute = support::BruteForce(support::catalogue(), book(), job).run();
    const Result found = searched(job, true);
    EXPECT_EQ(found.candidates, brute.candidates);
    EXPECT_EQ(found.sound, static_cast<long>(brute.sound.size()));
    EXPECT_EQ(found.conditional, static_cast<long>(brute.conditional.size()));
    EXPECT_LE(found.evaluated, found.candidates);
    expect_same_drops(found, brute);
    expect_same_schemes(found, brute, job.wishes.prefer);
    long dropped = 0;
    for (const Dropped& d : found.dropped) dropped += d.count;
    EXPECT_EQ(found.sound + found.conditional + dropped, found.candidates);
}

class SearchOfExample : public testing::TestWithParam<std::string> {};

TEST_P(SearchOfExample, AgreesWithThePlainLoop) {
    expect_agreement(support::example_job(GetParam(), support::catalogue()));
}

INSTANTIATE_TEST_SUITE_P(All, SearchOfExample, testing::ValuesIn(support::example_names()),
                         [](const auto& tested) {
                             std::string name = tested.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

TEST(Search, AgreesWithThePlainLoopOnRandomJobs) {
    int some_sound = 0;
    int some_conditional = 0;
    for (unsigned seed = 1; seed <= 40; ++seed) {
        SCOPED_TRACE(seed);
        const site::Job job = support::random_job(seed);
        expect_agreement(job);
        const Result found = searched(job);
        some_sound += found.sound > 0;
        some_conditional += found.conditional > 0;
    }
    EXPECT_GT(some_sound, 5);
    EXPECT_GT(some_conditional, 5);
}

TEST(Search, TheSameJobGivesTheSameAnswerInTheSameOrder) {
    for (unsigned seed = 1; seed <= 10; ++seed) {
        const site::Job job = support::random_job(seed);
        const Result a = searched(job);
        const Result b = searched(support::random_job(seed));
        ASSERT_EQ(a.contenders.size(), b.contenders.size());
        for (std::size_t i = 0; i < a.contenders.size(); ++i) {
            EXPECT_EQ(a.contenders[i].key, b.contenders[i].key);
        }
    }
}

TEST(Search, ShowsSoundOnesFirstEachPartByPreference) {
    for (unsigned seed = 1; seed <= 40; ++seed) {
        const site::Job job = support::random_job(seed);
        const Result found = searched(job);
        EXPECT_LE(found.contenders.size(), 24u);
        EXPECT_EQ(found.any_sound(), found.sound > 0);
        for (std::size_t i = 1; i < found.contenders.size(); ++i) {
            const Contender& a = found.contenders[i - 1];
            const Contender& b = found.contenders[i];
            EXPECT_LE(a.conditional(), b.conditional());
            if (a.conditional() != b.conditional()) continue;
            EXPECT_TRUE(comes_before(a, b, job.wishes.prefer)) << a.key << " " << b.key;
        }
    }
}

TEST(Search, NothingToChooseFromIsNoAnswer) {
    site::Job job = support::plain_job();
    job.wishes.smallest_core = support::measured(square_millimetres(1000));
    const Result found = searched(job);
    EXPECT_EQ(found.candidates, 0);
    EXPECT_TRUE(found.contenders.empty());
    EXPECT_FALSE(found.any_sound());
}

}  // namespace
}  // namespace toft::search
