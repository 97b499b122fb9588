#include "search/keep.h"

#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace toft::search {
namespace {

using site::Prefer;

/// A sound scheme with those three figures; `order` tells it from its like.
Sound sound(double total, double headroom, double dependability, long order = 0) {
    Sound s;
    s.scheme = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.total = total;
    s.headroom = headroom;
    s.dependability = dependability;
    s.order = order;
    return s;
}

TEST(Keep, OneBeatsAnotherWhenItIsNoWorseInAnything) {
    const Sound a = sound(100, 0.5, 3);
    EXPECT_TRUE(beats(a, sound(101, 0.5, 3)));
    EXPECT_TRUE(beats(a, sound(100, 0.4, 3)));
    EXPECT_TRUE(beats(a, sound(100, 0.5, 2)));
    EXPECT_FALSE(beats(a, sound(101, 0.6, 3)));
    EXPECT_FALSE(beats(a, sound(99, 0.5, 3)));
    EXPECT_FALSE(beats(a, sound(101, 0.5, 4)));
}

TEST(Keep, OfEqualsTheEarlierKeyBeats) {
    const Sound a = sound(100, 0.5, 3, 1);
    const Sound b = sound(100, 0.5, 3, 2);
    EXPECT_TRUE(beats(a, b));
    EXPECT_FALSE(beats(b, a));
    EXPECT_FALSE(beats(a, a));
}

TEST(Keep, PreferenceOrders) {
    const Sound cheap = sound(100, 0.1, 1);
    const Sound roomy = sound(200, 0.9, 2);
    const Sound trusty = sound(300, 0.5, 5);
    EXPECT_TRUE(comes_before(cheap, roomy, Prefer::price));
    EXPECT_TRUE(comes_before(roomy, cheap, Prefer::headroom));
    EXPECT_TRUE(comes_before(trusty, roomy, Prefer::dependability));
    EXPECT_TRUE(comes_before(sound(100, 0.2, 1), cheap, Prefer::price));  // ties: headroom next
    EXPECT_TRUE(comes_before(sound(100, 0.1, 2), cheap, Prefer::price));
    EXPECT_FALSE(comes_before(cheap, cheap, Prefer::price));
}

/// Schemes whose figures collide often, of several combinations.
std::vector<Sound> any_found() {
    static const study::Protective ways[] = {study::Protective::armour, study::Protective::core,
                                             study::Protective::core_and_armour};
    std::vector<Sound> found;
    const int count = *rc::gen::inRange(0, 60);
    for (int i = 0; i < count; ++i) {
        Sound s = sound(*rc::gen::inRange(1, 12), 0.1 * *rc::gen::inRange(0, 6),
                        *rc::gen::inRange(1, 6), i);
        s.scheme.first().protective = ways[*rc::gen::inRange(0, 3)];
        found.push_back(s);
    }
    return found;
}

std::set<long> orders(const std::vector<Sound>& found) {
    std::set<long> set;
    for (const Sound& s : found) set.insert(s.order);
    return set;
}

RC_GTEST_PROP(Keep, KeepsWhatNothingBeatsAndTheBestOfEachCombination, ()) {
    const std::vector<Sound> found = any_found();
    const Prefer prefer = *rc::gen::element(Prefer::price, Prefer::headroom, Prefer::dependability);
    std::set<long> expected;
    std::map<study::Protective, const Sound*> best;
    for (const Sound& s : found) {
        const bool beaten = std::any_of(found.begin(), found.end(),
                                        [&](const Sound& other) { return beats(other, s); });
        if (!beaten) expected.insert(s.order);
        auto& at = best[s.scheme.first().protective];
        if (!at || comes_before(s, *at, prefer)) at = &s;
    }
    for (const auto& [way, s] : best) expected.insert(s->order);
    const auto stay = kept(found, prefer, 1000);
    RC_ASSERT(orders(stay) == expected);
    RC_ASSERT(stay.size() == expected.size());
    RC_ASSERT(std::is_sorted(stay.begin(), stay.end(), [&](const Sound& a, const Sound& b) {
        return comes_before(a, b, prefer);
    }));
}

RC_GTEST_PROP(Keep, AConditionIsWorthShowingWhereNothingSoundIsAsGood, ()) {
    std::vector<Sound> sound = any_found();
    std::vector<Sound> unsure = any_found();
    for (Sound& s : unsure) s.order += 1000;
    const Prefer prefer = *rc::gen::element(Prefer::price, Prefer::headroom, Prefer::dependability);
    std::vector<Sound> all = sound;
    all.insert(all.end(), unsure.begin(), unsure.end());
    std::set<long> expected = orders(kept(all, prefer, 1000));
    expected.erase(expected.begin(), expected.lower_bound(1000));
    const auto stay = promising(unsure, sound, prefer);
    RC_ASSERT(orders(stay) == expected);
    RC_ASSERT(orders(kept(stay, prefer, 1000)) == expected);
}

RC_GTEST_PROP(Keep, WithLittleRoomTheBestOfAllStays, ()) {
    const std::vector<Sound> found = any_found();
    const auto all = ranked(found, Prefer::price);
    RC_ASSERT(all.size() == found.size());
    const std::size_t room = static_cast<std::size_t>(*rc::gen::inRange(1, 5));
    const auto stay = kept(found, Prefer::price, room);
    RC_ASSERT(stay.size() <= room);
    RC_ASSERT(found.empty() == stay.empty());
    if (!found.empty()) RC_ASSERT(stay.front().order == all.front().order);
}

TEST(Keep, ASchemeWithoutACautionOnItsBondIsKeptBesideACheaperWithIt) {
    Sound cheap = sound(100, 0.5, 3, 0);
    for (std::size_t i = 0; i < rules::rule_count; ++i) {
        if (std::string(rules::rulebook()[i].info->name) == "bonding-size") {
            cheap.verdicts[i] = rules::Verdict::caution;
        }
    }
    const Sound dear = sound(120, 0.5, 3, 1);
    EXPECT_EQ(kept({cheap, dear}, Prefer::price, 24).size(), 2u);
    cheap.verdicts = {};
    EXPECT_EQ(kept({cheap, dear}, Prefer::price, 24).size(), 1u);
}

}  // namespace
}  // namespace toft::search
