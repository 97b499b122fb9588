// Price books of one's own.

#include "request/bench.h"

#include "price/listing.h"
#include "request/asking.h"
#include "tables/embedded.h"

#include <gtest/gtest.h>

namespace toft::request {
namespace {

/// The invented book with a dearer hour of labour.
std::string dearer() {
    std::string text(tables::embedded_text("price/demo.csv"));
    const std::string row = "\nlabour hour,h,";
    const std::size_t from = text.find(row) + row.size();
    std::size_t end = from;
    for (int cell = 0; cell < 3; ++cell) end = text.find(',', end) + 1;
    return text.replace(from, end - from, "99,99,99,");
}

TEST(BenchOfPrices, TheSameTextIsReadOnce) {
    Bench bench = support::need(Bench::load(), "the bench");
    Faults faults;
    const std::string text(tables::embedded_text("price/demo.csv"));
    const Stock* first = bench.stock("mine", text, faults);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->book.name, "mine");
    EXPECT_EQ(bench.stock("mine", text, faults), first);
    EXPECT_EQ(bench.stock("mine", std::nullopt, faults), &bench.stock());
    EXPECT_EQ(bench.stock("mine", text, faults), first);
    ASSERT_TRUE(bench.stock("yours", text, faults));
    EXPECT_EQ(bench.stock("yours", text, faults)->book.name, "yours");
    EXPECT_TRUE(faults.empty());
}

TEST(BenchOfPrices, ABookAtFaultIsRefusedAsTheCommandLineRefusesIt) {
    const auto read = price::read_book("mine", "item,unit\n", bench().stock().catalogue);
    ASSERT_FALSE(read);
    const Tree answer = ask_for("prices", {{"prices", "item,unit\n"}, {"prices_name", "mine"}});
    ASSERT_EQ(answer["faults"].size(), read.error().size());
    EXPECT_EQ(answer["faults"][0]["says"], read.error().front().says);
    EXPECT_EQ(faults_of("prices", {{"prices", 3}}), Gist{"/prices wrong-kind"});
}

TEST(BenchOfPrices, AnswersAreAtThePricesOfTheBook) {
    const Tree job = example("three-facts");
    const double before = ask_for("first", {{"job", job}})["schemes"][0]["price"]["total"];
    std::string text(tables::embedded_text("price/demo.csv"));
    const Tree same = ask_for("first", {{"job", job}, {"prices", text}, {"prices_name", "mine"}});
    EXPECT_EQ(same["schemes"][0]["price"]["total"], before);
    EXPECT_EQ(same["schemes"][0]["price"]["basis"], "mine");
    const Tree after = ask_for("first", {{"job", job}, {"prices", dearer()}});
    EXPECT_GT(after["schemes"][0]["price"]["total"].get<double>(), before);
    EXPECT_EQ(ask_for("first", {{"job", job}})["schemes"][0]["price"]["total"], before);
}

}  // namespace
}  // namespace toft::request
