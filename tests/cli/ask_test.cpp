// toft ask and toft levers: screens, JSON, exit codes.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Ask : public ::testing::Test {
protected:
    Program program_;
};

TEST_F(Ask, TheScreenAsksInOrderOfWorthAndSaysHow) {
    const Ran ran = program_.run({"ask", example("three-facts")});
    EXPECT_EQ(ran.code, 5) << "nobody said what the house draws, nor how deep the cable lies";
    for (const char* part : {"GO AND FIND OUT", "  1. ", "how: ", "on it hangs: ", "minutes",
                             "NOT WORTH A JOURNEY", "competent, licensed person"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(Ask, LeversSayWhatOneChangeBrings) {
    const Ran ran = program_.run({"levers", example("demo")});
    EXPECT_EQ(ran.code, 0);
    for (const char* part :
         {"WHAT ONE CHANGE WOULD BRING", "plastic section", "one change alone"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(Ask, ExitCodesAreThoseOfDesign) {
    for (const char* name : {"demo", "caravan-no-scheme", "three-facts", "tt-shed"}) {
        const int code = program_.run({"design", example(name), "--json"}).code;
        EXPECT_EQ(program_.run({"ask", example(name)}).code, code) << name;
        EXPECT_EQ(program_.run({"levers", example(name)}).code, code) << name;
    }
    EXPECT_EQ(program_.run({"ask"}).code, 4);
    EXPECT_EQ(program_.run({"levers", "none.json"}).code, 2);
}

TEST_F(Ask, JsonIsADocumentOfItsOwn) {
    const auto ask = nlohmann::json::parse(program_.run({"ask", example("demo"), "--json"}).out);
    EXPECT_EQ(ask.at("format"), "toft-ask/1");
    const auto levers =
        nlohmann::json::parse(program_.run({"levers", example("demo"), "--json"}).out);
    EXPECT_EQ(levers.at("format"), "toft-levers/1");
    EXPECT_FALSE(levers.at("levers").empty());
}

TEST_F(Ask, NoLineIsWiderThanAScreen) {
    for (const char* name : {"demo", "three-facts", "caravan-no-scheme"}) {
        for (const char* command : {"ask", "levers"}) {
            std::istringstream lines(program_.run({command, example(name)}).out);
            std::string line;
            while (std::getline(lines, line)) EXPECT_LE(characters(line), 88u) << line;
        }
    }
}

}  // namespace
}  // namespace toft::cli
