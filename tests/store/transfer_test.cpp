#include "store/transfer.h"

#include "codec/limits.h"
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

/// The text with a time in place of each "now".
std::string dated(std::string text) {
    const std::string mark = "\"now\"";
    for (std::size_t at = text.find(mark); at != std::string::npos; at = text.find(mark)) {
        text.replace(at, mark.size(), "\"2026-11-29T11:00:00Z\"");
    }
    return text;
}

TEST(Transfer, AllThatAilsATextIsSaidAtOnce) {
    EXPECT_EQ(ails("{"), Found{" not-json"});
    EXPECT_EQ(ails("[]"), (Found{" missing", "/format missing"}));
    EXPECT_EQ(ails(R"({"format":"toft-job/1"})"), Found{"/format format"});
    EXPECT_EQ(ails(dated(R"({"format":"toft-store/1","jobs":[{"id":"a b","current":2,
        "changed_at":"now",
        "revisions":[{"revision":1,"parent":4,"at":"now","job":[]},{"revision":1,"at":7}],
        "photos":[{"type":"image/png","base64":"x","revision":1,"at":"now"}],
        "readings":[{"fact":"x","value":"1","revision":9,"at":"now"}],
        "issues":[{"revision":1,"at":"now","files":[]}]}, 7]})")),
              (Found{"/jobs/0/id bad-id", "/jobs/0/current bad-revision",
                     "/jobs/0/revisions/0 bad-revision", "/jobs/0/revisions/0/job not-a-job",
                     "/jobs/0/revisions/1 bad-revision", "/jobs/0/revisions/1/at missing",
                     "/jobs/0/revisions/1/job missing", "/jobs/0/photos/0/base64 base64",
                     "/jobs/0/photos/0 photo-size", "/jobs/0/readings/0/value missing",
                     "/jobs/0/readings/0/revision bad-revision", "/jobs/0/issues/0 no-files",
                     "/jobs/1 missing"}));
    EXPECT_EQ(ails(dated(R"({"format":"toft-store/1","jobs":[{"id":"a","current":1,
        "changed_at":"now","revisions":[{"revision":1,"redo":1,"at":"now","job":{}}]},
        {"id":"a","current":1,"changed_at":"now",
        "revisions":[{"revision":1,"at":"now","job":{}}]}]})")),
              (Found{"/jobs/0/revisions/0 bad-revision", "/jobs/1/id bad-id"}));
    EXPECT_EQ(ails(R"({"format":"toft-store/1","jobs":[]})"), Found{});
}

/// A text with one job, whose parts may be replaced.
std::string one_job(const std::string& from, const std::string& to) {
    std::string text = R"({"format":"toft-store/1","jobs":[{"id":"a","current":1,
        "changed_at":"2026-11-29T11:00:00Z","changed_by":"Ann","revisions":[{"revision":1,
        "at":"2026-11-29T11:00:00Z","by":"Ann","what":"begun","job":{"title":"t"}}],
        "photos":[{"fact":"/title","revision":1,"note":"","type":"image/jpeg",
        "at":"2026-11-29T11:00:00Z","by":"Ann","base64":"/9j/"}],
        "issues":[{"revision":1,"at":"2026-11-29T11:00:00Z","by":"Ann","what":"",
        "files":[{"name":"p.pdf","title":"P","type":"application/pdf","base64":""}]}]}]})";
    const std::size_t at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    return text.replace(at, from.size(), to);
}

TEST(Transfer, PapersAreOfTheTypeThatTheirNameSays) {
    EXPECT_EQ(ails(one_job("P", "P")), Found{});
    const Found odd{"/jobs/0/issues/0 bad-type"};
    EXPECT_EQ(ails(one_job("application/pdf", "text/html")), odd);
    EXPECT_EQ(ails(one_job("application/pdf", "text/csv; charset=utf-8")), odd);
    EXPECT_EQ(ails(one_job("p.pdf", "p.html")), odd);
    EXPECT_EQ(ails(one_job("p.pdf", "p.svg")), odd);
    EXPECT_EQ(ails(one_job("p.pdf", "pdf")), odd);
}

TEST(Transfer, WhoDidWhatAndWhenIsCheckedAsIfItWereDoneHere) {
    const std::string at = "\"at\":\"2026-11-29T11:00:00Z\"";
    EXPECT_EQ(ails(one_job(at, R"("at":"yesterday")")), Found{"/jobs/0/revisions/0 bad-time"});
    EXPECT_EQ(ails(one_job("\"changed_at\":\"2026-11-29T11:00:00Z\"",
                           R"("changed_at":"2026-11-29 11:00:00 ")")),
              Found{"/jobs/0 bad-time"});
    const std::string by = "\"by\":\"Ann\"";
    EXPECT_EQ(ails(one_job(by, "\"by\":\"" + std::string(longest_author, 'x') + "\"")), Found{});
    EXPECT_EQ(ails(one_job(by, "\"by\":\"" + std::string(longest_author + 1, 'x') + "\"")),
              Found{"/jobs/0/revisions/0 bad-author"});
    EXPECT_EQ(ails(one_job(by, R"("by":"A\u0007")")), Found{"/jobs/0/revisions/0 bad-author"});
    EXPECT_EQ(ails(one_job("begun", std::string(longest_words + 1, 'x'))),
              Found{"/jobs/0/revisions/0 too-long"});
    EXPECT_EQ(ails(one_job("/title", "/" + std::string(400, 'x'))),
              Found{"/jobs/0/photos/0 bad-pointer"});
    EXPECT_EQ(ails(one_job(R"("title":"t")", R"("title":"t\u0000x")")),
              Found{"/jobs/0/revisions/0/job/title bad-text"});
}

TEST(Transfer, APriceBookIsLookedAtBeforeItIsTaken) {
    const Folder folder;
    Store store = opened(folder);
    const std::string text =
        R"({"format":"toft-store/1","jobs":[],"prices":{"name":"n","csv":"c"}})";
    const auto refused =
        import_text(store, text, act(), fresh(), [](const OwnPrices& prices) -> Faults {
            return {{"odd", "/csv", prices.name + prices.csv, "", {}}};
        });
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().pointer, "/prices/csv");
    EXPECT_EQ(refused.error().front().says, "nc");
    EXPECT_FALSE(*own_prices(store));
    EXPECT_TRUE(
        import_text(store, text, act(), fresh(), [](const OwnPrices&) -> Faults { return {}; }));
    EXPECT_EQ((*own_prices(store))->name, "n");
}

/// Few bytes that would become much memory.
TEST(Transfer, ATextOfCountlessValuesIsRefusedBeforeItIsReadIn) {
    const auto crowd = [](std::size_t count) {
        std::string text = R"({"format":"toft-store/1","jobs":[[])";
        text.reserve(text.size() + 3 * count + 2);
        for (std::size_t i = 1; i < count; ++i) text += ",[]";
        return text + "]}";
    };
    EXPECT_EQ(ails(crowd(most_values)), Found{" too-many"});
    EXPECT_EQ(ails(crowd(200'000)), Found{"/jobs too-many"});
    EXPECT_EQ(ails(crowd(2000)).size(), codec::most_faults);
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
