#include "store/jobs.h"

#include "trying.h"

namespace toft::store {
namespace {

using namespace testing;

std::string ids(const Outcome<std::vector<JobRow>>& rows) {
    std::string text;
    for (const JobRow& row : rows.value()) text += row.id + " ";
    return text;
}

TEST(Jobs, ANewJobIsItsFirstRevision) {
    const Folder folder;
    Store store = opened(folder);
    const auto state = create(store, "a", job(3000), act("survey", "Ann", "2026-11-29T09:00:00Z"));
    ASSERT_TRUE(state);
    EXPECT_EQ(state->id, "a");
    EXPECT_EQ(state->revision, 1);
    EXPECT_EQ(state->job, job(3000));
    EXPECT_EQ(state->title, "Studio");
    EXPECT_EQ(state->changed_at, "2026-11-29T09:00:00Z");
    EXPECT_EQ(state->changed_by, "Ann");
    EXPECT_FALSE(state->archived || state->can_undo || state->can_redo);
    EXPECT_EQ(revision(store, "a", 1)->what, "survey");
}

TEST(Jobs, AJobMadeTwiceIsMadeOnceButAnIdIsNotSharedByTwo) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1), act()));
    ASSERT_TRUE(save(store, {"a", 1, job(2)}, act()));
    const auto again = create(store, "a", R"({"load_w": 1, "title": "Studio"})", act());
    ASSERT_TRUE(again) << "its answer may have been lost";
    EXPECT_EQ(again->revision, 2);
    EXPECT_EQ(code(create(store, "a", job(2), act())), "taken");
}

TEST(Jobs, WhatCannotBeAJobIsRefusedWithAllThatAilsIt) {
    const Folder folder;
    Store store = opened(folder);
    const auto spoilt = create(store, "a b", "{", act());
    ASSERT_FALSE(spoilt);
    ASSERT_EQ(spoilt.error().size(), 2u);
    EXPECT_EQ(spoilt.error()[0].code, "not-json");
    EXPECT_EQ(spoilt.error()[1].code, "bad-id");
    EXPECT_EQ(code(create(store, "a", "[]", act())), "not-a-job");
    EXPECT_EQ(code(create(store, "", "{}", act())), "bad-id");
    EXPECT_EQ(code(create(store, std::string(65, 'a'), "{}", act())), "bad-id");
    EXPECT_TRUE(jobs(store)->empty());
}

TEST(Jobs, ATextIsKeptAsItIsWritten) {
    const Folder folder;
    Store store = opened(folder);
    const std::string odd = "{\n \"title\": \"\\u0001 \\ud83d\\ude00 ½ Ω\", \"x\": 1.500e-3 }";
    ASSERT_TRUE(create(store, "a", odd, act()));
    EXPECT_EQ(load(store, "a")->job, odd);
    ASSERT_TRUE(create(store, "b", "\xef\xbb\xbf{}", act()));
    EXPECT_EQ(load(store, "b")->job, "{}") << "a byte order mark is no part of the job";
    EXPECT_EQ(create(store, "c", R"({"title": 7})", act())->title, "");
}

TEST(Jobs, AreFoundByTheBeginningsOfWordsInAnyTextOfThem) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a",
                       R"({"title":"Café at Lapwing Field","b":[{"name":"Boathouse"}]})",
                       act("", "", "1")));
    ASSERT_TRUE(
        create(store, "b", R"({"title":"Barn","note":"boat on a trailer"})", act("", "", "2")));
    EXPECT_EQ(ids(jobs(store, {"boat", false})), "b a ");
    EXPECT_EQ(ids(jobs(store, {"BOATH", false})), "a ");
    EXPECT_EQ(ids(jobs(store, {"cafe field", false})), "a ") << "all words, accents or not";
    EXPECT_EQ(ids(jobs(store, {"house", false})), "");
    EXPECT_EQ(ids(jobs(store, {"", false})), "b a ");
    EXPECT_EQ(ids(jobs(store, {"  \" * ( ", false})), "b a ") << "nothing asked";
    EXPECT_EQ(ids(jobs(store, {"barn\" OR title:x", false})), "")
        << "words, no language of queries";
    EXPECT_EQ(ids(jobs(store, {"AND OR NOT", false})), "");
}

TEST(Jobs, TheWordsToBeFoundAreThoseOfTheCurrentRevision) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1, "Barn"), act()));
    ASSERT_TRUE(save(store, {"a", 1, job(1, "Studio")}, act()));
    EXPECT_EQ(ids(jobs(store, {"barn", false})), "");
    EXPECT_EQ(ids(jobs(store, {"studio", false})), "a ");
    ASSERT_TRUE(undo(store, "a", 2, act()));
    EXPECT_EQ(ids(jobs(store, {"barn", false})), "a ");
}

TEST(Jobs, ArchivedOnesAreListedOnlyWhenAskedFor) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1), act()));
    EXPECT_TRUE(set_archived(store, "a", true)->archived);
    EXPECT_EQ(ids(jobs(store)), "");
    EXPECT_EQ(ids(jobs(store, {"", true})), "a ");
    EXPECT_TRUE(jobs(store, {"", true})->front().archived);
    EXPECT_FALSE(set_archived(store, "a", false)->archived);
    EXPECT_EQ(ids(jobs(store)), "a ");
}

TEST(Jobs, WhatIsNotThereIsSaid) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", job(1), act()));
    EXPECT_EQ(code(load(store, "x")), "no-such-job");
    EXPECT_EQ(code(save(store, {"x", 1, job(1)}, act())), "no-such-job");
    EXPECT_EQ(code(save(store, {"a", 9, job(1)}, act())), "no-such-revision");
    EXPECT_EQ(code(undo(store, "x", 1, act())), "no-such-job");
    EXPECT_EQ(code(redo(store, "x", 1, act())), "no-such-job");
    EXPECT_EQ(code(set_archived(store, "x", true)), "no-such-job");
    EXPECT_EQ(code(revisions(store, "x")), "no-such-job");
    EXPECT_EQ(code(revision(store, "x", 1)), "no-such-job");
    EXPECT_EQ(code(revision(store, "a", 2)), "no-such-revision");
}

/// In a list it would be cut off there.
TEST(Jobs, NoTextOfAJobHoldsANulCharacter) {
    const Folder folder;
    Store store = opened(folder);
    const auto ails =
        create(store, "a", R"({"title":"Barn\u0000door","b":[{"c\u0000":1}]})", act());
    ASSERT_FALSE(ails);
    ASSERT_EQ(ails.error().size(), 2u);
    EXPECT_EQ(ails.error()[0].code, "bad-text");
    EXPECT_EQ(ails.error()[0].pointer, "/title");
    EXPECT_EQ(ails.error()[1].pointer, "/b/0");
    ASSERT_TRUE(create(store, "a", R"({"title":"Barn \\u0000 door"})", act()))
        << "a backslash and five letters are no such character";
    EXPECT_EQ(jobs(store, {})->front().title, "Barn \\u0000 door");
    EXPECT_EQ(code(save(store, {"a", 1, R"({"title":"\u0000"})"}, act())), "bad-text");
}

}  // namespace
}  // namespace toft::store
