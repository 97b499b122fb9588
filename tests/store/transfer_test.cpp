#include "store/transfer.h"

#include "trying.h"

#include <rapidcheck/gtest.h>

#include <set>

namespace toft::store {
namespace {

using namespace testing;

const std::string picture = std::string("\xff\xd8\xff\0 picture", 12);

std::function<std::string()> fresh() {
    return [count = 0]() mutable { return "fresh-" + std::to_string(++count); };
}

/// Two jobs: one with a whole life, one put away.
void fill(Store& store) {
    ASSERT_TRUE(create(store, "a", job(1), act("begun")));
    ASSERT_TRUE(save(store, {"a", 1, job(2)}, act("two", "Bob")));
    ASSERT_TRUE(undo(store, "a", 2, act()));
    ASSERT_TRUE(save(store, {"a", 1, job(3, "Barn \\\" Ω")}, act("three")));
    ASSERT_TRUE(save(store, {"a", 3, job(4)}, act("four")));
    ASSERT_TRUE(undo(store, "a", 4, act()));
    ASSERT_TRUE(add_photo(store, {"a", "/load_w", "note", "image/jpeg", picture}, act()));
    ASSERT_TRUE(add_reading(store, {"a", "/load_w", 0.1, "ohm", "no. 7", ""}, act()));
    ASSERT_TRUE(issue_papers(
        store, {"a", 3, {{"p.pdf", "P", "application/pdf", 0, std::string("\0\xff", 2)}}},
        act("issued")));
    ASSERT_TRUE(create(store, "b", job(9), act()));
    ASSERT_TRUE(set_archived(store, "b", true));
    ASSERT_TRUE(set_own_prices(store, {"mine", "x,y\n"}).empty());
    ASSERT_TRUE(set_setting(store, "pair.1", "secret-hash").empty());
}

TEST(Transfer, ANewStoreFromAnExportExportsTheSame) {
    const Folder folder, other;
    Store from = opened(folder), to = opened(other);
    fill(from);
    const auto text = export_all(from);
    ASSERT_TRUE(text);
    EXPECT_EQ(text->find("secret-hash"), std::string::npos) << "settings stay behind";
    const auto brought = import_text(to, *text, act(), fresh());
    ASSERT_TRUE(brought) << says(brought);
    ASSERT_EQ(brought->size(), 2u);
    EXPECT_EQ((*brought)[0].says, "new here");
    EXPECT_TRUE((*brought)[0].written);
    EXPECT_EQ(*export_all(to), *text);
    const auto state = load(to, "a");
    EXPECT_EQ(state->revision, 3);
    EXPECT_TRUE(state->can_undo && state->can_redo);
    EXPECT_EQ(photo(to, photos(to, "a")->front().photo)->bytes, picture);
    EXPECT_TRUE(load(to, "b")->archived);
    EXPECT_EQ(jobs(to, {"barn", false})->size(), 1u);
}

TEST(Transfer, WhatIsHereAlreadyIsLeft) {
    const Folder folder;
    Store store = opened(folder);
    fill(store);
    const auto text = export_all(store);
    const auto brought = import_text(store, *text, act(), fresh());
    ASSERT_TRUE(brought);
    EXPECT_EQ((*brought)[0].says, "was here already");
    EXPECT_FALSE((*brought)[0].written);
    EXPECT_EQ(*export_all(store), *text);
    ASSERT_TRUE(save(store, {"a", 3, job(5)}, act()));
    EXPECT_FALSE(import_text(store, *text, act(), fresh())->front().written) << "here is more";
    EXPECT_EQ(load(store, "a")->job, job(5));
}

TEST(Transfer, WhatWentOnElsewhereIsCarriedOn) {
    const Folder folder, other;
    Store here = opened(folder), there = opened(other);
    fill(here);
    ASSERT_TRUE(import_text(there, *export_all(here), act(), fresh()));
    ASSERT_TRUE(save(there, {"a", 3, job(6)}, act("on site")));
    const auto brought = import_text(here, *export_job(there, "a"), act(), fresh());
    ASSERT_TRUE(brought);
    EXPECT_EQ(brought->front().says, "carried on from revision 3 to 5");
    EXPECT_EQ(load(here, "a")->job, job(6));
    EXPECT_EQ(*export_job(here, "a"), *export_job(there, "a"));
}

TEST(Transfer, WhatWentOnDifferentlyComesInBesideWithWordsSayingSo) {
    const Folder folder, other;
    Store here = opened(folder), there = opened(other);
    fill(here);
    ASSERT_TRUE(import_text(there, *export_all(here), act(), fresh()));
    ASSERT_TRUE(save(there, {"a", 3, job(6)}, act("on site")));
    ASSERT_TRUE(save(here, {"a", 3, job(7)}, act("at the desk")));
    const auto brought = import_text(here, *export_job(there, "a"), act("", "Cid"), fresh());
    ASSERT_TRUE(brought);
    EXPECT_EQ(brought->front().id, "fresh-1");
    EXPECT_EQ(brought->front().was_id, "a");
    EXPECT_EQ(load(here, "a")->job, job(7));
    EXPECT_EQ(load(here, "fresh-1")->job, job(6));
    const auto newest = revisions(here, "fresh-1")->front();
    EXPECT_EQ(newest.what, "brought in under a new id: the job a went on differently here");
    EXPECT_EQ(newest.by, "Cid");
    EXPECT_EQ(photos(here, "fresh-1")->size(), 1u);
}

TEST(Transfer, PhotosReadingsAndPapersThatAreMissingAreAdded) {
    const Folder folder, other;
    Store here = opened(folder), there = opened(other);
    fill(here);
    ASSERT_TRUE(import_text(there, *export_all(here), act(), fresh()));
    ASSERT_TRUE(add_photo(there, {"a", "", "another", "image/jpeg", picture}, act()));
    ASSERT_TRUE(add_reading(there, {"a", "x", 3, "", "", ""}, act()));
    const auto brought = import_text(here, *export_job(there, "a"), act(), fresh());
    EXPECT_EQ(brought->front().says,
              "was here already; 2 of its photos, readings and papers were not");
    EXPECT_EQ(photos(here, "a")->size(), 2u);
    EXPECT_EQ(readings(here, "a")->size(), 2u);
    EXPECT_EQ(issues(here, "a")->size(), 1u);
}

TEST(Transfer, TheOwnPriceBookIsNotOverwritten) {
    const Folder folder, other;
    Store here = opened(folder), there = opened(other);
    fill(there);
    ASSERT_TRUE(set_own_prices(here, {"ours", "z\n"}).empty());
    ASSERT_TRUE(import_text(here, *export_all(there), act(), fresh()));
    EXPECT_EQ((*own_prices(here))->name, "ours");
}

/// All faults of a text as "pointer code".
std::set<std::string> ails(const std::string& text) {
    const Folder folder;
    Store store = opened(folder);
    const auto brought = import_text(store, text, act(), fresh());
    std::set<std::string> found;
    if (brought) return found;
    for (const Fault& fault : brought.error()) found.insert(fault.pointer + " " + fault.code);
    EXPECT_TRUE(jobs(store, {"", true})->empty()) << "nothing of it is taken";
    return found;
}

using Found = std::set<std::string>;

TEST(Transfer, AllThatAilsATextIsSaidAtOnce) {
    EXPECT_EQ(ails("{"), Found{" not-json"});
    EXPECT_EQ(ails("[]"), (Found{" missing", "/format missing"}));
    EXPECT_EQ(ails(R"({"format":"toft-job/1"})"), Found{"/format format"});
    EXPECT_EQ(ails(R"({"format":"toft-store/1","jobs":[{"id":"a b","current":2,"changed_at":"1",
        "revisions":[{"revision":1,"parent":4,"at":"1","job":[]},{"revision":1,"at":7}],
        "photos":[{"type":"image/png","base64":"x","revision":1,"at":"1"}],
        "readings":[{"fact":"x","value":"1","revision":9,"at":"1"}],
        "issues":[{"revision":1,"at":"1","files":[]}]}, 7]})"),
              (Found{"/jobs/0/id bad-id", "/jobs/0/current bad-revision",
                     "/jobs/0/revisions/0 bad-revision", "/jobs/0/revisions/0/job not-a-job",
                     "/jobs/0/revisions/1 bad-revision", "/jobs/0/revisions/1/at missing",
                     "/jobs/0/revisions/1/job missing", "/jobs/0/photos/0/base64 base64",
                     "/jobs/0/photos/0 photo-size", "/jobs/0/readings/0/value missing",
                     "/jobs/0/readings/0/revision bad-revision", "/jobs/0/issues/0 no-files",
                     "/jobs/1 missing", "/jobs/1/id missing", "/jobs/1/current missing",
                     "/jobs/1/current bad-revision", "/jobs/1/changed_at missing"}));
    EXPECT_EQ(ails(R"({"format":"toft-store/1","jobs":[{"id":"a","current":1,"changed_at":"1",
        "revisions":[{"revision":1,"redo":1,"at":"1","job":{}}]},{"id":"a","current":1,
        "changed_at":"1","revisions":[{"revision":1,"at":"1","job":{}}]}]})"),
              (Found{"/jobs/0/revisions/0 bad-revision", "/jobs/1/id bad-id"}));
    EXPECT_EQ(ails(R"({"format":"toft-store/1","jobs":[]})"), Found{});
}

RC_GTEST_PROP(Transfer, ASpoiltTextIsTakenWholeOrNotAtAll, ()) {
    static const Folder folder;
    static Store source = opened(folder);
    static const std::string text = [] {
        fill(source);
        return export_all(source).value();
    }();
    std::string spoilt = text;
    for (int i = *rc::gen::inRange(1, 4); i > 0; --i) {
        spoilt[*rc::gen::inRange<std::size_t>(0, spoilt.size())] = *rc::gen::arbitrary<char>();
    }
    const Folder other;
    Store store = opened(other);
    const auto brought = import_text(store, spoilt, act(), fresh());
    if (brought) {
        RC_ASSERT(export_all(store).has_value());
    } else {
        RC_ASSERT(jobs(store, {"", true})->empty());
    }
}

TEST(Transfer, AJobThatIsNotThereIsSaid) {
    const Folder folder;
    Store store = opened(folder);
    EXPECT_EQ(code(export_job(store, "x")), "no-such-job");
}

TEST(Transfer, AnIdIsThatOfRfc4122) {
    EXPECT_EQ(id_of(0, 0), "00000000-0000-4000-8000-000000000000");
    EXPECT_EQ(id_of(~0ull, ~0ull), "ffffffff-ffff-4fff-bfff-ffffffffffff");
    EXPECT_EQ(id_of(0x0123456789abcdefull, 0x0123456789abcdefull),
              "01234567-89ab-4def-8123-456789abcdef");
}

}  // namespace
}  // namespace toft::store
