// toft why: the earthing decision, as a screen and as JSON.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class Why : public ::testing::Test {
protected:
    Program program_;
};

TEST_F(Why, TheScreenAsksFindsConcludesAndCautions) {
    const Ran ran = program_.run({"why", example("demo")});
    EXPECT_EQ(ran.code, 0);
    for (const char* part : {"Potter's studio", "What earth does the supply offer?", "22 kΩ",
                             "ruled out", "WHERE THE WAYS STAND", "risk left", "would change it",
                             "IN SHORT", "competent, licensed person"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(Why, NoLineIsWiderThanAScreen) {
    for (const char* name : {"demo", "three-facts", "caravan-no-scheme", "tt-shed"}) {
        std::istringstream lines(program_.run({"why", example(name)}).out);
        std::string line;
        while (std::getline(lines, line)) EXPECT_LE(characters(line), 88u) << line;
    }
}

TEST_F(Why, AWayThatTheLawForbidsIsNoFaultOfTheProgramOrTheJob) {
    const Ran ran = program_.run({"why", example("caravan-no-scheme")});
    EXPECT_EQ(ran.code, 0);
    EXPECT_NE(ran.out.find("the law forbids it"), std::string::npos);
}

TEST_F(Why, JsonIsTheWalkOfTheAnswer) {
    const auto why = nlohmann::json::parse(program_.run({"why", example("demo"), "--json"}).out);
    const auto answer =
        nlohmann::json::parse(program_.run({"design", example("demo"), "--json"}).out);
    EXPECT_EQ(why.at("format"), "toft-why/1");
    EXPECT_EQ(why.at("walks"), answer.at("why"));
}

TEST_F(Why, AJobAtFaultIsSaidSo) {
    EXPECT_EQ(program_.run({"why", "none.json"}).code, 2);
    EXPECT_EQ(program_.run({"why"}).code, 4);
    const Ran ran = program_.run({"why", "-", "--json"}, "{}");
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(nlohmann::json::parse(ran.out).at("format"), "toft-faults/1");
}

}  // namespace
}  // namespace toft::cli
