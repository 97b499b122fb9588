#include "merge/merge.h"

#include "edits.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace toft::merge {
namespace {

using testing::edited;
using testing::Mint;
using testing::numbers;

Merged put_together(const Json& base, const Json& mine, const Json& theirs) {
    return merge(base.dump(), mine.dump(), theirs.dump()).value();
}

TEST(Merge, TwoPeopleOnOneJobBothSeeTheirWork) {
    const auto merged =
        merge(R"({"intake": {"ze_ohm": 0.35}, "buildings": [{"id": "shed", "load_w": 3000}]})",
              R"({"intake": {"ze_ohm": 0.21}, "buildings": [{"id": "shed", "load_w": 3000}]})",
              R"({"intake": {"ze_ohm": 0.35}, "buildings": [{"id": "barn", "load_w": 9000},
                  {"id": "shed", "load_w": 3000, "use": "gym"}]})");
    ASSERT_TRUE(merged);
    EXPECT_TRUE(merged->clashes.empty());
    EXPECT_TRUE(same_job(merged->job, R"({"intake": {"ze_ohm": 0.21}, "buildings":
        [{"id": "barn", "load_w": 9000}, {"id": "shed", "load_w": 3000, "use": "gym"}]})"))
        << merged->job;
}

TEST(Merge, OneFactChangedInTwoWaysIsNamedAndTheirsStands) {
    const auto merged = merge(R"({"buildings": [{"id": "b", "name": "Studio", "load_w": 3000}]})",
                              R"({"buildings": [{"id": "b", "name": "Studio", "load_w": 4000}]})",
                              R"({"buildings": [{"id": "b", "name": "Studio", "load_w": 3500}]})");
    ASSERT_TRUE(merged);
    ASSERT_EQ(merged->clashes.size(), 1u);
    const Clash& clash = merged->clashes.front();
    EXPECT_EQ(clash.pointer, "/buildings/0/load_w");
    EXPECT_EQ(clash.was, "3000");
    EXPECT_EQ(clash.yours, "4000");
    EXPECT_EQ(clash.theirs, "3500");
    EXPECT_EQ(clash.says,
              "building Studio, load w: 3000 before; you say 4000, meanwhile it became 3500");
    EXPECT_TRUE(
        same_job(merged->job, R"({"buildings": [{"id": "b", "name": "Studio", "load_w": 3500}]})"));
}

TEST(Merge, WhatCannotBeReadIsSaidOfEachSide) {
    const auto merged = merge("{", "[]", "{}");
    ASSERT_FALSE(merged);
    ASSERT_EQ(merged.error().size(), 2u);
    EXPECT_EQ(merged.error()[0].pointer, "base");
    EXPECT_EQ(merged.error()[0].code, "not-json");
    EXPECT_EQ(merged.error()[1].pointer, "mine");
    EXPECT_EQ(merged.error()[1].code, "not-a-job");
}

TEST(Merge, OrderOfKeysAndBlanksMakeNoOtherJob) {
    EXPECT_TRUE(same_job(R"({"a": 1, "b": [2.0]})", R"({"b":[2],"a":1})"));
    EXPECT_FALSE(same_job(R"({"a": [1, 2]})", R"({"a": [2, 1]})"));
    EXPECT_FALSE(same_job("{", "{"));
}

RC_GTEST_PROP(Merge, WhereOneSideChangedNothingTheOtherStands, ()) {
    Mint mint;
    const Json base = testing::job(mint);
    const Json changed = edited(base, mint, testing::upto(5));
    const Merged mine = put_together(base, changed, base);
    const Merged theirs = put_together(base, base, changed);
    const Merged both = put_together(base, changed, changed);
    RC_ASSERT(mine.clashes.empty() && theirs.clashes.empty() && both.clashes.empty());
    RC_ASSERT(same(Json::parse(mine.job), changed));
    RC_ASSERT(same(Json::parse(theirs.job), changed));
    RC_ASSERT(same(Json::parse(both.job), changed));
}

/// Pointers of all facts that are told by key, id or name.
void facts_of(const Json& value, const std::string& pointer, std::vector<std::string>& found) {
    if (value.is_object() && !value.contains("value")) {
        for (const auto& [key, part] : value.items()) {
            if (key != "id" && key != "name" && key != "what") {
                facts_of(part, codec::child_pointer(pointer, key), found);
            }
        }
    } else if (value.is_array() && !value.empty() && value[0].is_object()) {
        for (std::size_t i = 0; i < value.size(); ++i) {
            facts_of(value[i], codec::child_pointer(pointer, std::to_string(i)), found);
        }
    } else {
        found.push_back(pointer);
    }
}

RC_GTEST_PROP(Merge, ChangesOfDifferentFactsNeverClashAndBothAreThere, ()) {
    Mint mint;
    const Json base = testing::job(mint);
    std::vector<std::string> facts;
    facts_of(base, "", facts);
    const auto at = *rc::gen::inRange<std::size_t>(0, facts.size());
    const auto other = *rc::gen::inRange<std::size_t>(0, facts.size());
    RC_PRE(at != other);
    Json mine = base, theirs = base, both = base;
    mine[Json::json_pointer(facts[at])] = both[Json::json_pointer(facts[at])] = mint.number();
    theirs[Json::json_pointer(facts[other])] = both[Json::json_pointer(facts[other])] =
        mint.number();
    const Merged merged = put_together(base, mine, theirs);
    RC_ASSERT(merged.clashes.empty());
    RC_ASSERT(same(Json::parse(merged.job), both));
}

RC_GTEST_PROP(Merge, ItDoesNotMatterWhichSideIsCalledMine, ()) {
    Mint mint;
    const Json base = testing::job(mint);
    const Json a = edited(base, mint, 1 + testing::upto(3));
    const Json b = edited(base, mint, 1 + testing::upto(3));
    const Merged one = put_together(base, a, b);
    const Merged other = put_together(base, b, a);
    std::multiset<std::string> named, turned;
    for (const Clash& clash : one.clashes) named.insert(clash.yours + "|" + clash.theirs);
    for (const Clash& clash : other.clashes) turned.insert(clash.theirs + "|" + clash.yours);
    RC_ASSERT(named == turned);
    RC_CLASSIFY(one.clashes.empty(), "without a clash");
    if (!one.clashes.empty()) return;
    const auto moved = [&](const Json& side) { return !testing::in_order_of(base, side); };
    if (moved(a) && moved(b)) return;  // both changed the order: theirs stands
    RC_ASSERT(same(Json::parse(one.job), Json::parse(other.job)));
}

/// What `side` put in or took out is in the merged job, or a clash names it.
void nothing_lost(const Json& base, const Json& side, const Merged& merged,
                  std::string Clash::*named) {
    const std::set<int> before = numbers(base), after = numbers(side);
    const std::set<int> kept = numbers(merged.job);
    std::set<int> said, was;
    for (const Clash& clash : merged.clashes) {
        const auto theirs = numbers(clash.*named), old = numbers(clash.was);
        said.insert(theirs.begin(), theirs.end());
        was.insert(old.begin(), old.end());
    }
    for (const int number : after) {
        if (!before.count(number)) RC_ASSERT(kept.count(number) || said.count(number));
    }
    for (const int number : before) {
        if (!after.count(number)) RC_ASSERT(!kept.count(number) || was.count(number));
    }
}

RC_GTEST_PROP(Merge, NoChangeIsLostWithoutBeingNamed, ()) {
    Mint mint;
    const Json base = testing::job(mint);
    const Json mine = edited(base, mint, 1 + testing::upto(5));
    const Json theirs = edited(base, mint, 1 + testing::upto(5));
    const Merged merged = put_together(base, mine, theirs);
    RC_CLASSIFY(!merged.clashes.empty(), "with a clash");
    nothing_lost(base, mine, merged, &Clash::yours);
    nothing_lost(base, theirs, merged, &Clash::theirs);
}

/// A clash's pointer is where the page would put `yours`: theirs stands there now.
RC_GTEST_PROP(Merge, AClashPointsAtWhatTheMergedJobKeeps, ()) {
    Mint mint;
    const Json base = testing::job(mint);
    const Json mine = edited(base, mint, 1 + testing::upto(5));
    const Json theirs = edited(base, mint, 1 + testing::upto(5));
    const Merged merged = put_together(base, mine, theirs);
    const Json job = Json::parse(merged.job);
    for (const Clash& clash : merged.clashes) {
        if (clash.theirs.empty()) continue;
        RC_ASSERT(same(job.at(Json::json_pointer(clash.pointer)), Json::parse(clash.theirs)));
        RC_ASSERT(clash.yours != clash.theirs);
        RC_ASSERT(!clash.says.empty());
    }
}

RC_GTEST_PROP(Merge, AnyTextsAreMergedOrRefused,
              (const std::string& a, const std::string& b, const std::string& c)) {
    const auto merged = merge(a, b, c);
    if (!merged) RC_ASSERT(!merged.error().empty());
}

}  // namespace
}  // namespace toft::merge
