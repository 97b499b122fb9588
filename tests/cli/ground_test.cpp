// toft ground: what the ground of the place does, as a screen and as JSON.

#include "cli/program.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace toft::cli {
namespace {

class TheGround : public ::testing::Test {
protected:
    /// The demo job on another ground.
    std::string demo_with(const std::string& ground) const {
        auto job = nlohmann::json::parse(text_of(example("demo")));
        job["ground"] = nlohmann::json::parse(ground);
        return program_.file("job.json", job.dump());
    }
    Program program_;
};

TEST_F(TheGround, TheScreenSaysSoilElectrodeDistanceAndALostNeutral) {
    const Ran ran = program_.run({"ground", example("demo")});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(ran.error, "");
    for (const char* part :
         {"Potter's studio", "Ω·m", "one rod of 2.4 m", "at worst", "from the house's earth",
          "water pipe", "no island", "carry the supply earth", "own electrode", "mA",
          "For judgement, not a limit met", "competent, licensed person"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(TheGround, NoLineIsWiderThanAScreen) {
    for (const char* name : {"demo", "three-facts", "own-rod-greenhouse", "tt-shed"}) {
        std::istringstream lines(program_.run({"ground", example(name)}).out);
        std::string line;
        while (std::getline(lines, line)) EXPECT_LE(characters(line), 88u) << line;
    }
}

TEST_F(TheGround, NothingIsEverCalledSafe) {
    for (const char* name : {"demo", "three-facts", "own-rod-greenhouse", "tt-shed"}) {
        const Ran ran = program_.run({"ground", example(name)});
        EXPECT_EQ(ran.code, 0) << name;
        EXPECT_EQ(ran.out.find(" safe"), std::string::npos) << name;
    }
}

TEST_F(TheGround, FactsThatNobodyStatedAreNamed) {
    const Ran ran = program_.run({"ground", example("three-facts")});
    EXPECT_EQ(ran.code, 0);
    for (const char* part : {"READ FROM A RANGE", "resistivity of the soil"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(TheGround, ReadingsOfPinsAreListedWithWhatTheSoilFoundWouldGive) {
    const Ran ran = program_.run({"ground", demo_with(R"({"read_when": "wet season", "wenner": [
            {"spacing_m": 1, "resistance_ohm": 9.55}, {"spacing_m": 2, "resistance_ohm": 4.77},
            {"spacing_m": 4, "resistance_ohm": 2.39},
            {"spacing_m": 8, "resistance_ohm": 1.19}]})")});
    EXPECT_EQ(ran.code, 0) << ran.error;
    for (const char* part : {"Known by readings", "Wenner", "this soil", "60"}) {
        EXPECT_NE(ran.out.find(part), std::string::npos) << part;
    }
}

TEST_F(TheGround, JsonIsThatOfItsFormat) {
    const Ran ran = program_.run({"ground", example("demo"), "--json"});
    EXPECT_EQ(ran.code, 0);
    const auto said = nlohmann::json::parse(ran.out);
    EXPECT_EQ(said.at("format"), "toft-ground/1");
    EXPECT_EQ(said.at("buildings").at(0).at("building"), "studio");
    EXPECT_EQ(said.at("buildings").at(0).at("lost_neutral").at("ways").size(), 3u);
}

TEST_F(TheGround, ItsSchemaIsPrinted) {
    const Ran ran = program_.run({"schema", "ground"});
    EXPECT_EQ(ran.code, 0);
    EXPECT_EQ(nlohmann::json::parse(ran.out).at("$id"), "urn:toft:ground/1");
}

TEST_F(TheGround, AJobAtFaultIsSaidSo) {
    EXPECT_EQ(program_.run({"ground", "none.json"}).code, 2);
    const Ran ran = program_.run({"ground", "-", "--json"}, "{}");
    EXPECT_EQ(ran.code, 2);
    EXPECT_EQ(nlohmann::json::parse(ran.out).at("format"), "toft-faults/1");
    const Ran slip =
        program_.run({"ground", demo_with(R"({"wenner": [{"spacing_m": 2, "resistance_ohm": 4},
                                            {"spacing_m": 1, "resistance_ohm": 9}]})")});
    EXPECT_EQ(slip.code, 2);
    EXPECT_NE((slip.out + slip.error).find("/ground/wenner/1/spacing_m"), std::string::npos);
}

TEST_F(TheGround, WrongUsageLeavesWithFour) {
    EXPECT_EQ(program_.run({"ground"}).code, 4);
    EXPECT_EQ(program_.run({"ground", "a", "b"}).code, 4);
    EXPECT_EQ(program_.run({"ground", example("demo"), "--jason"}).code, 4);
}

}  // namespace
}  // namespace toft::cli
