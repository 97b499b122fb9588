#include "store/jobs.h"
#include "trying.h"

#include <rapidcheck/gtest.h>

#include <map>

namespace toft::store {
namespace {

using namespace testing;

const std::string before = R"({"title":"Studio","ze":1,"load":1})";
const std::string mine = R"({"title":"Studio","ze":2,"load":1})";
const std::string theirs = R"({"title":"Studio","ze":1,"load":2})";
const std::string both = R"({"title":"Studio","ze":2,"load":2})";

TEST(Saving, AddsARevisionWithItsWords) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", before, act()));
    const auto saved =
        save(store, {"a", 1, mine}, act("Ze measured", "Bob", "2026-11-30T08:00:00Z"));
    ASSERT_TRUE(saved);
    EXPECT_TRUE(saved->saved);
    EXPECT_FALSE(saved->merged);
    EXPECT_EQ(saved->state.revision, 2);
    EXPECT_EQ(saved->state.job, mine);
    EXPECT_EQ(saved->state.changed_by, "Bob");
    EXPECT_TRUE(saved->state.can_undo);
    const auto history = revisions(store, "a");
    ASSERT_EQ(history->size(), 2u);
    EXPECT_EQ(history->front().what, "Ze measured");
    EXPECT_EQ(history->front().by, "Bob");
    EXPECT_EQ(history->front().at, "2026-11-30T08:00:00Z");
    EXPECT_EQ(history->front().job, "");
    EXPECT_EQ(revision(store, "a", 1)->job, before);
}

TEST(Saving, FromAnOldRevisionIsMergedWithWhatOthersSaved) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", before, act()));
    ASSERT_TRUE(save(store, {"a", 1, theirs}, act()));
    const auto saved = save(store, {"a", 1, mine}, act());
    ASSERT_TRUE(saved && saved->saved);
    EXPECT_TRUE(saved->merged);
    EXPECT_EQ(saved->state.revision, 3);
    EXPECT_TRUE(merge::same_job(saved->state.job, both)) << saved->state.job;
    EXPECT_TRUE(merge::same_job(undo(store, "a", 3, act())->job, theirs));
}

TEST(Saving, WithAClashWritesNothingAndSaysWhatClashed) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", before, act()));
    ASSERT_TRUE(save(store, {"a", 1, R"({"title":"Studio","ze":3,"load":2})"}, act()));
    const auto clashed = save(store, {"a", 1, R"({"title":"Barn","ze":2,"load":1})"}, act());
    ASSERT_TRUE(clashed);
    EXPECT_FALSE(clashed->saved);
    ASSERT_EQ(clashed->clashes.size(), 1u);
    EXPECT_EQ(clashed->clashes[0].pointer, "/ze");
    EXPECT_EQ(clashed->clashes[0].yours, "2");
    EXPECT_EQ(clashed->state.revision, 2);
    EXPECT_TRUE(merge::same_job(clashed->merged_job, R"({"title":"Barn","ze":3,"load":2})"));
    EXPECT_EQ(revisions(store, "a")->size(), 2u);
    EXPECT_TRUE(save(store, {"a", 2, clashed->merged_job}, act())->saved) << "settled by hand";
}

TEST(Saving, TheSameTwiceIsSavedOnce) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", before, act()));
    ASSERT_TRUE(save(store, {"a", 1, mine}, act()));
    const auto again = save(store, {"a", 1, mine}, act());
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->saved);
    EXPECT_FALSE(again->merged);
    EXPECT_EQ(again->state.revision, 2);
    const auto nothing = save(store, {"a", 1, before}, act());
    EXPECT_EQ(nothing->state.revision, 2) << "who changed nothing adds nothing";
    EXPECT_TRUE(nothing->merged) << "but what stands is not what they sent";
}

TEST(Saving, IsRefusedForWhatIsNoJob) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", before, act()));
    EXPECT_EQ(code(save(store, {"a", 1, "nonsense"}, act())), "not-json");
    EXPECT_EQ(code(save(store, {"a", 1, "7"}, act())), "not-a-job");
}

TEST(Saving, TwoJobsThatAreTooLargeTogetherAreNotSaved) {
    const Folder folder;
    Store store = opened(folder);
    const auto with = [](const std::string& key) {
        return R"({"x":1,")" + key + R"(":")" + std::string(700000, 'x') + "\"}";
    };
    ASSERT_TRUE(create(store, "a", R"({"x":1})", act()));
    ASSERT_TRUE(save(store, {"a", 1, with("a")}, act()));
    EXPECT_EQ(code(save(store, {"a", 1, with("b")}, act())), "too-large");
    EXPECT_EQ(load(store, "a")->revision, 2);
}

TEST(Undo, GoesBackAndForthAcrossRestarts) {
    const Folder folder;
    {
        Store store = opened(folder);
        ASSERT_TRUE(create(store, "a", job(1), act()));
        ASSERT_TRUE(save(store, {"a", 1, job(2)}, act()));
        ASSERT_TRUE(save(store, {"a", 2, job(3)}, act()));
        const auto state = undo(store, "a", 3, act("", "Bob"));
        EXPECT_EQ(state->revision, 2);
        EXPECT_EQ(state->changed_by, "Bob");
        EXPECT_TRUE(state->can_redo);
    }
    {
        Store store = opened(folder);
        EXPECT_EQ(undo(store, "a", 2, act())->job, job(1));
        EXPECT_EQ(code(undo(store, "a", 1, act())), "nothing-to-undo");
    }
    Store store = opened(folder);
    EXPECT_EQ(redo(store, "a", 1, act())->job, job(2));
    EXPECT_EQ(redo(store, "a", 2, act())->job, job(3));
    EXPECT_EQ(code(redo(store, "a", 3, act())), "nothing-to-redo");
}

TEST(Undo, WhatWasUndoneStaysInTheHistoryButAChangeAfterwardsEndsItsRedo) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1), act()));
    ASSERT_TRUE(save(store, {"a", 1, job(2)}, act()));
    ASSERT_TRUE(undo(store, "a", 2, act()));
    EXPECT_TRUE(revisions(store, "a")->front().undone);
    EXPECT_FALSE(revisions(store, "a")->back().undone);
    const auto saved = save(store, {"a", 1, job(3)}, act());
    EXPECT_EQ(saved->state.revision, 3);
    EXPECT_FALSE(saved->state.can_redo);
    EXPECT_EQ(undo(store, "a", 3, act())->revision, 1);
    EXPECT_EQ(redo(store, "a", 1, act())->revision, 3);
    const auto old = revision(store, "a", 2);
    EXPECT_EQ(old->job, job(2));
    EXPECT_TRUE(old->undone);
}

TEST(Undo, IsRefusedToWhoHasNotSeenTheNewestRevision) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1), act()));
    ASSERT_TRUE(save(store, {"a", 1, job(2)}, act()));
    EXPECT_EQ(code(undo(store, "a", 1, act())), "old-base");
    ASSERT_TRUE(undo(store, "a", 2, act()));
    EXPECT_EQ(code(redo(store, "a", 2, act())), "old-base");
}

TEST(Undo, AChangeBegunBeforeItIsMergedWithIt) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", before, act()));
    ASSERT_TRUE(save(store, {"a", 1, mine}, act()));
    ASSERT_TRUE(undo(store, "a", 2, act()));
    const auto saved = save(store, {"a", 2, both}, act());
    ASSERT_TRUE(saved && saved->saved);
    EXPECT_TRUE(merge::same_job(saved->state.job, theirs)) << "the load new, Ze as undone";
}

/// Undo and redo as anybody would write them in memory.
struct Model {
    std::vector<long> undo, redo;
    std::map<long, std::string> jobs;
    long current = 1, last = 1;
};

void step(Model& model, Store& store, int what, int load) {
    if (what == 0 && !model.undo.empty()) {
        model.redo.push_back(model.current);
        model.current = model.undo.back();
        model.undo.pop_back();
        RC_ASSERT(undo(store, "a", model.redo.back(), act()).has_value());
    } else if (what == 1 && !model.redo.empty()) {
        model.undo.push_back(model.current);
        model.current = model.redo.back();
        model.redo.pop_back();
        RC_ASSERT(redo(store, "a", model.undo.back(), act()).has_value());
    } else if (what > 1 && model.jobs[model.current] != job(load)) {
        RC_ASSERT(save(store, {"a", model.current, job(load)}, act()).has_value());
        model.undo.push_back(model.current);
        model.redo.clear();
        model.current = ++model.last;
        model.jobs[model.current] = job(load);
    }
}

RC_GTEST_PROP(Undo, DoesWhatTwoStacksDoThroughAnyRestarts, ()) {
    const Folder folder;
    auto store = open(folder.store());
    Model model;
    model.jobs[1] = job(0);
    RC_ASSERT(create(*store, "a", job(0), act()).has_value());
    for (int i = *rc::gen::inRange(1, 25); i > 0; --i) {
        step(model, *store, *rc::gen::inRange(0, 4), *rc::gen::inRange(0, 5));
        if (*rc::gen::inRange(0, 4) == 0) store = open(folder.store());
        const auto state = load(*store, "a");
        RC_ASSERT(state->revision == model.current);
        RC_ASSERT(state->job == model.jobs[model.current]);
        RC_ASSERT(state->can_undo == !model.undo.empty());
        RC_ASSERT(state->can_redo == !model.redo.empty());
    }
    RC_ASSERT(revisions(*store, "a")->size() == model.jobs.size());
    for (const auto& [number, text] : model.jobs) {
        RC_ASSERT(revision(*store, "a", number)->job == text);
    }
}

}  // namespace
}  // namespace toft::store
