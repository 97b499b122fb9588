// A price book of the user's own.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Prices : public ::testing::Test {
protected:
    /// The book to begin with, `from` replaced.
    std::string book(const std::string& from, const std::string& to) const {
        std::string text = program_.run({"prices", "--csv"}).out;
        const std::size_t at = text.find(from);
        EXPECT_NE(at, std::string::npos) << from;
        return program_.file("my-prices.csv", text.replace(at, from.size(), to));
    }
    std::string demo() const { return std::string(TOFT_SOURCE_DIR) + "/examples/demo.json"; }

    Program program_;
};

TEST_F(Prices, ABookToBeginWithIsAcceptedAndItsNameStandsByThePrice) {
    const std::string path = book("margin percent,%,0.00", "margin percent,%,10");
    const Ran checked = program_.run({"prices", "--check", path});
    EXPECT_EQ(checked.code, 0) << checked.out << checked.error;
    EXPECT_NE(checked.out.find("every item is priced"), std::string::npos) << checked.out;
    const Ran plain = program_.run({"design", demo(), "--json"});
    const Ran own = program_.run({"design", demo(), "--json", "--prices", path});
    ASSERT_EQ(own.code, plain.code) << own.error;
    const auto price = [](const Ran& ran) {
        return nlohmann::json::parse(ran.out)["schemes"][0]["price"];
    };
    EXPECT_EQ(price(own)["basis"], "my-prices.csv");
    EXPECT_GT(price(own)["total"], price(plain)["total"]);
    EXPECT_LT(price(plain)["low"]["total"], price(plain)["total"]);
    EXPECT_GT(price(plain)["high"]["total"], price(plain)["total"]);
}

TEST_F(Prices, FaultsOfABookComeAllAtOnceAndNothingIsWorkedOut) {
    const std::string path = book("duct,m,3.60", "duct,roll,£3.60");
    for (const char* command : {"design", "ask", "levers", "later", "why", "draw"}) {
        const Ran ran = program_.run({command, demo(), "--prices", path});
        EXPECT_EQ(ran.code, 2) << command;
        EXPECT_NE(ran.error.find("unit m, not by roll"), std::string::npos) << ran.error;
        EXPECT_NE(ran.error.find("sums are"), std::string::npos) << ran.error;
        EXPECT_EQ(ran.out, "") << command;
    }
    const Ran json = program_.run({"design", demo(), "--json", "--prices", path});
    EXPECT_EQ(json.code, 2);
    EXPECT_EQ(nlohmann::json::parse(json.out)["faults"].size(), 2u) << json.out;
    const Ran none = program_.run({"design", demo(), "--prices", "no-such-file.csv"});
    EXPECT_EQ(none.code, 2);
    EXPECT_EQ(program_.run({"rules", "--prices", path}).code, 4) << "it prices nothing";
}

TEST_F(Prices, CheckNamesWhatIsMissingAndWhatIsFarFromUsual) {
    std::string text = program_.run({"prices", "--csv"}).out;
    const std::size_t at = text.find("cable 3x10,");
    text.erase(at, text.find('\n', at) + 1 - at);
    text.replace(text.find("duct,m,3.60,3.24,4.32"), 21, "duct,m,36.0,,");
    const Ran ran = program_.run({"prices", "--check", program_.file("my.csv", text)});
    EXPECT_EQ(ran.code, 0) << ran.error;
    EXPECT_NE(ran.out.find("cable 3x10"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("duct: 36.00"), std::string::npos) << ran.out;
    EXPECT_EQ(ran.out.find("clips"), std::string::npos) << ran.out;
}

TEST_F(Prices, ArePrintedInWordsAndAsJson) {
    const Ran words = program_.run({"prices"});
    EXPECT_EQ(words.code, 0);
    EXPECT_NE(words.out.find("demo price book"), std::string::npos);
    EXPECT_NE(words.out.find("labour hour"), std::string::npos);
    const auto json = nlohmann::json::parse(program_.run({"prices", "--json"}).out);
    EXPECT_EQ(json["format"], "toft-prices/1");
    EXPECT_GT(json["items"].size(), 200u);
}

}  // namespace
}  // namespace toft::cli
