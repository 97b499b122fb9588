// The search against its own definition: every head on every route, every rule, at every end.

#include "search/search.h"

#include "search/keep.h"
#include "support/brute_force.h"
#include "support/catalogue.h"
#include "support/examples.h"
#include "support/existing.h"
#include "support/jobs.h"
#include "support/questions.h"
#include "support/random_jobs.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <utility>

namespace toft::search {
namespace {

Result searched(const site::Job& job, bool all = false) {
    Options options;
    options.all = all;
    return search(support::catalogue(), support::demo_book(), job, 0, options);
}

long count_of(const Result& found, std::size_t rule) {
    for (const Dropped& d : found.dropped) {
        if (d.rule == rules::rulebook()[rule].info) return d.count;
    }
    return 0;
}

/// What falls with its route or its head is counted to the last; of pairs, which may have been set
/// aside or fallen to another rule of theirs, no more than fail.
void expect_honest_counts(const Result& found, const support::BruteResult& brute) {
    EXPECT_EQ(found.candidates, brute.candidates);
    EXPECT_EQ(found.evaluated + found.set_aside + found.fallen, found.candidates);
    long dropped = 0;
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        const rules::RuleInfo& rule = *rules::rulebook()[i].info;
        const long count = count_of(found, i);
        dropped += count;
        EXPECT_LE(count, brute.failing[i]) << rule.name;
        if (rule.sees != rules::Sees::both) {
            EXPECT_EQ(count, brute.first[i]) << rule.name;
        }
    }
    EXPECT_EQ(dropped + found.sound + found.conditional + found.set_aside, found.candidates);
    EXPECT_EQ(dropped - found.fallen, found.evaluated - found.sound - found.conditional);
    EXPECT_LE(found.sound, static_cast<long>(brute.sound.size()));
    EXPECT_LE(found.conditional, static_cast<long>(brute.conditional.size()));
    EXPECT_EQ(found.sound > 0, !brute.sound.empty());
    if (found.set_aside > 0) return;
    EXPECT_EQ(found.sound, static_cast<long>(brute.sound.size()));
    EXPECT_EQ(found.conditional, static_cast<long>(brute.conditional.size()));
}

/// A near miss can be built, fails its rule at every end and no other at the worse one, and misses
/// by what is said.
void expect_true_misses(const Result& found, const support::BruteForce& force,
                        const support::BruteResult& brute) {
    for (const Dropped& d : found.dropped) {
        EXPECT_GT(d.count, 0) << d.rule->name;
        if (!d.nearest) continue;
        const support::BruteJudgement j = force.judge(*d.nearest);
        std::size_t i = 0;
        while (rules::rulebook()[i].info != d.rule) ++i;
        EXPECT_TRUE(j.hard[i]) << d.rule->name;
        EXPECT_EQ(j.failures, 1) << d.rule->name;
        EXPECT_EQ(d.nearest_use, j.worse.findings[i].use) << d.rule->name;
        EXPECT_GT(d.nearest_use, 1) << d.rule->name;
        ASSERT_TRUE(brute.nearest_use[i].has_value()) << d.rule->name;
        EXPECT_GE(d.nearest_use, *brute.nearest_use[i]) << d.rule->name;
        if (d.rule->sees == rules::Sees::both) continue;
        // No set-aside scheme hides a nearer one of these.
        EXPECT_EQ(d.nearest_use, *brute.nearest_use[i]) << d.rule->name;
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
    const auto ra = rank_of(a, prefer);
    const auto rb = rank_of(b, prefer);
    return ra != rb ? ra < rb : a.key < b.key;
}

/// Earthing, phases, what protects and which family on each stretch, and whether a rule on the run
/// that thicker cores would help gives a caution.
std::string kind_of(const support::BruteSound& s) {
    std::string kind = std::string(study::earthing_word(s.scheme.earthing)) + "/" +
                       std::to_string(s.scheme.phases);
    for (const study::Stretch& laid : s.scheme.laid()) {
        kind += std::string("/") + study::protective_word(laid.protective) + "/" +
                tables::family_word(laid.cable->family) + "/" + study::laid_word(laid.laid);
    }
    for (const char* rule : {"bonding-size", "voltage-drop"}) {
        const auto i = static_cast<std::size_t>(rules::find_rule(rule) - rules::rulebook().data());
        if (s.verdicts[i] == rules::Verdict::caution) return kind + "!";
    }
    return kind;
}

/// Keys of those that nothing beats. In order of price only an earlier one can beat a later one,
/// and one that is beaten itself is not needed to beat others.
std::vector<std::string> unbeaten(Found found) {
    std::sort(found.begin(), found.end(),
              [](const auto& a, const auto& b) { return brute_before(a, b, site::Prefer::price); });
    Found stay;
    std::vector<std::string> keys;
    for (const auto& s : found) {
        if (std::any_of(stay.begin(), stay.end(),
                        [&](const auto& other) { return brute_beats(other, s); })) {
            continue;
        }
        stay.push_back(s);
        keys.push_back(s.key);
    }
    std::sort(keys.begin(), keys.end());
    return keys;
}

/// Those that nothing beats and the best of each kind, best first.
Found worth_showing(const Found& found, site::Prefer prefer) {
    std::map<std::string, const support::BruteSound*> best;
    for (const auto& s : found) {
        auto& at = best[kind_of(s)];
        if (!at || brute_before(s, *at, prefer)) at = &s;
    }
    const std::vector<std::string> keys = unbeaten(found);
    Found kept;
    for (const auto& s : found) {
        if (best[kind_of(s)] == &s || std::binary_search(keys.begin(), keys.end(), s.key)) {
            kept.push_back(s);
        }
    }
    std::sort(kept.begin(), kept.end(),
              [&](const auto& a, const auto& b) { return brute_before(a, b, prefer); });
    return kept;
}

/// Of sound and conditional ones taken together those worth showing that are conditional.
Found worth_a_condition(const support::BruteResult& brute, site::Prefer prefer) {
    std::vector<std::string> sure;
    for (const auto& s : brute.sound) sure.push_back(s.key);
    std::sort(sure.begin(), sure.end());
    Found all = brute.sound;
    all.insert(all.end(), brute.conditional.begin(), brute.conditional.end());
    Found shown = worth_showing(all, prefer);
    shown.erase(std::remove_if(shown.begin(), shown.end(),
                               [&](const auto& s) {
                                   return std::binary_search(sure.begin(), sure.end(), s.key);
                               }),
                shown.end());
    return shown;
}

/// Price and energy over the years together are least; of equals the one preferred.
const support::BruteSound& thriftiest(const Found& sound, site::Prefer prefer) {
    return *std::min_element(sound.begin(), sound.end(), [&](const auto& a, const auto& b) {
        const double sum_a = a.total + a.lost;
        const double sum_b = b.total + b.lost;
        return sum_a != sum_b ? sum_a < sum_b : rank_of(a, prefer) < rank_of(b, prefer);
    });
}

double over_years(const Contender& c) { return c.total + c.lost; }

/// The one that costs least over the years is shown, worth showing otherwise or not.
void expect_thrift(const Result& all, Found& expected, const support::BruteResult& brute,
                   site::Prefer prefer) {
    ASSERT_EQ(all.least_over_years.has_value(), !brute.sound.empty());
    if (brute.sound.empty()) return;
    const support::BruteSound& least = thriftiest(brute.sound, prefer);
    const Contender& shown = all.contenders[*all.least_over_years];
    EXPECT_FALSE(shown.conditional());
    EXPECT_EQ(over_years(shown), least.total + least.lost);
    const auto of_key = [&](const auto& s) { return s.key == shown.key; };
    if (std::any_of(expected.begin(), expected.end(), of_key)) return;
    expected.push_back(*std::find_if(brute.sound.begin(), brute.sound.end(), of_key));
    std::sort(expected.begin(), expected.end(),
              [&](const auto& a, const auto& b) { return brute_before(a, b, prefer); });
}

/// What is shown is what the plain loop would show, in its order, with its figures.
void expect_same_schemes(const Result& all, const support::BruteResult& brute,
                         site::Prefer prefer) {
    Found expected = worth_showing(brute.sound, prefer);
    expect_thrift(all, expected, brute, prefer);
    const std::size_t sure = expected.size();
    const Found unsure = worth_a_condition(brute, prefer);
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

Result expect_agreement(const site::Job& job) {
    support::BruteForce force(support::catalogue(), support::demo_book(), job);
    const support::BruteResult brute = force.run();
    const Result found = searched(job, true);
    expect_honest_counts(found, brute);
    expect_true_misses(found, force, brute);
    expect_same_schemes(found, brute, job.wishes.prefer);
    return found;
}

/// The same job with fewer devices and one or two families to choose from.
site::Job narrowed(site::Job job) {
    job.wishes.offer = {"armoured XLPE copper", "flat twin and earth"};
    job.wishes.devices = {"BS 88-3", "BS EN 61009"};
    return job;
}

class SearchOfExample : public testing::TestWithParam<std::string> {};

TEST_P(SearchOfExample, AgreesWithThePlainLoopOnANarrowShop) {
    expect_agreement(narrowed(support::example_job(GetParam(), support::catalogue())));
}

INSTANTIATE_TEST_SUITE_P(All, SearchOfExample, testing::ValuesIn(support::example_names()),
                         [](const auto& tested) {
                             std::string name = tested.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

TEST(Search, AgreesWithThePlainLoopOnTheDemoWhateverIsPreferred) {
    site::Job job = support::example_job("demo", support::catalogue());
    job.wishes.devices = {"BS 88-3", "BS 88-2", "BS EN 61009"};
    for (const site::Prefer prefer :
         {site::Prefer::price, site::Prefer::headroom, site::Prefer::dependability}) {
        job.wishes.prefer = prefer;
        EXPECT_GT(expect_agreement(job).set_aside, 0) << site::word(prefer);
    }
}

TEST(Search, AgreesWithThePlainLoopOnEverythingThatTheDemoOffers) {
    const site::Job job = support::example_job("demo", support::catalogue());
    const Result found = expect_agreement(job);
    EXPECT_GT(found.candidates, 400000);
    EXPECT_LT(found.evaluated, found.candidates / 100);
}

TEST(Search, AgreesWithThePlainLoopOnAChangeOfCableAndThreePhases) {
    using site::LegMethod;
    site::Job job = support::job_with_legs(
        {support::plain_leg(LegMethod::clipped, 8), support::plain_leg(LegMethod::buried_direct)});
    job.buildings[1].reach_of_house_earth = {};
    support::name_cable(job.runs[0].legs[1], support::cable(5, 10));
    job = support::on_three_phases(std::move(job));
    job.wishes.devices = {"BS 88-3"};
    job.wishes.smallest_core = support::measured(square_millimetres(10));
    const Result found = expect_agreement(job);
    ASSERT_FALSE(found.contenders.empty());
    EXPECT_EQ(found.contenders.front().scheme.phases, 3);
    EXPECT_EQ(found.contenders.front().scheme.stretches, 2u);
}

TEST(Search, AgreesWithThePlainLoopOnRandomJobs) {
    int some_sound = 0;
    int some_conditional = 0;
    int only_conditional = 0;
    int some_set_aside = 0;
    int three_phases = 0;
    int two_stretches = 0;
    int own = 0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        SCOPED_TRACE(seed);
        const site::Job job = support::random_job(seed);
        const Result found = expect_agreement(job);
        some_sound += found.sound > 0;
        some_conditional += found.conditional > 0;
        some_set_aside += found.set_aside > 0;
        if (found.contenders.empty()) continue;
        only_conditional += !found.any_sound();
        const study::RunScheme& first = found.contenders.front().scheme;
        three_phases += first.phases == 3;
        two_stretches += first.stretches > 1;
        own += first.earthing == study::BuildingEarthing::own_electrode;
    }
    for (const int cases : {some_sound, some_conditional, only_conditional, some_set_aside,
                            three_phases, two_stretches, own}) {
        EXPECT_GT(cases, 2);
    }
}

/// A random job where a cable lies already: in one of several sizes, fed from a way or not, with
/// readings known, open or bad.
site::Job random_existing(unsigned seed) {
    site::Job job = support::random_job(seed);
    const int cores = seed % 2 == 0 ? 2 : 3;
    const double sizes[] = {6, 10, 16, 25};
    job = support::with_cable_there(std::move(job), support::cable(cores, sizes[seed / 2 % 4]));
    if (seed % 3 == 0) {
        job = support::fed_from_a_way(std::move(job), seed % 4 == 0 ? 20 : 32);
        job.runs[0].device.reset();
        job.runs[0].fed_from.reset();
        job.intake.board.max_device = support::measured(amperes(63));
    }
    job.wishes.devices = {"BS EN 60898"};
    job.wishes.offer = {"armoured XLPE copper"};
    job.buildings[1].load_w = support::measured(2500.0);
    job.buildings[1].load = {};
    job.buildings[1].circuits.clear();
    site::Existing& e = *job.runs[0].existing;
    if (seed % 5 == 1) e.condition = site::Condition::not_seen;
    if (seed % 5 == 2) e.insulation = {};
    if (seed % 5 == 3) e.r1_r2 = {};
    if (seed % 7 == 4) e.condition = site::Condition::damaged;
    if (seed % 7 == 5) e.r1_r2.high = e.r1_r2.low = e.r1_r2.low * 1.3;
    if (seed % 7 == 6) e.r1_rn = support::measured(ohms(0.4));
    return job;
}

TEST(Search, AgreesWithThePlainLoopWhereACableLiesAlready) {
    int kept = 0;
    int doubled = 0;
    int replaced = 0;
    int stays = 0;
    int conditional = 0;
    for (unsigned seed = 301; seed <= 348; ++seed) {
        SCOPED_TRACE(seed);
        const Result found = expect_agreement(random_existing(seed));
        for (const Contender& c : found.contenders) {
            const study::Laid laid = c.scheme.first().laid;
            if (c.conditional()) {
                conditional += laid != study::Laid::anew;
                continue;
            }
            kept += laid == study::Laid::kept;
            doubled += laid == study::Laid::doubled;
            replaced += laid == study::Laid::anew;
            stays += c.scheme.head_stays;
        }
    }
    for (const int cases : {kept, doubled, replaced, stays, conditional}) EXPECT_GT(cases, 2);
}

/// Each search with one open fact pinned, as unknowns are judged, by its first scheme alone.
void expect_the_same_first(const site::Job& job, int& compared) {
    const auto setting = support::prepared(job);
    for (const study::OpenFact& fact : setting.open) {
        for (const study::End end : {study::End::low, study::End::high}) {
            Options options;
            options.corner.except.emplace_back(fact.pointer, end);
            const Result all = search(support::catalogue(), support::demo_book(), job, 0, options);
            options.first_only = true;
            const Result first =
                search(support::catalogue(), support::demo_book(), job, 0, options);
            EXPECT_EQ(first.any_sound(), all.any_sound()) << fact.pointer;
            ASSERT_EQ(first.contenders.empty(), all.contenders.empty()) << fact.pointer;
            if (all.contenders.empty()) continue;
            ASSERT_EQ(first.contenders.size(), 1u);
            EXPECT_EQ(first.contenders[0].key, all.contenders[0].key) << fact.pointer;
            EXPECT_EQ(first.contenders[0].price.total, all.contenders[0].price.total);
            EXPECT_EQ(first.candidates, all.candidates);
            EXPECT_EQ(first.evaluated + first.set_aside + first.fallen, first.candidates);
            ++compared;
        }
    }
}

TEST(Search, TheFirstAloneIsTheFirstOfAll) {
    int compared = 0;
    for (unsigned seed = 1; seed <= 60; ++seed) {
        SCOPED_TRACE(seed);
        expect_the_same_first(support::random_job(seed), compared);
    }
    for (const std::string& name : support::example_names()) {
        SCOPED_TRACE(name);
        expect_the_same_first(support::example_job(name, support::catalogue()), compared);
    }
    EXPECT_GT(compared, 200);
}

TEST(Search, WhoStopsItGetsWhatWasFoundUntilThen) {
    const site::Job job = support::example_job("demo", support::catalogue());
    long asked = 0;
    Options options;
    options.go_on = [&asked] { return ++asked > 0; };
    const price::Book book = support::demo_book(support::catalogue());
    const Result whole = search(support::catalogue(), book, job, 0, options);
    EXPECT_FALSE(whole.stopped);
    ASSERT_GT(asked, 10);
    for (const long after : {0L, asked / 2, asked - 1}) {
        long left = after;
        options.go_on = [&left] { return left-- > 0; };
        const Result some = search(support::catalogue(), book, job, 0, options);
        EXPECT_TRUE(some.stopped) << after;
        EXPECT_FALSE(some.all_possible);
        EXPECT_LE(some.sound, whole.sound) << after;
        EXPECT_TRUE(after > 0 || some.contenders.empty());
        for (const Contender& c : some.contenders) {
            EXPECT_GE(c.total, whole.contenders.front().total) << after;
        }
    }
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
        EXPECT_EQ(found.contenders.empty(), found.sound + found.conditional == 0);
        for (std::size_t i = 1; i < found.contenders.size(); ++i) {
            const Contender& a = found.contenders[i - 1];
            const Contender& b = found.contenders[i];
            EXPECT_LE(a.conditional(), b.conditional());
            if (a.conditional() != b.conditional()) continue;
            EXPECT_TRUE(comes_before(a, b, job.wishes.prefer)) << a.key << " " << b.key;
        }
    }
}

/// What else may come first is kept beside the answer and changes nothing of it; the first sound
/// scheme is among it.
TEST(Search, KeepingWhatMayComeFirstChangesNoAnswer) {
    for (unsigned seed = 1; seed <= 30; ++seed) {
        const site::Job job = support::random_job(seed);
        Options options;
        options.possible = true;
        const Result kept = search(support::catalogue(), support::demo_book(), job, 0, options);
        const Result plain = searched(job);
        ASSERT_EQ(kept.contenders.size(), plain.contenders.size());
        for (std::size_t i = 0; i < kept.contenders.size(); ++i) {
            EXPECT_EQ(kept.contenders[i].key, plain.contenders[i].key);
        }
        EXPECT_TRUE(plain.possible.empty());
        if (!kept.all_possible) continue;
        bool first = !plain.any_sound();
        for (const Possible& p : kept.possible) {
            first = first || study::scheme_key(p.scheme) == plain.contenders.front().key;
        }
        EXPECT_TRUE(first) << "seed " << seed;
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
