// Photos, readings and papers of a job.

#include "trying.h"

#include <cmath>
#include <limits>

namespace toft::store {
namespace {

using namespace testing;

const std::string jpeg = "\xff\xd8\xff\xe0 a picture";
const std::string png = "\x89PNG\r\n\x1a\n a picture";
const std::string webp = std::string("RIFF\0\0\0\0WEBP", 12) + " a picture";

const std::string two = R"({"buildings":[{"id":"house"},{"id":"shed","load_w":1}]})";
const std::string turned = R"({"buildings":[{"id":"shed","load_w":1},{"id":"house"}]})";
const std::string without = R"({"buildings":[{"id":"house"}]})";

TEST(Photos, AreKeptWithTheirFact) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    const auto added = add_photo(
        store, {"a", "/buildings/1/load_w", "the plate", "image/jpeg", jpeg}, act("", "Bob", "9"));
    ASSERT_TRUE(added);
    const auto listed = photos(store, "a");
    ASSERT_EQ(listed->size(), 1u);
    const Photo& one = listed->front();
    EXPECT_EQ(one.photo, added->photo);
    EXPECT_EQ(one.place.fact, "/buildings/1/load_w");
    EXPECT_EQ(one.note, "the plate");
    EXPECT_EQ(one.type, "image/jpeg");
    EXPECT_EQ(one.size, jpeg.size());
    EXPECT_EQ(one.by, "Bob");
    EXPECT_EQ(one.at, "9");
    EXPECT_EQ(one.bytes, "") << "a list is light";
    EXPECT_EQ(photo(store, one.photo)->bytes, jpeg);
    EXPECT_EQ(photo(store, one.photo)->job, "a");
}

TEST(Photos, StayWithTheirFactWhenBuildingsMove) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    ASSERT_TRUE(add_photo(store, {"a", "/buildings/1/load_w", "", "image/png", png}, act()));
    ASSERT_TRUE(save(store, {"a", 1, turned}, act()));
    EXPECT_EQ(photos(store, "a")->front().place.fact, "/buildings/0/load_w");
    ASSERT_TRUE(save(store, {"a", 2, without}, act()));
    EXPECT_TRUE(photos(store, "a")->front().place.gone);
    EXPECT_EQ(photos(store, "a")->front().place.fact, "/buildings/1/load_w") << "as it was given";
    ASSERT_TRUE(undo(store, "a", 3, act()));
    EXPECT_FALSE(photos(store, "a")->front().place.gone);
}

TEST(Photos, AreRefusedWithAllThatAilsThem) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    EXPECT_EQ(code(add_photo(store, {"a", "", "", "image/jpeg", png}, act())), "photo-type");
    EXPECT_EQ(code(add_photo(store, {"a", "", "", "image/svg+xml", "<svg/>"}, act())),
              "photo-type");
    EXPECT_EQ(code(add_photo(store, {"a", "", "", "image/webp", "RIFF"}, act())), "photo-type");
    EXPECT_EQ(code(add_photo(store, {"a", "", "", "image/jpeg", ""}, act())), "photo-size");
    EXPECT_EQ(
        code(add_photo(store, {"a", "", "", "image/jpeg", jpeg + std::string(largest_photo, 'x')},
                       act())),
        "photo-size");
    EXPECT_EQ(code(add_photo(store, {"x", "", "", "image/webp", webp}, act())), "no-such-job");
    const auto ails = add_photo(store, {"a", "/buildings/7", "", "image/jpeg", ""}, act());
    ASSERT_EQ(ails.error().size(), 2u);
    EXPECT_EQ(ails.error()[0].code, "bad-pointer");
    EXPECT_EQ(ails.error()[1].code, "photo-size");
    EXPECT_TRUE(photos(store, "a")->empty());
    EXPECT_TRUE(add_photo(store, {"a", "", "", "image/webp", webp}, act())) << "of the whole job";
}

TEST(Photos, TakenOutAreGoneAndTheirNumberIsNotGivenAgain) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    const long first = add_photo(store, {"a", "", "", "image/png", png}, act())->photo;
    EXPECT_TRUE(delete_photo(store, first).empty());
    EXPECT_EQ(code(delete_photo(store, first)), "no-such-photo");
    EXPECT_EQ(code(photo(store, first)), "no-such-photo");
    EXPECT_GT(add_photo(store, {"a", "", "", "image/png", png}, act())->photo, first);
    EXPECT_EQ(code(photos(store, "x")), "no-such-job");
}

TEST(Readings, AreKeptAsReadOffTheInstrument) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    ASSERT_TRUE(add_reading(store, {"a", "/buildings/1/load_w", 0.35, "ohm", "no. 7", "wet"},
                            act("", "Bob", "9")));
    ASSERT_TRUE(add_reading(store, {"a", "insulation, feed", 999, "Mohm", "", ""}, act()));
    ASSERT_TRUE(save(store, {"a", 1, turned}, act()));
    const auto all = readings(store, "a");
    ASSERT_EQ(all->size(), 2u);
    EXPECT_EQ((*all)[0].place.fact, "/buildings/0/load_w");
    EXPECT_EQ((*all)[0].value, 0.35);
    EXPECT_EQ((*all)[0].unit, "ohm");
    EXPECT_EQ((*all)[0].instrument, "no. 7");
    EXPECT_EQ((*all)[0].note, "wet");
    EXPECT_EQ((*all)[0].by, "Bob");
    EXPECT_EQ((*all)[1].place.fact, "insulation, feed") << "the name of a test stays";
    EXPECT_EQ(code(readings(store, "x")), "no-such-job");
}

TEST(Readings, AreRefusedWithAllThatAilsThem) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    const double none = std::numeric_limits<double>::quiet_NaN();
    const auto ails = add_reading(store, {"a", "", none, std::string(3000, 'x'), "", ""}, act());
    ASSERT_EQ(ails.error().size(), 3u);
    EXPECT_EQ(ails.error()[0].code, "bad-pointer");
    EXPECT_EQ(ails.error()[1].code, "bad-value");
    EXPECT_EQ(ails.error()[2].code, "too-long");
    EXPECT_EQ(code(add_reading(store, {"a", "/buildings/9", 1, "", "", ""}, act())), "bad-pointer");
    EXPECT_EQ(code(add_reading(store, {"x", "/a", 1, "", "", ""}, act())), "no-such-job");
}

/// A photo on the load of the second building, as some device calls and sends it.
NewPhoto sent_photo(const std::string& id, long revision = 0) {
    return {"a", "/buildings/1/load_w", "", "image/png", png, revision, id};
}
NewReading sent_reading(const std::string& id, long revision = 0) {
    return {"a", "/buildings/1/load_w", 0.4, "ohm", "", "", revision, id};
}

TEST(Photos, SentTwiceAreKeptOnce) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    ASSERT_TRUE(create(store, "b", two, act()));
    const auto first = add_photo(store, sent_photo("p-1"), act("", "Bob", "9"));
    ASSERT_TRUE(first);
    ASSERT_TRUE(save(store, {"a", 1, turned}, act()));
    const auto again = add_photo(store, sent_photo("p-1"), act("", "Cid"));
    ASSERT_TRUE(again) << says(again);
    EXPECT_EQ(again->photo, first->photo);
    EXPECT_EQ(again->by, "Bob");
    EXPECT_EQ(again->size, png.size());
    EXPECT_EQ(again->place.fact, "/buildings/0/load_w") << "where it is by now";
    EXPECT_EQ(photos(store, "a")->size(), 1u);
    ASSERT_TRUE(add_photo(store, sent_photo("p-2", 1), act()));
    ASSERT_TRUE(add_photo(store, sent_photo("", 1), act()));
    ASSERT_TRUE(add_photo(store, sent_photo("", 1), act())) << "without an id each is another";
    EXPECT_EQ(photos(store, "a")->size(), 4u);
    NewPhoto elsewhere = sent_photo("p-1");
    elsewhere.job = "b";
    EXPECT_EQ(code(add_photo(store, elsewhere, act())), "taken");
    EXPECT_EQ(code(add_photo(store, sent_photo("no id"), act())), "bad-id");
}

TEST(Readings, SentTwiceAreKeptOnce) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    ASSERT_TRUE(create(store, "b", two, act()));
    const auto first = add_reading(store, sent_reading("r-1"), act("", "Bob", "9"));
    ASSERT_TRUE(first);
    NewReading other = sent_reading("r-1");
    other.value = 7;
    const auto again = add_reading(store, other, act("", "Cid"));
    ASSERT_TRUE(again) << says(again);
    EXPECT_EQ(again->reading, first->reading);
    EXPECT_EQ(again->value, 0.4);
    EXPECT_EQ(again->by, "Bob");
    EXPECT_EQ(readings(store, "a")->size(), 1u);
    ASSERT_TRUE(add_reading(store, sent_reading(""), act()));
    ASSERT_TRUE(add_reading(store, sent_reading(""), act()));
    EXPECT_EQ(readings(store, "a")->size(), 3u);
    other.job = "b";
    EXPECT_EQ(code(add_reading(store, other, act())), "taken");
    EXPECT_EQ(code(add_reading(store, sent_reading("no id"), act())), "bad-id");
}

TEST(Readings, AndPhotosStayWithTheFactOfTheRevisionTheyWereMadeIn) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    ASSERT_TRUE(save(store, {"a", 1, turned}, act()));
    const auto reading = add_reading(store, sent_reading("", 1), act());
    ASSERT_TRUE(reading) << says(reading);
    EXPECT_EQ(reading->place.fact, "/buildings/0/load_w") << "the shed is first by now";
    EXPECT_EQ(readings(store, "a")->front().place.fact, "/buildings/0/load_w");
    EXPECT_EQ(add_photo(store, sent_photo("", 1), act())->place.fact, "/buildings/0/load_w");
    EXPECT_EQ(photos(store, "a")->front().place.revision, 1);
    EXPECT_EQ(add_reading(store, sent_reading(""), act())->place.fact, "/buildings/1/load_w")
        << "without a revision the pointer is meant as the job stands: of the house";
    NewReading lost = sent_reading("", 1);
    lost.fact = "/buildings/2/load_w";
    EXPECT_EQ(code(add_reading(store, lost, act())), "bad-pointer");
    EXPECT_EQ(code(add_reading(store, sent_reading("", 7), act())), "no-such-revision");
    EXPECT_EQ(code(add_photo(store, sent_photo("", 7), act())), "no-such-revision");
    ASSERT_TRUE(save(store, {"a", 2, without}, act()));
    EXPECT_TRUE(add_photo(store, sent_photo("", 1), act())->place.gone);
}

const PaperFile plan{"plan.pdf", "Plan", "application/pdf", 0, std::string("%PDF\0\xff", 6)};
const PaperFile sheet{"sheet.csv", "Materials", "text/csv; charset=utf-8", 0, ""};

TEST(Papers, AreFrozenAsIssued) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    const auto issued = issue_papers(store, {"a", 1, {plan, sheet}}, act("for the client", "Bob"));
    ASSERT_TRUE(issued);
    ASSERT_TRUE(save(store, {"a", 1, turned}, act()));
    ASSERT_TRUE(issue_papers(store, {"a", 2, {plan}}, act()));
    const auto all = issues(store, "a");
    ASSERT_EQ(all->size(), 2u);
    EXPECT_EQ(all->front().revision, 2) << "newest first";
    const Issue& old = all->back();
    EXPECT_EQ(old.issue, issued->issue);
    EXPECT_EQ(old.revision, 1);
    EXPECT_EQ(old.what, "for the client");
    EXPECT_EQ(old.by, "Bob");
    ASSERT_EQ(old.files.size(), 2u);
    EXPECT_EQ(old.files[0].name, "plan.pdf");
    EXPECT_EQ(old.files[0].title, "Plan");
    EXPECT_EQ(old.files[0].type, "application/pdf");
    EXPECT_EQ(old.files[0].size, 6u);
    EXPECT_EQ(old.files[0].bytes, "");
    EXPECT_EQ(paper(store, old.issue, "plan.pdf")->bytes, plan.bytes);
    EXPECT_EQ(paper(store, old.issue, "sheet.csv")->bytes, "");
    EXPECT_EQ(code(paper(store, old.issue, "x")), "no-such-paper");
    EXPECT_EQ(code(issues(store, "x")), "no-such-job");
}

TEST(Papers, AreRefusedWithAllThatAilsThem) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    EXPECT_EQ(code(issue_papers(store, {"a", 1, {}}, act())), "no-files");
    EXPECT_EQ(code(issue_papers(store, {"x", 1, {plan}}, act())), "no-such-job");
    PaperFile odd = plan;
    odd.name = "../plan.pdf";
    const auto ails = issue_papers(store, {"a", 3, {odd, plan, plan}}, act());
    ASSERT_EQ(ails.error().size(), 3u);
    EXPECT_EQ(ails.error()[0].code, "no-such-revision");
    EXPECT_EQ(ails.error()[1].code, "bad-name");
    EXPECT_EQ(ails.error()[2].code, "bad-name");
    EXPECT_TRUE(issues(store, "a")->empty());
}

TEST(Papers, AreOfAFewTypesAndOfNoneThatABrowserRuns) {
    const Folder folder;
    Store store = opened(folder);
    ASSERT_TRUE(create(store, "a", two, act()));
    PaperFile page = plan;
    page.type = "text/html";
    EXPECT_EQ(code(issue_papers(store, {"a", 1, {page}}, act())), "bad-type");
    page.name = "plan.html";
    EXPECT_EQ(code(issue_papers(store, {"a", 1, {page}}, act())), "bad-type");
    EXPECT_EQ(paper_type("a.pdf"), "application/pdf");
    EXPECT_EQ(paper_type("a.dxf"), "image/vnd.dxf");
    for (const char* none : {"a.html", "a.svg", "a.xml", "pdf", "a.pdf.js", "a.PDF", ""}) {
        EXPECT_EQ(paper_type(none), "") << none;
    }
}

TEST(Settings, AreKeptByName) {
    const Folder folder;
    Store store = opened(folder);
    EXPECT_FALSE(*setting(store, "pair.1"));
    EXPECT_TRUE(set_setting(store, "pair.1", "hash").empty());
    EXPECT_TRUE(set_setting(store, "pair.1", "other").empty());
    EXPECT_TRUE(set_setting(store, "pair.2", "more").empty());
    EXPECT_TRUE(set_setting(store, "theme", "dark").empty());
    EXPECT_EQ(**setting(store, "pair.1"), "other");
    EXPECT_EQ(settings(store, "pair.")->size(), 2u);
    EXPECT_TRUE(drop_setting(store, "pair.1").empty());
    EXPECT_FALSE(*setting(store, "pair.1"));
    EXPECT_EQ(code(set_setting(store, "", "x")), "bad-name");
    EXPECT_EQ(code(set_setting(store, ".own", "x")), "bad-name");
}

TEST(Settings, TheOwnPriceBookComesAndGoesWhole) {
    const Folder folder;
    Store store = opened(folder);
    EXPECT_FALSE(*own_prices(store));
    EXPECT_TRUE(set_own_prices(store, {"mine", "item,price\n"}).empty());
    EXPECT_EQ((*own_prices(store))->name, "mine");
    EXPECT_EQ((*own_prices(store))->csv, "item,price\n");
    EXPECT_TRUE(settings(store, "")->empty()) << "it is no setting of anybody's";
    EXPECT_TRUE(drop_own_prices(store).empty());
    EXPECT_FALSE(*own_prices(store));
}

}  // namespace
}  // namespace toft::store
