// toft dark: what each fault takes with it, as a screen and as JSON.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Dark : public ::testing::Test {
protected:
    Program program_;
};

TEST_F(Dark, TheScreenTellsFaultsDevicesReasonsAndCautions) {
    const Ran ran = program_.run({"dark", example("demo")});
    EXPECT_EQ(ran.code, 0);
    for (const char* part : {"WHAT GOES DARK", "weak earth fault on Sockets", "■ dark: Sockets",
                             "short circuit on the run", "loss of the supply", "WHO ASKS FOR WHAT",
                             "411.3.3", "type A", "competent, licensed person"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(Dark, NoLineIsWiderThanAScreen) {
    for (const char* name : {"demo", "three-facts", "three-phase-barn", "tt-shed"}) {
        std::istringstream lines(program_.run({"dark", example(name)}).out);
        std::string line;
        while (std::getline(lines, line)) {
            std::size_t count = 0;
            for (const char c : line) {
                count += (static_cast<unsigned char>(c) & 0xC0u) != 0x80u ? 1 : 0;
            }
            EXPECT_LE(count, 88u) << line;
        }
    }
}

TEST_F(Dark, JsonIsThatOfTheAnswersScheme) {
    const auto dark =
        nlohmann::json::parse(program_.run({"dark", example("demo"), "--rank", "2", "--json"}).out);
    const auto answer =
        nlohmann::json::parse(program_.run({"design", example("demo"), "--json"}).out);
    EXPECT_EQ(dark.at("format"), "toft-dark/1");
    EXPECT_EQ(dark.at("dark"), answer.at("schemes").at(1).at("dark"));
    EXPECT_EQ(dark.at("scheme"), answer.at("schemes").at(1).at("key"));
}

TEST_F(Dark, LeavesWithTheCodesOfTheOtherCommands) {
    EXPECT_EQ(program_.run({"dark", example("caravan-no-scheme")}).code, 1);
    EXPECT_EQ(program_.run({"dark", "none.json"}).code, 2);
    EXPECT_EQ(program_.run({"dark", example("demo"), "--rank", "900"}).code, 2);
    EXPECT_EQ(program_.run({"dark"}).code, 4);
    const int design = program_.run({"design", example("three-facts")}).code;
    EXPECT_EQ(program_.run({"dark", example("three-facts")}).code, design);
    const Ran ran = program_.run({"dark", "-", "--json"}, "{}");
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(nlohmann::json::parse(ran.out).at("format"), "toft-faults/1");
}

TEST_F(Dark, ItsSchemaIsPrinted) {
    const Ran ran = program_.run({"schema", "dark"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(nlohmann::json::parse(ran.out).at("title"), "What goes dark");
}

}  // namespace
}  // namespace toft::cli
